import type { Word } from '../reading/source.js';
import { folded, KINDS, PHRASES } from './vocabulary.js';

/** Shorter words are too much like others. */
const LEAST_LETTERS = 5;
const LETTER = '?';

const known = new Set(
  KINDS.flatMap((kind) => PHRASES[kind].flatMap((words) => words.split(' '))).filter((word) => word.length >= LEAST_LETTERS),
);
const byGap = new Map<string, string>();
for (const word of known) for (const gap of gapsOf(word)) if (!byGap.has(gap)) byGap.set(gap, word);

/** The words with those that have one letter misread, but are the words of papers otherwise, put right: accents are mostly read as other letters. */
export const putRight = (words: readonly Word[]): readonly Word[] => words.map((word) => ({ ...word, text: rightText(word.text) }));

function rightText(text: string): string {
  const [letters] = /\p{L}+/u.exec(text) ?? [];
  if (letters === undefined || letters.length < LEAST_LETTERS) return text;
  const plain = folded(letters);
  if (known.has(plain)) return text;
  const right = gapsOf(plain).flatMap((gap) => byGap.get(gap) ?? [])[0];
  return right === undefined ? text : text.replace(letters, right);
}

/** A word with each letter left open in turn. */
function gapsOf(word: string): readonly string[] {
  return Array.from({ length: word.length }, (_, at) => word.slice(0, at) + LETTER + word.slice(at + 1));
}
