import { compare } from 'natural-orderby';

/**
 * What a text is compared by. The library compares letters beyond ASCII by the rules of the machine's language and dates by its time zone;
 * neither may decide the order of a stack, so letters lose their accents or become codes, and no key looks like a date.
 */
export function naturalKey(text: string): string {
  const plain = text.normalize('NFKD').replace(/\p{M}+/gu, '');
  return `/${plain.replace(/[^\x20-\x7e]/gu, (letter) => `\x7f${asLetters(letter.codePointAt(0) ?? 0)}`)}`;
}

/** Six hexadecimal digits, written with the letters a-p: digits would be compared as a number. */
const asLetters = (code: number): string =>
  code
    .toString(16)
    .padStart(6, '0')
    .replace(/./g, (digit) => String.fromCharCode(97 + parseInt(digit, 16)));

/** Compares two keys of `naturalKey` as a person counts: `A-2` before `A-10`. The same on every machine. */
export const compareKeys: (a: string, b: string) => number = compare();

/** By UTF-16 code units: 0 only for equal texts. */
export const byUnit = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);
