import { describe, expect, it } from 'vitest';
import type { LabelFacts } from '../../src/orders/label-facts.js';
import { looseEnds, type LooseEnd } from '../../src/orders/loose-ends.js';
import type { MatchOptions } from '../../src/orders/matching.js';
import { orderPlaces } from '../../src/orders/order-places.js';
import type { Order } from '../../src/orders/order.js';
import { label, match, order, rules } from './make.js';

function ends(orders: readonly Order[], labels: readonly LabelFacts[], options: MatchOptions = rules()): readonly LooseEnd[] {
  const matching = match(orders, labels, options);
  return looseEnds(orders, labels, matching, orderPlaces(orders, labels, matching));
}
const words = (all: readonly LooseEnd[]): readonly string[] => all.map(({ code, message }) => `${code}: ${message}`);

describe('what is left over', () => {
  it('is nothing when all is matched', () => {
    expect(ends([order('A-1001'), order('A-1002', { state: 'shipped' })], [label('l', { lines: ['A-1001'] })])).toEqual([]);
  });

  it('an order without a label', () => {
    expect(ends([order('A-1001', { place: { file: 'kilnrow/orders.csv', line: 12 } })], [])).toEqual([
      {
        code: 'orders/no-label',
        message: 'order A-1001 (kilnrow/orders.csv, line 12) has no label, to be shipped by 2026-11-30',
        remedy: 'Buy or fetch its label, put it into the folder of its channel, and run again.',
        orders: ['0:A-1001'],
        labels: [],
      },
    ]);
    expect(words(ends([order('A-1001', { shipBy: undefined })], []))).toEqual([
      'orders/no-label: order A-1001 (orders.csv, line 2) has no label',
    ]);
  });

  it('a label without an order, held or printed', () => {
    expect(words(ends([], [label('l')]))).toEqual(['orders/no-order: inbox/l.pdf, page 1: no order is found for this label; it is held']);
    expect(words(ends([], [label('l')], rules({ withoutOrder: 'print' })))).toEqual([
      'orders/no-order: inbox/l.pdf, page 1: no order is found for this label; it is printed',
    ]);
    expect(ends([], [label('l')], rules({ hasOrders: false }))).toEqual([]);
  });

  it('an order that is there twice and not alike, with all its places, unless it expects no label', () => {
    const A = order('A-1001', { differsAt: [{ file: 'orders (1).csv', line: 7 }] });
    const message = 'order A-1001 is there more than once, and not alike (orders.csv, line 2 and orders (1).csv, line 7)';
    expect(words(ends([A], []))[1]).toBe(`orders/same-number: ${message}`);
    expect(words(ends([A], [label('l', { lines: ['A-1001'] })]))).toEqual([`orders/same-number: ${message}`]);
    expect(ends([{ ...A, state: 'shipped' }], [])).toEqual([]);
  });

  it('labels that are there twice, once for all of them', () => {
    const tracking = '9400111206206406260787';
    const all = ends([order('A-1001', { tracking: [tracking] })], [label('k', { tracking }), label('l', { tracking })]);
    expect(words(all)).toEqual([
      'orders/label-twice: inbox/k.pdf, page 1; inbox/l.pdf, page 1: its tracking number (…0787) is on inbox/l.pdf, page 1, too',
    ]);
  });

  it('parcels that disagree', () => {
    const lines = ['A-1001'];
    expect(words(ends([order('A-1001', { parcels: 3 })], [label('k', { lines }), label('l', { lines })]))).toEqual([
      'orders/fewer-labels: inbox/k.pdf, page 1; inbox/l.pdf, page 1: 2 labels for order A-1001, which states 3 parcels',
    ]);
  });

  it('an order that goes together with one that is not there', () => {
    expect(words(ends([order('A-1001', { state: 'shipped', together: ['A-9'] })], []))).toEqual([
      'orders/no-such-mate: order A-1001 (orders.csv, line 2) goes together with A-9, which no order file holds',
    ]);
  });
});
