import { folderOf } from './files.js';
import { CHANNEL_NUMBERS, MANY, PAIRS, PICTURES, SINGLES, type RunItem, type RunOrder } from './run-day.js';

export interface ExportFile {
  readonly path: string;
  readonly text: string;
}

const HEADS = ['Order', 'Status', 'Ship by', 'Buyer', 'Street', 'Town', 'Postcode', 'Country', 'SKU', 'Item', 'Pieces', 'Bin', 'Tracking', 'Parcels', 'With', 'Gift message'] as const; // prettier-ignore

/** In front of a cell that is written as it is, whatever stands in it. */
export const RAW = '\u0000';

/** The order map of a channel: all have the same names, but where an order's items are a list, theirs stand in it. */
export const ordersBlock = (channel: number): string => {
  const of = channel === PICTURES ? 'Items.' : '';
  return `orders:
  columns:
    order: Order
    state: Status
    ship-by: Ship by
    buyer: Buyer
    address: [Street, Town]
    postcode: Postcode
    country: Country
    sku: ${of}SKU
    description: ${of}Item
    quantity: ${of}Pieces
    bin: ${of}Bin
    tracking: Tracking
    parcels: Parcels
    together: With
    gift-message: Gift message
  max-age: 14d
${channel === PAIRS ? '  date-order: day-month-year\n' : ''}`;
};

/** The export files of all channels: `;` and a row for each item, tabs, commas with quotes, JSON. */
export function exportFiles(orders: readonly RunOrder[]): readonly ExportFile[] {
  return CHANNEL_NUMBERS.flatMap((channel) =>
    ([1, 2] as const).flatMap((file): ExportFile[] => {
      const own = orders.filter((order) => order.channel === channel && order.files.includes(file));
      if (own.length === 0) return [];
      const path = `${folderOf(channel)}/orders-${file}.${channel === PICTURES ? 'json' : channel === MANY ? 'tsv' : 'csv'}`;
      return [{ path, text: channel === PICTURES ? json(own) : table(channel, own, file) }];
    }),
  );
}

function row(order: RunOrder, item: RunItem, file: 1 | 2): Record<(typeof HEADS)[number], string> {
  const base = {
    ...{ Order: order.number, Status: order.status, 'Ship by': order.shipBy, Buyer: order.buyer, Street: order.street, Town: order.town },
    ...{ Postcode: order.postcode, Country: 'US', SKU: item.sku, Item: item.name, Pieces: String(item.quantity), Bin: item.bin },
    ...{ Tracking: order.tracking.join(', '), Parcels: String(order.parcels), With: order.together, 'Gift message': order.giftMessage },
  };
  const cells = Object.entries(order.cells).filter(([name]) => name.startsWith('2:') === (file === 2) || !name.includes(':'));
  return { ...base, ...Object.fromEntries(cells.map(([name, value]) => [name.replace('2:', ''), value])) };
}

function table(channel: number, orders: readonly RunOrder[], file: 1 | 2): string {
  const delimiter = channel === MANY ? '\t' : channel === SINGLES ? ',' : ';';
  const rowsOf = (order: RunOrder): readonly string[] =>
    order.items.map((item) => {
      const cells = row(order, item, file);
      const written = HEADS.map((head) => cells[head]);
      return (order.cells['extra'] === undefined ? written : [...written, order.cells['extra']]).map(quoted(delimiter)).join(delimiter);
    });
  const again = orders
    .filter((order) => order.again ?? order.more)
    .map((order) => ({ ...order, items: order.more ? [order.more] : order.items, cells: { ...order.cells, ...order.again } }));
  const lines = [...orders, ...again].flatMap(rowsOf);
  const text = [HEADS.join(delimiter), ...lines].join('\r\n');
  return channel === SINGLES ? `\ufeff${text}\r\n` : `${text}\n`;
}

const quoted =
  (delimiter: string) =>
  (cell: string): string =>
    cell.startsWith(RAW) ? cell.slice(1) : cell.includes(delimiter) || cell.includes('"') ? `"${cell.replaceAll('"', '""')}"` : cell;

/** What JSON says of each item. */
const OF_ITEM = ['SKU', 'Item', 'Pieces', 'Bin'];

const json = (orders: readonly RunOrder[]): string =>
  JSON.stringify(
    orders.map((order) => {
      const rows = order.items.map((item) => Object.entries(row(order, item, 1)));
      const part = (entries: readonly (readonly [string, string])[], isOfItem: boolean): Record<string, string> =>
        Object.fromEntries(entries.filter(([name]) => OF_ITEM.includes(name) === isOfItem));
      return { ...part(rows[0] ?? [], false), Items: rows.map((each) => part(each, true)) };
    }),
    null,
    1,
  );
