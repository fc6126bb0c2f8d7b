import { union, type Box } from '../geometry/box.js';
import type { Turn } from '../geometry/placement.js';
import { placeOnLine } from './place-on-line.js';
import type { Word } from './source.js';

/** A letter as it stands on the page, pt. */
export interface Letter {
  readonly text: string;
  /** Its ink. */
  readonly box: Box;
  /** With the white at its sides: letters of one word meet. */
  readonly advance: Box;
  readonly turn: Turn | undefined;
  readonly fontSize: number;
}

/** Letters that follow each other in the content without a break. */
export interface Piece {
  readonly letters: readonly Letter[];
  /** Whether the break before it is only a guess: nothing stands there in the content. */
  readonly isGuess: boolean;
}

/** Letters of one word are so far apart or overlap so far by their advance, in times the type's size; a blank is about a quarter of it. */
const SAME_WORD = { apart: 0.12, over: 0.18 };
/** … and so near across the line. */
const SAME_LINE = 0.05;
/** Scripts whose letters the content gives in reading order, from the right. */
const FROM_RIGHT = /\p{Script=Hebrew}|\p{Script=Arabic}/u;

/**
 * Pieces as words. Some producers place each letter by itself, others are turned by half so that their letters come from the end of the line: what was broken
 * by a guess only is put together where its letters meet, and the letters of a word stand in the order that they are read.
 */
export function wordsOf(pieces: readonly Piece[]): readonly Word[] {
  const words: { letters: readonly Letter[]; around: Box }[] = [];
  for (const { letters, isGuess } of pieces) {
    const around = union(letters.map(({ advance }) => advance));
    if (!around) continue;
    const last = words.at(-1);
    if (last && isGuess && meet(last, { letters, around })) {
      last.letters = [...last.letters, ...letters];
      last.around = union([last.around, around]) ?? around;
    } else words.push({ letters, around });
  }
  return words.flatMap(({ letters }) => wordOf(letters) ?? []);
}

interface Open {
  readonly letters: readonly Letter[];
  readonly around: Box;
}

function meet(a: Open, b: Open): boolean {
  const [first, second] = [a.letters[0], b.letters[0]];
  if (first?.turn === undefined || !second || first.turn !== second.turn) return false;
  const size = second.fontSize;
  if (Math.abs(first.fontSize - size) > 0.1 * size) return false;
  const [p, q] = [placeOnLine(a.around, first.turn), placeOnLine(b.around, first.turn)];
  const isNear = (gap: number): boolean => gap < SAME_WORD.apart * size && gap > -SAME_WORD.over * size;
  return (isNear(q.from - p.to) || isNear(p.from - q.to)) && Math.abs(p.foot - q.foot) < SAME_LINE * size;
}

function wordOf(letters: readonly Letter[]): Word | undefined {
  const [first] = letters;
  const box = union(letters.map((each) => each.box));
  if (!first || !box) return undefined;
  const { turn, fontSize } = first;
  const inOrder =
    turn === undefined || letters.some(({ text }) => FROM_RIGHT.test(text))
      ? letters
      : [...letters].sort((a, b) => placeOnLine(a.advance, turn).from - placeOnLine(b.advance, turn).from);
  return { text: inOrder.map(({ text }) => text).join(''), box, turn, fontSize };
}
