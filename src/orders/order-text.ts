import type { Order, OrderState } from './order.js';

/** How messages name an order: by its number, cut where it is very long. Never by its buyer. */
export function orderWord({ number }: Order): string {
  const clean = number.replace(/\p{C}/gu, '').trim();
  return clean === '' ? 'without a number' : clean.length > 40 ? `${clean.slice(0, 39)}…` : clean;
}

const MOST = 5;

/** `order A-1`, `orders A-1 and A-2`, `orders and 7 more`. */
export function ordersWord(orders: readonly Order[]): string {
  const words = [...new Set(orders.map(orderWord))].sort();
  return `${words.length === 1 ? 'order' : 'orders'} ${listed(words)}`;
}

/** Words as one: `a, b and c`; more than five are counted. */
export function listed(words: readonly string[]): string {
  const shown = words.length > MOST + 1 ? [...words.slice(0, MOST), `${words.length - MOST} more`] : words;
  return shown.length < 2 ? (shown[0] ?? '') : `${shown.slice(0, -1).join(', ')} and ${shown.at(-1) ?? ''}`;
}

/** `orders.csv, line 12`. */
export const placeWord = ({ place }: Pick<Order, 'place'>): string => `${place.file}, line ${place.line}`;

/** All places of an order whose number is there more than once, its own first. */
export const placesWords = ({ place, differsAt = [] }: Order): readonly string[] =>
  [place, ...differsAt].map((each) => placeWord({ place: each }));

/** How a sentence says the states that expect no label: `order A-1 …`. */
export const STATE_WORDS: Readonly<Record<Exclude<OrderState, 'to-ship'>, string>> = {
  cancelled: 'is cancelled',
  refunded: 'is refunded',
  shipped: 'is already shipped',
  'pick-up': 'is picked up by its buyer',
  digital: 'is digital, with nothing to ship',
};
