import { mmToPt } from '../geometry/length.js';
import { placeOnLine } from '../reading/place-on-line.js';
import type { Phrase } from '../reading/word-lines.js';

/** A list of numbered steps has no name of its own: it is called by its numbers. */
export const STEPS = '1. 2. 3.';

/** Lines of such a list stand no farther apart, pt (8 mm). */
export const LIST_LINE = mmToPt(8);

/** "1. Print this page", or "1." with its line set out beside it. */
const NUMBERED = /^([1-9])[.)](?: ?\p{L}|$)/u;
/** A number by itself. */
const ALONE = /^[1-9][.)]$/;
/** What is set out begins within this many times its type after the number. */
const SET_OUT = 4;

/** Whether three lines or more are numbered one after the other. */
export function hasSteps(phrases: readonly Phrase[]): boolean {
  const numbers = new Set(phrases.flatMap(({ text }) => NUMBERED.exec(text)?.[1] ?? []));
  return ['1', '2', '3'].every((number) => numbers.has(number));
}

/** Without the numbered lines where they are a list: one alone may be a floor. */
export function withoutSteps(phrases: readonly Phrase[]): readonly Phrase[] {
  if (!hasSteps(phrases)) return phrases;
  const alone = phrases.filter(({ text }) => ALONE.test(text));
  return phrases.filter((phrase) => !NUMBERED.test(phrase.text) && !alone.some((number) => isSetOut(phrase, number)));
}

/** Whether writing begins on the line of a number, right after it. */
function isSetOut({ box, turn, fontSize }: Phrase, number: Phrase): boolean {
  if (turn !== number.turn) return false;
  const [line, before] = [placeOnLine(box, turn), placeOnLine(number.box, turn)];
  const white = line.from - before.to;
  return Math.abs(line.middle - before.middle) < fontSize / 2 && white > 0 && white < SET_OUT * fontSize;
}
