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

/** The remedy for a wrong word: the nearest allowed one, else all of them. `verb` begins the sentence: "Write". */
export function useOneOf(word: string, allowed: readonly string[], verb = 'Write'): string {
  const near = nearest(word, allowed);
  if (near === undefined) return `${verb} ${listWords(allowed)}.`;
  const others = allowed.filter((each) => each !== near);
  return `${verb} ${quote(near)}${others.length === 0 ? '' : `; allowed too: ${listWords(others, 'and')}`}.`;
}

/** The first letter large. */
export const sentence = (text: string): string => text.charAt(0).toLocaleUpperCase('en') + text.slice(1);
