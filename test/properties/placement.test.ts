import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { area, contains, grow, intersection, union, type Box } from '../../src/geometry/box.js';
import {
  addTurns,
  applyToBox,
  applyToPoint,
  boundsOf,
  compose,
  invert,
  oppositeTurn,
  placementMatrix,
  rotationAbout,
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

describe('rotations by any angle', () => {
  it('turn clockwise, keep their centre and every length, and undo themselves', () => {
    samePoint(applyToPoint(rotationAbout(0, 0, 90), 1, 0), { x: 0, y: 1 });
    fc.assert(
      fc.property(point, point, finite(-180, 180), (middle, { x, y }, degrees) => {
        const turned = rotationAbout(middle.x, middle.y, degrees);
        samePoint(applyToPoint(turned, middle.x, middle.y), middle);
        const at = applyToPoint(turned, x, y);
        near(Math.hypot(at.x - middle.x, at.y - middle.y), Math.hypot(x - middle.x, y - middle.y));
        samePoint(applyToPoint(rotationAbout(middle.x, middle.y, -degrees), at.x, at.y), { x, y });
      }),
    );
  });

  it('have bounds that hold every corner, and are the box itself under a placement', () => {
    fc.assert(
      fc.property(box, finite(-10, 10), placement, (each, degrees, matrix) => {
        const turned = rotationAbout(0, 0, degrees);
        const bounds = boundsOf(turned, each);
        for (const x of [each.x, each.x + each.width]) {
          for (const y of [each.y, each.y + each.height]) {
            expect(contains(bounds, { ...applyToPoint(turned, x, y), width: 0, height: 0 }, 1e-6)).toBe(true);
          }
        }
        sameBox(boundsOf(matrix, each), applyToBox(matrix, each));
      }),
    );
  });
});

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
