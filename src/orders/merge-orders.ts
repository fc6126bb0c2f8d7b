import { isDeepStrictEqual } from 'node:util';
import type { Diagnostic } from '../diagnostics/diagnostic.js';
import type { Order } from './order.js';
import { orderNumberKey } from './order-numbers.js';
import { shown } from './plain-word.js';
import type { OrdersRead } from './read-orders.js';

/**
 * The orders of all files of one channel, in the order given: each number once, `#A-1` and `a-1` being one: labels are printed in capitals,
 * and people type numbers as they like, so that nobody could say whose label it is. Of
 * an order that stands there twice the first counts; where they say different things it is marked (`differsAt`), and is to be shipped as soon as one of
 * them says so. Each other one is told at its row, with the place of the first.
 */
export function mergeOrders(files: readonly OrdersRead[]): OrdersRead {
  const byNumber = new Map<string, { readonly first: Order; readonly others: Order[] }>();
  const diagnostics: Diagnostic[] = [];
  for (const file of files) {
    diagnostics.push(...file.diagnostics);
    for (const order of file.orders) {
      const known = byNumber.get(keyOf(order));
      if (!known) {
        byNumber.set(keyOf(order), { first: order, others: [] });
        continue;
      }
      const same = saysTheSame(known.first, order);
      diagnostics.push(told(known.first, order, same));
      if (!same) known.others.push(order);
    }
  }
  return { orders: [...byNumber.values()].map(({ first, others }) => (others.length === 0 ? first : inDoubt(first, others))), diagnostics };
}

function keyOf({ number }: Order): string {
  const key = orderNumberKey(number);
  return /[\p{L}\p{N}]/u.test(key) ? key : number;
}

const saysTheSame = (a: Order, b: Order): boolean => isDeepStrictEqual(withoutPlace(a), withoutPlace(b));
const withoutPlace = ({ differsAt, ...order }: Order): unknown => ({
  ...order,
  id: '',
  number: '',
  place: '',
  inDoubt: differsAt !== undefined,
});

const inDoubt = (first: Order, others: readonly Order[]): Order => ({
  ...first,
  state: others.every(({ state }) => state === first.state) ? first.state : 'to-ship',
  differsAt: [...(first.differsAt ?? []), ...others.map(({ place }) => place)],
});

function told({ number: known, place: first }: Order, { number, place }: Order, same: boolean): Diagnostic {
  const alike = known === number ? '' : ` as ${shown(known)}`;
  const inOne = first.file === place.file;
  const where = `order ${shown(number)} stands in ${inOne ? '' : `${first.file}, `}line ${first.line}${alike}, too`;
  const why = alike === '' ? '' : ' (capitals and signs in front tell no two orders apart)';
  return {
    code: 'orders/duplicate-number',
    severity: same ? 'note' : 'warning',
    message: same ? `${where}, and says the same; it counts once${why}` : `${where}, and says other things${why}; a label for it is held`,
    place: { kind: 'orders', file: place.file, line: place.line, col: 1 },
    remedy: remedyFor(alike !== '', inOne, same),
  };
}

function remedyFor(otherwise: boolean, inOne: boolean, same: boolean): string {
  if (otherwise && inOne)
    return 'Write the number alike in all rows of an order. If they are two orders, look which label is whose, and take one of them out.';
  if (same) return 'Leave out one of the files if they are the same export.';
  return 'Take the older export away, or correct one of the two.';
}
