import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { LabelFacts } from '../../src/orders/label-facts.js';
import { looseEnds } from '../../src/orders/loose-ends.js';
import { matchOrders } from '../../src/orders/match.js';
import type { LabelEnd, Matching, MatchOptions } from '../../src/orders/matching.js';
import { ORDER_STATES, type Order } from '../../src/orders/order.js';
import { mergeOrders } from '../../src/orders/merge-orders.js';
import { mismatches, orderPlaces, orderSums } from '../../src/orders/order-places.js';
import { generateDay } from './day/day.js';
import { addressed, label, order, rules } from './make.js';

// Few values each, so that everything meets everything: that is where days go wrong.
const NUMBERS = ['A-1001', 'A-1002', 'A-1002-2', '12', '#3001', '3001', '2026/77', 'ORDER', ''];
const TRACKING = ['9400111206206406260787', '9400111201080805483016', 'EE876543216CA', '420101159400111206206406260787', 'n/a'];
const BUYERS = ['Odile Samplewright', 'Odile Samplewrigth', 'Bertil Trialby', '見本太郎', 'Maro', ''];
const POSTCODES = ['10115', '20095', 'K1A 0B1', ''];
const few = <T>(values: readonly T[], maxLength = 2): fc.Arbitrary<T[]> => fc.array(fc.constantFrom(...values), { maxLength });

const anyOrder = fc.record({
  channel: fc.nat(2),
  number: fc.constantFrom(...NUMBERS),
  state: fc.oneof({ weight: 4, arbitrary: fc.constant('to-ship' as const) }, { weight: 1, arbitrary: fc.constantFrom(...ORDER_STATES) }),
  buyer: fc.constantFrom(...BUYERS),
  postcode: fc.constantFrom(...POSTCODES),
  tracking: few(TRACKING),
  parcels: fc.constantFrom(1, 1, 1, 2, 3),
  together: few(NUMBERS, 1),
  notes: fc.constantFrom('', 'x'),
});
const anyOrders: fc.Arbitrary<readonly Order[]> = fc.array(anyOrder, { maxLength: 14 }).map((all) => {
  const orders = all.map((each, at) =>
    order(each.number, { ...each, id: `${each.channel}:${at}`, place: { file: 'orders.csv', line: at + 2 } }),
  );
  // As a run reads them: each number of a channel once.
  return [0, 1, 2].flatMap((of) => mergeOrders([{ orders: orders.filter(({ channel }) => channel === of), diagnostics: [] }]).orders);
});

const line = fc.oneof(
  fc.tuple(fc.constantFrom('Order ', 'Ref ', '', 'x'), fc.constantFrom(...NUMBERS)).map(([word, number]) => [word + number]),
  fc
    .tuple(fc.constantFrom(...BUYERS), fc.constantFrom(...POSTCODES))
    .map(([buyer, postcode]) => addressed({ buyer, postcode, address: ['5 Test Bend', 'Probeville'] })),
  fc.constantFrom('2026-11-27', '2026-01-02').map((date) => [`Ship date: ${date}`]),
);
const anyLabel = fc.record({
  channel: fc.nat(3),
  fileName: fc.constantFrom('label.pdf', 'A-1001.pdf', 'order 12.pdf', '3001.pdf', 'A-1001 A-1002.pdf'),
  codes: few([...TRACKING, ...NUMBERS].map((text) => ({ text, tracking: TRACKING.includes(text) ? text : undefined }))),
  lines: fc.array(line, { maxLength: 3 }).map((all) => all.flat()),
  isReturn: fc.nat(5).map((n) => n === 0),
  outbound: fc.option(
    fc.nat(10).map((n) => `l${n}`),
    { nil: undefined },
  ),
});
const anyLabels: fc.Arbitrary<readonly LabelFacts[]> = fc
  .array(anyLabel, { maxLength: 14 })
  .map((all) => all.map(({ outbound, ...facts }, at) => label(`l${at}`, { ...facts, ...(outbound === undefined ? {} : { outbound }) })));

/** Two channels with orders, one of which prints strays; one without; the fourth isn't listed. */
const OPTIONS: MatchOptions = rules({}, { withoutOrder: 'print', maxAge: undefined, fileName: '{order}' }, { hasOrders: false });
const matched = (orders: readonly Order[], labels: readonly LabelFacts[]): Matching => matchOrders(orders, labels, OPTIONS);

/** A label's end without what depends on the order of the lists: which of several parcels a return label goes in. */
function wordsOf(end: LabelEnd, labels: readonly LabelFacts[]): string {
  const orders = 'orders' in end ? end.orders.toSorted() : [];
  const linked = labels.find(({ id }) => id === end.label)?.outbound;
  if (end.kind === 'return') return JSON.stringify([end.kind, orders, end.parcel === undefined ? 'none' : end.parcel === linked]);
  return JSON.stringify([end.kind, orders, end.kind === 'held' ? end.reasons : end.kind === 'packed' ? [end.by, end.also] : []]);
}
const byLabel = ({ labels: ends }: Matching, labels: readonly LabelFacts[]): ReadonlyMap<string, string> =>
  new Map(ends.map((end) => [end.label, wordsOf(end, labels)]));

const shuffle = <T>(values: readonly T[], keys: readonly number[]): readonly T[] =>
  values
    .map((value, at) => ({ value, key: keys[at % keys.length] ?? 0 }))
    .sort((a, b) => a.key - b.key)
    .map(({ value }) => value);
const shuffleKeys = fc.array(fc.nat(), { minLength: 14, maxLength: 14 });
const RUNS = { numRuns: 200 };

