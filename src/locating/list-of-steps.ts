import { mmToPt } from '../geometry/length.js';
import type { Phrase } from '../reading/word-lines.js';

/** A list of numbered steps has no name of its own: it is called by its numbers. */
export const STEPS = '1. 2. 3.';

/** Lines of such a list stand no farther apart, pt (8 mm). */
export const LIST_LINE = mmToPt(8);

/** "1. Print this page". */
const NUMBERED = /^([1-9])[.)] ?\p{L}/u;

/** Whether three lines or more are numbered one after the other. */
export function hasSteps(phrases: readonly Phrase[]): boolean {
  const numbers = new Set(phrases.flatMap(({ text }) => NUMBERED.exec(text)?.[1] ?? []));
  return ['1', '2', '3'].every((number) => numbers.has(number));
}

/** Without the numbered lines where they are a list: one alone may be a floor. */
export const withoutSteps = (phrases: readonly Phrase[]): readonly Phrase[] =>
  hasSteps(phrases) ? phrases.filter(({ text }) => !NUMBERED.test(text)) : phrases;
