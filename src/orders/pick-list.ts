import { compareNatural } from './natural.js';
import { numberRanges } from './number-ranges.js';
import type { Order, OrderItem } from './order.js';
import type { PackedParcel } from './packed-parcel.js';

/** One thing to fetch, for all parcels together. No buyer is in it. */
export interface PickRow {
  /** Where it lies; empty where the order file has no bins. */
  readonly bin: string;
  /** Empty where the order file has none. */
  readonly sku: string;
  /** Where order files call the same SKU differently, each name once, with a slash between. */
  readonly description: string;
  readonly variant: string;
  /** Pieces in all, from 1. */
  readonly quantity: number;
  /** The parcels that want it, from 1, ascending, each once. */
  readonly numbers: readonly number[];
}

interface Gathered {
  readonly item: OrderItem;
  readonly descriptions: Set<string>;
  quantity: number;
  readonly numbers: Set<number>;
}

/**
 * What to fetch for these parcels: one row for each SKU, variant and bin, sorted by bin, then SKU, as a person counts. An order that goes in
 * several parcels is counted once, under the numbers of all of them: order files don't say which piece goes in which.
 */
export function pickRows(parcels: readonly PackedParcel[]): readonly PickRow[] {
  const orders = new Map<string, { readonly order: Order; readonly numbers: number[] }>();
  for (const { number, orders: packed } of parcels) {
    for (const order of packed) {
      const known = orders.get(order.id);
      if (known) known.numbers.push(number);
      else orders.set(order.id, { order, numbers: [number] });
    }
  }
  const gathered = new Map<string, Gathered>();
  for (const { order, numbers } of orders.values()) {
    for (const item of order.items) {
      const key = keyOf(item);
      const row = gathered.get(key) ?? { item, descriptions: new Set<string>(), quantity: 0, numbers: new Set<number>() };
      if (item.description !== '') row.descriptions.add(item.description);
      row.quantity += item.quantity;
      for (const number of numbers) row.numbers.add(number);
      gathered.set(key, row);
    }
  }
  return [...gathered.values()].map(rowOf).sort(compareRows);
}

/** The same thing: things without a SKU are told apart by their names. */
const keyOf = ({ bin, sku, description, variant }: OrderItem): string => JSON.stringify([bin, sku, variant, sku === '' ? description : '']);

const rowOf = ({ item: { bin, sku, variant }, descriptions, quantity, numbers }: Gathered): PickRow => ({
  bin,
  sku,
  description: [...descriptions].sort(compareNatural).join(' / '),
  variant,
  quantity,
  numbers: [...numbers].sort((a, b) => a - b),
});

/** What has a bin first: the way along the shelves is not broken by what lies nowhere. */
const compareRows = (a: PickRow, b: PickRow): number =>
  Number(a.bin === '') - Number(b.bin === '') ||
  compareNatural(a.bin, b.bin) ||
  compareNatural(a.sku, b.sku) ||
  compareNatural(a.description, b.description) ||
  compareNatural(a.variant, b.variant);

/** The rows as a table of cells, heads first; for `csvText`. */
export const pickTable = (rows: readonly PickRow[]): readonly (readonly (string | number)[])[] => [
  ['bin', 'sku', 'description', 'variant', 'quantity', 'parcels'],
  ...rows.map(({ bin, sku, description, variant, quantity, numbers }) => [bin, sku, description, variant, quantity, numberRanges(numbers)]),
];
