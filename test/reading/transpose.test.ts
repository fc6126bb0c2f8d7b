import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { transposedData } from '../../src/reading/transpose.js';

const rasters = fc
  .tuple(fc.integer({ min: 1, max: 70 }), fc.integer({ min: 1, max: 70 }))
  .chain(([width, height]) =>
    fc.uint8Array({ minLength: width * height, maxLength: width * height }).map((data) => ({ width, height, data })),
  );

describe('transposedData', () => {
  it('brings every pixel (x, y) to (y, x), or turned clockwise to (height − 1 − y, x)', () => {
    fc.assert(
      fc.property(rasters, ({ width, height, data }) => {
        const [plain, turned] = [transposedData(data, width, height), transposedData(data, width, height, true)];
        for (let y = 0; y < height; y++) {
          for (let x = 0; x < width; x++) {
            if (plain[x * height + y] !== data[y * width + x] || turned[x * height + height - 1 - y] !== data[y * width + x]) return false;
          }
        }
        return plain.length === data.length && turned.length === data.length;
      }),
    );
  });

  it('done twice is the same again; four quarter turns likewise', () => {
    fc.assert(
      fc.property(rasters, ({ width, height, data }) => {
        expect(transposedData(transposedData(data, width, height), height, width)).toEqual(data);
        let [each, w, h]: [Uint8Array, number, number] = [data, width, height];
        for (let turn = 0; turn < 4; turn++) [each, w, h] = [transposedData(each, w, h, true), h, w];
        expect(each).toEqual(data);
      }),
    );
  });
});
