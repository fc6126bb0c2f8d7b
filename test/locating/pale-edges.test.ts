import { describe, expect, it } from 'vitest';
import type { Box } from '../../src/geometry/box.js';
import { withPaleEdges } from '../../src/locating/pale-edges.js';
import { rasterWith } from '../reading/drawn-page.js';
import { blankPages } from '../steps/on-sample.js';

type Rect = readonly [number, number, number, number];
const BOX: Box = { x: 40, y: 60, width: 200, height: 300 };

/** The same box with pale rectangles of `grey` on the page, in pt. */
function reachOf(rects: readonly Rect[], grey = 225, images: readonly Box[] = []): Box {
  const pixels = rects.map(([x, y, w, h]): Rect => [x * 1.5, y * 1.5, w * 1.5, h * 1.5]);
  const page = {
    ...blankPages(400, 600).page(1),
    ink: () => rasterWith(600, 900, pixels, grey),
    images: () => images.map((box) => ({ box, pixelWidth: 800, pixelHeight: 1200, turn: 0 as const })),
  };
  return withPaleEdges(BOX, page);
}

describe('withPaleEdges', () => {
  it('reaches out to the end of a grey band', () => {
    const { x, y, width, height } = reachOf([[36, 54, 208, 16]]);
    expect([x, y, x + width, y + height]).toEqual([36, 54, 244, 360].map((each) => expect.closeTo(each, 0) as number));
  });

  it.each<[string, readonly Rect[]]>([
    ['paper', []],
    ['the soft edge of ink', [[39.4, 60, 201.2, 300]]],
    ['a dot', [[30, 100, 20, 4]]],
    ['a field that goes on', [[10, 100, 100, 60]]],
    ['what stands apart', [[20, 100, 15, 60]]],
  ])('leaves a side beside %s', (_, rects) => {
    expect(reachOf(rects)).toEqual(BOX);
  });

  it('takes the tint of paper for none, and leaves scans as they are', () => {
    const band: readonly Rect[] = [[36, 54, 208, 16]];
    expect(reachOf(band, 250)).toEqual(BOX);
    expect(reachOf(band, 225, [{ x: 0, y: 0, width: 400, height: 600 }])).toEqual(BOX);
    expect(reachOf(band, 225, [{ x: 0, y: 0, width: 100, height: 100 }]).x).toBeCloseTo(36, 0);
  });
});
