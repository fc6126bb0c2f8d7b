import fc from 'fast-check';
import { expect, it } from 'vitest';
import { INK_LEVEL, inkRuns } from '../../src/reading/ink.js';

/** The pixels of the runs, y × width + x. */
function pixelsOf(raster: Parameters<typeof inkRuns>[0]): number[] {
  const { count, at } = inkRuns(raster);
  const pixels: number[] = [];
  for (let run = 0; run < count; run++) {
    const [y = 0, from = 0, to = 0] = at.subarray(3 * run, 3 * run + 3);
    for (let x = from; x < to; x++) pixels.push(y * raster.width + x);
  }
  return pixels;
}

it('inkRuns names every dark pixel once, in order, wherever the bytes lie in memory', () => {
  const grey = fc.constantFrom(0, INK_LEVEL - 1, INK_LEVEL, 255);
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 23 }), fc.array(grey, { maxLength: 200 }), fc.nat(3), (width, values, offset) => {
      const height = Math.floor(values.length / width);
      const data = new Uint8Array(new ArrayBuffer(values.length + 4), offset, width * height);
      data.set(values.slice(0, width * height));
      const dark = [...data.keys()].filter((at) => (data[at] ?? 255) < INK_LEVEL);
      const raster = { width, height, data, pixelsPerPt: 1, origin: { x: 0, y: 0 } };
      expect(pixelsOf(raster)).toEqual(dark);
      const { at } = inkRuns(raster);
      for (let run = 3; run < at.length; run += 3)
        if (at[run] === at[run - 3]) expect(at[run + 1], 'runs of a row have paper between them').toBeGreaterThan(at[run - 1] ?? 0);
    }),
  );
});

it('inkRuns takes a raster with more runs than it had room for', () => {
  const [width, height] = [601, 401];
  const data = Uint8Array.from({ length: width * height }, (_, at) => ((at % width) % 2 === 0 ? 0 : 255));
  const raster = { width, height, data, pixelsPerPt: 1, origin: { x: 0, y: 0 } };
  expect(inkRuns(raster).count).toBe(301 * height);
});
