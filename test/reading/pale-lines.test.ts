import { describe, expect, it } from 'vitest';
import { paleLines } from '../../src/reading/pale-lines.js';
import type { GreyRaster } from '../../src/reading/source.js';
import { seeded } from '../samples/content.js';
import { rasterWith } from './drawn-page.js';

/** A page of 600×800 pixels, its paper 250 with grain, and what `draw` says darker than that. */
function scan(draw: (x: number, y: number) => number): GreyRaster {
  const grain = seeded('grain of paper');
  const page = rasterWith(600, 800, []);
  for (let y = 0; y < 800; y++) for (let x = 0; x < 600; x++) page.data[y * 600 + x] = 246 + grain(9) - draw(x, y);
  return page;
}

const dashes = (x: number): number => (x % 9 < 5 ? 40 : 0);
const rowsOf = (page: GreyRaster): readonly number[] =>
  paleLines(page)
    .filter(({ level }) => level)
    .map(({ box }) => Math.round(box.y * page.pixelsPerPt));

describe('paleLines', () => {
  it('finds dashes too light to be ink from edge to edge, level and upright', () => {
    expect(rowsOf(scan((x, y) => (y === 500 ? dashes(x) : 0))).map((row) => Math.abs(row - 500) <= 1)).toEqual([true]);
    const [upright, ...others] = paleLines(scan((x, y) => (x === 300 ? dashes(y) : 0)));
    expect(others).toEqual([]);
    expect(upright).toMatchObject({ level: false, dashed: true });
    expect(upright?.box.height).toBeGreaterThan(500);
  });

  it('lets words stand in it', () => {
    const page = scan((x, y) => (x > 250 && x < 310 ? (Math.abs(y - 500) < 5 ? 230 : 0) : y === 500 ? dashes(x) : 0));
    expect(rowsOf(page)).toHaveLength(1);
  });

  it('finds none in grain, in a filled area, across a label, or along half of the page', () => {
    expect(paleLines(scan(() => 0))).toEqual([]);
    expect(paleLines(scan((_, y) => (y > 480 && y < 520 ? 40 : 0)))).toEqual([]);
    expect(
      paleLines(scan((x, y) => (y === 500 ? dashes(x) : x > 150 && x < 450 && Math.floor(x / 3) % 2 === 0 && y > 300 ? 230 : 0))),
    ).toEqual([]);
    expect(paleLines(scan((x, y) => (y === 500 && x < 300 ? dashes(x) : 0)))).toEqual([]);
  });

  it('says how far it goes', () => {
    const [line] = paleLines(scan((x, y) => (y === 500 && x > 60 ? dashes(x) : 0)));
    expect(line?.box.x).toBeGreaterThan(30);
  });

  it('has nothing to say of a raster smaller than a part', () => expect(paleLines(rasterWith(3, 2, []))).toEqual([]));
});
