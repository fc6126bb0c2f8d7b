import { fold, tokensOf, type Token } from './fold.js';

/**
 * A postcode for comparing: letters and digits alone, folded. Of a US ZIP+4 the first five, a country's letters with a hyphen in front
 * left out (`D-10115`): both forms stand on labels for the same place.
 */
export function postcodeKey(postcode: string): string {
  const folded = fold(postcode).replace(/[^\p{L}\p{M}\p{N} -]/gu, '');
  const bare = /^(\d{5})-\d{4}$/.exec(folded)?.[1] ?? folded.replace(/^[a-z]{1,3}-(?=\d{3,6}(?:[ -]|$))/, '');
  return bare.replace(/[ -]/g, '');
}

/** What a folded line may say as a postcode, in the form of `postcodeKey`: each one to three words that only a space or hyphen parts. */
export function postcodesIn(line: string, tokens: readonly Token[] = tokensOf(line)): readonly string[] {
  const keys: string[] = [];
  for (const [at, token] of tokens.entries()) {
    let key = token.text;
    let end = token.end;
    if (key.length <= 10) keys.push(key);
    for (const next of tokens.slice(at + 1, at + 3)) {
      const gap = line.slice(end, next.start);
      if (gap !== ' ' && gap !== '-') break;
      key += next.text;
      end = next.end;
      if (key.length > 10) break;
      keys.push(key);
    }
  }
  return keys;
}

/** Its letters as `a`, its digits as `9`: what looks like a postcode of the same country. */
export const shapeOf = (key: string): string => key.replace(/\d/g, '9').replace(/\p{L}/gu, 'a');