describe('for any day', () => {
  it('every order and every label is in exactly one place, and the sums add up', () => {
    fc.assert(
      fc.property(anyOrders, anyLabels, (orders, labels) => {
        const matching = matched(orders, labels);
        const places = orderPlaces(orders, labels, matching);
        expect(mismatches(orders, labels, matching, places)).toEqual([]);
        expect(matching.labels.map((end) => end.label)).toEqual(labels.map(({ id }) => id));
        const sums = orderSums(places, matching);
        expect(Object.values(sums.byPlace).reduce((a, b) => a + b, 0)).toBe(orders.length);
        expect(Object.values(sums.byEnd).reduce((a, b) => a + b, 0)).toBe(labels.length);
        expect(sums.byEnd.packed).toBe(sums.parcels);
      }),
      RUNS,
    );
  });

  it("what is packed is to be shipped, complete, and of the label's own channel", () => {
    fc.assert(
      fc.property(anyOrders, anyLabels, (orders, labels) => {
        const { parcels } = matched(orders, labels);
        const byId = new Map(orders.map((each) => [each.id, each]));
        const channels = new Map(labels.map(({ id, channel }) => [id, channel]));
        const perOrder = new Map<string, number>();
        for (const parcel of parcels) {
          expect(parcel.orders.length).toBeGreaterThan(0);
          expect(parcel.number).toBeLessThanOrEqual(parcel.of);
          for (const id of parcel.orders) {
            expect(byId.get(id)).toMatchObject({ state: 'to-ship', channel: channels.get(parcel.label) });
            perOrder.set(id, (perOrder.get(id) ?? 0) + 1);
          }
        }
        for (const parcel of parcels) for (const id of parcel.orders) expect(perOrder.get(id)).toBeLessThanOrEqual(parcel.of);
      }),
      RUNS,
    );
  });

  it('the order of the lists changes nothing', () => {
    fc.assert(
      fc.property(anyOrders, anyLabels, shuffleKeys, shuffleKeys, (orders, labels, a, b) => {
        const before = byLabel(matched(orders, labels), labels);
        const after = byLabel(matched(shuffle(orders, a), shuffle(labels, b)), labels);
        expect([...after].sort()).toEqual([...before].sort());
      }),
      RUNS,
    );
  });

  it('matching twice gives the same, and changes no input', () => {
    fc.assert(
      fc.property(anyOrders, anyLabels, (orders, labels) => {
        const before = structuredClone([orders, labels]);
        const once = matched(orders, labels);
        expect(matched(orders, labels)).toEqual(once);
        expect([orders, labels]).toEqual(before);
      }),
      RUNS,
    );
  });

  it('an order that has nothing to do with the others changes no match', () => {
    const stranger = order('ZZZ-70001', { channel: 0, buyer: 'Nobodine Unrelatedson', postcode: '86199', tracking: ['ZQ11223344556677'] });
    fc.assert(
      fc.property(anyOrders, anyLabels, fc.nat(14), (orders, labels, at) => {
        const more = orders.toSpliced(at, 0, stranger);
        const after = matched(more, labels);
        expect([...byLabel(after, labels)]).toEqual([...byLabel(matched(orders, labels), labels)]);
        expect(orderPlaces(more, labels, after).find(({ order: id }) => id === stranger.id)?.place).toBe('no-label');
      }),
      RUNS,
    );
  });

  it('loose ends are about orders and labels that exist, one sentence each', () => {
    fc.assert(
      fc.property(anyOrders, anyLabels, (orders, labels) => {
        const matching = matched(orders, labels);
        const places = orderPlaces(orders, labels, matching);
        const ends = looseEnds(orders, labels, matching, places);
        const ids = new Set([...orders, ...labels].map(({ id }) => id));
        for (const end of ends) {
          expect([...end.orders, ...end.labels].every((id) => ids.has(id))).toBe(true);
          expect(end.message).not.toBe('');
          expect(end.remedy).toMatch(/\.$/);
        }
        expect(ends.filter(({ code }) => code === 'orders/no-label')).toHaveLength(
          places.filter(({ place }) => place === 'no-label').length,
        );
      }),
      RUNS,
    );
  });

  it('bytes of any kind throw nothing', () => {
    const text = fc.string({ unit: 'binary', maxLength: 20 });
    fc.assert(
      fc.property(
        fc.array(text, { minLength: 8, maxLength: 8 }),
        text,
        ([number = '', buyer = '', postcode = '', tracking = '', ...lines], fileName) => {
          const orders = [order(number, { buyer, postcode, tracking: [tracking], together: lines })];
          const labels = [
            label('l', { fileName, lines: [...lines, number, buyer, postcode], codes: [{ text: tracking, tracking: number }] }),
          ];
          expect(mismatches(orders, labels, matched(orders, labels), orderPlaces(orders, labels, matched(orders, labels)))).toEqual([]);
        },
      ),
      RUNS,
    );
  });
});

describe('for generated days', () => {
  it('shuffling changes nothing either', () => {
    fc.assert(
      fc.property(fc.nat(10_000), shuffleKeys, (seed, keys) => {
        const day = generateDay(seed, 60, 1);
        const before = byLabel(matchOrders(day.orders, day.labels, day.options), day.labels);
        const after = byLabel(matchOrders(shuffle(day.orders, keys), shuffle(day.labels, keys), day.options), day.labels);
        expect([...after].sort()).toEqual([...before].sort());
      }),
      { numRuns: 25 },
    );
  });
});
