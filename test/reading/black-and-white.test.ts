import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { blackAndWhite } from '../../src/reading/black-and-white.js';

describe('blackAndWhite', () => {
  it('is 0 below 128 and 255 from there on, for any length and place in memory', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 70 }), fc.nat({ max: 3 }), (grey, off) => {
        const apart = new Uint8Array(off + grey.length);
        apart.set(grey, off);
        expect(blackAndWhite(apart.subarray(off))).toEqual(grey.map((each) => (each < 128 ? 0 : 255)));
      }),
    );
  });
});
