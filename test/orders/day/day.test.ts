import { describe, expect, it } from 'vitest';
import { looseEnds } from '../../../src/orders/loose-ends.js';
import { matchOrders } from '../../../src/orders/match.js';
import { mismatches, orderPlaces } from '../../../src/orders/order-places.js';
import { generateDay } from './day.js';
import { PRINTING } from './maker.js';

/** Faults that no label is held for: they are to be found among the loose ends. */
const LOOSE = new Set(['orders/no-label', 'orders/no-such-mate']);

describe.each([1, 2, 3, 20261128])('a day of 300 orders in five channels, seed %i', (seed) => {
  const day = generateDay(seed);
  const matching = matchOrders(day.orders, day.labels, day.options);
  const places = orderPlaces(day.orders, day.labels, matching);

  it('has all that it should have', () => {
    expect(day.orders.length).toBe(300);
    expect(new Set(day.orders.map(({ channel }) => channel)).size).toBe(5);
    expect(day.faults.length).toBeGreaterThanOrEqual(40);
    expect(new Set(day.faults.map(({ code }) => code)).size).toBeGreaterThanOrEqual(20);
    expect(generateDay(seed)).toEqual(day);
  });

  it('holds each planted label for its reason, and no other', () => {
    const planted = day.faults.flatMap(({ code, labels }) => labels.map((label) => `${label} ${code}`));
    const held = matching.labels.flatMap((end) => (end.kind === 'held' ? end.reasons.map(({ code }) => `${end.label} ${code}`) : []));
    expect(held.sort()).toEqual(planted.sort());
  });

  it('names the orders that a held label may be for', () => {
    const ends = new Map(matching.labels.map((end) => [end.label, end]));
    for (const { code, labels, orders } of day.faults.filter(({ code }) => !LOOSE.has(code))) {
      for (const label of labels) {
        const end = ends.get(label);
        expect(end?.kind === 'held' ? end.orders.toSorted() : end, `${label} ${code}`).toEqual(orders.toSorted());
      }
    }
  });

  it('puts each order where it belongs, and all adds up', () => {
    const wrong = places.filter(({ order, place }) => day.places.get(order) !== place);
    expect(wrong).toEqual([]);
    expect(mismatches(day.orders, day.labels, matching, places)).toEqual([]);
  });

  it('names each loose end, and no other', () => {
    const ends = looseEnds(day.orders, day.labels, matching, places);
    const found = ends.filter(({ code }) => LOOSE.has(code)).map(({ code, orders }) => `${code} ${orders.join(' ')}`);
    const planted = day.faults.filter(({ code }) => LOOSE.has(code)).map(({ code, orders }) => `${code} ${orders.join(' ')}`);
    expect(found.sort()).toEqual(planted.sort());
    const printed = new Set(matching.labels.filter(({ kind }) => kind === 'without-order').map(({ label }) => label));
    const strays = ends.filter(({ code }) => code === 'orders/no-order');
    expect(strays.length).toBe(day.faults.filter(({ code }) => code === 'orders/no-order').length);
    expect(strays.filter(({ labels }) => labels.some((label) => printed.has(label))).length).toBe(1);
    expect(day.labels.filter(({ id }) => printed.has(id)).map(({ channel }) => channel)).toEqual([PRINTING]);
  });

  it('tells nothing of buyers: no name, no street, no whole tracking number', () => {
    const said = JSON.stringify([
      matching.labels.flatMap((end) => (end.kind === 'held' ? end.reasons : [])),
      looseEnds(day.orders, day.labels, matching, places),
    ]);
    for (const { buyer, address, postcode, tracking } of day.orders)
      for (const secret of [buyer, ...address, postcode, ...tracking]) expect(said).not.toContain(secret);
  });
});
