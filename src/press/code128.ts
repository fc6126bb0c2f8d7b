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
const START_B = 104;
const START_C = 105;
const TO_C = 99;
const TO_B = 100;

/** Clear space on both sides of a symbol, in modules: ISO/IEC 15417 4.4.2 (handbook section 2.1, VERIFIED-S). */
export const QUIET_MODULES = 10;

/**
 * The values of a symbol, from start to stop, for a text of printable ASCII: digits by twos (set C) where that makes it shorter, an odd one last; everything
 * else in set B. Undefined for an empty text and for any other character.
 */
export function code128Values(text: string): readonly number[] | undefined {
  if (!/^[ -~]+$/.test(text)) return undefined;
  const values: number[] = [];
  let inC: boolean | undefined;
  const put = (value: number, c: boolean): void => {
    if (inC === undefined) values.push(c ? START_C : START_B);
    else if (c !== inC) values.push(c ? TO_C : TO_B);
    inC = c;
    values.push(value);
  };
  for (const { 0: part, index } of text.matchAll(/\d+|\D+/g)) {
    const pairs = /\d/.test(part) ? Math.floor(part.length / 2) : 0;
    const goingIn = index === 0 ? 0 : 1;
    const comingBack = index + 2 * pairs === text.length ? 0 : 1;
    const byTwos = pairs > goingIn + comingBack ? 2 * pairs : 0;
    for (let at = 0; at < byTwos; at += 2) put(Number(part.slice(at, at + 2)), true);
    for (const char of part.slice(byTwos)) put((char.codePointAt(0) ?? 0) - 32, false);
  }
  const check = values.reduce((sum, value, position) => sum + value * Math.max(1, position), 0) % 103;
  return [...values, check, STOP];
}

/**
 * The widths of bar, space, bar … of a whole symbol in modules, without its quiet zones (`QUIET_MODULES` on both sides). Undefined where `code128Values` is:
 * say so, and draw nothing.
 */
export function code128Modules(text: string): readonly number[] | undefined {
  return code128Values(text)?.flatMap((value) => Array.from(CODE_128[value] ?? '', Number));
}
