import type { Pipeline } from '../config/pipeline.js';
import type { Diagnostic } from '../diagnostics/diagnostic.js';
import { readOrderFile, settledOrders, type OrderFile } from '../intake/find-orders.js';
import type { Order } from '../orders/order.js';
import type { OrdersRead } from '../orders/read-orders.js';
import type { OrderFileRecord } from './run-record.js';

/** The orders of all channels, in the order of channels and files. Personal data: in memory only. */
export interface RunOrders {
  readonly orders: readonly Order[];
  readonly files: readonly OrderFileRecord[];
  readonly diagnostics: readonly Diagnostic[];
}

/** Reads the order files that were found; what is wrong with one costs its rows only. Each order of a channel is there once. */
export async function readRunOrders({ channels }: Pick<Pipeline, 'channels'>, found: readonly OrderFile[]): Promise<RunOrders> {
  if (found.length === 0) return { orders: [], files: [], diagnostics: [] };
  // Lists of countries and the like take a while to load, and many runs have no orders.
  const [{ readOrders }, { mergeOrders }] = await Promise.all([import('../orders/read-orders.js'), import('../orders/merge-orders.js')]);
  const states = await settledOrders(found);
  const files: OrderFileRecord[] = [];
  const byChannel = new Map<number, OrdersRead[]>();
  for (const file of found) {
    const channel = channels[file.channel];
    const map = channel?.recipe.orders;
    if (!channel || !map) throw new Error(`run-orders: channel ${file.channel} has order files but no map`);
    const read = await readOrderFile(file, states);
    const result: OrdersRead =
      'diagnostic' in read ? { orders: [], diagnostics: [read.diagnostic] } : readOrders(read.bytes, file.shownName, map, file.channel);
    byChannel.set(file.channel, [...(byChannel.get(file.channel) ?? []), result]);
    files.push({ name: file.shownName, channel: channel.name, orders: result.orders.length });
  }
  const merged = [...byChannel.values()].map(mergeOrders);
  return { orders: merged.flatMap(({ orders }) => orders), files, diagnostics: merged.flatMap(({ diagnostics }) => diagnostics) };
}
