import type { Reason } from '../sheet/sheet.js';
import type { LabelFacts } from './label-facts.js';
import type { LooseEnd } from './loose-ends.js';
import { matchOrders } from './match.js';
import type { MatchOptions } from './matching.js';
import type { Order } from './order.js';
import type { PlacedOrder } from './order-places.js';
import { orderWord, placeWord } from './order-text.js';

/** A label that is held for a reason of its own (it can't be proved, say), so that it is not matched. */
export interface HeldLabel {
  readonly facts: LabelFacts;
  readonly reason: Reason;
}

export interface WithHeldLabels {
  /** The places given; an order without a label whose label is among the held ones is held. */
  readonly places: readonly PlacedOrder[];
  /** One for each such order, in the order of the orders. */
  readonly looseEnds: readonly LooseEnd[];
}

/**
 * Finds the orders that seem to have no label because theirs is held. Only what such a label says of its order counts; whether it may be
 * printed is not asked here. Return labels are nobody's label.
 * @param places what `orderPlaces` says of the orders without these labels
 */
export function placeHeldLabels(
  orders: readonly Order[],
  held: readonly HeldLabel[],
  options: MatchOptions,
  places: readonly PlacedOrder[],
): WithHeldLabels {
  const outbound = held.filter(({ facts }) => !facts.isReturn);
  if (outbound.length === 0 || !places.some(({ place }) => place === 'no-label')) return { places, looseEnds: [] };
  const { labels } = matchOrders(
    orders,
    outbound.map(({ facts }) => facts),
    options,
  );
  const own = new Map<string, HeldLabel[]>();
  for (const [at, end] of labels.entries()) {
    const label = outbound[at];
    if (!label || (end.kind !== 'packed' && end.kind !== 'held')) continue;
    for (const order of end.orders) own.set(order, [...(own.get(order) ?? []), label]);
  }
  const looseEnds: LooseEnd[] = [];
  const placed = places.map((each, at): PlacedOrder => {
    const order = orders[at];
    const waiting = each.place === 'no-label' ? (own.get(each.order) ?? []) : [];
    if (!order || waiting.length === 0) return each;
    looseEnds.push(labelHeld(order, waiting));
    return { order: each.order, place: 'held', labels: waiting.map(({ facts }) => facts.id) };
  });
  return { places: placed, looseEnds };
}

function labelHeld(order: Order, labels: readonly HeldLabel[]): LooseEnd {
  const due = order.shipBy === undefined ? '' : `, to be shipped by ${order.shipBy}`;
  const each = labels.map(({ facts, reason }) => `${facts.shown}: ${reason.message}`).sort();
  return {
    code: 'orders/label-held',
    message: `order ${orderWord(order)} (${placeWord(order)})${due}, has a label, but it is held: ${each.join('; ')}`,
    remedy: 'Put right what its label is held for, then run again; both come together.',
    orders: [order.id],
    labels: labels.map(({ facts }) => facts.id),
  };
}
