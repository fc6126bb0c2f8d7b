import { describe, expect, it } from 'vitest';
import { mismatches, orderPlaces, orderSums } from '../../src/orders/order-places.js';
import { label, match, order } from './make.js';

const orders = [
  order('KLN-01', { buyer: 'Maro Proberton' }),
  order('KLN-02', { state: 'cancelled' }),
  order('KLN-03', { buyer: 'Bertil Trialby' }),
  order('KLN-04', { state: 'digital' }),
];
const labels = [label('a', { lines: ['KLN-01'] }), label('b', { lines: ['KLN-02'] }), label('c')];
const matching = match(orders, labels);
const places = orderPlaces(orders, labels, matching);

describe('each order ends in one place', () => {
  it('packed, held, without a label, or none expected', () => {
    expect(places).toEqual([
      { order: '0:KLN-01', place: 'packed', labels: ['a'] },
      { order: '0:KLN-02', place: 'held', labels: ['b'] },
      { order: '0:KLN-03', place: 'no-label', labels: [] },
      { order: '0:KLN-04', place: 'not-expected', labels: [] },
    ]);
  });

  it('and sums add up', () => {
    expect(orderSums(places, matching)).toEqual({
      orders: 4,
      byPlace: { packed: 1, held: 1, 'no-label': 1, 'not-expected': 1 },
      labels: 3,
      byEnd: { packed: 1, return: 0, 'without-order': 0, untouched: 0, held: 2 },
      parcels: 1,
    });
    expect(mismatches(orders, labels, matching, places)).toEqual([]);
  });
});

describe('a sum that does not add up is told', () => {
  const [first, ...others] = places;
  if (!first) throw new Error('no places');

  it.each([
    ['an order without a place', places.slice(1), matching, /4 orders, but 3 places/],
    ['places of other orders', places.toReversed(), matching, /one by one/],
    ['a label without an end', places, { ...matching, labels: matching.labels.slice(1) }, /3 labels, but 2 ends/],
    ['ends of other labels', places, { ...matching, labels: matching.labels.toReversed() }, /ends are not those/],
    ['a parcel without its label', places, { ...matching, parcels: [] }, /1 labels are packed, but there are 0 parcels/],
    ['an order packed in no parcel', places, { ...matching, parcels: [] }, /order 0:KLN-01 is packed, but in none/],
    ['a packed order elsewhere', [{ ...first, place: 'held' as const }, ...others], matching, /order 0:KLN-01 is held, but in a parcel/],
    [
      'a return label in no parcel',
      places,
      { ...matching, parcels: matching.parcels.map((each) => ({ ...each, returns: ['r'] })) },
      /return labels/,
    ],
    [
      'a label held for nothing',
      places,
      { ...matching, labels: matching.labels.map((end) => (end.kind === 'held' ? { ...end, reasons: [] } : end)) },
      /held without a reason/,
    ],
  ])('%s', (_, wrongPlaces, wrongMatching, sentence) => {
    expect(mismatches(orders, labels, wrongMatching, wrongPlaces).join('\n')).toMatch(sentence);
  });
});
