import fc from 'fast-check';
import { expect, it } from 'vitest';
import { INK_LEVEL, inkPixels } from '../../src/reading/ink.js';

it('inkPixels names every dark pixel once, in order, wherever the bytes lie in memory', () => {
  const grey = fc.constantFrom(0, 1, 128, INK_LEVEL - 1, INK_LEVEL, 254, 255, 255, 255);
  fc.assert(
    fc.property(fc.array(grey, { maxLength: 90 }), fc.integer({ min: 0, max: 7 }), (greys, offset) => {
      const memory = new Uint8Array(greys.length + offset + 3).fill(0);
      memory.set(greys, offset);
      const data = memory.subarray(offset, offset + greys.length);
      const raster = { width: greys.length, height: 1, data, pixelsPerPt: 1.5, origin: { x: 0, y: 0 } };
      const dark = greys.flatMap((each, index) => (each < INK_LEVEL ? [index] : []));
      expect([...inkPixels(raster)]).toEqual(dark);
    }),
  );
});
