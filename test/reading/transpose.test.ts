import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { transposedData } from '../../src/reading/transpose.js';

const rasters = fc
  .tuple(fc.integer({ min: 1, max: 70 }), fc.integer({ min: 1, max: 70 }))
  .chain(([width, height]) =>
    fc.uint8Array({ minLength: width * height, maxLength: width * height }).map((data) => ({ width, height, data })),
  );

describe('transposedData', () => {
  it('brings every pixel (x, y) to (y, x)', () => {
    fc.assert(
      fc.property(rasters, ({ width, height, data }) => {
        const changed = transposedData(data, width, height);
        for (let y = 0; y < height; y++) for (let x = 0; x < width; x++) if (changed[x * height + y] !== data[y * width + x]) return false;
        return changed.length === data.length;
      }),
    );
  });

  it('done twice is the same again', () => {
    fc.assert(
      fc.property(rasters, ({ width, height, data }) => {
        expect(transposedData(transposedData(data, width, height), height, width)).toEqual(data);
      }),
    );
  });
});
