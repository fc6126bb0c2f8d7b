import { compare } from 'natural-orderby';
import type { WorkItem } from './work.js';

const natural = compare();

/**
 * What a name is compared by. The library compares letters beyond ASCII by the rules of the machine's language and dates by its
 * time zone; neither may decide the order of a stack, so letters lose their accents or become codes, and no key looks like a date.
 */
function sortKey(name: string): string {
  const plain = name.normalize('NFKD').replace(/\p{M}+/gu, '');
  return `/${plain.replace(/[^\x20-\x7e]/gu, (letter) => `\x7f${asLetters(letter.codePointAt(0) ?? 0)}`)}`;
}

/** Six hexadecimal digits, written with the letters a-p: digits would be compared as a number. */
const asLetters = (code: number): string =>
  code
    .toString(16)
    .padStart(6, '0')
    .replace(/./g, (digit) => String.fromCharCode(97 + parseInt(digit, 16)));

const byUnit = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

/** A name without its ending: `label.pdf` comes before its second download `label (1).pdf`. */
const stem = (name: string): string => name.replace(/\.[^./\\]{1,5}$/, '');

/** File names as a person counts them: `label 2` before `label 10`. The same on every machine; 0 only for equal names. */
export const compareNames = (a: string, b: string): number =>
  natural(sortKey(stem(a)), sortKey(stem(b))) || natural(sortKey(a), sortKey(b)) || byUnit(a, b);

/** The fixed order of a run: channel as listed, file name in natural order, content hash; then whatever still differs. */
export const compareWork = (a: WorkItem, b: WorkItem): number =>
  a.channel - b.channel ||
  compareNames(a.shownName, b.shownName) ||
  byUnit(a.sha256, b.sha256) ||
  byUnit(a.path, b.path) ||
  byUnit(a.entry ?? '', b.entry ?? '');
