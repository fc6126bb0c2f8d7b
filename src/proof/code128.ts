import { sum } from '../geometry/sum.js';
import { CODE_128, STOP } from '../press/code128.js';
/** The starts of code sets A, B and C. */
export const STARTS: readonly number[] = [103, 104, 105];

const MODULES = CODE_128.map((row) => Array.from(row, Number));
/** Modules of a character by its value. Throws for a value that is none (a bug of the caller). */
export function modulesOf(value: number): readonly number[] {
  const modules = MODULES[value];
  if (!modules) throw new RangeError(`code128: there is no character ${value}`);
  return modules;
}

/** Edge to similar edge: e1 to e4 of six elements, which print growth leaves as they are. */
export const similarEdges = (elements: readonly number[]): readonly number[] =>
  [0, 1, 2, 3].map((index) => (elements[index] ?? 0) + (elements[index + 1] ?? 0));

/** Values that look alike by their edges, told apart by how much of them is bar. */
const byEdges = new Map<string, number[]>();
MODULES.forEach((modules, value) => {
  const key = similarEdges(modules).join();
  byEdges.set(key, [...(byEdges.get(key) ?? []), value]);
});

const barSum = (elements: readonly number[]): number => (elements[0] ?? 0) + (elements[2] ?? 0) + (elements[4] ?? 0);

/**
 * The value of one character from the widths of its six elements (for the stop, its first six of 7), by the reference decode of ISO/IEC 15417: edge to
 * similar edge against elevenths of the whole. Undefined when they are no character.
 */
export function valueOf(elements: readonly number[]): number | undefined {
  const whole = sum(elements.slice(0, 6));
  if (!(whole > 0)) return undefined;
  const key = similarEdges(elements)
    .map((each) => Math.round((each * 11) / whole))
    .join();
  const bars = (barSum(elements) * 11) / whole;
  return byEdges
    .get(key)
    ?.toSorted((a, b) => Math.abs(barSum(modulesOf(a)) - bars) - Math.abs(barSum(modulesOf(b)) - bars))
    .find((value) => Math.abs(barSum(modulesOf(value)) - bars) < 1.75);
}

/** Whether values from start to stop are one symbol: a start, a check character that holds (mod 103), a stop. */
export function isSymbol(values: readonly number[]): boolean {
  const [start] = values;
  if (start === undefined || !STARTS.includes(start) || values.length < 4 || values.at(-1) !== STOP) return false;
  const data = values.slice(1, -2);
  if (data.some((value) => value >= 103)) return false;
  const sum = data.reduce((total, value, index) => total + value * (index + 1), start);
  return sum % 103 === values.at(-2);
}
