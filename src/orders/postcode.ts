import { fold, type FoldedLine } from './fold.js';

/**
 * A postcode for comparing: letters and digits alone, folded. Of a US ZIP+4 the first five, a country's letters with a hyphen in front
 * left out (`D-10115`): both forms stand on labels for the same place.
 */
export function postcodeKey(postcode: string): string {
  const folded = fold(postcode).replace(/[^\p{L}\p{M}\p{N} -]/gu, '');
  const bare = /^(\d{5})-\d{4}$/.exec(folded)?.[1] ?? folded.replace(/^[a-z]{1,3}-(?=\d{3,6}(?:[ -]|$))/, '');
  return bare.replace(/[ -]/g, '');
}

/** No country has a longer one, UPU S42 (from memory). */
const LONGEST = 10;

/** What a line may say as a postcode, in the form of `postcodeKey`: one to three words with a digit that only a space or hyphen parts. */
export function postcodesIn({ text, tokens }: FoldedLine): readonly string[] {
  const keys: string[] = [];
  if (!/\d/.test(text)) return keys;
  for (const [at, token] of tokens.entries()) {
    let key = token.text;
    let end = token.end;
    for (let next = at + 1; key.length <= LONGEST; next++) {
      if (/\d/.test(key)) keys.push(key);
      const following = tokens[next];
      if (!following || next > at + 2) break;
      const gap = text.slice(end, following.start);
      if (gap !== ' ' && gap !== '-') break;
      key += following.text;
      end = following.end;
    }
  }
  return keys;
}

/** Its letters as `a`, its digits as `9`: what looks like a postcode of the same country. */
export const shapeOf = (key: string): string => key.replace(/\d/g, '9').replace(/\p{L}/gu, 'a');
