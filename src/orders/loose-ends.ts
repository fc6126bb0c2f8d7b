import type { Reason } from '../sheet/sheet.js';
import { sameNumber } from './conflicts.js';
import type { LabelFacts } from './label-facts.js';
import type { Matching } from './matching.js';
import type { Order } from './order.js';
import { orderNumberKey } from './order-numbers.js';
import { orderWord, placeWord } from './order-text.js';
import type { PlacedOrder } from './order-places.js';

/** Something that is left over when all is matched: what it is in a sentence, and which orders and labels it is about. */
export interface LooseEnd extends Reason {
  /** Ids. */
  readonly orders: readonly string[];
  readonly labels: readonly string[];
}

/** Codes of held labels that say that orders and labels don't add up; other reasons are told with the label. */
const DISAGREE: ReadonlySet<string> = new Set([
  'orders/fewer-labels',
  'orders/more-labels',
  'orders/two-labels',
  'orders/label-twice',
  'orders/parcel-of',
]);

/**
 * What to look after: orders that expect a label and have none; labels without an order, printed or held; orders and labels that are there
 * twice and not alike; orders whose labels are too many or too few; orders that name another one (together) that isn't there. In this order, orders and labels as
 * given. Sentences name order numbers and files, never buyers or addresses, of tracking numbers the last four characters.
 * @param places what `orderPlaces` says of the same orders
 */
export function looseEnds(
  orders: readonly Order[],
  labels: readonly LabelFacts[],
  matching: Matching,
  places: readonly PlacedOrder[],
): readonly LooseEnd[] {
  const shown = new Map(labels.map((label) => [label.id, label.shown]));
  return [
    ...withoutLabel(orders, places),
    ...withoutOrder(matching, shown),
    ...twice(orders, places),
    ...disagreeing(matching, shown),
    ...missingMates(orders),
  ];
}

function withoutLabel(orders: readonly Order[], places: readonly PlacedOrder[]): readonly LooseEnd[] {
  return orders.flatMap((order, at): LooseEnd[] => {
    if (places[at]?.place !== 'no-label') return [];
    const due = order.shipBy === undefined ? '' : `, to be shipped by ${order.shipBy}`;
    return [
      {
        code: 'orders/no-label',
        message: `order ${orderWord(order)} (${placeWord(order)}) has no label${due}`,
        remedy: 'Buy or fetch its label, put it into the folder of its channel, and run again.',
        orders: [order.id],
        labels: [],
      },
    ];
  });
}

function withoutOrder({ labels }: Matching, shown: ReadonlyMap<string, string>): readonly LooseEnd[] {
  return labels.flatMap((end): LooseEnd[] => {
    const label = shown.get(end.label) ?? end.label;
    const reason = end.kind === 'held' ? end.reasons.find(({ code }) => code === 'orders/no-order') : undefined;
    const about = { orders: [], labels: [end.label] };
    if (reason) return [{ ...reason, message: `${label}: ${reason.message}; it is held`, ...about }];
    if (end.kind !== 'without-order') return [];
    const remedy = 'Nothing to do if the channel sends without orders; to hold such labels: `label-without-order: hold`.';
    return [{ code: 'orders/no-order', message: `${label}: no order is found for this label; it is printed`, remedy, ...about }];
  });
}

/** Orders in doubt; labels that are there twice are among the disagreeing. */
function twice(orders: readonly Order[], places: readonly PlacedOrder[]): readonly LooseEnd[] {
  return orders.flatMap((order, at): LooseEnd[] => {
    const matters = order.differsAt !== undefined && places[at]?.place !== 'not-expected';
    return matters ? [{ ...sameNumber(order), orders: [order.id], labels: [] }] : [];
  });
}

/** One loose end for all labels that are held for the same reason with the same orders. */
function disagreeing({ labels }: Matching, shown: ReadonlyMap<string, string>): readonly LooseEnd[] {
  const ends = new Map<string, { reason: Reason; orders: readonly string[]; labels: string[] }>();
  for (const end of labels) {
    if (end.kind !== 'held') continue;
    for (const reason of end.reasons.filter(({ code }) => DISAGREE.has(code))) {
      const key = `${reason.code} ${end.orders.join(' ')}`;
      const known = ends.get(key);
      if (known) known.labels.push(end.label);
      else ends.set(key, { reason, orders: end.orders, labels: [end.label] });
    }
  }
  return [...ends.values()].map(({ reason, orders, labels: ids }): LooseEnd => {
    const files = ids.map((id) => shown.get(id) ?? id);
    return { ...reason, message: `${files.join('; ')}: ${reason.message}`, orders, labels: ids };
  });
}

function missingMates(orders: readonly Order[]): readonly LooseEnd[] {
  const known = new Set(orders.map(({ channel, number }) => `${channel} ${orderNumberKey(number)}`));
  return orders.flatMap((order): LooseEnd[] =>
    order.together
      .filter((number) => !known.has(`${order.channel} ${orderNumberKey(number)}`))
      .map((number) => ({
        code: 'orders/no-such-mate',
        message: `order ${orderWord(order)} (${placeWord(order)}) goes together with ${orderWord({ ...order, number })}, which no order file holds`,
        remedy: 'Fetch an order file that holds both, or correct the number.',
        orders: [order.id],
        labels: [],
      })),
  );
}
