import { nearest } from '../diagnostics/nearest.js';

const LONGEST_SHOWN = 48;

/** A word of the file in a message: between backticks, on one line, cut when long. */
export function quote(text: string): string {
  const line = text.replaceAll(/\s+/g, ' ').replaceAll('`', "'").trim();
  return `\`${line.length > LONGEST_SHOWN ? `${line.slice(0, LONGEST_SHOWN)}…` : line}\``;
}

/** `a`, `b` or `c`; "nothing" for none. */
export function listWords(words: readonly string[], link: 'or' | 'and' = 'or'): string {
  const quoted = words.map(quote);
  const last = quoted.pop();
  if (last === undefined) return 'nothing';
  return quoted.length === 0 ? last : `${quoted.join(', ')} ${link} ${last}`;
}

/** The remedy for a wrong word: the nearest allowed one, else all of them. */
export function useOneOf(word: string, allowed: readonly string[]): string {
  const near = nearest(word, allowed);
  if (near === undefined) return `Write ${listWords(allowed)}.`;
  const others = allowed.filter((each) => each !== near);
  return `Write ${quote(near)}${others.length === 0 ? '' : `; allowed too: ${listWords(others, 'and')}`}.`;
}
