import { describe, expect, it } from 'vitest';
import type { Box } from '../../src/geometry/box.js';
import { mmToPt } from '../../src/geometry/length.js';
import { withoutSpecks } from '../../src/locating/specks.js';

const INK: Box = { x: 100, y: 100, width: 200, height: 200 };
/** A grain of this size, this far to the left of some ink, mm. */
const grain = (size: number, far: number): Box => ({ x: 100 - mmToPt(far + size), y: 150, width: mmToPt(size), height: mmToPt(size) });
const isLeft = (...grains: readonly Box[]): readonly boolean[] => {
  const left = withoutSpecks([INK, ...grains]);
  expect(left).toContain(INK);
  return grains.map((each) => left.includes(each));
};

describe('withoutSpecks', () => {
  it('leaves away small grains that stand alone, and larger ones that are far from everything', () => {
    expect(isLeft(grain(0.4, 2.5))).toEqual([false]);
    expect(isLeft(grain(0.7, 5.5))).toEqual([false]);
  });

  it('keeps dots near ink, in rows, and what is larger', () => {
    expect(isLeft(grain(0.4, 1.5))).toEqual([true]);
    expect(isLeft(grain(0.4, 2.5), grain(0.4, 4))).toEqual([true, true]);
    expect(isLeft(grain(0.7, 4))).toEqual([true]);
    expect(isLeft(grain(1, 8))).toEqual([true]);
  });
});
