import { compareNatural, naturalRanks } from './natural.js';
import type { Order } from './order.js';

/** By what parcels can be sorted. */
export const SORT_KEYS = ['ship-by', 'sku', 'bin', 'channel', 'carrier', 'order-number', 'as-downloaded'] as const;
export type SortKey = (typeof SORT_KEYS)[number];

/** A parcel as sorting needs it. */
export interface ParcelToSort {
  /** What goes in it; none for a label without an order. */
  readonly orders: readonly Pick<Order, 'number' | 'shipBy' | 'items'>[];
  /** Index of the channel in the pipeline, from 0. */
  readonly channel: number;
  /** Empty where unknown. */
  readonly carrier: string;
  /** Its place in the order of the download, from 0; undefined where unknown. */
  readonly downloaded: number | undefined;
}

/** What a key is compared by: a text in natural order or a number; undefined is unknown. */
type Value = string | number | undefined;

/** The value of a parcel, behind a group that comes first (0) or later. */
const VALUES: Readonly<Record<SortKey, (parcel: ParcelToSort) => { readonly group?: number; readonly value: Value }>> = {
  'ship-by': ({ orders }) => ({ value: orders.flatMap(({ shipBy }) => shipBy ?? []).sort()[0] }),
  sku: ({ orders }) => {
    const items = orders.flatMap((order) => order.items);
    const skus = new Set(items.map(({ sku }) => sku).filter((sku) => sku !== ''));
    const [sku] = skus;
    if (items.length > 1 && (skus.size > 1 || items.some((item) => item.sku === ''))) return { group: 1, value: 0 };
    return { value: sku };
  },
  bin: ({ orders }) => ({ value: first(orders.flatMap(({ items }) => items.map(({ bin }) => bin))) }),
  channel: ({ channel }) => ({ value: channel }),
  carrier: ({ carrier }) => ({ value: carrier === '' ? undefined : carrier }),
  'order-number': ({ orders }) => ({ value: first(orders.map(({ number }) => number)) }),
  'as-downloaded': ({ downloaded }) => ({ value: downloaded }),
};

/**
 * Sorts parcels by several keys in turn; stable, unknown values last. `ship-by`: the earliest of its orders; `sku`: parcels of one SKU
 * by SKU, then those of several in the order given; `bin` and `order-number`: the first of those in it. Texts in natural order, whatever
 * the case and accents (`A-2` before `A-10`). Gives a new list and changes none.
 */
export function sortParcels<T extends ParcelToSort>(parcels: readonly T[], keys: readonly SortKey[]): readonly T[] {
  const columns = keys.map((key) => column(parcels.map(VALUES[key])));
  return parcels
    .map((parcel, at) => ({ parcel, at }))
    .sort((a, b) => {
      for (const ranks of columns) {
        const difference = (ranks[a.at] ?? 0) - (ranks[b.at] ?? 0);
        if (difference !== 0) return difference;
      }
      return a.at - b.at;
    })
    .map(({ parcel }) => parcel);
}

/** One number for each parcel: equal where the values are. */
function column(cells: readonly { readonly group?: number; readonly value: Value }[]): readonly number[] {
  const texts = naturalRanks(cells.flatMap(({ value }) => (typeof value === 'string' ? [value] : [])));
  const ranks = cells.map(({ value }) => (typeof value === 'string' ? (texts.get(value) ?? 0) : value));
  const known = ranks.flatMap((rank) => (rank === undefined || !Number.isFinite(rank) ? [] : [rank]));
  // Groups lie further apart than any two values; the unknown behind all groups.
  const numbers = new Map([...new Set(known)].sort((a, b) => a - b).map((rank, at) => [rank, at]));
  return ranks.map((rank, at) => {
    const place = rank === undefined ? undefined : numbers.get(rank);
    return place === undefined ? numbers.size * 2 : (cells[at]?.group ?? 0) * numbers.size + place;
  });
}

/** The first in natural order. */
const first = (texts: readonly string[]): string | undefined => texts.filter((text) => text !== '').sort(compareNatural)[0];
