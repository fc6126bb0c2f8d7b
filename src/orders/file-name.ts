import { fold } from './fold.js';
import type { OrderNumbers } from './order-numbers.js';

/** A file's name without its ending, and without the mark of a second download: `A-1001 (1).pdf` is `A-1001`. */
export const stemOf = (fileName: string): string => fileName.replace(/\.[^.\\/]{1,5}$/, '').replace(/ \(\d{1,3}\)$/, '');

/**
 * Those whose order number a file's name gives. With a pattern (`{order}` is the number, `*` anything, the rest as written; the whole name
 * without its ending, capital or small letters alike) exactly what stands there; without one a number anywhere in the name.
 */
export function namedByFile<T>(numbers: OrderNumbers<T>, fileName: string, pattern: string | undefined): ReadonlySet<T> {
  const stem = stemOf(fileName);
  if (pattern === undefined) return numbers.inFileName(stem);
  const [, number] = patternOf(pattern).exec(fold(stem)) ?? [];
  return new Set(number === undefined ? [] : numbers.get(number));
}

const patterns = new Map<string, RegExp>();

function patternOf(pattern: string): RegExp {
  const known = patterns.get(pattern);
  if (known) return known;
  // Only the first `{order}` is the number: one name gives one number.
  const [before = '', ...behind] = fold(pattern).split('{order}');
  const made = new RegExp(`^${escaped(before)}${behind.length > 0 ? '(.+?)' : ''}${escaped(behind.join('{order}'))}$`);
  patterns.set(pattern, made);
  return made;
}

const escaped = (text: string): string => text.replace(/[\\^$.+?()[\]{}|/-]/g, '\\$&').replace(/\*+/g, '.*?');
