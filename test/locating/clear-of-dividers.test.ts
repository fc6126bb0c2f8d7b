import { describe, expect, it } from 'vitest';
import type { Box } from '../../src/geometry/box.js';
import { clearOfDividers } from '../../src/locating/clear-of-dividers.js';
import { rasterWith } from '../reading/drawn-page.js';

/** A label from 60 to 300 pt down, a line to cut at 48 pt with a word in it that reaches from 44 to 53 pt; the raster has 1.5 pixels a pt. */
const raster = rasterWith(600, 600, [
  [60, 90, 300, 360],
  [0, 72, 600, 1],
  [150, 66, 60, 14],
]);
const LINE: Box = { x: 0, y: 48, width: 400, height: 0.7 };
const BOX: Box = { x: 40, y: 44, width: 200, height: 256 };
const turned = ({ x, y, width, height }: Box): Box => ({ x: y, y: x, width: height, height: width });

describe('clearOfDividers', () => {
  it('takes the words in a line to cut off a box, at its head and at its foot', () => {
    const { y, height } = clearOfDividers(BOX, [LINE], raster);
    expect(y).toBeGreaterThan(58);
    expect(y).toBeLessThanOrEqual(60);
    expect(y + height).toBeCloseTo(300);
    const below = rasterWith(600, 600, [
      [60, 90, 300, 360],
      [0, 468, 600, 1],
      [150, 462, 60, 14],
    ]);
    const cut = clearOfDividers({ x: 40, y: 60, width: 200, height: 258 }, [{ ...LINE, y: 312 }], below);
    expect(cut.y).toBe(60);
    expect(cut.y + cut.height).toBeGreaterThanOrEqual(299.3);
    expect(cut.y + cut.height).toBeLessThan(302);
  });

  it('does so for lines from top to bottom', () => {
    const data = new Uint8Array(raster.data.length);
    for (let y = 0; y < 600; y++) for (let x = 0; x < 600; x++) data[x * 600 + y] = raster.data[y * 600 + x] as number;
    const { x } = clearOfDividers(turned(BOX), [turned(LINE)], { ...raster, data });
    expect(x).toBeGreaterThan(58);
    expect(x).toBeLessThanOrEqual(60);
  });

  it('leaves a box with the line deep inside or beside it, with a short line, or without white behind it', () => {
    expect(clearOfDividers(BOX, [{ ...LINE, y: 150 }], raster)).toEqual(BOX);
    expect(clearOfDividers(BOX, [{ ...LINE, y: 20 }], raster)).toEqual(BOX);
    expect(clearOfDividers(BOX, [{ ...LINE, width: 200 }], raster)).toEqual(BOX);
    expect(clearOfDividers(BOX, [LINE], rasterWith(600, 600, [[60, 60, 300, 390]]))).toEqual(BOX);
  });
});
