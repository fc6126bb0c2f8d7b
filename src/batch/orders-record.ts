import type { Pipeline } from '../config/pipeline.js';
import type { Place } from '../orders/order-places.js';
import { idOfItem } from './build-stacks.js';
import type { Collated } from './collate.js';
import type { Day } from './day.js';
import type { OrderRecord, OrdersRecord } from './run-record.js';
import type { RunOrders } from './run-orders.js';

/**
 * What became of each order, in the order of their files. An order whose label was matched and is held after all (its slip can't be printed, say) is
 * held.
 */
export function ordersRecord(
  { channels }: Pick<Pipeline, 'channels'>,
  { orders, files }: RunOrders,
  { matched }: Day,
  { stacks }: Collated,
  lists: readonly string[],
): OrdersRecord {
  const numbers = new Map(
    stacks.flatMap(({ pages }) => pages.map(({ document, item, number }) => [idOfItem(document, item.id), number] as const)),
  );
  const each = orders.map((order, index): OrderRecord => {
    const place = matched.places[index];
    if (!place) throw new Error('orders-record: an order without a place');
    const packed = place.place === 'packed' ? place.labels : [];
    const parcels = packed.flatMap((label) => numbers.get(label) ?? []).sort((a, b) => a - b);
    const by = [...new Set(packed.flatMap((label) => matched.parcels.get(label)?.by ?? []))];
    const ended: Place = place.place === 'packed' && parcels.length < packed.length ? 'held' : place.place;
    return {
      number: order.number,
      channel: channels[order.channel]?.name ?? '',
      place: ended,
      parcels,
      ...(by.length > 0 ? { by } : {}),
    };
  });
  const count = (place: Place): number => each.filter((order) => order.place === place).length;
  return {
    files,
    sums: {
      orders: each.length,
      packed: count('packed'),
      held: count('held'),
      'no-label': count('no-label'),
      'not-expected': count('not-expected'),
    },
    each,
    looseEnds: matched.looseEnds.map(({ code, message, remedy }) => ({ code, message, remedy })),
    lists,
  };
}
