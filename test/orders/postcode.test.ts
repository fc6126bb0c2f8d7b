import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { foldedLine } from '../../src/orders/fold.js';
import { postcodeKey, postcodesIn, shapeOf } from '../../src/orders/postcode.js';

describe('a postcode for comparing', () => {
  // Forms as in the published examples that test/outside/postcodes.test.ts names; the places are of no matter here.
  it.each([
    ['10115', '10115'],
    ['D-10115', '10115'],
    ['12345-6789', '12345'],
    ['SW1A 1AA', 'sw1a1aa'],
    ['sw1a1aa', 'sw1a1aa'],
    ['K1A 0B1', 'k1a0b1'],
    ['123 45', '12345'],
    ['00-950', '00950'],
    ['100-0001', '1000001'],
    ['１００-０００１', '1000001'],
    [' 10115 ', '10115'],
    ['', ''],
    ['–', ''],
  ])('%s is %s', (written, key) => {
    expect(postcodeKey(written)).toBe(key);
  });

  it('is its own key, and no one’s spaces or capitals change it', () => {
    fc.assert(
      fc.property(fc.stringMatching(/^[A-Z0-9]{3,8}$/), fc.nat(6), (code, at) => {
        const key = postcodeKey(code);
        expect(postcodeKey(key)).toBe(key);
        expect(postcodeKey(` ${code.toLowerCase()} `)).toBe(key);
        expect(postcodeKey(`${code.slice(0, at)} ${code.slice(at)}`)).toBe(key);
      }),
    );
  });
});

describe('what a line says as postcodes', () => {
  const said = (line: string): readonly string[] => postcodesIn(foldedLine(line));

  it('is each word with a digit, and up to three that only a space or a hyphen parts', () => {
    expect(said('London SW1A 1AA')).toContain('sw1a1aa');
    expect(said('Sampleton, XX 12345-6789')).toEqual(expect.arrayContaining(['12345']));
    expect(said('no digits here')).toEqual([]);
    expect(said('')).toEqual([]);
    expect(said('10115 / Berlin')).toEqual(expect.arrayContaining(['10115']));
    expect(said('10115 / Berlin')).not.toContain('10115berlin');
  });

  it('holds the key of any postcode that stands in it as a word', () => {
    const code = fc.constantFrom('10115', 'SW1A 1AA', 'K1A 0B1', '123 45', '00-950', '100-0001');
    const word = fc.stringMatching(/^[a-z]{2,9}$/);
    fc.assert(
      fc.property(code, word, word, (postcode, before, behind) => {
        expect(said(`${before}, ${postcode}, ${behind}`)).toContain(postcodeKey(postcode));
        expect(said(`${postcode}, ${behind}`)).toContain(postcodeKey(postcode));
      }),
    );
  });
});

it('two postcodes of one country look alike', () => {
  expect([shapeOf('sw1a1aa'), shapeOf('ec2v8rf')]).toEqual(['aa9a9aa', 'aa9a9aa']);
  expect(shapeOf('10115')).not.toBe(shapeOf('1000001'));
});
