import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DIAGNOSTIC_CODES } from '../../src/diagnostics/codes.js';
import * as conflicts from '../../src/orders/conflicts.js';
import { CLUES } from '../../src/orders/matching.js';
import { ORDER_STATES, type Order } from '../../src/orders/order.js';
import type { Reason } from '../../src/sheet/sheet.js';
import { order } from './make.js';

const TRACKING = '9400111206206406260787';
const { twoOrders, cluesDiffer, sharedTracking, otherChannel, sameNumber, notToShip, incomplete } = conflicts;
const { addressDiffers, tooOld, labelTwice, twoLabels, wrongCount, noOrder, heldWith } = conflicts;

/** Every reason that there is, for these orders. */
const all = (one: readonly Order[], other: readonly Order[]): readonly Reason[] => [
  ...CLUES.map((by) => twoOrders(by, [...one, ...other])),
  ...CLUES.flatMap((by) => CLUES.map((against) => cluesDiffer(by, one, against, other))),
  sharedTracking(TRACKING, [...one, ...other]),
  otherChannel(one),
  ...one.map(sameNumber),
  ...ORDER_STATES.flatMap((state) => (state === 'to-ship' ? [] : one.map((each) => notToShip(each, state)))),
  ...one.map(incomplete),
  addressDiffers(one),
  tooOld('2026-11-01', 27, 14),
  labelTwice(TRACKING, ['inbox/a.pdf, page 1']),
  twoLabels(one, 2),
  wrongCount(one, 1, 3),
  wrongCount(one, 4, 3),
  noOrder(),
  heldWith(one, 'inbox/a.pdf, page 1'),
];

describe('every reason against a label', () => {
  it('has a code of the list, a message on one line, and a remedy that is an order', () => {
    for (const { code, message, remedy } of all([order('A-1')], [order('A-2')])) {
      expect(DIAGNOSTIC_CODES).toContain(code);
      expect(code).toMatch(/^orders\//);
      expect(message).toMatch(/^[a-z0-9]/);
      expect(message).not.toMatch(/\.$|\n|undefined|NaN|\[object/);
      expect(remedy).toMatch(/^[A-Z].*\.(?:$| )|`print`\.$/);
      expect(remedy).not.toMatch(/undefined|\n/);
    }
  });

  it('names neither buyer nor address nor a whole tracking number, for any order', () => {
    const odd = fc.record({
      number: fc.string({ unit: 'binary', maxLength: 60 }),
      buyer: fc.constant('Odile Samplewright'),
      address: fc.constant(['12 Example Street', 'Sampleton']),
      postcode: fc.constant('10115-QX'),
      parcels: fc.integer({ min: 1, max: 9 }),
    });
    fc.assert(
      fc.property(fc.array(odd, { minLength: 1, maxLength: 9 }), (given) => {
        const orders = given.map(({ number, ...rest }, at) => order(`${at}${number}`, { ...rest, tracking: [TRACKING] }));
        for (const { message, remedy } of all(orders, orders.slice(0, 1))) {
          expect(`${message} ${remedy}`).not.toMatch(/Odile|Samplewright|Example Street|Sampleton|10115-QX/);
          expect(`${message} ${remedy}`).not.toContain(TRACKING);
          expect(message).not.toMatch(/[\p{Cc}\p{Cf}\u2028\u2029]/u);
          expect(message.length).toBeLessThan(900);
        }
      }),
      { numRuns: 60 },
    );
  });
});

describe('what a reason says', () => {
  it.each<readonly [Reason, string, string]>([
    [
      twoOrders('address', [order('A-2'), order('A-1')]),
      'orders/two-orders',
      'by its name and postcode it may be for each of the orders A-1 and A-2',
    ],
    [
      cluesDiffer('tracking', [order('A-1')], 'file-name', [order('A-2')]),
      'orders/clues-differ',
      'by its tracking number it is for order A-1, by its file name for order A-2',
    ],
    [
      sharedTracking(TRACKING, [order('A-1'), order('A-2')]),
      'orders/shared-tracking',
      'its tracking number (…0787) stands at orders A-1 and A-2, which differ in buyer or address',
    ],
    [tooOld('2026-11-26', 2, 1), 'orders/too-old', 'it is dated 2026-11-26, 2 days ago; this channel takes labels up to 1 day old'],
    [twoLabels([order('A-1')], 2), 'orders/two-labels', '2 labels for order A-1, which goes in one parcel'],
    [twoLabels([order('A-1'), order('A-2')], 3), 'orders/two-labels', '3 labels for orders A-1 and A-2, which go in one parcel'],
    [wrongCount([order('A-1')], 1, 2), 'orders/fewer-labels', '1 label for order A-1, which states 2 parcels'],
    [wrongCount([order('A-1'), order('A-2')], 3, 2), 'orders/more-labels', '3 labels for orders A-1 and A-2, which state 2 parcels'],
    [
      labelTwice(TRACKING, ['a.pdf, page 1', 'b.pdf, page 2']),
      'orders/label-twice',
      'its tracking number (…0787) is on a.pdf, page 1 and b.pdf, page 2, too',
    ],
    [
      heldWith([order('A-10'), order('A-9')], 'a.pdf, page 1'),
      'orders/held-with',
      'held with a.pdf, page 1, which is for the same orders (A-9 and A-10)',
    ],
    [
      sameNumber(order('A-1', { place: { file: 'b.csv', line: 3 }, differsAt: [{ file: 'a.csv', line: 12 }] })),
      'orders/same-number',
      'order A-1 is there more than once, and not alike (b.csv, line 3 and a.csv, line 12)',
    ],
  ])('%#', (reason, code, message) => {
    expect(reason).toMatchObject({ code, message });
  });
});
