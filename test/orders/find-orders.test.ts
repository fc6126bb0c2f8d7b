import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { findOrders, type Finding } from '../../src/orders/find-orders.js';
import { indexOrders } from '../../src/orders/order-index.js';
import type { Order } from '../../src/orders/order.js';
import { ReadLabel } from '../../src/orders/read-label.js';
import { addressed, label, order, RULES, type LabelWords } from './make.js';

const [ONE, TWO, THREE] = ['9400111206206406260787', '9400111201080805483016', '9400111206206406260794'] as const;

const find = (orders: readonly Order[], words: LabelWords, labelsInFile = 1, fileName?: string): Finding =>
  findOrders(indexOrders(orders), new ReadLabel(label('l', words)), { ...RULES, fileName }, labelsInFile);
/** `found 0 1 by tracking`, `conflict orders/two-orders 0 1`, `none`. */
function said(finding: Finding): string {
  if (finding.kind === 'none') return 'none';
  const orders = finding.orders.join(' ');
  return finding.kind === 'found'
    ? `found ${orders} by ${[finding.by, ...finding.also].join(', ')}`
    : `conflict ${finding.reason.code} ${orders}`;
}

const A = order('A-1001', { tracking: [ONE] });
const B = order('A-1002', { tracking: [TWO], buyer: 'Bertil Trialby', postcode: '80331' });
const C = order('A-1003', { buyer: 'Carla Probewell', postcode: '50667' });

describe('the orders of a label', () => {
  it('are none where it says nothing, or there are none', () => {
    expect(said(find([A, B, C], {}))).toBe('none');
    expect(said(find([], { tracking: ONE, lines: ['A-1001'], fileName: 'A-1001.pdf' }))).toBe('none');
  });

  it('are told by the strongest clue, with the number that decided and the weaker ones that say the same', () => {
    const found = find([A, B, C], { tracking: ONE, lines: ['Order A-1001'], fileName: 'A-1001.pdf' });
    expect(said(found)).toBe('found 0 by tracking, order-number, file-name');
    expect(found).toMatchObject({ bundle: 0, tracking: expect.stringContaining('0787') as string });
    expect(find([A, B, C], { lines: ['Order A-1003'] })).toMatchObject({ by: 'order-number', tracking: undefined });
  });

  it('may be told by a weaker clue where a stronger one names nothing', () => {
    expect(said(find([A, B, C], { tracking: THREE, lines: ['Order A-1003'] }))).toBe('found 2 by order-number');
    expect(said(find([A, B, C], { tracking: THREE, lines: addressed(C) }))).toBe('found 2 by address');
  });

  it('are not told by an address whose order knows another tracking number', () => {
    expect(said(find([A, B, C], { tracking: THREE, lines: addressed(B) }))).toBe('none');
    expect(said(find([A, B, C], { lines: addressed(B) }))).toBe('found 1 by address');
  });

  it('are not told by an address that fits two', () => {
    const twin = order('A-1004', { buyer: C.buyer, postcode: C.postcode });
    expect(said(find([C, twin], { lines: addressed(C) }))).toBe('conflict orders/two-orders 0 1');
  });
});

describe('clues that contradict each other', () => {
  it('hold it: two codes of two orders, and one number that stands at two', () => {
    const codes = [ONE, TWO].map((tracking) => ({ text: tracking, tracking }));
    expect(said(find([A, B], { codes }))).toBe('conflict orders/two-orders 0 1');
    expect(said(find([A, order('A-1009', { tracking: [ONE], buyer: 'Someone Else' })], { tracking: ONE }))).toBe(
      'conflict orders/shared-tracking 0 1',
    );
  });

  it('hold it: the number is that of an order of another channel', () => {
    expect(said(find([order('A-1001', { channel: 1, tracking: [ONE] })], { tracking: ONE, lines: ['A-1001'] }))).toBe(
      'conflict orders/other-channel 0',
    );
  });

  it('hold it: a weaker one is as clear and names another order', () => {
    expect(said(find([A, B], { tracking: ONE, lines: ['Order A-1002'] }))).toBe('conflict orders/clues-differ 0 1');
    expect(said(find([A, B], { tracking: ONE, fileName: 'A-1002.pdf' }))).toBe('conflict orders/clues-differ 0 1');
  });

  it('are none where the weaker one is a file of more labels than that order has parcels, or names several', () => {
    expect(said(find([A, B], { tracking: ONE, fileName: 'A-1002.pdf' }, 2))).toBe('found 0 by tracking');
    const two = order('A-1002', { parcels: 2 });
    expect(said(find([A, two], { tracking: ONE, fileName: 'A-1002.pdf' }, 2))).toBe('conflict orders/clues-differ 0 1');
    expect(said(find([A, B, C], { tracking: ONE, lines: ['A-1002 and A-1003'] }))).toBe('found 0 by tracking');
  });
});

