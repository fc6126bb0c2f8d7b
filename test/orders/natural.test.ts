import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { compareNatural } from '../../src/orders/natural.js';

const texts = fc.oneof(fc.string({ unit: 'binary' }), fc.stringMatching(/^[aAbé0-9-]{0,6}$/));

describe('natural order', () => {
  it('counts as a person does', () => {
    expect(['A10', 'a9', 'A1', 'B1', '', 'Äpfel', 'apfel', 'A01'].sort(compareNatural)).toEqual([
      '',
      'A01',
      'A1',
      'a9',
      'A10',
      'apfel',
      'Äpfel',
      'B1',
    ]);
  });

  it('is an order: turned round it says the opposite, and it never goes in a circle', () => {
    fc.assert(
      fc.property(texts, texts, texts, (a, b, c) => {
        expect(Math.sign(compareNatural(a, b))).toBe(-Math.sign(compareNatural(b, a)) + 0);
        if (compareNatural(a, b) <= 0 && compareNatural(b, c) <= 0) expect(compareNatural(a, c)).toBeLessThanOrEqual(0);
        expect(compareNatural(a, b) === 0).toBe(a === b);
      }),
    );
  });

  it('puts whole numbers by their size, however long', () => {
    fc.assert(
      fc.property(fc.bigInt({ min: 0n }), fc.bigInt({ min: 0n }), (a, b) => {
        expect(Math.sign(compareNatural(`bin ${a}`, `bin ${b}`))).toBe(a < b ? -1 : a > b ? 1 : 0);
      }),
    );
  });
});
