import { describe, expect, it } from 'vitest';
import { findFrames, framesOf, linesOf } from '../../src/reading/frames.js';
import { ruledLines, type RuledLine } from '../../src/reading/ruled.js';
import { code128 } from '../samples/code-art.js';
import { Drawing } from '../samples/drawing.js';
import { drawnPage, rasterWith } from './drawn-page.js';

type Rect = readonly [number, number, number, number];
const sides = (x: number, y: number, w: number, h: number, thick = 2): Rect[] => [
  [x, y, w, thick],
  [x, y + h - thick, w, thick],
  [x, y, thick, h],
  [x + w - thick, y, thick, h],
];
const boxes = (rects: readonly Rect[]) =>
  findFrames(ruledLines(rasterWith(600, 600, rects))).map(({ box }) =>
    [box.x, box.y, box.width, box.height].map((each) => Math.round(each * 1.5)),
  );

describe('findFrames', () => {
  it('finds a closed rectangle by the outer edge of its lines; rules inside belong to it', () => {
    expect(boxes([...sides(30, 60, 300, 400), [30, 200, 300, 2], [150, 200, 2, 260]])).toEqual([[30, 60, 300, 400]]);
  });

  it('tells frames inside each other apart where they do not touch', () => {
    expect(boxes([...sides(30, 30, 500, 500), ...sides(100, 100, 200, 300)])).toEqual(
      expect.arrayContaining([
        [30, 30, 500, 500],
        [100, 100, 200, 300],
      ]),
    );
  });

  it('needs all four sides, nearly whole', () => {
    const closed = sides(30, 60, 300, 400);
    for (let side = 0; side < 4; side++) expect(boxes(closed.filter((_, index) => index !== side))).toEqual([]);
    const [top, ...others] = closed;
    expect(top).toBeDefined();
    expect(boxes([...others, [30, 60, 140, 2], [190, 60, 140, 2]])).toEqual([[30, 60, 300, 400]]);
    expect(boxes([...others, [30, 60, 60, 2], [270, 60, 60, 2]])).toEqual([]);
  });

  it('takes a side with one gap for a name, from both corners, and no other with as much white', () => {
    const [, ...others] = sides(30, 60, 300, 400);
    expect(boxes([...others, [30, 60, 100, 2], [230, 60, 100, 2]])).toEqual([[30, 60, 300, 400]]);
    expect(boxes([...others, [30, 60, 200, 2]])).toEqual([]);
  });

  it('takes a side that ends a little before one corner, where scissors stand', () => {
    const [, ...others] = sides(30, 60, 300, 400);
    expect(boxes([...others, [72, 60, 258, 2]])).toEqual([[30, 60, 300, 400]]);
    expect(boxes([...others, [60, 60, 220, 2]])).toEqual([]);
  });

  it('takes one filled side for closed, as a banner has it, but needs the raster to see it', () => {
    const [top, ...open] = sides(30, 60, 300, 400);
    const raster = rasterWith(600, 600, [...open, [30, 60, 300, 40]]);
    expect(top).toBeDefined();
    expect(findFrames(ruledLines(raster), raster)).toHaveLength(1);
    expect(findFrames(ruledLines(raster))).toEqual([]);
    const short = rasterWith(600, 600, [...open, [30, 60, 150, 40]]);
    expect(findFrames(ruledLines(short), short)).toEqual([]);
  });

  it.each([
    ['below', [30, 420, 300, 40]],
    ['on the left', [30, 60, 40, 400]],
    ['on the right', [290, 60, 40, 400]],
  ] as const)('a filled side %s closes a frame, too, by the same box', (_, banner) => {
    const inside = (side: Rect): boolean =>
      side[0] >= banner[0] &&
      side[1] >= banner[1] &&
      side[0] + side[2] <= banner[0] + banner[2] &&
      side[1] + side[3] <= banner[1] + banner[3];
    const raster = rasterWith(600, 600, [...sides(30, 60, 300, 400).filter((side) => !inside(side)), banner]);
    const found = findFrames(ruledLines(raster), raster).map(({ box }) =>
      [box.x, box.y, box.width, box.height].map((each) => Math.round(each * 1.5)),
    );
    expect(found).toEqual([[30, 60, 300, 400]]);
  });

  it('takes two filled sides for none', () => {
    const all = sides(30, 60, 300, 400);
    const raster = rasterWith(600, 600, [...all.slice(2), [30, 60, 300, 40], [30, 420, 300, 40]]);
    expect(findFrames(ruledLines(raster), raster)).toEqual([]);
  });

  it('takes a tinted strip beside a banner for a side that it hides, darker than the paper beyond it all along', () => {
    const [, bottomSide, , rightSide] = sides(30, 60, 300, 400);
    const drawn = (tint: number, long = 200): number => {
      const lower: Rect = [30, 260, 2, 200];
      const raster = rasterWith(600, 600, [bottomSide, rightSide, lower, [30, 60, 300, 40], [30, 258, 300, 2]] as readonly Rect[]);
      for (let y = 100; y < 60 + long; y++) raster.data.fill(tint, y * 600 + 30, y * 600 + 60);
      return findFrames(ruledLines(raster), raster).length;
    };
    expect([drawn(215), drawn(250), drawn(215, 80)]).toEqual([1, 0, 0]);
  });

  it('takes no small box for a frame', () => {
    expect(boxes(sides(30, 60, 52, 52))).toEqual([]);
  });

  it('says when most of its lines are dashed', () => {
    const line = (x: number, y: number, width: number, height: number, dashed: boolean): RuledLine => ({
      box: { x, y, width, height },
      level: width > height,
      dashed,
    });
    const frame = (dashed: boolean): readonly RuledLine[] => [
      line(0, 0, 200, 1, dashed),
      line(0, 299, 200, 1, dashed),
      line(0, 0, 1, 300, dashed),
      line(199, 0, 1, 300, true),
    ];
    expect(findFrames(frame(true)).map((each) => each.dashed)).toEqual([true]);
    expect(findFrames(frame(false)).map((each) => each.dashed)).toEqual([false]);
  });
});

