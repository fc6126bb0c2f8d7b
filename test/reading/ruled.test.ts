import { describe, expect, it } from 'vitest';
import { ruledLines } from '../../src/reading/ruled.js';
import { rasterWith } from './drawn-page.js';

/** Pixels are 2/3 pt: 150 of them are 100 pt. */
const found = (rects: readonly (readonly [number, number, number, number])[]) =>
  ruledLines(rasterWith(300, 300, rects)).map(({ box, level, dashed }) => [
    level ? 'level' : 'upright',
    dashed ? 'dashed' : 'solid',
    ...[box.x, box.y, box.width, box.height].map((each) => Math.round(each * 1.5)),
  ]);

describe('ruledLines', () => {
  it('finds level and upright lines with their thickness', () => {
    expect(found([[20, 40, 200, 2]])).toEqual([['level', 'solid', 20, 40, 200, 2]]);
    expect(found([[40, 20, 3, 200]])).toEqual([['upright', 'solid', 40, 20, 3, 200]]);
  });

  it('keeps two lines apart that run side by side or behind each other', () => {
    expect(
      found([
        [20, 40, 200, 1],
        [20, 44, 200, 1],
      ]),
    ).toHaveLength(2);
    expect(
      found([
        [10, 40, 100, 1],
        [150, 40, 100, 1],
      ]),
    ).toHaveLength(2);
  });

  it('sees a dashed line as one', () => {
    const dashes = Array.from({ length: 16 }, (_, index) => [20 + index * 14, 60, 8, 2] as const);
    expect(found(dashes)).toEqual([['level', 'dashed', 20, 60, 15 * 14 + 8, 2]]);
  });

  it('takes no short stroke, no thick bar, and no dots far apart for a line', () => {
    expect(found([[20, 40, 45, 2]])).toEqual([]);
    expect(found([[20, 40, 200, 14]])).toEqual([]);
    expect(found(Array.from({ length: 10 }, (_, index) => [10 + index * 25, 60, 3, 2] as const))).toEqual([]);
  });

  it('takes no line of type for a line, whose strokes go on above and below', () => {
    const strokes = Array.from({ length: 40 }, (_, index) => [20 + index * 6, 60 + (index % 3), 3, 9] as const);
    expect(found(strokes)).toEqual([]);
  });

  it('ends a line where it runs into a filled area, and is no line with it', () => {
    const area = [200, 41, 40, 60] as const;
    expect(found([[20, 40, 200, 2], area])).toEqual([['level', 'solid', 20, 40, 220, 2]]);
    expect(found([[20, 98, 200, 2], area])).toEqual([['level', 'solid', 20, 98, 220, 2]]);
    const beside = [41, 200, 60, 40] as const;
    expect(found([[40, 20, 2, 200], beside])).toEqual([['upright', 'solid', 40, 20, 2, 220]]);
  });

  it("counts from the raster's own origin", () => {
    const raster = { ...rasterWith(300, 300, [[15, 30, 150, 3]]), origin: { x: 100, y: 50 } };
    expect(ruledLines(raster)[0]?.box).toEqual({ x: 110, y: 70, width: 100, height: 2 });
  });
});
