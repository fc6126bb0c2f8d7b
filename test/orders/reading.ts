import type { DiagnosticCode } from '../../src/diagnostics/codes.js';
import type { Diagnostic } from '../../src/diagnostics/diagnostic.js';
import type { Order } from '../../src/orders/order.js';
import { orderMap, type OrderMap } from '../../src/orders/order-map.js';
import { readOrders, type OrdersRead } from '../../src/orders/read-orders.js';

/** A map for the columns of the invented studio's exports. */
export const MAP = orderMap({
  order: ['Order'],
  state: ['Status'],
  fulfilment: ['Delivery'],
  'ordered-on': ['Date'],
  'ship-by': ['Ship by'],
  buyer: ['Name'],
  address: ['Street', 'Town'],
  postcode: ['ZIP'],
  country: ['Country'],
  sku: ['Item no.'],
  description: ['Item'],
  variant: ['Colour'],
  quantity: ['Pieces'],
  bin: ['Shelf'],
  price: ['Price'],
  gift: ['Gift'],
  'gift-message': ['Card'],
  tracking: ['Tracking'],
  parcels: ['Parcels'],
  together: ['With'],
  notes: ['Notes'],
});

/** As much of it as a table with these columns needs, so that no column is missing. */
export const mapFor = (names: readonly string[], stated: Partial<Omit<OrderMap, 'columns'>> = {}): OrderMap =>
  orderMap(
    Object.fromEntries(
      Object.entries(MAP.columns).flatMap(([field, columns]) => {
        const there = columns.filter((name) => names.includes(name));
        return there.length > 0 ? [[field, there]] : [];
      }),
    ),
    stated,
  );

export const read = (text: string | Uint8Array, map: OrderMap = MAP): OrdersRead =>
  readOrders(typeof text === 'string' ? Buffer.from(text) : text, 'orders.csv', map, 0);

/** A table with commas whose header names the columns; the map has those. */
export const readTable = (text: string, stated: Partial<Omit<OrderMap, 'columns'>> = {}): OrdersRead =>
  read(text, mapFor((text.split(/\r\n|\r|\n/)[0] ?? '').split(/[,;\t|]/), stated));

/** Diagnostics as `line:col code`. */
export const told = ({ diagnostics }: OrdersRead): readonly string[] =>
  diagnostics.map(({ place, code }) => (place.kind === 'orders' ? `${place.line}:${place.col} ${code}` : code));

export function only({ orders }: OrdersRead): Order {
  const [order, ...more] = orders;
  if (!order || more.length > 0) throw new Error(`${orders.length} orders`);
  return order;
}

export const withCode = ({ diagnostics }: OrdersRead, code: DiagnosticCode): readonly Diagnostic[] =>
  diagnostics.filter((each) => each.code === code);
