import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inToPt, mmToPt } from '../../src/geometry/length.js';
import { isScaledSize, nearestSize, nearestSizeOfInk } from '../../src/locating/label-sizes.js';

const side = fc.double({ min: 20, max: 900, noNaN: true });

describe('label sizes', () => {
  it.each([
    ['4x6in', inToPt(4), inToPt(6)],
    ['100x150mm', mmToPt(100), mmToPt(150)],
    ['a6', mmToPt(105), mmToPt(148)],
    ['4x8in', inToPt(4), inToPt(8)],
    ['4x6.75in', inToPt(4), inToPt(6.75)],
  ])('%s is known either way round', (name, width, height) => {
    expect(nearestSize(width, height)).toEqual({ name, likeness: 1 });
    expect(nearestSize(height, width)).toEqual({ name, likeness: 1 });
  });

  it('a known size at 85 to 115 % keeps its proportions', () => {
    for (const factor of [0.86, 0.9, 1, 1.1, 1.14]) {
      expect(isScaledSize(factor * 288, factor * 432)).toBe(true);
      expect(isScaledSize(factor * 432, factor * 288)).toBe(true);
    }
    expect(isScaledSize(0.8 * 288, 0.8 * 432)).toBe(false);
    expect(isScaledSize(1.2 * 288, 1.2 * 432)).toBe(false);
    expect(isScaledSize(288, 446)).toBe(false);
  });

  it('a likeness lies between 0 and 1, for edges and for ink', () => {
    fc.assert(
      fc.property(side, side, (width, height) => {
        for (const { likeness } of [nearestSize(width, height), nearestSizeOfInk(width, height)]) {
          expect(likeness).toBeGreaterThanOrEqual(0);
          expect(likeness).toBeLessThanOrEqual(1.01);
        }
      }),
    );
  });

  it('ink may end well inside the label, but not beyond it', () => {
    const inside = nearestSizeOfInk(inToPt(3.7), inToPt(5.6)).likeness;
    const beyond = nearestSizeOfInk(inToPt(4.6), inToPt(8.9)).likeness;
    expect(inside).toBeGreaterThan(0.9);
    expect(beyond).toBeLessThan(0.6);
    expect(nearestSize(inToPt(3.7), inToPt(5.6)).likeness).toBeLessThan(inside);
  });
});
