import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { AddressCheck } from '../../src/orders/compare-address.js';
import { findOrders } from '../../src/orders/find-orders.js';
import { againstAge, againstCount, againstLabel, againstSlip, ordersAt, type Claim } from '../../src/orders/judge-claims.js';
import type { SlipFacts } from '../../src/orders/label-facts.js';
import { indexOrders, type OrderIndex } from '../../src/orders/order-index.js';
import { ORDER_STATES, type Order } from '../../src/orders/order.js';
import { ReadLabel } from '../../src/orders/read-label.js';
import type { Reason } from '../../src/sheet/sheet.js';
import { addressed, label, order, RULES, TODAY, type LabelWords } from './make.js';

const [ONE, TWO] = ['9400111206206406260787', '9400111201080805483016'] as const;
const codes = (reasons: readonly Reason[]): readonly string[] => reasons.map(({ code }) => code);

function claim(index: OrderIndex, words: LabelWords, id = 'l'): Claim {
  const read = new ReadLabel(label(id, words));
  const finding = findOrders(index, read, RULES, 1);
  if (finding.kind !== 'found') throw new Error(`${finding.kind}: no claim`);
  return { label: read, finding, says: undefined };
}
function against(orders: readonly Order[], words: LabelWords): readonly Reason[] {
  const index = indexOrders(orders);
  const made = claim(index, words);
  return againstLabel(index, made, new AddressCheck(index, [made.label], []));
}

describe('what is against a label by the slip behind it', () => {
  const orders = [order('A-1001', { tracking: [ONE] }), order('A-1002', { tracking: [TWO] }), order('A-1003', { together: ['A-1001'] })];
  const slipSays = (...pages: readonly Partial<SlipFacts>[]): readonly Reason[] => {
    const index = indexOrders(orders);
    const slip = pages.map((page, at) => ({ codes: [], lines: [], shown: `page ${at + 2}`, ...page }));
    return againstSlip(index, claim(index, { tracking: ONE, slip }));
  };

  it('is nothing where there is none, where it names its order, or one that goes in the same parcel, or no order at all', () => {
    expect(slipSays()).toEqual([]);
    expect(slipSays({ lines: ['Packing slip', 'Order A-1001'] })).toEqual([]);
    expect(slipSays({ lines: ['Order A-1003'] })).toEqual([]);
    expect(slipSays({ lines: ['Thank you!', '1 x Stoneware mug'] })).toEqual([]);
    expect(slipSays({})).toEqual([]);
  });

  it('is another order that it names, by its number or in a code, whichever page it stands on', () => {
    expect(codes(slipSays({ lines: ['Order A-1002'] }))).toEqual(['orders/other-slip']);
    expect(codes(slipSays({ codes: [{ text: 'A-1002', tracking: undefined }] }))).toEqual(['orders/other-slip']);
    // A label on the page where the slip should be.
    expect(codes(slipSays({ codes: [{ text: TWO, tracking: TWO }] }))).toEqual(['orders/other-slip']);
    const [reason] = slipSays({ lines: ['1 x Stoneware mug'] }, { lines: ['Order A-1002, page 2 of 2'] });
    expect(reason?.message).toBe('the packing slip behind it (page 3) names order A-1002, not orders A-1001 and A-1003');
  });

  it('is nothing where it names its own order beside others: earlier ones, say', () => {
    expect(slipSays({ lines: ['Order A-1001', 'Your last order was A-1002'] })).toEqual([]);
    expect(slipSays({ lines: ['Order A-1001'] }, { lines: ['Order A-1002'] })).toEqual([]);
  });
});

describe('what is against a label by its orders', () => {
  it('is nothing where all is well', () => {
    expect(against([order('A-1001')], { lines: ['A-1001', ...addressed(order('A-1001'))] })).toEqual([]);
  });

  it('is a state that expects no label, each with a code of its own', () => {
    const states = ORDER_STATES.filter((state) => state !== 'to-ship');
    const found = states.flatMap((state) => codes(against([order('A-1001', { state })], { lines: ['A-1001'] })));
    expect(found).toHaveLength(states.length);
    expect(new Set(found).size).toBe(states.length);
  });

  it('is an order that could not be read whole; one that expects no label is not told for that as well', () => {
    expect(codes(against([order('A-1001', { incomplete: true })], { lines: ['A-1001'] }))).toEqual(['orders/incomplete']);
    expect(codes(against([order('A-1001', { incomplete: true, state: 'refunded' })], { lines: ['A-1001'] }))).toEqual(['orders/refunded']);
  });

  it('is each of several orders in the parcel, by number whatever the order of the files', () => {
    const orders = [order('A-10010', { state: 'cancelled', together: ['A-9909'] }), order('A-9909', { state: 'refunded' })];
    const [one, two] = [against(orders, { lines: ['A-9909'] }), against(orders.toReversed(), { lines: ['A-9909'] })];
    expect(codes(one)).toEqual(['orders/refunded', 'orders/cancelled']);
    expect(two).toEqual(one);
  });

  it('is an address of somebody else, unless it was the address that found the order', () => {
    const [mine, other] = [order('A-1001'), order('A-1002', { buyer: 'Bertil Trialby', postcode: '80331' })];
    expect(codes(against([mine, other], { lines: ['A-1001', ...addressed(other)] }))).toEqual(['orders/address-differs']);
    expect(against([mine, other], { lines: addressed(other) })).toEqual([]);
  });

  it('is a number that stands elsewhere for an order that says other things', () => {
    const twice = order('A-1001', { tracking: [ONE], differsAt: [{ file: 'b.csv', line: 2 }] });
    expect(codes(against([twice], { tracking: ONE }))).toEqual(['orders/same-number']);
  });
});

