import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { AddressCheck } from '../../src/orders/compare-address.js';
import { indexOrders } from '../../src/orders/order-index.js';
import type { Order } from '../../src/orders/order.js';
import { ReadLabel } from '../../src/orders/read-label.js';
import { addressed, label, order } from './make.js';

const OWN = ['Wobblethorn Studio', '1 Sample Lane', '99999 Trialford'];
const A = order('A-1');
const B = order('A-2', { buyer: 'Bertil Trialby', postcode: '80331' });
const C = order('A-3', { buyer: 'Carla Probewell', postcode: '50667' });
/** Somebody of whom there is no order. */
const NOBODY = { buyer: 'Nina Nowhere', address: ['9 Trial Road', 'Trialtown'], postcode: '20095' };

/** Whether a label with these lines is addressed to somebody else than the first order. */
function differs(
  lines: readonly string[],
  orders: readonly Order[] = [A, B, C],
  others: readonly (readonly string[])[] = [],
  bundle = [0],
): boolean {
  const labels = [lines, ...others].map((each, at) => new ReadLabel(label(`l${at}`, { lines: each })));
  const [own] = labels;
  if (!own) throw new Error('no label');
  return new AddressCheck(indexOrders(orders), labels, OWN).differs(own, [0], bundle);
}

describe('a label is addressed to somebody else', () => {
  it('when it shows name and postcode of another order', () => {
    expect(differs(addressed(B))).toBe(true);
  });

  it('when it shows name and postcode of nobody known', () => {
    expect(differs(addressed(NOBODY))).toBe(true);
  });

  it('not when it shows its own buyer, be the postcode another or the name without accents', () => {
    expect(differs(addressed(A))).toBe(false);
    expect(differs(addressed({ ...A, postcode: '80331' }))).toBe(false);
    expect(differs(addressed({ ...A, buyer: 'Ödile Sämplewright' }))).toBe(false);
  });

  it('not when the postcode is right and only the name is another: a gift, a neighbour', () => {
    expect(differs(addressed({ ...NOBODY, postcode: A.postcode }))).toBe(false);
  });

  it('not when the other order lies in the same parcel', () => {
    expect(differs(addressed(B), [A, B, C], [], [0, 1])).toBe(false);
    expect(differs(addressed(B), [A, B, C], [], [0, 2])).toBe(true);
  });

  it('not when there is nothing to compare: no lines, no postcode or no name in the order', () => {
    expect(differs([])).toBe(false);
    expect(differs(['SAMPLE - NOT VALID FOR CARRIAGE'])).toBe(false);
    expect(differs(addressed(NOBODY), [order('A-1', { postcode: '' })])).toBe(false);
    expect(differs(addressed(NOBODY), [order('A-1', { buyer: '' })])).toBe(false);
  });

  it.each(['QX1 9ZZ', 'qx19zz', 'K1A 0B1', '20095-1234', '00-940', '2500 GG', '114 55', '110001'])(
    'when it shows the name of nobody known above a postcode of another form: %s',
    (postcode) => expect(differs(addressed({ ...NOBODY, postcode }))).toBe(true),
  );

  it.each([
    ['10115-1234', '10115'],
    ['10115', '10115-1234'],
    ['D-10115', '10115'],
    ['SW1A 1AA', 'sw1a1aa'],
    ['sw1a1aa', 'SW1A 1AA'],
    ['114 55', '11455'],
    ['100-8994', '1008994'],
    ['1008994', '〒100-8994'],
  ])('not when the postcode is its own, written %s on the label and %s in the order', (onLabel, inOrder) => {
    expect(differs(addressed({ ...NOBODY, postcode: onLabel }), [{ ...A, postcode: inOrder }])).toBe(false);
  });

  it('not for numbers that four digits or a telephone may be', () => {
    expect(differs(addressed({ ...NOBODY, postcode: '1001' }))).toBe(false);
    expect(differs(['Nina Nowhere', '555-0142', '1999'])).toBe(false);
  });

  it('not for the studio’s own address, nor for what stands below a word for the sender', () => {
    expect(differs(['Nina Nowhere', '99999 Trialford'])).toBe(false);
    expect(differs(['Sender:', 'Nina Nowhere', '9 Trial Road', '20095 Trialtown'])).toBe(false);
  });

  it('not for a sender whom nobody named: one that stands on half of the labels, and on three at least', () => {
    const sender = ['Quinn Elsewhere', '20095 Trialtown'];
    expect(differs(sender, [A], [sender])).toBe(true);
    expect(differs(sender, [A], [sender, sender])).toBe(false);
    expect(differs(sender, [A], [sender, sender, ...Array.from({ length: 4 }, () => addressed(B))])).toBe(true);
  });

  it('never by labels of other channels, or by pictures without lines', () => {
    const sender = ['Quinn Elsewhere', '20095 Trialtown'];
    const lines = [sender, ...Array.from({ length: 9 }, () => [])];
    expect(differs(sender, [A], lines.slice(1))).toBe(true);
    const labels = [0, 1, 1, 1].map((channel, at) => new ReadLabel(label(`l${at}`, { lines: sender, channel })));
    const [own] = labels;
    expect(own && new AddressCheck(indexOrders([A]), labels, OWN).differs(own, [0], [0])).toBe(true);
  });
});

describe('for any label', () => {
  const line = fc.constantFrom(...addressed(A), ...addressed(B), ...addressed(NOBODY), '', 'Order A-1', '20095', '\ud83d', 'To:');

  it('one with the buyer on a line of its own is never another’s, whatever else it says', () => {
    fc.assert(
      fc.property(fc.array(line, { maxLength: 10 }), fc.nat(10), (lines, at) => {
        expect(differs([...lines.slice(0, at), A.buyer, ...lines.slice(at)])).toBe(false);
      }),
    );
  });

  it('the answer is the same each time, and for any order of the other labels', () => {
    fc.assert(
      fc.property(fc.array(line, { maxLength: 10 }), fc.array(fc.array(line, { maxLength: 5 }), { maxLength: 5 }), (lines, others) => {
        const labels = [lines, ...others].map((each, at) => new ReadLabel(label(`l${at}`, { lines: each })));
        const [own] = labels;
        if (!own) return;
        const check = new AddressCheck(indexOrders([A, B, C]), labels, OWN);
        const first = check.differs(own, [0], [0]);
        own.forget();
        expect(check.differs(own, [0], [0])).toBe(first);
        expect(differs(lines, [A, B, C], others.toReversed())).toBe(first);
      }),
    );
  });
});
