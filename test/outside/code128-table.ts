/**
 * Bar and space widths of the Code 128 characters 0-106, ISO/IEC 15417 table 1 (FROM MEMORY; the starts, FNC1 and the stop
 * are VERIFIED-S in handbook section 2.1, and the test compares every character with two independent writers).
 */
const WIDTHS =
  '212222 222122 222221 121223 121322 131222 122213 122312 132212 221213 221312 231212 112232 122132 122231 113222 123122 123221 ' +
  '223211 221132 221231 213212 223112 312131 311222 321122 321221 312212 322112 322211 212123 212321 232121 111323 131123 131321 ' +
  '112313 132113 132311 211313 231113 231311 112133 112331 132131 113123 113321 133121 313121 211331 231131 213113 213311 213131 ' +
  '311123 311321 331121 312113 312311 332111 314111 221411 431111 111224 111422 121124 121421 141122 141221 112214 112412 122114 ' +
  '122411 142112 142211 241211 221114 413111 241112 134111 111242 121142 121241 114212 124112 124211 411212 421112 421211 212141 ' +
  '214121 412121 111143 111341 131141 114113 114311 411113 411311 113141 114131 311141 411131 211412 211214 211232 2331112';

/** `211214` → `11010010000`: bars are 1, the first element is a bar. */
export const bitsOfWidths = (widths: Iterable<number>): string =>
  [...widths].map((width, i) => (i % 2 === 0 ? '1' : '0').repeat(width)).join('');

/** The modules of each character by its value. */
export const CHARACTERS: readonly string[] = WIDTHS.split(' ').map((widths) => bitsOfWidths(widths.split('').map(Number)));

/** Start, data, check and stop values → modules of the whole symbol. */
export const modulesOf = (values: readonly number[]): string => values.map((value) => CHARACTERS[value] ?? '').join('');

/** Modules of a whole symbol → its values; undefined where they are no characters of the table. */
export function valuesOf(modules: string): readonly number[] | undefined {
  const values: number[] = [];
  for (let at = 0; at + 13 < modules.length; at += 11) values.push(CHARACTERS.indexOf(modules.slice(at, at + 11)));
  values.push(CHARACTERS.indexOf(modules.slice(-13)));
  return values.includes(-1) ? undefined : values;
}

/** Handbook section 2.1 (VERIFIED-S): (start + sum of position × value) mod 103, positions from 1 after the start. */
export const checkValue = (startAndData: readonly number[]): number =>
  startAndData.reduce((sum, value, i) => sum + value * Math.max(1, i), 0) % 103;
