import { union, type Box } from '../geometry/box.js';
import type { Turn } from '../geometry/placement.js';
import { placeOnLine, type PlaceOnLine } from './place-on-line.js';
import type { Word } from './source.js';

/** A gap between words wider than this many times the type's size is a new column. */
export const COLUMN_GAP = 1.2;

/** Words on one baseline, in reading order. */
export interface WordLine {
  readonly words: readonly Word[];
  readonly turn: Turn;
}

/** A stretch of a line without a column gap: a heading, a cell, a line of an address. */
export interface Phrase {
  readonly text: string;
  readonly box: Box;
  readonly turn: Turn;
  /** The largest type in it, pt. */
  readonly fontSize: number;
}

/** Words in lines as a reader sees them, from the top; each direction of writing apart, slanted words left out. */
export function wordLines(words: readonly Word[]): readonly WordLine[] {
  return ([0, 90, 180, 270] as const).flatMap((turn) => linesOfTurn(words, turn));
}

function linesOfTurn(words: readonly Word[], turn: Turn): WordLine[] {
  const placed = words.flatMap((word): readonly Placed[] => (word.turn === turn ? [{ word, ...placeOnLine(word.box, turn) }] : []));
  const lines: Placed[][] = [];
  for (const each of [...placed].sort((a, b) => a.foot - b.foot || a.from - b.from)) {
    // By the smaller type: a letter an inch high must not join the lines of small print beside it.
    const line = lines.findLast(
      (open) =>
        open.some((other) => Math.abs(other.foot - each.foot) < 0.45 * Math.min(other.word.fontSize, each.word.fontSize)) &&
        !open.some((other) => isUnder(each, other)),
    );
    if (line) line.push(each);
    else lines.push([each]);
  }
  return lines.map((line) => ({ turn, words: line.sort((a, b) => a.from - b.from).map(({ word }) => word) }));
}

interface Placed extends PlaceOnLine {
  readonly word: Word;
}

/** Whether a word stands in the place of another, but lower: lines of a column beside both, set in other type, may lead from one to the other. */
function isUnder(each: Placed, other: Placed): boolean {
  const shared = Math.min(each.to, other.to) - Math.max(each.from, other.from);
  return shared > SHARED * Math.min(each.to - each.from, other.to - other.from) && each.foot - other.foot > LOWER * other.word.fontSize;
}
/** Words of one line overlap by less than this share of the shorter, but for those printed twice … */
const SHARED = 0.5;
/** … which stand on one foot but for this share of their type. */
const LOWER = 0.4;

/** Gap between a word and the one before it on the line, in times the larger type. */
export function gapBefore(word: Word, before: Word, turn: Turn): number {
  return (placeOnLine(word.box, turn).from - placeOnLine(before.box, turn).to) / word.fontSize;
}

/** A word set with blanks between its letters, "R E T U R N", as it is meant. */
const closedUp = (text: string): string => (LETTERSPACED.test(text) ? text.replaceAll(' ', '') : text);
const LETTERSPACED = /^\p{L}(?: \p{L}){3,}$/u;

const known = new WeakMap<readonly Word[], readonly Phrase[]>();

/** The stretches of all lines between column gaps; found once for each array of words. */
export function phrasesOf(words: readonly Word[]): readonly Phrase[] {
  let phrases = known.get(words);
  if (!phrases) known.set(words, (phrases = stretchesOf(words)));
  return phrases;
}

function stretchesOf(words: readonly Word[]): readonly Phrase[] {
  return wordLines(words).flatMap(({ words: line, turn }) => {
    const phrases: Word[][] = [];
    line.forEach((word, index) => {
      const before = line[index - 1];
      const open = phrases.at(-1);
      if (before && open && gapBefore(word, before, turn) <= COLUMN_GAP) open.push(word);
      else phrases.push([word]);
    });
    return phrases.map((each): Phrase => {
      const [first] = each;
      return {
        text: closedUp(each.map(({ text }) => text).join(' ')),
        box: union(each.map(({ box }) => box)) ?? (first as Word).box,
        turn,
        fontSize: Math.max(...each.map(({ fontSize }) => fontSize)),
      };
    });
  });
}
