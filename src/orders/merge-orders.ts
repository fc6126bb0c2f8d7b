import { isDeepStrictEqual } from 'node:util';
import type { Diagnostic } from '../diagnostics/diagnostic.js';
import type { Order } from './order.js';
import { shown } from './plain-word.js';
import type { OrdersRead } from './read-orders.js';

/**
 * The orders of several files of one channel, in the order given: each number once. Of an order that two files tell differently the first
 * counts, as incomplete, which is told at the second.
 */
export function mergeOrders(files: readonly OrdersRead[]): OrdersRead {
  const orders = new Map<string, Order>();
  const diagnostics: Diagnostic[] = [];
  for (const file of files) {
    diagnostics.push(...file.diagnostics);
    for (const order of file.orders) {
      const first = orders.get(order.id);
      if (!first) {
        orders.set(order.id, order);
        continue;
      }
      const same = saysTheSame(first, order);
      diagnostics.push(told(first, order, same));
      if (!same) orders.set(order.id, { ...first, incomplete: true });
    }
  }
  return { orders: [...orders.values()], diagnostics };
}

const saysTheSame = (a: Order, b: Order): boolean => isDeepStrictEqual({ ...a, place: null }, { ...b, place: null });

function told({ place: first }: Order, { number, place }: Order, same: boolean): Diagnostic {
  const where = `order ${shown(number)} stands in ${first.file}, line ${first.line}, too`;
  return {
    code: 'orders/duplicate-number',
    severity: same ? 'note' : 'warning',
    message: same ? `${where}, and says the same` : `${where}, and says other things; the first counts, and the order as incomplete`,
    place: { kind: 'orders', file: place.file, line: place.line, col: 1 },
    remedy: same ? 'Leave out one of the files if they are the same export.' : 'Take the older export away, or correct one of the two.',
  };
}
