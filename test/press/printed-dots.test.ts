import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CELL, printedDots } from '../../src/press/printed-dots.js';
import type { GreyRaster } from '../../src/reading/source.js';

const raster = (width: number, height: number, data: Uint8Array): GreyRaster => ({
  width,
  height,
  data,
  pixelsPerPt: 203 / 72,
  origin: { x: 0, y: 0 },
});

/** Mostly paper, some black, some grey, as labels are. */
const value = fc.oneof({ weight: 6, arbitrary: fc.constantFrom(255, 0) }, { weight: 1, arbitrary: fc.nat({ max: 255 }) });
/** Runs of equal pixels, so that white and black words come up. */
const pixels = (count: number): fc.Arbitrary<Uint8Array> =>
  fc
    .array(fc.tuple(value, fc.integer({ min: 1, max: 9 })), { minLength: count, maxLength: count })
    .map((runs) => Uint8Array.from(runs.flatMap(([each, many]) => Array.from({ length: many }, () => each)).slice(0, count)));
const sizes = fc.tuple(fc.integer({ min: 1, max: 26 }), fc.integer({ min: 1, max: 14 }));

describe('printedDots', () => {
  it('burns what is darker than half, or what is marked, and counts dots and darkness by cells: any size, any place in memory', () => {
    fc.assert(
      fc.property(
        sizes.chain(([width, height]) =>
          fc.tuple(
            fc.constant(width),
            fc.constant(height),
            pixels(width * height),
            fc.option(pixels(width * height), { nil: undefined }),
            fc.nat({ max: 3 }),
          ),
        ),
        ([width, height, data, marks, off]) => {
          const apart = new Uint8Array(off + data.length);
          apart.set(data, off);
          const dots = printedDots(raster(width, height, apart.subarray(off)), marks && raster(width, height, marks));
          const burnt = marks ?? data;
          expect(dots.raster.data).toEqual(burnt.map((each) => (each < 128 ? 0 : 255)));
          for (let row = 0; row < dots.rows; row++) {
            for (let column = 0; column < dots.columns; column++) {
              let [black, dark] = [0, 0];
              for (let y = row * CELL; y < (row + 1) * CELL; y++) {
                for (let x = column * CELL; x < (column + 1) * CELL; x++) {
                  if ((burnt[y * width + x] ?? 0) < 128) black += 1;
                  dark += 255 - (data[y * width + x] ?? 0);
                }
              }
              expect([dots.burned[row * dots.columns + column], dots.darkness[row * dots.columns + column]]).toEqual([black, dark]);
            }
          }
        },
      ),
    );
  });
});