describe('what is against the age of a label', () => {
  const age = (line: string, maxAge: number | undefined): readonly string[] =>
    codes(againstAge(new ReadLabel(label('l', { lines: [line] })), { ...RULES, maxAge }, TODAY));

  it('is a date longer ago than the channel takes, to the day', () => {
    expect(age('Ship date 2026-11-14', 14)).toEqual([]);
    expect(age('Ship date 2026-11-13', 14)).toEqual(['orders/too-old']);
    expect(age('Ship date 2026-11-28', 0)).toEqual([]);
    expect(age('Ship date 2026-11-27', 0)).toEqual(['orders/too-old']);
  });

  it('is nothing where no age is asked for, no date is clear, or it is yet to come', () => {
    expect(age('Ship date 2020-01-01', undefined)).toEqual([]);
    expect(age('no date', 1)).toEqual([]);
    expect(age('Ship date 2027-01-31', 1)).toEqual([]);
  });
});

describe('what is against the labels of one parcel together', () => {
  const count = (orders: readonly Order[], labels: readonly LabelWords[]): readonly (readonly string[])[] => {
    const index = indexOrders(orders);
    const claims = labels.map((words, at) => claim(index, words, `l${at}`));
    return againstCount(index, claims[0]?.finding.bundle ?? 0, claims).map(codes);
  };
  const both = order('A-1001', { tracking: [ONE, TWO] });

  it('is nothing for as many labels as parcels', () => {
    expect(count([order('A-1001')], [{ lines: ['A-1001'] }])).toEqual([[]]);
    expect(count([both], [{ tracking: ONE }, { tracking: TWO }])).toEqual([[], []]);
  });

  it('is one too many, too few or too many of several, at each', () => {
    expect(count([order('A-1001')], [{ lines: ['A-1001'] }, { lines: ['A-1001'] }])).toEqual([
      ['orders/two-labels'],
      ['orders/two-labels'],
    ]);
    expect(count([both], [{ tracking: ONE }])).toEqual([['orders/fewer-labels']]);
    expect(
      count(
        [order('A-1001', { parcels: 2 })],
        Array.from({ length: 3 }, () => ({ lines: ['A-1001'] })),
      ),
    ).toEqual([['orders/more-labels'], ['orders/more-labels'], ['orders/more-labels']]);
  });

  it('is a tracking number that is there twice, which counts as one label', () => {
    expect(count([order('A-1001', { tracking: [ONE] })], [{ tracking: ONE }, { tracking: ONE }])).toEqual([
      ['orders/label-twice'],
      ['orders/label-twice'],
    ]);
    expect(count([both], [{ tracking: ONE }, { tracking: ONE }, { tracking: TWO }])).toEqual([
      ['orders/label-twice'],
      ['orders/label-twice'],
      [],
    ]);
    expect(count([both], [{ tracking: ONE }, { tracking: ONE }])).toEqual([
      ['orders/label-twice', 'orders/fewer-labels'],
      ['orders/label-twice', 'orders/fewer-labels'],
    ]);
  });

  it('names the other one, not itself', () => {
    const index = indexOrders([order('A-1001', { tracking: [ONE] })]);
    const claims = ['x', 'y'].map((id) => claim(index, { tracking: ONE, shown: `inbox/${id}.pdf, page 1` }, id));
    const [first] = againstCount(index, 0, claims);
    expect(first?.[0]?.message).toBe('its tracking number (…0787) is on inbox/y.pdf, page 1, too');
  });

  it('is, for any labels, nothing exactly where each parcel has one of its own', () => {
    const parcels = fc.integer({ min: 1, max: 3 });
    fc.assert(
      fc.property(
        parcels,
        fc.array(fc.constantFrom<LabelWords>({ tracking: ONE }, { tracking: TWO }, { lines: ['A-1001'] }), { minLength: 1, maxLength: 6 }),
        (stated, labels) => {
          const made = count([order('A-1001', { parcels: stated, tracking: [ONE, TWO] })], labels);
          const uses = labels.map((words) => words.tracking ?? '');
          const twice = (number: string): boolean => number !== '' && uses.filter((each) => each === number).length > 1;
          const different = uses.filter((number, at) => number === '' || uses.indexOf(number) === at).length;
          const expected = Math.max(stated, 2);
          expect(made).toHaveLength(labels.length);
          for (const [at, reasons] of made.entries()) {
            expect(reasons.includes('orders/label-twice')).toBe(twice(uses[at] ?? ''));
            expect(reasons.some((code) => /fewer|more/.test(code))).toBe(different !== expected);
          }
        },
      ),
    );
  });
});

it('orders by index are those that there are', () => {
  const index = indexOrders([order('A-1001'), order('A-1002')]);
  expect(ordersAt(index, [1, 7, -1, 0]).map(({ number }) => number)).toEqual(['A-1002', 'A-1001']);
});
