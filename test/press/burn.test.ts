import { describe, expect, it } from 'vitest';
import { burn } from '../../src/press/burn.js';
import type { GreyRaster } from '../../src/reading/source.js';

type Paint = (x: number, y: number) => number;

function raster(width: number, height: number, paint: Paint): GreyRaster {
  const data = new Uint8Array(width * height);
  for (let y = 0; y < height; y++) for (let x = 0; x < width; x++) data[y * width + x] = paint(x, y);
  return { width, height, data, pixelsPerPt: 203 / 72, origin: { x: 0, y: 0 } };
}

const burnedShare = ({ width, data }: GreyRaster, [x0, y0, x1, y1]: readonly [number, number, number, number]): number => {
  let burned = 0;
  for (let y = y0; y < y1; y++) for (let x = x0; x < x1; x++) if (data[y * width + x] === 0) burned += 1;
  return burned / ((x1 - x0) * (y1 - y0));
};

describe('burn', () => {
  it('leaves paper white, a scan’s noise too, and black black', () => {
    const noise = (x: number, y: number): number => 238 + ((x * 7 + y * 13) % 18);
    expect(burn(raster(40, 40, noise)).data.every((value) => value === 255)).toBe(true);
    expect(burn(raster(40, 40, () => 20)).data.every((value) => value === 0)).toBe(true);
  });

  it('makes dots of soft black edges as half grey would, with none beside them', () => {
    // A bar of 6 dots with edges of every share of ink.
    for (let share = 0; share <= 255; share += 5) {
      const grey = raster(40, 20, (x) => (x === 10 || x === 17 ? share : x > 10 && x < 17 ? 0 : 255));
      const { data } = burn(grey);
      expect(Array.from(data)).toEqual(Array.from(grey.data, (value) => (value < 128 ? 0 : 255)));
    }
  });

  it.each([90, 128, 170, 205])('sets even tone of grey %i in a screen of as many dots', (tone) => {
    const share = burnedShare(burn(raster(64, 64, () => tone)), [0, 0, 64, 64]);
    expect(Math.abs(share - (255 - tone) / 255)).toBeLessThan(0.05);
  });

  it.each([110, 150, 175])('sets type of grey %i in solid dots, whole', (ink) => {
    const stroke: Paint = (x, y) => (x >= 20 && x < 23 && y >= 10 && y < 30 ? ink : 255);
    const dots = burn(raster(48, 40, stroke));
    expect(burnedShare(dots, [20, 10, 23, 30])).toBe(1);
    expect(burnedShare(dots, [0, 0, 20, 40])).toBe(0);
    expect(burnedShare(dots, [23, 0, 48, 40])).toBe(0);
  });

  it('keeps white type on a grey panel clear', () => {
    const dots = burn(raster(60, 60, (x, y) => (x >= 28 && x < 32 && y >= 20 && y < 40 ? 255 : 140)));
    expect(burnedShare(dots, [28, 20, 32, 40])).toBe(0);
    expect(burnedShare(dots, [24, 20, 28, 40])).toBe(1);
  });

  it('takes rasters of any size', () => {
    for (const [width, height] of [
      [1, 1],
      [5, 3],
      [812, 1],
    ] as const)
      expect(burn(raster(width, height, () => 0)).data).toHaveLength(width * height);
  });
});
