import { windows1252Byte } from './decode-text.js';

/** What a spreadsheet has made of a value. */
export type Damage = 'scientific' | 'hashes' | 'error' | 'digits';

/**
 * A value without what keeps spreadsheets from changing it: `="00123"`, and an apostrophe in front of something that they would count with.
 * Blanks at both ends go, too.
 */
export function unwrapped(cell: string): string {
  const text = cell.trim();
  const formula = /^="(.*)"$/s.exec(text);
  if (formula) return (formula[1] ?? '').replaceAll('""', '"').trim();
  return /^'[\d=+@-]/.test(text) ? text.slice(1).trim() : text;
}

/** IEEE 754 doubles are shown with 15 digits by spreadsheets; what a number has beyond is 0. */
const DIGITS_KEPT = 15;

/** So many zeros behind the fifteenth digit are no chance (1 in 100,000); a number of 16 to 19 digits may well end in fewer. */
const ZEROS_SURE = 5;

/** Damage that is sure; undefined for a value that shows none. `9.4E+21`, `#######`, `#N/A`, `9400111206206400000000`. */
export function damageOf(text: string): Damage | undefined {
  if (/^\d(?:[.,]\d+)?E\+\d{1,3}$/i.test(text) || /^\d[.,]\d+E\d{1,3}$/i.test(text)) return 'scientific';
  if (/^#{2,}$/.test(text)) return 'hashes';
  if (/^#(?:N\/A|NAME\?|VALUE!|REF!|NULL!|NUM!|DIV\/0!)$/i.test(text)) return 'error';
  const digits = text.replaceAll(' ', '');
  const isLong = /^\d+$/.test(digits) && digits.length >= DIGITS_KEPT + ZEROS_SURE;
  return isLong && /^0+$/.test(digits.slice(DIGITS_KEPT)) ? 'digits' : undefined;
}

/** How messages call it, without the value. */
export const DAMAGE_WORDS: Readonly<Record<Damage, string>> = {
  scientific: 'a spreadsheet has turned the number into a rounded one with an exponent',
  hashes: 'a spreadsheet has written # signs because its column was too narrow',
  error: 'a spreadsheet has written an error in place of the value',
  digits: 'a spreadsheet has kept fifteen digits of the number and made zeros of the rest',
};

/**
 * Whether text in UTF-8 was once taken for Windows-1252 or Latin-1, as in `CafÃ©`: where each run of characters above ASCII, put back into its bytes, is
 * whole UTF-8 again. By chance that does not happen in words.
 */
export function isMojibake(text: string): boolean {
  for (const [run] of text.matchAll(/[\u0080-\u{10ffff}]{2,}/gu)) {
    const bytes = Array.from(run, windows1252Byte);
    if (bytes.includes(-1)) continue;
    try {
      new TextDecoder('utf-8', { fatal: true }).decode(Uint8Array.from(bytes));
      return true;
    } catch {
      continue;
    }
  }
  return false;
}

/**
 * Postcodes that are digits alone and may begin with 0, by country: how many digits. Source: formats of the national posts as collected by
 * the UPU (Addressing), from memory.
 */
const DIGITS: Readonly<Record<string, readonly number[]>> = {
  AU: [4],
  CN: [6],
  CO: [6],
  DE: [5],
  DK: [4],
  EE: [5],
  ES: [5],
  FI: [5],
  FR: [5],
  IT: [5],
  KR: [5],
  LT: [5],
  MX: [5],
  MY: [5],
  NO: [4],
  NZ: [4],
  PE: [5],
  PR: [5, 9],
  RO: [6],
  SG: [6],
  TR: [5],
  UA: [5],
  US: [5, 9],
  ZA: [4],
};

/** Countries whose postcodes begin with two zeros in places. */
const TWO_ZEROS = ['US', 'PR'];

/** Whether the zeros in front of a postcode are lost: it has a digit fewer than the country's postcodes, or two where they may begin with `00`. */
export function hasLostZeros(postcode: string, country: string): boolean {
  const [digits = '', added] = postcode.split('-', 2);
  const lengths = DIGITS[country];
  if (!lengths || !/^\d+$/.test(digits) || (added !== undefined && !/^\d{4}$/.test(added))) return false;
  if (digits.length < 3 || lengths.includes(digits.length)) return false;
  const lost = TWO_ZEROS.includes(country) ? [1, 2] : [1];
  return lengths.some((length) => lost.includes(length - digits.length));
}
