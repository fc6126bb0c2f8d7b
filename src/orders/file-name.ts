import { fold } from './fold.js';
import type { OrderNumbers } from './order-numbers.js';

/** A file's name without its ending, and without the mark of a second download: `A-1001 (1).pdf` is `A-1001`. */
export const stemOf = (fileName: string): string => fileName.replace(/\.[^.\\/]{1,5}$/, '').replace(/ \(\d{1,3}\)$/, '');

/**
 * Those whose order number a file's name gives. With a pattern (`{order}` is the number, `*` anything, the rest as written; the whole name
 * without its ending, capital or small letters alike) what may stand there: where `*` leaves that open, each number that an order has.
 * Without one a number anywhere in the name.
 */
export function namedByFile<T>(numbers: OrderNumbers<T>, fileName: string, pattern: string | undefined): ReadonlySet<T> {
  const stem = stemOf(fileName);
  if (pattern === undefined) return numbers.inFileName(stem);
  const { before, behind } = patternOf(pattern);
  const name = fold(stem);
  if (!behind) return new Set();
  const places = Array.from({ length: name.length + 1 }, (_, at) => at);
  const starts = places.filter((at) => before.test(name.slice(0, at)) && (!isOpen(before) || isEdge(name, at)));
  const ends = places.filter((at) => behind.test(name.slice(at)) && (!isOpen(behind) || isEdge(name, at)));
  return new Set(starts.flatMap((start) => ends.filter((end) => end > start).flatMap((end) => numbers.get(name.slice(start, end)))));
}

/** Whether a part of a pattern leaves open where it ends: a number never begins or ends inside a word then. */
const isOpen = ({ source }: RegExp): boolean => source.includes('.*?');

const isEdge = (name: string, at: number): boolean =>
  !/^[\p{L}\p{M}\p{N}]{2}$/u.test(`${name.slice(0, at).at(-1) ?? ' '}${name.charAt(at) === '' ? ' ' : name.charAt(at)}`);

/** What may stand before the number and behind it; `behind` is undefined for a pattern without a place for the number. */
interface Around {
  readonly before: RegExp;
  readonly behind: RegExp | undefined;
}

const patterns = new Map<string, Around>();

function patternOf(pattern: string): Around {
  const known = patterns.get(pattern);
  if (known) return known;
  // Only the first `{order}` is the number: one name gives one number.
  const [before = '', ...behind] = fold(pattern).split('{order}');
  const made = { before: whole(before), behind: behind.length > 0 ? whole(behind.join('{order}')) : undefined };
  patterns.set(pattern, made);
  return made;
}

const whole = (text: string): RegExp => new RegExp(`^${escaped(text)}$`, 's');
const escaped = (text: string): string => text.replace(/[\\^$.+?()[\]{}|/-]/g, '\\$&').replace(/\*+/g, '.*?');
