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
    const dots = burn(raster(200, 160, (x, y) => (x >= 40 && x < 120 && y >= 40 && y < 120 ? tone : 255)));
    expect(Math.abs(burnedShare(dots, [48, 48, 112, 112]) - (255 - tone) / 255)).toBeLessThan(0.05);
    expect(burnedShare(dots, [120, 0, 200, 160])).toBe(0);
  });

  it.each([180, 205, 225])('takes the page’s own tone for paper: grey %i with black and a darker panel on it', (paper) => {
    const black: Paint = (x, y) => (y < 20 && x % 5 < 2 ? 0 : paper + ((x * 7 + y * 13) % 9) - 4);
    const dots = burn(raster(200, 160, (x, y) => (x >= 40 && x < 120 && y >= 80 && y < 120 ? 110 : black(x, y))));
    expect(burnedShare(dots, [0, 30, 200, 70])).toBe(0);
    expect(burnedShare(dots, [0, 0, 200, 20])).toBeCloseTo(0.4, 6);
    expect(Math.abs(burnedShare(dots, [48, 88, 112, 112]) - (255 - 110) / 255)).toBeLessThan(0.05);
  });

  it('draws no line where coloured paper meets a white field', () => {
    const dots = burn(raster(200, 160, (x, y) => (x >= 40 && x < 120 && y >= 80 && y < 120 ? 255 : 181)));
    expect(burnedShare(dots, [0, 0, 200, 160])).toBe(0);
  });

  it('takes a page that is dark all over for ink, not for paper', () => {
    expect(burnedShare(burn(raster(64, 64, () => 120)), [0, 0, 64, 64])).toBeCloseTo((255 - 120) / 255, 1);
  });

  it('has no screen where it is told so, and goes on with it beside', () => {
    const grey = raster(200, 160, (_, y) => (y < 60 ? 205 : y < 80 ? 100 : 255));
    const pt = (dots: number): number => (dots * 72) / 203;
    const dots = burn(grey, [{ x: pt(40), y: pt(-8), width: pt(60), height: pt(200) }]);
    expect(burnedShare(dots, [40, 0, 100, 50])).toBe(0);
    expect(burnedShare(dots, [40, 68, 100, 72])).toBe(1);
    expect(burnedShare(dots, [104, 0, 200, 50])).toBeGreaterThan(0.15);
  });

  it.each([110, 150, 175])('sets type of grey %i in solid dots, whole', (ink) => {
    const stroke: Paint = (x, y) => (x >= 20 && x < 23 && y >= 10 && y < 30 ? ink : 255);
    const dots = burn(raster(48, 40, stroke));
    expect(burnedShare(dots, [20, 10, 23, 30])).toBe(1);
    expect(burnedShare(dots, [0, 0, 20, 40])).toBe(0);
    expect(burnedShare(dots, [23, 0, 48, 40])).toBe(0);
  });

  it('sets small type solid where it is told so, however pale', () => {
    const pt = (dots: number): number => (dots * 72) / 203;
    const grey = raster(60, 40, (x, y) => (x >= 20 && x < 23 && y >= 10 && y < 30 ? 225 : 255));
    const word = [{ x: pt(16), y: pt(8), width: pt(12), height: pt(24) }];
    expect(burnedShare(burn(grey, [], word), [20, 10, 23, 30])).toBe(1);
    expect(burnedShare(burn(grey, word, word), [20, 10, 23, 30])).toBe(1);
    expect(burnedShare(burn(grey, word), [20, 10, 23, 30])).toBe(0);
    expect(burnedShare(burn(grey, [], word), [0, 0, 20, 40])).toBe(0);
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
