import { AddressIndex, addresseeOf, type Addressee } from './addresses.js';
import { bundlesOf, type Bundle } from './bundles.js';
import type { Order } from './order.js';
import { OrderNumbers } from './order-numbers.js';
import { TrackingIndex } from './tracking.js';

/** All orders of a run, found by key. Orders are their indexes in the list given, bundles likewise. */
export interface OrderIndex {
  readonly orders: readonly Order[];
  readonly bundles: readonly Bundle[];
  /** Bundle of each order. */
  readonly bundleOf: ReadonlyMap<number, number>;
  readonly tracking: TrackingIndex<number>;
  /** By channel. */
  readonly numbers: ReadonlyMap<number, OrderNumbers<number>>;
  readonly addresses: ReadonlyMap<number, AddressIndex>;
  readonly addressee: (order: number) => Addressee;
}

export function indexOrders(orders: readonly Order[]): OrderIndex {
  const numbers = new Map<number, OrderNumbers<number>>();
  const addresses = new Map<number, AddressIndex>();
  const tracking = new TrackingIndex<number>();
  const addressees = new Map<number, Addressee>();
  for (const [index, order] of orders.entries()) {
    const addressee = addresseeOf(order);
    addressees.set(index, addressee);
    entry(numbers, order.channel, () => new OrderNumbers<number>()).add(order.number, index);
    entry(addresses, order.channel, () => new AddressIndex()).add(index, addressee);
    for (const number of order.tracking) tracking.add(number, index);
  }
  const bundles = bundlesOf(orders, numbers);
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
  };
}

function entry<K, V>(map: Map<K, V>, key: K, make: () => V): V {
  const known = map.get(key);
  if (known !== undefined) return known;
  const made = make();
  map.set(key, made);
  return made;
}
