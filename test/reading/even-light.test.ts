import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evenLight } from '../../src/reading/even-light.js';
import type { GreyRaster } from '../../src/reading/source.js';
import { rasterWith } from './drawn-page.js';

type Light = (u: number, v: number) => number;

/** The raster as a scanner sees it: `light` is its share of the paper's grey at a place, -1 to 1 across; `noise` is its spread in grey. */
function lit(raster: GreyRaster, light: Light, noise = 0): GreyRaster {
  const { width, height, data } = raster;
  const seen = data.map((grey, at) => {
    const [x, y] = [at % width, Math.floor(at / width)];
    const spread = (((x * 73 + y * 151 + x * y) % 11) / 5 - 1) * noise;
    return Math.max(0, Math.min(255, grey * light((2 * x) / width - 1, (2 * y) / height - 1) + spread));
  });
  return { ...raster, data: seen };
}

const inkOf = ({ data }: GreyRaster): string => data.reduce((marks, grey) => marks + (grey < 200 ? '#' : '.'), '');
/** A frame, a banner and some bars. */
const page = rasterWith(320, 448, [
  [40, 40, 200, 2],
  [40, 340, 200, 2],
  [40, 40, 2, 300],
  [238, 40, 2, 302],
  [42, 60, 196, 30],
  ...Array.from({ length: 20 }, (_, index) => [60 + 8 * index, 200, 4, 60] as const),
]);

describe('evenLight', () => {
  it('gives white paper back as it is, and a little grey one too', () => {
    expect(evenLight(page) === page).toBe(true);
    const greyish = lit(page, () => 0.95);
    expect(evenLight(greyish) === greyish).toBe(true);
  });

  it('takes a shadow towards a corner or an edge from the paper and leaves the ink', () => {
    const shadows: readonly Light[] = [
      (u, v) => 0.8 - 0.1 * u - 0.1 * v,
      (u, v) => 0.7 + 0.2 * v - 0.05 * u * u,
      (u) => 0.9 - 0.1 * (u + 1) ** 2,
      () => 0.7,
    ];
    for (const light of shadows) {
      const dark = lit(page, light, 6);
      expect(inkOf(dark) === inkOf(page)).toBe(false);
      expect(inkOf(evenLight(dark)) === inkOf(page)).toBe(true);
    }
  });

  it('law: however evenly or unevenly lit, a page has the ink that was on it', () => {
    const slope = fc.integer({ min: -12, max: 12 }).map((each) => each / 100);
    fc.assert(
      fc.property(fc.integer({ min: 65, max: 80 }), slope, slope, slope, (least, a, b, c) => {
        const light: Light = (u, v) =>
          Math.min(1, least / 100 + Math.abs(a) + Math.abs(b) + Math.abs(c)) -
          Math.abs(a) -
          Math.abs(b) -
          Math.abs(c) +
          a * u +
          b * v +
          c * u * v;
        expect(inkOf(evenLight(lit(page, light))) === inkOf(page)).toBe(true);
      }),
      { seed: 20261129, numRuns: 40 },
    );
  });

  it('leaves what is no paper under one light: a picture, two halves, a page too dark', () => {
    const halves = lit(page, (u) => (u < 0.1 ? 1 : 0.5));
    expect(evenLight(halves) === halves).toBe(true);
    const picture = lit(page, (u, v) => 0.6 + 0.3 * Math.sin(9 * u) * Math.cos(11 * v));
    expect(evenLight(picture) === picture).toBe(true);
    const night = lit(page, (u) => 0.35 - 0.2 * u);
    expect(evenLight(night) === night).toBe(true);
  });

  it('leaves a raster smaller than a block', () => {
    const small = rasterWith(20, 20, [[2, 2, 4, 4]]);
    expect(evenLight(small) === small).toBe(true);
  });
});
