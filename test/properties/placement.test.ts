import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { area, contains, grow, intersection, union, type Box } from '../../src/geometry/box.js';
import {
  addTurns,
  applyToBox,
  applyToPoint,
  compose,
  invert,
  oppositeTurn,
  placementMatrix,
  turnedSize,
  TURNS,
  type Turn,
} from '../../src/geometry/placement.js';

const finite = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true, noDefaultInfinity: true });
const box: fc.Arbitrary<Box> = fc.record({ x: finite(-500, 900), y: finite(-500, 900), width: finite(1, 900), height: finite(1, 900) });
const turn = fc.constantFrom<Turn>(...TURNS);
const scale = finite(0.1, 4);
const point = fc.record({ x: finite(-1000, 1000), y: finite(-1000, 1000) });
const placement = fc.tuple(box, turn, scale, finite(-100, 600), finite(-100, 600)).map((each) => placementMatrix(...each));

const near = (a: number, b: number, slack = 1e-6): void => {
  expect(Math.abs(a - b)).toBeLessThanOrEqual(slack);
};
const samePoint = (a: { x: number; y: number }, b: { x: number; y: number }): void => {
  near(a.x, b.x);
  near(a.y, b.y);
};
const sameBox = (a: Box, b: Box): void => {
  samePoint(a, b);
  near(a.width, b.width);
  near(a.height, b.height);
};

describe('placements', () => {
  it('undo themselves', () => {
    fc.assert(
      fc.property(placement, point, (matrix, { x, y }) => {
        const there = applyToPoint(matrix, x, y);
        samePoint(applyToPoint(invert(matrix), there.x, there.y), { x, y });
      }),
    );
  });

  it('compose in the order written: first, then second', () => {
    fc.assert(
      fc.property(placement, placement, point, (first, second, { x, y }) => {
        const half = applyToPoint(first, x, y);
        const direct = applyToPoint(compose(first, second), x, y);
        samePoint(direct, applyToPoint(second, half.x, half.y));
      }),
    );
  });

  it('put the turned and scaled box with its top-left corner where asked', () => {
    fc.assert(
      fc.property(box, turn, scale, finite(0, 300), finite(0, 300), (source, by, factor, x, y) => {
        const size = turnedSize(source.width, source.height, by);
        const drawn = applyToBox(placementMatrix(source, by, factor, x, y), source);
        sameBox(drawn, { x, y, width: size.width * factor, height: size.height * factor });
      }),
    );
  });

  it('turn clockwise: at 90° the top-left corner goes to the top right', () => {
    fc.assert(
      fc.property(box, scale, (source, factor) => {
        const matrix = placementMatrix(source, 90, factor, 0, 0);
        samePoint(applyToPoint(matrix, source.x, source.y), { x: source.height * factor, y: 0 });
        samePoint(applyToPoint(matrix, source.x + source.width, source.y), { x: source.height * factor, y: source.width * factor });
      }),
    );
  });

  it('never mirror', () => {
    fc.assert(
      fc.property(placement, ([a, b, c, d]) => {
        expect(a * d - b * c).toBeGreaterThan(0);
      }),
    );
  });

  it('bring a box back after four quarter turns', () => {
    fc.assert(
      fc.property(box, (start) => {
        let now = start;
        for (let i = 0; i < 4; i++) now = applyToBox(placementMatrix(now, 90, 1, start.x, start.y), now);
        sameBox(now, start);
      }),
    );
  });

  it('turns add up, and a turn and its opposite are none', () => {
    fc.assert(
      fc.property(turn, turn, (a, b) => {
        expect(TURNS).toContain(addTurns(a, b));
        expect(addTurns(a, oppositeTurn(a))).toBe(0);
        expect(addTurns(a, b)).toBe((a + b) % 360);
      }),
    );
  });
});

describe('boxes', () => {
  it('a union holds all its parts and is no larger than needed', () => {
    fc.assert(
      fc.property(fc.array(box, { minLength: 1, maxLength: 6 }), (boxes) => {
        const all = union(boxes);
        if (!all) throw new Error('no union of some boxes');
        for (const each of boxes) expect(contains(all, each, 1e-6)).toBe(true);
        near(all.x, Math.min(...boxes.map(({ x }) => x)));
        near(all.y + all.height, Math.max(...boxes.map(({ y, height }) => y + height)));
      }),
    );
  });

  it('an intersection lies in both and is the same both ways', () => {
    fc.assert(
      fc.property(box, box, (a, b) => {
        const shared = intersection(a, b);
        expect(intersection(b, a)).toEqual(shared);
        if (!shared) return;
        expect(contains(a, shared, 1e-6) && contains(b, shared, 1e-6)).toBe(true);
        expect(area(shared)).toBeLessThanOrEqual(Math.min(area(a), area(b)) + 1e-6);
      }),
    );
  });

  it('growing and shrinking by the same gives the same box', () => {
    fc.assert(
      fc.property(box, finite(0, 50), (each, by) => {
        sameBox(grow(grow(each, by), -by), each);
      }),
    );
  });
});
