import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { borrowPicture, copyLines, giveBack, linesOf } from '../../src/reading/reader-picture.js';

const rasters = fc
  .tuple(fc.integer({ min: 1, max: 70 }), fc.integer({ min: 1, max: 70 }))
  .chain(([width, height]) =>
    fc.uint8Array({ minLength: width * height, maxLength: width * height }).map((data) => ({ width, height, data })),
  )
  .map((each) => ({ ...each, pixelsPerPt: 4, origin: { x: 0, y: 0 } }));

describe('the lines that a reader sees', () => {
  it('are all rows as they are where the run of the bars is not known', () => {
    fc.assert(
      fc.property(rasters, (raster) => {
        const lines = linesOf(raster, undefined, 9);
        const to = new Uint8Array(lines.width * lines.height);
        copyLines(raster, lines, to);
        expect(to).toEqual(raster.data);
      }),
    );
  });

  it('are one row of so many, or one column of so many turned clockwise: (x, y) comes to (height − 1 − y, x)', () => {
    fc.assert(
      fc.property(rasters, fc.constantFrom('level', 'upright'), fc.integer({ min: 0, max: 5 }), (raster, run, every) => {
        const lines = linesOf(raster, run, every / raster.pixelsPerPt);
        const step = Math.max(1, every);
        const to = new Uint8Array(lines.width * lines.height).fill(7);
        copyLines(raster, lines, to);
        for (let line = 0; line < lines.height; line++)
          for (let x = 0; x < lines.width; x++) {
            const from = run === 'level' ? line * step * raster.width + x : (raster.height - 1 - x) * raster.width + line * step;
            if (to[line * lines.width + x] !== raster.data[from]) return false;
          }
        return lines.height === Math.ceil((run === 'level' ? raster.height : raster.width) / step);
      }),
    );
  });
});

describe('memory for pictures', () => {
  it('is used again when it is given back, and never by two at once', () => {
    const first = borrowPicture(40, 30);
    const second = borrowPicture(40, 30);
    expect(second.bytes.buffer).not.toBe(first.bytes.buffer);
    giveBack(first);
    const third = borrowPicture(10, 10);
    expect(third.bytes.buffer).toBe(first.bytes.buffer);
    expect(Buffer.from(third.bytes.subarray(0, 13)).toString('latin1')).toBe('P5\n10 10\n255\n');
    expect(third.pixels).toHaveLength(100);
    expect(third.bytes).toHaveLength(113);
  });
});
