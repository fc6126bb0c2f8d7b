import { describe, expect, it } from 'vitest';
import { placeHeldLabels, type HeldLabel } from '../../src/orders/held-labels.js';
import { orderPlaces } from '../../src/orders/order-places.js';
import { matchOrders } from '../../src/orders/match.js';
import type { MatchOptions } from '../../src/orders/matching.js';
import type { Order } from '../../src/orders/order.js';
import { order } from './make.js';

const options: MatchOptions = {
  channels: [{ hasOrders: true, withoutOrder: 'hold', maxAge: undefined, fileName: undefined }],
  today: '2026-11-28',
  ownAddress: [],
};
const reason = { code: 'verify/too-fine', message: 'its bars are too fine', remedy: 'Print it larger.' } as const;
const held = (id: string, lines: readonly string[], isReturn = false): HeldLabel => ({
  facts: { id, channel: 0, fileName: `${id}.pdf`, codes: [], lines, shown: `${id}.pdf, page 1`, isReturn },
  reason,
});
const placed = (orders: readonly Order[], ...labels: readonly HeldLabel[]) =>
  placeHeldLabels(orders, labels, options, orderPlaces(orders, [], matchOrders(orders, [], options)));

describe('orders whose labels are held', () => {
  it('are held, with the reason of the label', () => {
    const { places, looseEnds } = placed([order('A-1001', { shipBy: '2026-11-30' })], held('x', ['Order A-1001']));
    expect(places).toEqual([{ order: '0:A-1001', place: 'held', labels: ['x'] }]);
    expect(looseEnds.map(({ code, orders, labels }) => [code, orders, labels])).toEqual([['orders/label-held', ['0:A-1001'], ['x']]]);
    expect(looseEnds[0]?.message).toMatch(
      /^order A-1001 \(.+\), to be shipped by 2026-11-30, has a label, but it is held: x\.pdf, page 1: its bars/,
    );
  });

  it('are told once with all their labels, whatever the order of these', () => {
    const labels = [held('x', ['Order A-1001']), held('b', ['Order A-1001'])];
    const [one, other] = [placed([order('A-1001')], ...labels), placed([order('A-1001')], ...labels.toReversed())];
    expect(one.looseEnds.length).toBe(1);
    expect(one.looseEnds[0]?.message).toBe(other.looseEnds[0]?.message);
  });

  it('may be two for one label that names both', () => {
    const { places } = placed([order('A-1001'), order('A-1002')], held('x', ['Order A-1001', 'Order A-1002']));
    expect(places.map(({ place }) => place)).toEqual(['held', 'held']);
  });

  it('stay without a label where the held one says nothing of them, or is a return label', () => {
    for (const label of [held('x', []), held('x', ['Order A-1002']), held('x', ['Order A-1001'], true)]) {
      const { places, looseEnds } = placed([order('A-1001')], label);
      expect([places.map(({ place }) => place), looseEnds]).toEqual([['no-label'], []]);
    }
  });

  it('that expect no label stay as they are', () => {
    const { places, looseEnds } = placed([order('A-1001', { state: 'cancelled' })], held('x', ['Order A-1001']));
    expect([places.map(({ place }) => place), looseEnds]).toEqual([['not-expected'], []]);
  });
});
