import { describe, expect, it } from 'vitest';
import type { Order } from '../../src/orders/order.js';
import { orderPlaces } from '../../src/orders/order-places.js';
import { endOf, label, match, order, rules } from './make.js';

const A = order('A-1001');
const B = order('A-1002', { buyer: 'Bertil Trialby', postcode: '80331' });
const out = label('out', { lines: ['Order A-1001'] });
const back = (facts = {}) => label('back', { isReturn: true, ...facts });

describe('a return label', () => {
  it('goes with the outbound label of its parcel, and is no parcel', () => {
    const matching = match([A], [out, back({ outbound: 'out' })]);
    expect(endOf(matching, 'back')).toBe('return 0:A-1001 with out');
    expect(matching.parcels).toMatchObject([{ label: 'out', number: 1, of: 1, returns: ['back'] }]);
  });

  it('goes with the first parcel of the order that it names', () => {
    const two = { ...A, parcels: 2 };
    const matching = match([two], [back({ lines: ['Order A-1001'] }), out, label('more', { lines: ['A-1001'] })]);
    expect(endOf(matching, 'back')).toBe('return 0:A-1001 with out');
    expect(matching.parcels.map(({ returns }) => returns)).toEqual([['back'], []]);
  });

  it('is printed alone when its order has no parcel, and makes none of it', () => {
    const labels = [back({ lines: ['A-1001'] })];
    const matching = match([A], labels);
    expect(endOf(matching, 'back')).toBe('return 0:A-1001 with none');
    expect(orderPlaces([A], labels, matching)).toEqual([{ order: '0:A-1001', place: 'no-label', labels: [] }]);
    const shipped = { ...A, state: 'shipped' as const };
    expect(endOf(match([shipped], labels), 'back')).toBe('return 0:A-1001 with none');
  });

  it('is held with its outbound label', () => {
    const old = { ...out, lines: ['Order A-1001', 'Ship date: 2026-01-02'] };
    expect(endOf(match([A], [old, back({ outbound: 'out' })]), 'back')).toBe('held 0:A-1001: orders/held-with');
    expect(endOf(match([A], [old, back({ lines: ['A-1001'] })]), 'back')).toBe('held 0:A-1001: orders/held-with');
    expect(endOf(match([A], [label('out'), back({ outbound: 'out' })]), 'back')).toBe('held : orders/no-order');
  });

  it('is held when it names another order than its outbound label', () => {
    expect(endOf(match([A, B], [out, back({ outbound: 'out', lines: ['A-1002'] })]), 'back')).toBe(
      'held 0:A-1001 0:A-1002: orders/clues-differ',
    );
  });

  it('is held when several orders fit, or the number is there twice', () => {
    expect(endOf(match([A, B], [back({ lines: ['A-1001 A-1002'] })]), 'back')).toBe('held 0:A-1001 0:A-1002: orders/two-orders');
    const inDoubt = { ...A, tracking: ['9400111206206406260787'], differsAt: [{ file: 'more.csv', line: 3 }] };
    expect(endOf(match([inDoubt], [back({ lines: ['A-1001'] })]), 'back')).toBe('held 0:A-1001: orders/same-number');
    expect(endOf(match([inDoubt], [back({ tracking: '9400111206206406260787' })]), 'back')).toBe('held 0:A-1001: orders/same-number');
  });

  it('tells each order of its parcel whose number is there twice, by number whatever order they come in', () => {
    const twice = (number: string, together: string): Order =>
      order(number, { together: [together], differsAt: [{ file: 'more.csv', line: 3 }] });
    const orders = [twice('A-1001', 'A-1002'), twice('A-1002', 'A-1001')];
    for (const each of [orders, orders.toReversed()]) {
      const [end] = match(each, [back({ lines: ['A-1002'] })]).labels;
      const told = end?.kind === 'held' ? end.reasons.map(({ message }) => message.slice(0, 12)) : [];
      expect(told).toEqual(['order A-1001', 'order A-1002']);
    }
  });

  it('without an order is held or printed as its channel says, and follows its outbound label', () => {
    expect(endOf(match([A], [back()]), 'back')).toBe('held : orders/no-order');
    const print = rules({ withoutOrder: 'print' });
    expect(endOf(match([A], [back()], print), 'back')).toBe('without-order');
    expect(endOf(match([A], [label('out'), back({ outbound: 'out' })], print), 'back')).toBe('without-order');
    expect(endOf(match([A], [back()], rules({ hasOrders: false })), 'back')).toBe('untouched');
  });
});
