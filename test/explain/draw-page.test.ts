import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import { lineAround, placesBeside, stamp } from '../../src/batch/marks.js';
import type { GreyRaster } from '../../src/reading/source.js';
import { explainSample } from './explain-sample.js';

const blank = (width: number, height: number, grey = 255): GreyRaster => ({
  width,
  height,
  data: new Uint8Array(width * height).fill(grey),
  pixelsPerPt: 1,
  origin: { x: 0, y: 0 },
});
const at = ({ data, width }: GreyRaster, x: number, y: number): number => data[y * width + x] ?? -1;

/** Lengths of black and white along a row. */
function rhythm(raster: GreyRaster, y: number, from: number, to: number): number[] {
  const runs: number[] = [];
  for (let x = from; x < to; x++) {
    if (x > from && at(raster, x, y) === at(raster, x - 1, y)) runs[runs.length - 1] = (runs.at(-1) ?? 0) + 1;
    else runs.push(1);
  }
  return runs;
}

describe('marks', () => {
  it.each([0, 255])('show on a ground of %i, and leave the inside alone', (ground) => {
    const raster = blank(100, 60, ground);
    lineAround(raster, { x: 10, y: 10, width: 70, height: 40 }, { on: 10, off: 4, thick: 3 });
    expect(rhythm(raster, 10, 13, 76)).toEqual([7, 4, 10, 4, 10, 4, 10, 4, 10]);
    expect(at(raster, 13, 20)).toBe(ground);
    expect(at(raster, 9, 20)).toBe(ground);
  });

  it('have their number outside where there is room, else in the corner, and always whole', () => {
    const raster = blank(100, 100);
    expect(placesBeside(raster, { x: 40, y: 50, width: 40, height: 40 }, 7)[0]).toEqual({ x: 40, y: 23, width: 21, height: 27 });
    const [only, ...others] = placesBeside(raster, { x: 0, y: 0, width: 100, height: 100 }, 12);
    expect(only).toEqual({ x: 0, y: 0, width: 39, height: 27 });
    expect(others).toEqual([]);
  });

  it('of different numbers look different', () => {
    const looks = Array.from({ length: 20 }, (_, mark) => {
      const raster = blank(60, 40);
      stamp(raster, { x: 2, y: 2, width: 39, height: 27 }, mark);
      return Buffer.from(raster.data).toString('base64');
    });
    expect(new Set(looks).size).toBe(20);
  });
});

describe('the picture of a page', () => {
  it('shows the page with label and codes in different lines, and no bar drawn over', async () => {
    const { explained } = await explainSample('letter-upper-sideways', { pictures: true });
    const [page] = explained.pages;
    const { data, info } = await sharp(explained.pictures[0]).greyscale().raw().toBuffer({ resolveWithObject: true });
    expect([info.width, info.height]).toEqual([850, 1100]);
    const raster: GreyRaster = { ...blank(1, 1), width: info.width, height: info.height, data };
    const k = 100 / 72;
    const [label] = page?.onPage?.labels ?? [];
    const code = page?.onPage?.codes[0];
    if (!label || !code) throw new Error('a label with a code');
    // Lines stand 5 pixels outside their boxes.
    const row = (box: typeof label.box): number[] =>
      rhythm(raster, Math.round(box.y * k) - 5 + 1, Math.round(box.x * k) + 60, Math.round((box.x + box.width) * k) - 10);
    expect(row(label.box)).toEqual(expect.arrayContaining([24, 8]));
    expect(row(code.box)).toEqual(expect.arrayContaining([3, 4]));
    expect(Math.max(...row(code.box))).toBeLessThanOrEqual(4);

    const bare = await explainSample('letter-upper-sideways');
    expect(bare.explained.pictures).toEqual([]);
  });

  it('comes for every page that can be looked at', async () => {
    const { explained } = await explainSample('label-then-slip', { pictures: true });
    expect(explained.pictures).toHaveLength(2);
  });
});
