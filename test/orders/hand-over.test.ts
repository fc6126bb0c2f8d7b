import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { handOvers, handOverTable } from '../../src/orders/hand-over.js';
import { order, packed, someParcels, thing } from './packed.js';

describe('the rows of a hand-over list', () => {
  it('are by carrier and number, parcels of no known carrier last', () => {
    const handed = handOvers([
      packed(3, [order('S-3', [])], { carrier: 'Kite Post' }),
      packed(2, [], { carrier: '', tracking: '' }),
      packed(1, [order('S-1', []), order('S-2', [], { country: 'CA' })], { carrier: 'Kite Post' }),
      packed(4, [order('S-4', [])], { carrier: 'Heron' }),
    ]);
    expect(handed).toEqual([
      { carrier: 'Heron', parcels: [{ number: 4, tracking: 'KP000000000004', orders: ['S-4'], postcode: '00000', country: 'US' }] },
      {
        carrier: 'Kite Post',
        parcels: [
          { number: 1, tracking: 'KP000000000001', orders: ['S-1', 'S-2'], postcode: '00000', country: 'US / CA' },
          { number: 3, tracking: 'KP000000000003', orders: ['S-3'], postcode: '00000', country: 'US' },
        ],
      },
      { carrier: '', parcels: [{ number: 2, tracking: '', orders: [], postcode: '', country: '' }] },
    ]);
    expect(handOverTable(handed)[2]).toEqual(['Kite Post', 1, 'KP000000000001', 'S-1, S-2', '00000', 'US / CA']);
  });

  it('hold every parcel once, and no name and no street', () => {
    fc.assert(
      fc.property(someParcels, (parcels) => {
        const handed = handOvers(parcels);
        const numbers = handed.flatMap((each) => each.parcels.map(({ number }) => number));
        expect(numbers.sort((a, b) => a - b)).toEqual(parcels.map(({ number }) => number));
        expect(new Set(handed.map(({ carrier }) => carrier)).size).toBe(handed.length);
        expect(JSON.stringify(handed)).not.toMatch(/Robin|Example Street/);
      }),
    );
    expect(handOvers([packed(1, [order('S-1', [thing('A1')])])])).toHaveLength(1);
  });
});
