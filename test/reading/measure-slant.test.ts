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

/** Bars of random widths in a box, as codes have them. @param module pixels */
function code(name: string, module: number, [left, top, width, height]: readonly [number, number, number, number]): Draw {
  const draw = seeded(name);
  const dark = Array.from({ length: Math.ceil(width / module) }, () => draw(2) === 1);
  return (x, y) => x > left && x < left + width && y > top && y < top + height && dark[Math.floor((x - left) / module)] === true;
}

/** As a scanner sees a page: each pixel as grey as it is covered. */
function scanned(degrees: number, ...draws: readonly Draw[]): GreyRaster {
  const at = [0.125, 0.375, 0.625, 0.875];
  const parts = at.flatMap((dx) =>
    at.map((dy) =>
      turned(
        degrees,
        ...draws.map(
          (draw): Draw =>
            (x, y) =>
              draw(x + dx, y + dy),
        ),
      ),
    ),
  );
  const page = rasterWith(600, 800, []);
  return {
    ...page,
    data: page.data.map((_, index) => Math.round(parts.reduce((sum, { data }) => sum + (data[index] ?? 0), 0) / parts.length)),
  };
}

const twoRules: Draw = (x, y) => x > 100 && x < 500 && [100, 640].some((at) => Math.abs(y - at) < 0.7);
const twoCodes = (name: number): readonly Draw[] => [
  code(`a${name}`, 1.5 + 0.1 * (name % 7), [150, 150, 280, 90]),
  code(`b${name}`, 1.3 + 0.1 * (name % 5), [200, 500, 200, 50]),
];

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

  it.each([3, 20, 22, 41])('lets no bars of two codes that fall together by chance outweigh rules (%i)', (name) => {
    for (const degrees of [0, -0.8]) {
      const { degrees: measured, sure } = measureSlant(scanned(degrees, ...twoCodes(name), twoRules));
      expect(sure).toBe(true);
      expect(Math.abs(measured - degrees)).toBeLessThan(degrees === 0 ? 0.1 : 0.06);
    }
  });

  it.each([0, 20, 41])('compares no bars of one code with those of another far away (%i)', (name) => {
    expect(Math.abs(measureSlant(scanned(0, ...twoCodes(name))).degrees)).toBeLessThan(0.1);
  });

  it.each([15, 26, 29, 57, 59])('is sure of a page with little more than bars as narrow as pixels (%i)', (name) => {
    for (const degrees of [0, -0.8]) expect(measureSlant(scanned(degrees, ...twoCodes(name), twoRules)).sure).toBe(true);
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
