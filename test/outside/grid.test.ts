import { describe, expect, it } from 'vitest';
import { dotsPerPt, gridOf, wholeDots } from '../../src/geometry/grid.js';
import { lengthToPt, mmToPt, ptToMm } from '../../src/geometry/length.js';

describe('dots (handbook sections 0.2, 1.3 and 5.4)', () => {
  it.each([
    // dots, mm at 8 dots/mm, mil, mm at 300 dpi, mil: section 5.4, COMPUTED.
    [1, 0.125, 4.92, 0.0847, 3.33],
    [2, 0.25, 9.84, 0.1693, 6.67],
    [3, 0.375, 14.76, 0.254, 10],
    [4, 0.5, 19.69, 0.3387, 13.33],
    [5, 0.625, 24.61, 0.4233, 16.67],
    [6, 0.75, 29.53, 0.508, 20],
  ])('%i dots are %f mm on 8 dots/mm and %4$f mm on 300 dpi', (dots, mm8, mil8, mm300, mil300) => {
    const pt8 = lengthToPt({ value: dots, unit: 'dots' }, gridOf('8dpmm'));
    const pt300 = lengthToPt({ value: dots, unit: 'dots' }, gridOf('300dpi'));
    expect(ptToMm(pt8)).toBeCloseTo(mm8, 6);
    expect((pt8 / 72) * 1000).toBeCloseTo(mil8, 1);
    expect(ptToMm(pt300)).toBeCloseTo(mm300, 3);
    expect((pt300 / 72) * 1000).toBeCloseTo(mil300, 1);
  });

  it('8 dots/mm is 203.2 dpi, not 203: 4 in are 812.8 dots or 812.0 (section 0.2, COMPUTED)', () => {
    expect(gridOf('8dpmm').dpi).toBeCloseTo(203.2, 9);
    expect(288 * dotsPerPt(gridOf('8dpmm'))).toBeCloseTo(812.8, 9);
    expect(288 * dotsPerPt(gridOf('203dpi'))).toBeCloseTo(812, 9);
  });

  it('a 4×6 page is never a dot too large: 812 × 1218 or 1219 (section 1.3, COMPUTED)', () => {
    expect([wholeDots(288, gridOf('203dpi')), wholeDots(432, gridOf('203dpi'))]).toEqual([812, 1218]);
    expect([wholeDots(288, gridOf('8dpmm')), wholeDots(432, gridOf('8dpmm'))]).toEqual([812, 1219]);
    expect([wholeDots(288, gridOf('300dpi')), wholeDots(432, gridOf('300dpi'))]).toEqual([1200, 1800]);
  });

  it.each([
    // Section 11.6, COMPUTED: a module of 0.381 mm.
    ['8dpmm', 1, 3.048],
    ['300dpi', 1, 4.5],
    ['8dpmm', 0.4706, 1.434],
  ] as const)('a module of 15 mil on %s at scale %f is %f dots', (grid, scale, dots) => {
    expect(mmToPt(0.381) * scale * dotsPerPt(gridOf(grid))).toBeCloseTo(dots, 3);
  });
});
