import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addresseeOf, AddressIndex, foreignPostcodes, holdsBuyer, holdsPostcode, postcodesOf } from '../../src/orders/addresses.js';
import { ReadLabel } from '../../src/orders/read-label.js';
import { addressed, label, order } from './make.js';

const read = (...lines: readonly string[]): ReadLabel => new ReadLabel(label('l', { lines }));
const A = addresseeOf(order('A-1'));

describe('an address on a label', () => {
  it('holds its postcode and its buyer apart', () => {
    expect([holdsPostcode(read('10115 Sampleton'), A), holdsBuyer(read('10115 Sampleton'), A)]).toEqual([true, false]);
    expect([holdsPostcode(read('ODILE SAMPLEWRIGHT'), A), holdsBuyer(read('ODILE SAMPLEWRIGHT'), A)]).toEqual([false, true]);
    const nobody = addresseeOf(order('A-2', { buyer: '', postcode: '' }));
    expect([holdsPostcode(read(''), nobody), holdsBuyer(read(''), nobody)]).toEqual([false, false]);
  });

  it('is let go of and made anew', () => {
    const made = read('10115 Sampleton');
    const before = made.anyPostcode;
    made.forget();
    expect(made.anyPostcode).toEqual(before);
  });
});

describe('the orders that a label is addressed to', () => {
  const NAMES = [
    'Odile Samplewright',
    'O. Samplewrigth',
    'Udile Samplewright',
    'Bertil Trialby',
    'Bertil M. Trialby',
    'Maro',
    '見本太郎',
    'Jo Li',
    'van Trialby',
  ];

  it('are the same whether few or many share a postcode', () => {
    const crowd = Array.from({ length: 40 }, (_, at) =>
      addresseeOf(order(`B-${at}`, { buyer: `Peregrin${'x'.repeat(at)} Probertonia${'y'.repeat(at)}` })),
    );
    fc.assert(
      fc.property(fc.array(fc.constantFrom(...NAMES), { maxLength: 8 }), fc.constantFrom(...NAMES), (buyers, shown) => {
        const alone = new AddressIndex();
        const crowded = new AddressIndex();
        for (const [at, buyer] of buyers.entries()) {
          alone.add(at, addresseeOf(order('A', { buyer })));
          crowded.add(at, addresseeOf(order('A', { buyer })));
        }
        for (const [at, other] of crowd.entries()) crowded.add(100 + at, other);
        const lines = addressed({ buyer: shown, address: ['5 Test Bend', 'Sampleton'], postcode: '10115' });
        expect(crowded.onLabel(read(...lines))).toEqual(alone.onLabel(read(...lines)));
      }),
      { numRuns: 300 },
    );
  });

  // Parts that are near each other, initials, titles and names without spaces: whatever a line holds, its keys find.
  const part = fc.oneof(
    fc.constantFrom('bo', 'b', 'x', 'li', 'dr'),
    fc.stringMatching(/^[ab][ab]{3,4}$/),
    fc.stringMatching(/^見?本[太田]郎?$/),
  );
  const name = fc.array(part, { minLength: 1, maxLength: 4 }).map((parts) => parts.join(' '));

  it('are those whose names stand on a line, as if they were compared one by one', () => {
    let found = 0;
    fc.assert(
      fc.property(fc.array(name, { minLength: 20, maxLength: 40 }), fc.array(name, { minLength: 1, maxLength: 3 }), (buyers, lines) => {
        const index = new AddressIndex();
        const addressees = buyers.map((buyer) => addresseeOf(order('A', { buyer })));
        for (const [at, each] of addressees.entries()) index.add(at, each);
        const shown = read(...lines, '10115 Sampleton');
        const oneByOne = addressees.flatMap((each, at) => (holdsBuyer(shown, each) ? [at] : []));
        expect(index.onLabel(shown)).toEqual(oneByOne);
        found += oneByOne.length;
      }),
      { numRuns: 500 },
    );
    expect(found).toBeGreaterThan(100);
  });

  it('need both postcode and name', () => {
    const index = new AddressIndex();
    index.add(7, A);
    index.add(8, addresseeOf(order('A-2', { buyer: '' })));
    expect(index.onLabel(read('Odile Samplewright', '10115'))).toEqual([7]);
    expect(index.onLabel(read('Odile Samplewright', '10116'))).toEqual([]);
    expect(index.onLabel(read('10115'))).toEqual([]);
  });
});

describe('a postcode of somebody else', () => {
  const own = postcodesOf(['1 Sample Lane', '99999 Trialford']);
  const foreign = (...lines: readonly string[]): readonly string[] => foreignPostcodes(read(...lines), '10115', own);

  it('stands below a name and looks like the order’s', () => {
    expect(foreign('Jory Specimensen', '5 Test Bend', '20095 Probeville')).toEqual(['20095']);
    expect(foreign('From', 'Tindra Proberton', '20000 Probeville', 'To', 'Jory Specimensen', '20095 Probeville')).toEqual(['20095']);
  });

  it.each([
    ['K1A 0B1 Probeville', 'k1a0b1'],
    ['Probeville, xx sw1a1aa', 'sw1a1aa'],
    ['M1 1AE', 'm11ae'],
    ['Probeville A65 F4E2', 'a65f4e2'],
    ['20095-1234', '20095'],
    ['XX-20095 Probeville', '20095'],
    ['00-940 Probeville', '00940'],
    ['1000-260 Probeville', '1000260'],
    ['70002-900 Probeville', '70002900'],
    ['2500 GG Probeville', '2500gg'],
    ['2500gg Probeville', '2500gg'],
    ['114 55 Probeville', '11455'],
    ['Probeville 110001', '110001'],
  ])('may have the form of another country: %s', (line, key) => expect(foreign('Jory Specimensen', '5 Test Bend', line)).toContain(key));

  it.each([
    ['no name above it', ['5 Test Bend', '20095 Probeville']],
    ['a number of no postcode’s form', ['Jory Specimensen', 'Unit 12', '1999 Test Bend', '555-0142', '4123 5678 9012 3456']],
    ['the order’s own', ['Jory Specimensen', '10115 Probeville']],
    ['the studio’s', ['Jory Specimensen', '99999 Trialford']],
    ['the sender’s', ['Sender', 'Jory Specimensen', '20095 Probeville']],
    ['a number in a line of data', ['Jory Specimensen', 'Weight: 20095', 'Tel 20095']],
    ['too far below', ['Jory Specimensen', '1', '2', '3', '4', '20095']],
  ])('but not: %s', (_, lines) => expect(foreign(...lines)).toEqual([]));
});