describe('on a page', () => {
  it('a frame is found to 0.5 mm, dashed or not; the bars of a code are no lines', async () => {
    const d = new Drawing(400, 500);
    d.frame(50.3, 60.2, 288, 300, 1.5);
    d.bars(code128('SAMPLE-0001'), 90, 120, 1.2, 60);
    d.frame(20, 400, 360, 80, 1, 'lines', 5);
    const page = await drawnPage(d);
    const frames = framesOf(page).toSorted((a, b) => a.box.y - b.box.y);
    expect(frames.map((each) => each.dashed)).toEqual([false, true]);
    const [first] = frames;
    expect(Math.abs((first?.box.x ?? 0) - 49.55)).toBeLessThan(1.4);
    expect(Math.abs((first?.box.width ?? 0) - 289.5)).toBeLessThan(1.4);
    expect(linesOf(page).filter(({ box }) => box.y > 110 && box.y + box.height < 190)).toEqual([]);
    expect(framesOf(page)).toBe(framesOf(page));
  });
});

describe('linesOf', () => {
  it('are no lines of small type, whose letters run together as dashes do, but dashes that words stand in', async () => {
    const small = 'I certify that the particulars given are correct and that this item holds nothing that is not allowed';
    const type = await drawnPage(new Drawing(420, 595).text(20, 300, small, { size: 5 }));
    expect(ruledLines(type.ink()).some(({ dashed }) => dashed)).toBe(true);
    expect(linesOf(type)).toEqual([]);
    const cut = await drawnPage(new Drawing(420, 595).line(20, 300, 400, 300, 1, 4).text(180, 296, 'cut here', { size: 6 }));
    expect(linesOf(cut).some(({ dashed }) => dashed)).toBe(true);
  });
});
