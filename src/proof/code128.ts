/**
 * The 107 characters of Code 128 in modules: bar, space, bar, space, bar, space; the last (stop) has one bar more. ISO/IEC 15417 table 1 (from memory; a
 * test compares each row with what an independent writer draws). Values 103 to 105 are the starts, 106 is the stop.
 */
export const CODE_128: readonly string[] = [
  '212222 222122 222221 121223 121322 131222 122213 122312 132212 221213 221312 231212 112232 122132 122231 113222 123122 123221 223211 221132',
  '221231 213212 223112 312131 311222 321122 321221 312212 322112 322211 212123 212321 232121 111323 131123 131321 112313 132113 132311 211313',
  '231113 231311 112133 112331 132131 113123 113321 133121 313121 211331 231131 213113 213311 213131 311123 311321 331121 312113 312311 332111',
  '314111 221411 431111 111224 111422 121124 121421 141122 141221 112214 112412 122114 122411 142112 142211 241211 221114 413111 241112 134111',
  '111242 121142 121241 114212 124112 124211 411212 421112 421211 212141 214121 412121 111143 111341 131141 114113 114311 411113 411311 113141',
  '114131 311141 411131 211412 211214 211232 2331112',
].flatMap((row) => row.split(' '));

export const STOP = 106;
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
  const whole = elements.slice(0, 6).reduce((sum, each) => sum + each, 0);
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
