import type { LabelFacts } from './label-facts.js';
import type { LabelEnd, Matching } from './matching.js';
import type { Order } from './order.js';

/** Where an order ends: exactly one of these. */
export const PLACES = ['packed', 'held', 'no-label', 'not-expected'] as const;
export type Place = (typeof PLACES)[number];

export interface PlacedOrder {
  /** Id of the order. */
  readonly order: string;
  readonly place: Place;
  /** Ids of its outbound labels: those of its parcels, or those that are held and may be its own. */
  readonly labels: readonly string[];
}

/**
 * Where each order ends, in the order given: `packed` with all its labels; `held` when a held outbound label is or may be its own; `no-label` when
 * it expects one and there is none; `not-expected` when it expects none.
 */
export function orderPlaces(orders: readonly Order[], labels: readonly LabelFacts[], matching: Matching): readonly PlacedOrder[] {
  const returns = new Set(labels.filter(({ isReturn }) => isReturn).map(({ id }) => id));
  const packed = new Map<string, string[]>();
  const held = new Map<string, string[]>();
  for (const end of matching.labels) {
    if (returns.has(end.label) || (end.kind !== 'packed' && end.kind !== 'held')) continue;
    const ends = end.kind === 'packed' ? packed : held;
    for (const order of end.orders) {
      const known = ends.get(order);
      if (known) known.push(end.label);
      else ends.set(order, [end.label]);
    }
  }
  return orders.map(({ id, state }): PlacedOrder => {
    const [own, doubtful] = [packed.get(id), held.get(id)];
    if (own) return { order: id, place: 'packed', labels: own };
    if (doubtful) return { order: id, place: 'held', labels: doubtful };
    return { order: id, place: state === 'to-ship' ? 'no-label' : 'not-expected', labels: [] };
  });
}

/** How many ended where. */
export interface OrderSums {
  readonly orders: number;
  readonly byPlace: Readonly<Record<Place, number>>;
  readonly labels: number;
  readonly byEnd: Readonly<Record<LabelEnd['kind'], number>>;
  readonly parcels: number;
}

export function orderSums(places: readonly PlacedOrder[], matching: Matching): OrderSums {
  const byPlace = { packed: 0, held: 0, 'no-label': 0, 'not-expected': 0 };
  for (const { place } of places) byPlace[place] += 1;
  const byEnd = { packed: 0, return: 0, 'without-order': 0, untouched: 0, held: 0 };
  for (const { kind } of matching.labels) byEnd[kind] += 1;
  return { orders: places.length, byPlace, labels: matching.labels.length, byEnd, parcels: matching.parcels.length };
}

/**
 * Checks that nothing is lost and nothing is there twice: each order has one place and each label one end, parcels and packed labels are
 * the same, packed orders are in parcels and others in none. Gives a sentence for each thing that doesn't add up; none when all does.
 */
export function mismatches(
  orders: readonly Order[],
  labels: readonly LabelFacts[],
  matching: Matching,
  places: readonly PlacedOrder[],
): readonly string[] {
  const found: string[] = [];
  const ends = matching.labels;
  if (places.length !== orders.length) found.push(`${orders.length} orders, but ${places.length} places`);
  if (places.some(({ order }, at) => order !== orders[at]?.id)) found.push('places are not those of the orders, one by one');
  if (ends.length !== labels.length) found.push(`${labels.length} labels, but ${ends.length} ends`);
  if (ends.some(({ label }, at) => label !== labels[at]?.id)) found.push('ends are not those of the labels, one by one');
  const packed = ends.flatMap(({ kind, label }) => (kind === 'packed' ? [label] : []));
  const parcels = matching.parcels.map(({ label }) => label);
  if (packed.join('\n') !== parcels.join('\n'))
    found.push(`${packed.length} labels are packed, but there are ${parcels.length} parcels for them`);
  const inParcels = new Set(matching.parcels.flatMap((parcel) => parcel.orders));
  for (const { order, place } of places) {
    if ((place === 'packed') !== inParcels.has(order))
      found.push(`order ${order} is ${place}, but ${inParcels.has(order) ? 'in a parcel' : 'in none'}`);
  }
  const returned = ends.flatMap((end) => (end.kind === 'return' && end.parcel !== undefined ? [end.label] : [])).sort();
  if (
    returned.join('\n') !==
    matching.parcels
      .flatMap(({ returns }) => returns)
      .sort()
      .join('\n')
  )
    found.push('return labels are not those in the parcels');
  if (ends.some((end) => end.kind === 'held' && end.reasons.length === 0)) found.push('a label is held without a reason');
  return found;
}
