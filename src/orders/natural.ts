import { compare, orderBy } from 'natural-orderby';

const natural = compare();

/**
 * What a text is compared by. The library compares letters beyond ASCII by the rules of the machine's language and dates by its time zone;
 * neither may decide the order of a stack, so letters lose their accents or become codes, and no key looks like a date.
 */
const sortKey = (text: string): string =>
  `/${text
    .normalize('NFKD')
    .replace(/\p{M}+/gu, '')
    .toLowerCase()
    .replace(/[^\x20-\x7e]/gu, (letter) => `\x7f${asLetters(letter.codePointAt(0) ?? 0)}`)}`;

/** Six hexadecimal digits, written with the letters a-p: digits would be compared as a number. */
const asLetters = (code: number): string =>
  code
    .toString(16)
    .padStart(6, '0')
    .replace(/./g, (digit) => String.fromCharCode(97 + parseInt(digit, 16)));

const byUnit = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

/** As a person counts: `A-2` before `A-10`, whatever the case and accents; 0 only for equal texts. */
export const compareNatural = (a: string, b: string): number => natural(sortKey(a), sortKey(b)) || byUnit(a, b);

/** The place of each text among all of them in natural order, from 0; the same for texts that differ in case and accents only. */
export function naturalRanks(texts: Iterable<string>): ReadonlyMap<string, number> {
  const keys = new Map([...new Set(texts)].sort(byUnit).map((text) => [text, sortKey(text)]));
  const ranks = new Map(orderBy([...new Set(keys.values())].sort(byUnit), [(key: string) => key]).map((key, rank) => [key, rank]));
  return new Map([...keys].map(([text, key]) => [text, ranks.get(key) ?? 0]));
}
