import { compareNatural } from './natural.js';
import type { Order, OrderState } from './order.js';

const LONGEST = 40;

/** How messages name an order: by its number on one line, cut where it is very long. Never by its buyer. */
export function orderWord({ number }: Order): string {
  const clean = number
    .replace(/\p{Z}+/gu, ' ')
    .replace(/\p{C}/gu, '')
    .trim();
  const characters = Array.from(clean);
  return clean === '' ? 'without a number' : characters.length > LONGEST ? `${characters.slice(0, LONGEST - 1).join('')}…` : clean;
}

const MOST = 5;

/** `order A-1`, `orders A-1 and A-2`, `orders and 7 more`: each number once, as people sort them, whatever order they come in. */
export function ordersWord(orders: readonly Order[]): string {
  // By the whole number: two that differ only behind the cut are two.
  const words = [...new Map(orders.map((order) => [order.number, orderWord(order)])).values()].sort(compareNatural);
  return `${words.length === 1 ? 'order' : 'orders'} ${listed(words)}`;
}

/** Words as one: `a, b and c`; of more than six the first five are named and the rest counted. */
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
