import { describe, expect, it } from 'vitest';
import { placeOnLine } from '../../src/reading/place-on-line.js';

describe('placeOnLine', () => {
  // Two words 10 high, 30 long and 5 apart on a line, and one on the next line 12 below, in each direction of writing.
  it.each([
    [0, { x: 0, y: 0 }, { x: 35, y: 0 }, { x: 0, y: 12 }],
    [90, { x: 100, y: 0 }, { x: 100, y: 35 }, { x: 88, y: 0 }],
    [180, { x: 100, y: 100 }, { x: 65, y: 100 }, { x: 100, y: 88 }],
    [270, { x: 0, y: 100 }, { x: 0, y: 65 }, { x: 12, y: 100 }],
  ] as const)('rises along the line and from line to line at %i°', (turn, first, second, below) => {
    const size = turn % 180 === 0 ? { width: 30, height: 10 } : { width: 10, height: 30 };
    const [a, b, c] = [first, second, below].map((at) => placeOnLine({ ...at, ...size }, turn));
    if (!a || !b || !c) throw new Error('three places');
    expect(a.to - a.from).toBe(30);
    expect(b.from - a.to).toBe(5);
    expect([b.foot - a.foot, b.middle - a.middle]).toEqual([0, 0]);
    expect([c.foot - a.foot, c.middle - a.middle]).toEqual([12, 12]);
    expect(c.from).toBe(a.from);
    expect([a.foot - a.middle, a.middle - a.top]).toEqual([5, 5]);
  });
});
