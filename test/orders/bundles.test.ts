import { describe, expect, it } from 'vitest';
import { indexOrders } from '../../src/orders/order-index.js';
import type { Order } from '../../src/orders/order.js';
import { order } from './make.js';

const bundles = (...orders: readonly Order[]): readonly string[] => {
  const index = indexOrders(orders);
  return index.bundles.map((bundle) => `${bundle.orders.map((at) => orders[at]?.number ?? '').join('+')} x${bundle.parcels}`);
};
const T1 = '9400111206206406260787';
const T2 = '9400111201080805483016';

describe('what goes in one parcel', () => {
  it('is one order, unless something is stated', () => {
    expect(bundles(order('A-1'), order('A-2'))).toEqual(['A-1 x1', 'A-2 x1']);
  });

  it('is what names each other, one way or the other, over several', () => {
    expect(bundles(order('A-1', { together: ['A-2'] }), order('A-2', { together: ['a-3'] }), order('A-3'), order('A-4'))).toEqual([
      'A-1+A-2+A-3 x1',
      'A-4 x1',
    ]);
  });

  it('not an order of another channel, one that is not there, or a number that two orders have', () => {
    const twice = [order('A-3', { id: 'x' }), order('A-3', { id: 'y', notes: 'y' })];
    expect(bundles(order('A-1', { together: ['A-2', 'A-3', 'A-9', 'A-1'] }), order('A-2', { channel: 1 }), ...twice)).toEqual([
      'A-1 x1',
      'A-2 x1',
      'A-3 x1',
      'A-3 x1',
    ]);
  });

  it('is the same tracking number with the same buyer and address', () => {
    const a = order('A-1', { tracking: [T1] });
    expect(bundles(a, { ...a, number: 'A-2', buyer: 'ODILE  SAMPLEWRIGHT' })).toEqual(['A-1+A-2 x1']);
    expect(bundles(a, { ...a, number: 'A-2', buyer: 'Bertil Trialby' })).toEqual(['A-1 x1', 'A-2 x1']);
    expect(bundles(a, { ...a, number: 'A-2', address: ['13 Example Street', 'Sampleton'] })).toEqual(['A-1 x1', 'A-2 x1']);
    expect(bundles(a, { ...a, number: 'A-2', channel: 1 })).toEqual(['A-1 x1', 'A-2 x1']);
  });

  it('is as many parcels as stated, or as there are tracking numbers', () => {
    expect(bundles(order('A-1', { parcels: 3 }))).toEqual(['A-1 x3']);
    expect(bundles(order('A-1', { tracking: [T1, T2] }))).toEqual(['A-1 x2']);
    expect(bundles(order('A-1', { tracking: [T1, '9400 1112 0620 6406 2607 87', 'n/a'] }))).toEqual(['A-1 x1']);
    expect(bundles(order('A-1', { tracking: [T1], together: ['A-2'] }), order('A-2', { tracking: [T2] }))).toEqual(['A-1+A-2 x2']);
  });
});
