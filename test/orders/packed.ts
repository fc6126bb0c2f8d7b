import fc from 'fast-check';
import type { Order, OrderItem } from '../../src/orders/order.js';
import type { PackedParcel } from '../../src/orders/packed-parcel.js';
import { item, order as anyOrder } from './make.js';

/** One thing of an order of the invented studio. */
export const thing = (sku: string, quantity = 1, changes: Partial<OrderItem> = {}): OrderItem =>
  item({ sku, description: sku === '' ? 'Loose thing' : `Thing ${sku}`, quantity, ...changes });

export const order = (number: string, items: readonly OrderItem[], changes: Partial<Order> = {}): Order =>
  anyOrder(number, {
    orderedOn: '2026-11-20',
    shipBy: undefined,
    buyer: 'Robin Sample',
    address: ['12 Example Street'],
    postcode: '00000',
    country: 'US',
    items,
    ...changes,
  });

export const packed = (number: number, orders: readonly Order[], changes: Partial<PackedParcel> = {}): PackedParcel => ({
  number,
  stack: 'stack-4x6in.pdf',
  orders,
  carrier: 'Kite Post',
  tracking: `KP00000000${String(number).padStart(4, '0')}`,
  labelPages: 1,
  ...changes,
});

const anItem = fc
  .record({ sku: fc.constantFrom('A1', 'A2', 'A10', ''), bin: fc.constantFrom('', 'B2', 'B10'), quantity: fc.integer({ min: 1, max: 9 }) })
  .map(({ sku, bin, quantity }) => thing(sku, quantity, { bin }));

/** Parcels of a run: some orders in two parcels, some parcels with two orders, some with none. */
export const someParcels: fc.Arbitrary<readonly PackedParcel[]> = fc
  .record({
    orders: fc.array(fc.array(anItem, { maxLength: 4 }), { maxLength: 8 }),
    inside: fc.array(
      fc.record({ orders: fc.uniqueArray(fc.nat(7), { maxLength: 2 }), carrier: fc.constantFrom('Kite Post', 'Heron', '') }),
      {
        maxLength: 12,
      },
    ),
  })
  .map(({ orders, inside }) => {
    const known = orders.map((items, index) => order(`S-${index + 1}`, items));
    return inside.map((each, index) =>
      packed(
        index + 1,
        [...each.orders].flatMap((at) => known[at] ?? []),
        { carrier: each.carrier },
      ),
    );
  });
