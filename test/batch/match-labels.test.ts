import { describe, expect, it } from 'vitest';
import { matchLabels } from '../../src/batch/match-labels.js';
import type { EndedDocument } from '../../src/batch/work-through.js';
import { orderMap } from '../../src/orders/order-map.js';
import type { Order } from '../../src/orders/order.js';
import type { ItemResult } from '../../src/recipe/outcome.js';
import { order } from '../orders/make.js';
import { HELD, item, READY } from './fakes.js';

const recipe = { name: 'clay', about: 'Clay.', steps: [], orders: orderMap({ order: ['Order'] }) };
const setup = {
  channels: [{ name: 'clay', files: [], orders: ['clay/*.csv'], recipe }],
  day: { studio: { name: '', contact: [] }, stackOrder: [], lists: '4x6in' },
} as const;

/** A document whose labels say these lines. */
const document = (name: string, items: readonly ItemResult[], lines: readonly string[]): EndedDocument => ({
  work: { channel: 0, path: name, entry: undefined, shownName: name, sha256: '', size: 1 },
  state: 'read',
  pageCount: 1,
  items,
  diagnostics: [],
  pressed: undefined,
  pressedElsewhere: new Map(),
  pictures: new Map(),
  texts: items.map(({ id }) => ({ itemId: id, codes: [], lines })),
  times: {},
  counts: { documentsOpened: 1, sourceRasters: 0, outputRasters: 0, decodes: 0 },
});

function matched(orders: readonly Order[], ...documents: readonly EndedDocument[]) {
  return matchLabels(
    setup,
    documents,
    documents.map(({ items }) => items),
    orders,
    '2026-11-28',
  );
}

describe("a run's labels and its orders", () => {
  it('meet by what the label says; the parcel holds the order', () => {
    const { parcels, sums, mismatches, looseEnds } = matched([order('A-1001')], document('a.pdf', [item('p1')], ['Ref. A-1001']));
    expect([...parcels].map(([label, parcel]) => [label, parcel.by, parcel.orders.map(({ number }) => number)])).toEqual([
      ['0 p1', 'order-number', ['A-1001']],
    ]);
    expect([sums.byPlace.packed, mismatches, looseEnds]).toEqual([1, [], []]);
  });

  it('a label without an order is held, and its slip with it', () => {
    const label = item('p1', { parcel: 1 });
    const slip = item('p2', { page: 2, role: 'slip', parcel: 1 });
    const { items } = matched([], document('a.pdf', [label, slip], []));
    expect(items[0]?.map(({ state }) => (state.kind === 'held' ? state.code : state.kind))).toEqual([
      'orders/no-order',
      'batch/parcel-held',
    ]);
  });

  it('a return label waits with an order whose own label is held for a reason of its own', () => {
    const back = (state = READY) => document('b.pdf', [item('p1', { role: 'return-label', state })], ['Return of A-1001']);
    const held = document('a.pdf', [item('p1', { state: HELD })], ['Ref. A-1001']);
    const { items, places, mismatches } = matched([order('A-1001')], held, back());
    expect(items.flat().map(({ state }) => (state.kind === 'held' ? `${state.code}: ${state.message}` : state.kind))).toEqual([
      'batch/no-label: a message',
      'orders/held-with: held with a.pdf, page 1, which is for the same order (A-1001)',
    ]);
    expect([places.map(({ place }) => place), mismatches]).toEqual([['held'], []]);
    // Of an order whose label isn't known it is printed alone.
    expect(
      matched([order('A-1001')], back())
        .items.flat()
        .map(({ state }) => state.kind),
    ).toEqual(['ready']);
  });

  it('an order whose label may be among held pages says so', () => {
    const { looseEnds } = matched([order('A-1001')], document('a.pdf', [item('p1', { state: HELD })], ['nothing of use']));
    expect(looseEnds.map(({ code }) => code)).toEqual(['orders/no-label']);
    expect(looseEnds[0]?.remedy).toMatch(/^One page or file of its channel is held or failed: it may be its label\. If not: buy/);
    expect(matched([order('A-1001')]).looseEnds[0]?.remedy).toMatch(/^Buy/);
  });

  it('labels held for another reason are not matched; their order is held, and says why', () => {
    const own = document('a.pdf', [item('p1', { state: HELD })], ['Order A-1001']);
    const { parcels, places, looseEnds, sums, mismatches, items } = matched([order('A-1001')], own);
    expect(parcels.size).toBe(0);
    expect(places).toEqual([{ order: '0:A-1001', place: 'held', labels: ['0 p1'] }]);
    expect(looseEnds.map(({ code, labels }) => [code, labels])).toEqual([['orders/label-held', ['0 p1']]]);
    expect(looseEnds[0]?.message).toMatch(/a\.pdf, page 1: a message$/);
    expect([sums.byPlace.held, sums.byPlace['no-label'], mismatches]).toEqual([1, 0, []]);
    expect(items).toEqual([own.items]);
  });

  it('an order with a label to print is not held for another that is held', () => {
    const { places, looseEnds } = matched(
      [order('A-1001')],
      document('a.pdf', [item('p1')], ['Order A-1001']),
      document('b.pdf', [item('p1', { state: HELD })], ['Order A-1001']),
    );
    expect([places.map(({ place }) => place), looseEnds]).toEqual([['packed'], []]);
  });
});
