import { describe, expect, it } from 'vitest';
import { boxFromCorners, type Box } from '../../src/geometry/box.js';
import { dotsOutOfReach, inkBeyondPage } from '../../src/proof/out-of-reach.js';
import type { GreyRaster } from '../../src/reading/source.js';

/** A page of 100 × 150 pt, one pixel a pt, white but for black boxes. */
function page(...black: readonly Box[]): GreyRaster {
  const data = new Uint8Array(100 * 150).fill(255);
  for (const { x, y, width, height } of black) {
    for (let row = y; row < y + height; row++) data.fill(0, row * 100 + x, row * 100 + x + width);
  }
  return { width: 100, height: 150, data, pixelsPerPt: 1, origin: { x: 0, y: 0 } };
}
const media = { name: 'small', width: 100, height: 150 };
const frame = [
  boxFromCorners(0, 0, 100, 1),
  boxFromCorners(0, 149, 100, 150),
  boxFromCorners(0, 0, 1, 150),
  boxFromCorners(99, 0, 100, 150),
];

describe('dotsOutOfReach', () => {
  const reach = { x: 3, y: 2, width: 90, height: 140 };

  it('counts every dot beyond each of the four sides', () => {
    expect(dotsOutOfReach(page(...frame), reach)).toBe(2 * 100 + 2 * 148);
    expect(frame.map((side) => dotsOutOfReach(page(side), reach))).toEqual([100, 100, 150, 150]);
  });

  it('counts none inside, none when all is reached, and no specks', () => {
    expect(dotsOutOfReach(page({ x: 3, y: 2, width: 90, height: 140 }), reach)).toBe(0);
    expect(dotsOutOfReach(page(...frame), { x: 0, y: 0, width: 100, height: 150 })).toBe(0);
    expect(dotsOutOfReach(page({ x: 0, y: 0, width: 3, height: 3 }), reach)).toBe(0);
  });
});

describe('inkBeyondPage', () => {
  const drawn = { x: 0, y: 0, width: 100, height: 150 };
  const moved = (x: number, y: number): boolean => inkBeyondPage(page(...frame), [1, 0, 0, 1, x, y], { ...drawn, x, y }, media);

  it('is there as soon as a side leaves the page by more than a hair', () => {
    expect(moved(0, 0)).toBe(false);
    expect(moved(0.7, -0.7)).toBe(false);
    expect([moved(3, 0), moved(-3, 0), moved(0, 3), moved(0, -3)]).toEqual([true, true, true, true]);
  });

  it('is not there when only white paper leaves it', () => {
    const inner = page({ x: 20, y: 20, width: 60, height: 60 });
    expect(inkBeyondPage(inner, [1, 0, 0, 1, 15, 0], { ...drawn, x: 15 }, media)).toBe(false);
    expect(inkBeyondPage(inner, [1, 0, 0, 1, 25, 0], { ...drawn, x: 25 }, media)).toBe(true);
  });

  it('follows a turn', () => {
    // Clockwise by a quarter: what was at the top comes to the right.
    const top = page(boxFromCorners(0, 0, 100, 1));
    expect(inkBeyondPage(top, [0, 1, -1, 0, 104, 0], { x: -46, y: 0, width: 150, height: 100 }, media)).toBe(true);
    expect(inkBeyondPage(top, [0, 1, -1, 0, 98, 0], { x: -52, y: 0, width: 150, height: 100 }, media)).toBe(false);
  });
});
