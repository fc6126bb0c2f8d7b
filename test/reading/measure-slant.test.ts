import { describe, expect, it } from 'vitest';
import { measureSlant } from '../../src/reading/measure-slant.js';
import type { GreyRaster } from '../../src/reading/source.js';
import { seeded } from '../samples/content.js';
import { rasterWith } from './drawn-page.js';

type Draw = (x: number, y: number) => boolean;

/** A page of 600×800 pixels with ink wherever `draw` says, asked about points that are turned clockwise about its centre. */
function turned(degrees: number, ...draws: readonly Draw[]): GreyRaster {
  const page = rasterWith(600, 800, []);
  const [cos, sin] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
  for (let y = 0; y < 800; y++) {
    for (let x = 0; x < 600; x++) {
      const [u, v] = [x - 300, y - 400];
      if (draws.some((draw) => draw(cos * u + sin * v + 300, cos * v - sin * u + 400))) page.data[y * 600 + x] = 0;
    }
  }
  return page;
}

const bars: Draw = (x, y) => x > 120 && x < 420 && y > 150 && y < 260 && Math.floor(x / 3) % 5 < 2 + (Math.floor(x / 15) % 2);
const rules: Draw = (x, y) => x > 100 && x < 480 && [100, 300, 420, 640].some((at) => Math.abs(y - at) < 1.5);

/** Both, so that a page shows two directions. */
function overlaid(a: GreyRaster, b: GreyRaster): GreyRaster {
  return { ...a, data: a.data.map((grey, at) => Math.min(grey, b.data[at] ?? 255)) };
}

describe('measureSlant', () => {
  it.each([-4, -3, -1.35, -0.2, 0, 0.2, 0.9, 2.55, 3, 4])('tells %f degrees from bars and rules', (degrees) => {
    const { degrees: measured, sure } = measureSlant(turned(degrees, bars, rules));
    expect(sure).toBe(true);
    expect(Math.abs(measured - degrees)).toBeLessThan(0.1);
  });

  it('is positive clockwise: a rule that falls towards the right', () => {
    const falling = rasterWith(600, 800, []);
    for (let x = 60; x < 540; x++) for (const at of [200, 400, 600]) falling.data[(at + Math.round(x * 0.03)) * 600 + x] = 0;
    expect(measureSlant(falling).degrees).toBeCloseTo((Math.atan(0.03) * 180) / Math.PI, 1);
  });

  it('sees through grain, grey paper and the shadow of the glass', () => {
    const draw = seeded('grain');
    const page = turned(1.7, bars, rules);
    const dull = page.data.map((grey, at) => (at < 600 * 10 ? 40 : Math.round(grey * 0.6) + draw(40) + 20));
    const { degrees, sure } = measureSlant({ ...page, data: dull });
    expect([Math.abs(degrees - 1.7) < 0.1, sure]).toEqual([true, true]);
  });

  it('is not sure where nothing tells: blank, too small, specks, discs', () => {
    const draw = seeded('specks');
    const specks = rasterWith(600, 800, []);
    for (let speck = 0; speck < 3000; speck++) specks.data[draw(600 * 800)] = 0;
    const discs = turned(0, (x, y) => [150, 300, 450].some((at) => Math.hypot(x - at, y - 400) < 60));
    for (const page of [rasterWith(600, 800, []), rasterWith(3, 2, [[0, 0, 3, 1]]), specks, discs])
      expect(measureSlant(page).sure).toBe(false);
  });

  it('is not sure where a page shows two directions', () => {
    expect(measureSlant(overlaid(turned(0, bars), turned(2.5, rules))).sure).toBe(false);
    expect(measureSlant(overlaid(turned(-2, bars, rules), turned(2, bars, rules))).sure).toBe(false);
  });
});
