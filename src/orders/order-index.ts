import { AddressIndex, addresseeOf, type Addressee } from './addresses.js';
import { bundlesOf, type Bundle } from './bundles.js';
import type { Order } from './order.js';
import { orderNumberKey, OrderNumbers } from './order-numbers.js';
import { TrackingIndex } from './tracking.js';

/** All orders of a run, found by key. Orders are their indexes in the list given, bundles likewise. */
export interface OrderIndex {
  readonly orders: readonly Order[];
  readonly bundles: readonly Bundle[];
  /** Bundle of each order; undefined for a repeated one. */
  readonly bundleOf: ReadonlyMap<number, number>;
  readonly tracking: TrackingIndex<number>;
  /** By channel. */
  readonly numbers: ReadonlyMap<number, OrderNumbers<number>>;
  readonly addresses: ReadonlyMap<number, AddressIndex>;
  readonly addressee: (order: number) => Addressee;
  /** Orders that share their number with another order of the channel that says something else. */
  readonly ambiguous: ReadonlySet<number>;
  /** Orders that are there before, alike in everything, with the one that stands for them. */
  readonly repeated: ReadonlyMap<number, number>;
}

export function indexOrders(orders: readonly Order[]): OrderIndex {
  const { repeated, ambiguous } = sameNumbers(orders);
  const taken = orders.flatMap((_, index) => (repeated.has(index) ? [] : [index]));
  const numbers = new Map<number, OrderNumbers<number>>();
  const addresses = new Map<number, AddressIndex>();
  const tracking = new TrackingIndex<number>();
  const addressees = new Map<number, Addressee>();
  for (const index of taken) {
    const order = orders[index];
    if (!order) continue;
    const addressee = addresseeOf(order);
    addressees.set(index, addressee);
    entry(numbers, order.channel, () => new OrderNumbers<number>()).add(order.number, index);
    entry(addresses, order.channel, () => new AddressIndex()).add(index, addressee);
    for (const number of order.tracking) tracking.add(number, index);
  }
  const bundles = bundlesOf(orders, taken, numbers);
  const bundleOf = new Map(bundles.flatMap((bundle, at) => bundle.orders.map((index) => [index, at] as const)));
  const nobody: Addressee = { postcode: '', name: undefined };
  return {
    orders,
    bundles,
    bundleOf,
    tracking,
    numbers,
    addresses,
    addressee: (order) => addressees.get(order) ?? nobody,
    ambiguous,
    repeated,
  };
}

/** The first by file and line stands for those like it, whatever order they are given in. */
function sameNumbers(orders: readonly Order[]): { repeated: ReadonlyMap<number, number>; ambiguous: ReadonlySet<number> } {
  const byNumber = new Map<string, number[]>();
  for (const [index, { channel, number }] of orders.entries()) {
    const key = orderNumberKey(number);
    if (/[\p{L}\p{N}]/u.test(key)) entry(byNumber, `${channel} ${key}`, () => []).push(index);
  }
  const repeated = new Map<number, number>();
  const ambiguous = new Set<number>();
  for (const indexes of byNumber.values()) {
    if (indexes.length === 1) continue;
    const alike = new Map<string, number[]>();
    for (const index of indexes) entry(alike, contentOf(orders[index]), () => []).push(index);
    for (const same of alike.values()) {
      const [first = 0, ...others] = same.toSorted((a, b) => byPlace(orders[a], orders[b]) || a - b);
      for (const other of others) repeated.set(other, first);
      if (alike.size > 1) ambiguous.add(first);
    }
  }
  return { repeated, ambiguous };
}

const contentOf = (order: Order | undefined): string => JSON.stringify({ ...order, id: '', place: '' });

function byPlace(a: Order | undefined, b: Order | undefined): number {
  if (!a || !b) return 0;
  if (a.place.file !== b.place.file) return a.place.file < b.place.file ? -1 : 1;
  return a.place.line - b.place.line || (a.id < b.id ? -1 : a.id > b.id ? 1 : 0);
}

function entry<K, V>(map: Map<K, V>, key: K, make: () => V): V {
  const known = map.get(key);
  if (known !== undefined) return known;
  const made = make();
  map.set(key, made);
  return made;
}
