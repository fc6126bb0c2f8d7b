import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { area, bottom, boxFromCorners, centre, contains, grow, intersection, right, union, type Box } from '../../src/geometry/box.js';

const coordinate = fc.integer({ min: -2000, max: 2000 });
const boxes = fc.tuple(coordinate, coordinate, coordinate, coordinate).map((corners) => boxFromCorners(...corners));

describe('boxes', () => {
  it('are made of two corners in any order', () => {
    expect(boxFromCorners(10, 60, 30, 20)).toEqual({ x: 10, y: 20, width: 20, height: 40 });
    fc.assert(
      fc.property(coordinate, coordinate, coordinate, coordinate, (x0, y0, x1, y1) => {
        expect(boxFromCorners(x0, y0, x1, y1)).toEqual(boxFromCorners(x1, y0, x0, y1));
      }),
    );
  });

  it('tell their far edges, their middle and their area', () => {
    const box: Box = { x: 10, y: 20, width: 30, height: 60 };
    expect([right(box), bottom(box), centre(box), area(box)]).toEqual([40, 80, { x: 25, y: 50 }, 1800]);
  });

  it('share what lies in both, and nothing where they only touch', () => {
    const box: Box = { x: 0, y: 0, width: 10, height: 10 };
    expect(intersection(box, { x: 5, y: -5, width: 20, height: 10 })).toEqual({ x: 5, y: 0, width: 5, height: 5 });
    expect(intersection(box, { x: 10, y: 0, width: 5, height: 5 })).toBeUndefined();
    expect(intersection(box, { x: 5, y: 5, width: 0, height: 5 })).toBeUndefined();
    fc.assert(
      fc.property(boxes, boxes, (a, b) => {
        const shared = intersection(a, b);
        expect(intersection(b, a)).toEqual(shared);
        if (!shared) return;
        expect(area(shared)).toBeGreaterThan(0);
        expect(contains(a, shared) && contains(b, shared)).toBe(true);
      }),
    );
  });

  it('join in the smallest box around them', () => {
    expect(union([])).toBeUndefined();
    fc.assert(
      fc.property(fc.array(boxes, { minLength: 1, maxLength: 5 }), (all) => {
        const around = union(all);
        if (!around) throw new Error('no union');
        expect(all.every((each) => contains(around, each))).toBe(true);
        expect(Math.min(...all.map(({ x }) => x))).toBe(around.x);
        expect(Math.max(...all.map(bottom))).toBe(bottom(around));
      }),
    );
  });

  it('contain with slack on each side', () => {
    const box: Box = { x: 0, y: 0, width: 10, height: 10 };
    const out: Box = { x: -2, y: 1, width: 13, height: 5 };
    expect([0, 1, 2].map((slack) => contains(box, out, slack))).toEqual([false, false, true]);
  });

  it('grow evenly, and shrink to nothing about their middle, never below', () => {
    const box: Box = { x: 10, y: 20, width: 30, height: 60 };
    expect(grow(box, 5)).toEqual({ x: 5, y: 15, width: 40, height: 70 });
    expect(grow(box, -20)).toEqual({ x: 25, y: 40, width: 0, height: 20 });
    fc.assert(
      fc.property(boxes, fc.integer({ min: 0, max: 100 }), (each, by) => {
        expect(grow(grow(each, by), -by)).toEqual(each);
      }),
    );
  });
});