describe('orders that go together', () => {
  const first = order('A-1001', { tracking: [ONE], together: ['A-1002', 'A-1003'] });
  const second = order('A-1002', { tracking: [TWO] });
  const third = order('A-1003');

  it('are those that know the number, and those that know none', () => {
    expect(said(find([first, second, third], { tracking: ONE }))).toBe('found 0 2 by tracking');
    expect(said(find([first, second, third], { tracking: TWO }))).toBe('found 1 2 by tracking');
  });

  it('are all of them by any other clue, and one clue for each is no contradiction', () => {
    expect(said(find([first, second, third], { lines: ['A-1003'] }))).toBe('found 0 1 2 by order-number');
    expect(said(find([first, second, third], { tracking: ONE, lines: ['A-1003'] }))).toBe('found 0 2 by tracking, order-number');
  });
});

describe('for any orders and labels', () => {
  const words = fc.record({
    tracking: fc.option(fc.constantFrom<string>(ONE, TWO, THREE), { nil: undefined }),
    lines: fc.array(fc.constantFrom('A-1001', 'A-1002', 'A-1003', ...addressed(A), ...addressed(B), ...addressed(C)), { maxLength: 6 }),
    fileName: fc.constantFrom('A-1001.pdf', 'A-1002 (1).pdf', 'labels.pdf', ''),
  });
  const some = fc.array(
    fc.record({
      number: fc.constantFrom('A-1001', 'A-1002', 'A-1003'),
      tracking: fc.constantFrom([], [ONE], [TWO], [ONE, THREE], ['']),
      who: fc.constantFrom(A, B, C),
      channel: fc.constantFrom(0, 0, 0, 1),
      together: fc.constantFrom([], [], ['A-1002'], ['A-9909']),
    }),
    { maxLength: 5 },
  );
  const ordersOf = (given: typeof some extends fc.Arbitrary<infer T> ? T : never): readonly Order[] =>
    given.map(({ who, number, ...rest }, at) =>
      order(number, {
        buyer: who.buyer,
        postcode: who.postcode,
        address: who.address,
        ...rest,
        id: `${at}`,
        place: { file: 'o.csv', line: at + 2 },
      }),
    );
  const asked = ({ tracking, ...rest }: { tracking: string | undefined; lines: string[]; fileName: string }): LabelWords =>
    tracking === undefined ? rest : { ...rest, tracking };

  it('what is found is one bundle of the label’s channel, and something on the label says so', () => {
    fc.assert(
      fc.property(some, words, fc.integer({ min: 1, max: 3 }), (given, on, labels) => {
        const orders = ordersOf(given);
        const index = indexOrders(orders);
        const finding = findOrders(index, new ReadLabel(label('l', asked(on))), RULES, labels);
        if (finding.kind === 'none') return;
        expect(finding.orders.length).toBeGreaterThan(0);
        expect(new Set(finding.orders).size).toBe(finding.orders.length);
        if (finding.kind === 'conflict') return;
        for (const each of finding.orders) {
          expect(orders[each]?.channel).toBe(0);
          expect(index.bundleOf.get(each)).toBe(finding.bundle);
        }
        expect(finding.also).not.toContain(finding.by);
        expect(finding.tracking !== undefined).toBe(finding.by === 'tracking');
        if (finding.by === 'tracking') expect(finding.orders.some((each) => orders[each]?.tracking.includes(on.tracking ?? ''))).toBe(true);
      }),
    );
  });

  it('it does not depend on the order of the orders', () => {
    fc.assert(
      fc.property(some, words, (given, on) => {
        const orders = ordersOf(given);
        const turned = orders.toReversed();
        const outcome = (from: readonly Order[]): unknown => {
          const finding = find(from, asked(on));
          if (finding.kind === 'none') return 'none';
          const ids = finding.orders.map((each) => from[each]?.id).sort();
          return finding.kind === 'found' ? [finding.by, [...finding.also], ids] : [finding.reason, ids];
        };
        expect(outcome(turned)).toEqual(outcome(orders));
      }),
    );
  });
});
