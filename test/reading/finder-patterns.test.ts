import { describe, expect, it } from 'vitest';
import { qrByFinders } from '../../src/reading/finder-patterns.js';
import type { GreyRaster } from '../../src/reading/source.js';
import { rasterWith } from './drawn-page.js';

type Rect = readonly [number, number, number, number];

/** The parts of a finder pattern with modules of `m` pixels, as ISO/IEC 18004 draws it: a ring of one module, white, a square of three. */
const finder = (x: number, y: number, m: number): readonly Rect[] => [
  [x, y, 7 * m, m],
  [x, y + 6 * m, 7 * m, m],
  [x, y, m, 7 * m],
  [x + 6 * m, y, m, 7 * m],
  [x + 2 * m, y + 2 * m, 3 * m, 3 * m],
];
/** 25 modules either way from (30, 30), a pattern in as many corners as told. */
const code = (m: number, corners: number): GreyRaster => {
  const far = 30 + 18 * m;
  const places = [[30, 30] as const, [far, 30] as const, [30, far] as const].slice(0, corners);
  return rasterWith(300, 300, [...places.flatMap(([x, y]) => finder(x, y, m)), [30 + 9 * m, 30 + 9 * m, 5 * m, 4 * m]]);
};
const box = (m: number) => ({ x: 20, y: 20, width: (25 * m) / 1.5, height: (25 * m) / 1.5 });

describe('qrByFinders', () => {
  it.each([3, 4, 6])('sees where a code with modules of %i pixels is by its three patterns, to half a module', (m) => {
    const found = qrByFinders(code(m, 3), box(m));
    for (const [told, drawn] of [
      [found?.x, 20],
      [found?.y, 20],
      [found?.width, (25 * m) / 1.5],
      [found?.height, (25 * m) / 1.5],
    ])
      expect(Math.abs((told ?? NaN) - (drawn ?? NaN))).toBeLessThan(m / 2 / 1.5 + 0.1);
  });

  it('needs three of them, in a square', () => {
    expect(qrByFinders(code(6, 2), box(6))).toBeUndefined();
    expect(qrByFinders(code(6, 3), { ...box(6), height: 60 })).toBeUndefined();
  });

  it('sees none in bars, and none in a picture', () => {
    const bars = Array.from({ length: 20 }, (_, at): Rect => [30 + 8 * at, 30, 2 + 2 * (at % 3), 150]);
    expect(qrByFinders(rasterWith(300, 300, bars), box(6))).toBeUndefined();
    expect(qrByFinders(rasterWith(300, 300, [[30, 30, 150, 150]]), box(6))).toBeUndefined();
  });
});
