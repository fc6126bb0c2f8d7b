import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { damageOf, hasLostZeros, isMojibake, unwrapped } from '../../src/orders/damage.js';
import { decodeText } from '../../src/orders/decode-text.js';
import { Findings } from '../../src/orders/findings.js';
import { only, readTable } from './reading.js';

describe('what keeps spreadsheets from changing a value is taken off', () => {
  it.each([
    ['="00123"', '00123'],
    ['="a ""b"""', 'a "b"'],
    ["'00123", '00123'],
    ["'+49", '+49'],
    [' 00123\t', '00123'],
    ["'s Example", "'s Example"],
    ['00123', '00123'],
    ['=A1', '=A1'],
    ['', ''],
  ])('%s is %s', (cell, value) => {
    expect(unwrapped(cell)).toBe(value);
  });

  it('in a file, too', () => {
    const result = readTable(`Order,Name,ZIP,Tracking\n="0017",'t Example,'01101,="9400111206206406260787"\n`);
    expect(result.diagnostics).toEqual([]);
    expect(only(result)).toMatchObject({ number: '0017', buyer: "'t Example", postcode: '01101', tracking: ['9400111206206406260787'] });
  });
});

describe('damage', () => {
  it.each([
    ['9.40011E+21', 'scientific'],
    ['9,40011E+21', 'scientific'],
    ['1E+05', 'scientific'],
    ['9.4e21', 'scientific'],
    ['########', 'hashes'],
    ['#N/A', 'error'],
    ['#NAME?', 'error'],
    ['9400111206206400000000', 'digits'],
    ['9400 1112 0620 6400 0000 00', 'digits'],
  ] as const)('%s: %s', (text, damage) => {
    expect(damageOf(text)).toBe(damage);
  });

  it.each([
    '9400111206206406260787',
    '1000000000000000',
    '100000000000000000',
    '1E5',
    'E+21',
    '#',
    '#1001',
    '12345678901234500001',
    '0',
    '',
  ])('%j shows none that is sure', (text) => {
    expect(damageOf(text)).toBeUndefined();
  });

  it('what a double makes of a long number is found', () => {
    const digits = fc.stringMatching(/^[1-9]\d{19,25}$/);
    fc.assert(
      fc.property(digits, (text) => {
        const kept = text.slice(0, 15) + '0'.repeat(text.length - 15);
        expect(damageOf(kept)).toBe('digits');
        expect(damageOf(`${text.slice(0, -1)}7`)).toBeUndefined();
      }),
    );
  });
});

describe('postcodes without their zeros', () => {
  it.each([
    ['2134', 'US'],
    ['501', 'US'],
    ['2134-1234', 'US'],
    ['21341234', 'US'],
    ['1067', 'DE'],
    ['1000', 'FR'],
    ['800', 'AU'],
    ['150', 'NO'],
  ])('%s of %s', (postcode, country) => {
    expect(hasLostZeros(postcode, country)).toBe(true);
  });

  it.each([
    ['02134', 'US'],
    ['02134-1234', 'US'],
    ['021341234', 'US'],
    ['1010', 'AT'],
    ['8001', 'CH'],
    ['106', 'DE'],
    ['SW1A 1AA', 'GB'],
    ['2134', ''],
    ['', 'US'],
  ])('none is lost of %s of %s', (postcode, country) => {
    expect(hasLostZeros(postcode, country)).toBe(false);
  });
});

describe('mojibake', () => {
  const words = fc.string({ unit: fc.constantFrom('a', 'B', 'é', 'ü', 'ß', 'ñ', 'Å', 'œ', '€', ' ', 'ł', '漢', 'я'), maxLength: 12 });
  const WHOLE = /^[a-z é]*$/i;

  it('of any word with letters beyond ASCII is found, and none in the word itself', () => {
    fc.assert(
      fc.property(words, (word) => {
        for (const encoding of ['windows-1252', 'latin1'] as const) {
          const bytes = Buffer.from(word);
          const wrong = encoding === 'latin1' ? bytes.toString('latin1') : decodeText(bytes, encoding, new Findings('a.csv'));
          expect(isMojibake(wrong ?? '')).toBe(/[^\u0000-\u007f]/.test(word));
        }
        if (WHOLE.test(word)) expect(isMojibake(word)).toBe(false);
      }),
    );
  });

  it.each(['Zoë Müller', 'Ärger', 'naïve œuvre', 'Łódź', '東京', '“quoted” – dash', '£20 ½'])('%s is none', (text) => {
    expect(isMojibake(text)).toBe(false);
  });
});
