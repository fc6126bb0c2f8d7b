import { describe, expect, it } from 'vitest';
import { compareDrawings } from '../../src/proof/compare-drawings.js';
import type { GreyRaster } from '../../src/reading/source.js';

const PER_PT = 203 / 72;

interface Rectangle {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly grey?: number;
}

/** Dots of a 300 × 200 drawing. */
function drawing(...rectangles: readonly Rectangle[]): GreyRaster {
  const data = new Uint8Array(300 * 200).fill(255);
  for (const { x, y, width, height, grey = 0 } of rectangles) {
    for (let row = y; row < y + height; row++) data.fill(grey, row * 300 + x, row * 300 + x + width);
  }
  return { width: 300, height: 200, data, pixelsPerPt: PER_PT, origin: { x: 10, y: 20 } };
}

/** Upright strokes like letters: 3 dots wide, 20 high, 12 apart. */
const strokes = (count: number, dx = 0, grey = 0): Rectangle[] =>
  Array.from({ length: count }, (_, index) => ({ x: 40 + 12 * index + dx, y: 80, width: 3, height: 20, grey }));

const places = (one: GreyRaster, other: GreyRaster): number => compareDrawings(one, other).where.length;

describe('no difference', () => {
  it('between equal drawings, and blank ones', () => {
    expect(compareDrawings(drawing(...strokes(10)), drawing(...strokes(10)))).toEqual({ where: [], share: 0 });
    expect(compareDrawings(drawing(), drawing())).toEqual({ where: [], share: 0 });
  });

  it.each([1, 2, 3])('when letters stand %i dots aside', (dx) => {
    expect(places(drawing(...strokes(10)), drawing(...strokes(10, dx)))).toBe(0);
  });

  it('when edges are softened, or a thin line falls on two rows half as dark', () => {
    const soft = strokes(10).flatMap((each) => [{ ...each, x: each.x - 1, width: 5, grey: 170 }, each]);
    expect(places(drawing(...strokes(10)), drawing(...soft))).toBe(0);
    const line = { x: 20, y: 50, width: 200, height: 1 };
    expect(places(drawing(line), drawing({ ...line, height: 2, grey: 128 }))).toBe(0);
  });

  it('when a large shape is cut a little otherwise', () => {
    const large = { x: 50, y: 20, width: 150, height: 150 };
    expect(places(drawing(large), drawing({ ...large, width: 146, height: 147 }))).toBe(0);
  });
});

describe('a difference', () => {
  it('where letters are missing, from either, and where it is', () => {
    const [whole, part] = [drawing(...strokes(10)), drawing(...strokes(10).filter((_, index) => index < 4 || index > 6))];
    const { where, share } = compareDrawings(whole, part);
    expect(where).toHaveLength(1);
    expect(share).toBeCloseTo(0.3, 1);
    const [{ x, y, width, height }] = where as [Rectangle];
    // Strokes 4 to 6, in pt of the page.
    expect(x).toBeLessThan(10 + 88 / PER_PT);
    expect(x + width).toBeGreaterThan(10 + 115 / PER_PT);
    expect(y).toBeLessThan(20 + 80 / PER_PT);
    expect(y + height).toBeGreaterThan(20 + 100 / PER_PT);
    expect(places(part, whole)).toBe(1);
  });

  it('where other shapes stand: a box for a cross', () => {
    const [x, y] = [100, 80];
    const box = [
      { x, y, width: 20, height: 2 },
      { x, y: y + 18, width: 20, height: 2 },
      { x, y, width: 2, height: 20 },
      { x: x + 18, y, width: 2, height: 20 },
    ];
    const cross = [
      { x: x + 8, y, width: 3, height: 20 },
      { x, y: y + 8, width: 20, height: 3 },
    ];
    expect(places(drawing(...box), drawing(...cross))).toBe(1);
  });

  it('where a picture, a frame or a grey is missing', () => {
    const picture = { x: 50, y: 20, width: 150, height: 150 };
    expect(places(drawing(picture), drawing())).toBe(1);
    expect(places(drawing(), drawing({ ...picture, width: 4 }))).toBe(1);
    expect(places(drawing({ ...picture, grey: 180 }), drawing())).toBe(1);
    expect(places(drawing(picture), drawing({ ...picture, grey: 150 }))).toBe(1);
  });

  it('in two places far from each other', () => {
    const [one, other] = [
      { x: 20, y: 20, width: 20, height: 20 },
      { x: 250, y: 150, width: 20, height: 20 },
    ];
    expect(places(drawing(one, other), drawing())).toBe(2);
  });
});

it('drawings of different sizes are a bug of the caller', () => {
  expect(() => compareDrawings(drawing(), { ...drawing(), width: 200, height: 300 })).toThrow('size');
});
