import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { openFrames } from '../../src/reading/open-frames.js';
import { ruledLines, type RuledLine } from '../../src/reading/ruled.js';
import { rasterWith } from './drawn-page.js';

type Span = readonly [from: number, to: number];
const level = (y: number, ...spans: readonly Span[]): RuledLine[] =>
  spans.map(([from, to]) => ({ box: { x: from, y, width: to - from, height: 2 }, level: true, dashed: false }));
const upright = (x: number, ...spans: readonly Span[]): RuledLine[] =>
  spans.map(([from, to]) => ({ box: { x, y: from, width: 2, height: to - from }, level: false, dashed: false }));

/** 280 × 400 pt at 20, 30; each side from `open` behind one corner to `open` before the next. */
const rounded = (open: number, x = 20, y = 30): RuledLine[] => [
  ...level(y, [x + open, x + 280 - open]),
  ...level(y + 398, [x + open, x + 280 - open]),
  ...upright(x, [y + open, y + 400 - open]),
  ...upright(x + 278, [y + open, y + 400 - open]),
];
const FRAME = { x: 20, y: 30, width: 280, height: 400 };

/** The same with a gap in each side. */
const gapped = (x = 20, y = 30): RuledLine[] => [
  ...level(y, [x, x + 118], [x + 162, x + 280]),
  ...level(y + 398, [x, x + 118], [x + 162, x + 280]),
  ...upright(x, [y, y + 175], [y + 225, y + 400]),
  ...upright(x + 278, [y, y + 175], [y + 225, y + 400]),
];

describe('openFrames', () => {
  it('finds a rectangle by its straight parts where the corners are round or left open', () => {
    for (const open of [0, 8, 20, 40]) expect(openFrames(rounded(open))).toEqual([FRAME]);
    expect(openFrames(rounded(60))).toEqual([]);
  });

  it('finds a rectangle with a gap in each side', () => {
    expect(openFrames(gapped())).toEqual([FRAME]);
  });

  it('needs all four sides', () => {
    for (const missing of [0, 1, 2, 3]) expect(openFrames(rounded(10).filter((_, index) => index !== missing))).toEqual([]);
  });

  it('takes nothing whose sides run on, whose corners are unlike, or of which too little is drawn', () => {
    const [top, foot, left, side] = rounded(10) as [RuledLine, RuledLine, RuledLine, RuledLine];
    expect(openFrames([...level(30, [30, 340]), foot, left, side])).toEqual([]);
    expect(openFrames([...level(30, [20, 260]), foot, left, side])).toEqual([]);
    expect(openFrames([top, foot, ...upright(20, [40, 130], [300, 420]), side])).toEqual([]);
    expect(openFrames([top, foot, ...upright(20, [40, 80], [160, 200], [280, 320], [380, 420]), side])).toEqual([]);
  });

  it('takes two frames in a row for two, round or with gaps of their own', () => {
    const both = [...rounded(10), ...rounded(10, 312)];
    expect(openFrames(both)).toEqual([FRAME, { ...FRAME, x: 312 }]);
    expect(openFrames([...gapped(), ...gapped(312)])).toEqual(expect.arrayContaining([FRAME, { ...FRAME, x: 312 }]));
    expect(openFrames([...gapped(), ...gapped(312)])).toHaveLength(2);
    expect(openFrames([...gapped(), ...gapped(20, 450)])).toHaveLength(2);
  });

  it('gives the outer edge of its own lines only, whatever else stands in line with them', () => {
    expect(openFrames([...rounded(10), ...upright(18.5, [500, 600]), ...level(31.5, [400, 500])])).toEqual([FRAME]);
  });

  it('law: wherever it lies and whichever way, the frame that was drawn is the frame that is found', () => {
    const turned = (lines: readonly RuledLine[]): RuledLine[] =>
      lines.map(({ box, level, dashed }) => ({ box: { x: box.y, y: box.x, width: box.height, height: box.width }, level: !level, dashed }));
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 300 }),
        fc.integer({ min: 0, max: 300 }),
        fc.boolean(),
        fc.boolean(),
        (x, y, isRound, isTurned) => {
          const lines = isRound ? rounded(12, x, y) : gapped(x, y);
          const box = isTurned ? { x: y, y: x, width: 400, height: 280 } : { x, y, width: 280, height: 400 };
          expect(openFrames(isTurned ? turned(lines) : lines)).toEqual([box]);
        },
      ),
      { seed: 20261129, numRuns: 100 },
    );
  });

  it('finds one on a raster, too', () => {
    const raster = rasterWith(600, 600, [
      [50, 60, 260, 2],
      [50, 458, 260, 2],
      [30, 80, 2, 360],
      [328, 80, 2, 360],
    ]);
    const [frame, ...others] = openFrames(ruledLines(raster));
    expect(others).toEqual([]);
    expect(frame && [frame.x, frame.y, frame.width, frame.height].map((each) => Math.round(each * 1.5))).toEqual([30, 60, 300, 400]);
  });
});
