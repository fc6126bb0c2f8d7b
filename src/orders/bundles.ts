import { fold } from './fold.js';
import type { Order } from './order.js';
import type { OrderNumbers } from './order-numbers.js';
import { trackingKey } from './tracking.js';

/** Orders that go in the same parcels: mostly one. */
export interface Bundle {
  readonly channel: number;
  /** Indexes of its orders, in the order given. */
  readonly orders: readonly number[];
  /** How many outbound labels it expects, from 1. */
  readonly parcels: number;
}

/**
 * Puts together what goes in one parcel: orders of a channel of which one names the other as `together`, and orders of a channel with the
 * same tracking number, buyer and address. Each order given is in exactly one bundle. A bundle expects as many labels as one of its orders
 * states parcels, or as it has different tracking numbers, whichever is more.
 */
export function bundlesOf(orders: readonly Order[], numbers: ReadonlyMap<number, OrderNumbers<number>>): readonly Bundle[] {
  const parent = new Map(orders.map((_, index) => [index, index]));
  const rootOf = (index: number): number => {
    let root = index;
    for (let next = parent.get(root) ?? root; next !== root; next = parent.get(root) ?? root) root = next;
    parent.set(index, root);
    return root;
  };
  // The lowest index is the root, so that the order of joining changes nothing.
  const join = (a: number, b: number): void => {
    const [low, high] = [rootOf(a), rootOf(b)].sort((x, y) => x - y);
    if (low !== undefined && high !== undefined) parent.set(high, low);
  };
  const sameParcel = new Map<string, number>();
  for (const [index, order] of orders.entries()) {
    // One number of several orders names none of them.
    for (const number of order.together) {
      const named = numbers.get(order.channel)?.get(number) ?? [];
      const [other] = named;
      if (other !== undefined && named.length === 1) join(index, other);
    }
    for (const number of order.tracking) {
      const key = trackingKey(number);
      if (key === undefined) continue;
      const parcel = `${order.channel} ${key} ${sendTo(order)}`;
      join(index, sameParcel.get(parcel) ?? index);
      if (!sameParcel.has(parcel)) sameParcel.set(parcel, index);
    }
  }
  const members = new Map<number, number[]>();
  for (const index of orders.keys()) {
    const root = rootOf(index);
    const known = members.get(root);
    if (known) known.push(index);
    else members.set(root, [index]);
  }
  return [...members.values()].map((indexes) => bundleOf(orders, indexes));
}

function bundleOf(orders: readonly Order[], indexes: readonly number[]): Bundle {
  const own = indexes.flatMap((index) => orders[index] ?? []);
  const tracking = new Set(own.flatMap((order) => order.tracking.flatMap((number) => trackingKey(number) ?? [])));
  return { channel: own[0]?.channel ?? 0, orders: indexes, parcels: Math.max(1, tracking.size, ...own.map(({ parcels }) => parcels)) };
}

/** Buyer and address as one text for comparing. */
const sendTo = ({ buyer, address, postcode, country }: Order): string =>
  [buyer, ...address, postcode, country].map((each) => fold(each).replace(/[^\p{L}\p{M}\p{N}]/gu, '')).join(' ');
