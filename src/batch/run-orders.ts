import type { Pipeline } from '../config/pipeline.js';
import type { Diagnostic } from '../diagnostics/diagnostic.js';
import { readOrderFile, type OrderFile } from '../intake/find-orders.js';
import type { Order } from '../orders/order.js';
import { readOrders } from '../orders/read-orders.js';
import type { OrderFileRecord } from './run-record.js';

/** The orders of all channels, in the order of channels and files. Personal data: in memory only. */
export interface RunOrders {
  readonly orders: readonly Order[];
  readonly files: readonly OrderFileRecord[];
  readonly diagnostics: readonly Diagnostic[];
}

/** Reads the order files that were found; what is wrong with one costs its rows only. */
export async function readRunOrders({ channels }: Pick<Pipeline, 'channels'>, found: readonly OrderFile[]): Promise<RunOrders> {
  const orders: Order[] = [];
  const files: OrderFileRecord[] = [];
  const diagnostics: Diagnostic[] = [];
  for (const file of found) {
    const channel = channels[file.channel];
    const map = channel?.recipe.orders;
    if (!channel || !map) throw new Error(`run-orders: channel ${file.channel} has order files but no map`);
    const read = await readOrderFile(file);
    const result =
      'diagnostic' in read ? { orders: [], diagnostics: [read.diagnostic] } : readOrders(read.bytes, file.shownName, map, file.channel);
    orders.push(...result.orders);
    diagnostics.push(...result.diagnostics);
    files.push({ name: file.shownName, channel: channel.name, orders: result.orders.length });
  }
  return { orders, files, diagnostics };
}
