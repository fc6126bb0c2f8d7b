import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fold } from '../../src/orders/fold.js';
import { writtenPostcodes } from '../../src/orders/postcode-forms.js';

const written = (line: string): readonly string[] => writtenPostcodes(fold(line));

describe('a line of an address shows a postcode', () => {
  // Forms as in test/outside/postcodes.test.ts; the places are invented.
  it.each([
    ['SAMPLETON SW1A 1AA', ['sw1a1aa']],
    ['sw1a1aa', ['sw1a1aa', 'sw1a1aa']],
    ['SAMPLETON ON  K1A 0B1', ['k1a0b1']],
    ['2500GG SAMPLETON', ['2500gg']],
    ['〒100-8994', ['1008994', '1008994']],
    ['00-940 SAMPLETON', ['00940']],
    ['SE-114 55 SAMPLETON', ['11455']],
    ['SAMPLETON XX 21234-5678', ['21234']],
    ['SAMPLETON XX 21234', ['21234']],
    ['D-10115 Sampleton', ['10115']],
  ])('%s', (line, keys) => expect(written(line)).toEqual(keys));

  it.each([
    ['no digit', 'Sampleton'],
    ['a house number', '1999 Example Street'],
    ['a telephone number', '555-0142'],
    ['a number alone', '20095'],
    ['digits in groups', '9400 1112 0620 6406 2607 87'],
    ['a number in the middle', 'Sampleton 20095 East wing'],
    ['part of a longer number', 'Sampleton 2009512'],
    ['a weight', '0.4 kg'],
    ['a time', 'Sampleton 12:30'],
    ['nothing', ''],
  ])('but not: %s', (_, line) => expect(written(line)).toEqual([]));

  it('is quick and whole for any line', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 200, unit: 'binary' }), (line) => {
        for (const key of written(line)) expect(key).toMatch(/^[a-z\d]{5,8}$/);
      }),
    );
  });
});
