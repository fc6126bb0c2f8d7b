import { orderBy } from 'natural-orderby';
import { byUnit, compareKeys, naturalKey } from '../text/natural.js';

/** Capital and small letters alike: who exports an order number writes it either way. */
const sortKey = (text: string): string => naturalKey(text.normalize('NFKD').toLowerCase());

/** As a person counts: `A-2` before `A-10`, whatever the case and accents; 0 only for equal texts. */
export const compareNatural = (a: string, b: string): number => compareKeys(sortKey(a), sortKey(b)) || byUnit(a, b);

/** The place of each text among all of them in natural order, from 0; the same for texts that differ in case and accents only. */
export function naturalRanks(texts: Iterable<string>): ReadonlyMap<string, number> {
  const keys = new Map([...new Set(texts)].sort(byUnit).map((text) => [text, sortKey(text)]));
  const ranks = new Map(orderBy([...new Set(keys.values())].sort(byUnit), [(key: string) => key]).map((key, rank) => [key, rank]));
  return new Map([...keys].map(([text, key]) => [text, ranks.get(key) ?? 0]));
}
