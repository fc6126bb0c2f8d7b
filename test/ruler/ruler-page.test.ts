import { describe, expect, it } from 'vitest';
import type { Box } from '../../src/geometry/box.js';
import { dotsPerPt, gridOf, type GridName } from '../../src/geometry/grid.js';
import { mmToPt } from '../../src/geometry/length.js';
import { MEDIA_NAMES, mediaNamed } from '../../src/geometry/media.js';
import { hasRoom, isRulerPage, rulerChart, rulerPage } from '../../src/ruler/ruler-page.js';
import { blackRuns, drawn, wrongDots, type Drawn } from './drawn.js';

const PAGES: readonly (readonly [media: string, grid: GridName])[] = [
  ['4x6in', '203dpi'],
  ['4x6in', '8dpmm'],
  ['4x6in', '300dpi'],
  ['100x150mm', '203dpi'],
  ['100x150mm', '12dpmm'],
  ['a6', '203dpi'],
  ['a6', '600dpi'],
  ['4x8in', '203dpi'],
  ['a5', '8dpmm'],
  ['letter', '203dpi'],
];

const memo = new Map<string, Promise<Drawn>>();
function page(media: string, grid: GridName): Promise<Drawn> {
  const key = `${media} ${grid}`;
  const known = memo.get(key) ?? drawn(media, grid);
  memo.set(key, known);
  return known;
}

/** Dots in a mm. */
const perMm = ({ grid }: Pick<Drawn, 'grid'>): number => grid.dpi / 25.4;

/** Middles of runs, in mm from the page's edge. */
const middles = (runs: readonly { from: number; length: number }[], per: number): number[] =>
  runs.map(({ from, length }) => (from + length / 2) / per);

function expectAt(found: readonly number[], expected: readonly number[], per: number): void {
  expect(found).toHaveLength(expected.length);
  expected.forEach((at, index) => {
    expect(Math.abs((found[index] ?? 0) - at) * per, `${at} mm`).toBeLessThanOrEqual(0.501);
  });
}

const touch = (a: Box, b: Box): boolean => a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;

describe.each(PAGES)('a ruler page of %s at %s', (media, grid) => {
  it('has every mark on exactly its dots, and nothing but type beside them', async () => {
    const { chart, dots } = await page(media, grid);
    expect([dots.width, dots.height]).toEqual([chart.columns, chart.rows]);
    expect(wrongDots(chart, dots.data)).toBe(0);
  });

  it('has a tick at every mm and at every sixteenth of an inch, within half a dot', async () => {
    const at = await page(media, grid);
    const per = perMm(at);
    const [width, height] = [at.dots.width / per, at.dots.height / per];
    // Rows and columns of dots that only ticks cross: the shortest are 1.5 mm and 1 mm long.
    const across = (mm: number, from: number, to: number): number[] =>
      middles(blackRuns(at.dots, { y: Math.round(mm * per) }, Math.round(from * per), Math.round(to * per)), per);
    const down = (mm: number, from: number, to: number): number[] =>
      middles(blackRuns(at.dots, { x: Math.round(mm * per) }, Math.round(from * per), Math.round(to * per)), per);
    // Between two ticks, 8 mm before the end, where no ruler ends.
    const end = (step: number, side: number): number => (Math.floor((side - 8) / step) + 0.5) * step;
    const steps = (step: number, to: number): number[] =>
      Array.from({ length: Math.floor(to / step) + 1 }, (_, i) => i * step).filter((mm) => mm >= 14.5);
    for (const [ticks, row, step, side] of [
      [across, 8.4, 1, width],
      [across, 9.8, 25.4 / 16, width],
      [down, 9.6, 1, height],
      [down, 11, 25.4 / 16, height],
    ] as const) {
      const to = end(step, side);
      expectAt(ticks(row, 14.5, to), steps(step, to), per);
    }
  });

  it('has five lines along each edge, a mm apart, the first on the edge', async () => {
    const at = await page(media, grid);
    const per = perMm(at);
    const { width, height } = at.dots;
    const lines = [
      blackRuns(at.dots, { y: height >> 1 }, 0, Math.round(4.4 * per)),
      blackRuns(at.dots, { x: width >> 1 }, 0, Math.round(4.4 * per)),
    ];
    for (const runs of lines) {
      expect(runs[0]?.from).toBe(0);
      expectAt(middles(runs, per).slice(1), [1, 2, 3, 4], per);
    }
    const [right, low] = [
      blackRuns(at.dots, { y: height >> 1 }, width - Math.round(4.5 * per)),
      blackRuns(at.dots, { x: width >> 1 }, height - Math.round(4.5 * per)),
    ];
    for (const [runs, side, whole] of [
      [right, at.media.width, width],
      [low, at.media.height, height],
    ] as const) {
      const edge = side / mmToPt(1);
      expect((runs.at(-1)?.from ?? 0) + (runs.at(-1)?.length ?? 0)).toBe(whole);
      expectAt(middles(runs, per).slice(0, 4), [edge - 4, edge - 3, edge - 2, edge - 1], per);
    }
  });

  it('has lines of 100 mm and 3 in between the middles of their end strokes', async () => {
    const at = await page(media, grid);
    const per = perMm(at);
    // Beside the lines themselves, where only their strokes are: the upright one from 20 mm, the other where it is.
    const ends = middles(blackRuns(at.dots, { x: Math.round(16.8 * per) }, Math.round(16 * per), Math.round(125 * per)), per);
    expect(ends).toHaveLength(2);
    expect(Math.abs((ends[1] ?? 0) - (ends[0] ?? 0) - 100) * per).toBeLessThanOrEqual(0.501);
    const longest = Array.from({ length: Math.round(40 * per) }, (_, i) => i + Math.round(20 * per))
      .flatMap((y) => blackRuns(at.dots, { y }, Math.round(17.7 * per), Math.round(95.4 * per)).map((run) => ({ ...run, y })))
      .reduce((best, run) => (run.length > best.length ? run : best));
    const strokes = middles(
      blackRuns(at.dots, { y: longest.y + Math.round(0.6 * per) }, Math.round(17.7 * per), Math.round(95.4 * per)),
      per,
    );
    expect(strokes).toHaveLength(2);
    expect(Math.abs((strokes[1] ?? 0) - (strokes[0] ?? 0) - 76.2) * per).toBeLessThanOrEqual(0.501);
  });

  it('has a code of each module width, that says so', async () => {
    const { codes } = await page(media, grid);
    const texts = codes.map(({ symbology, bytes }) => `${symbology} ${Buffer.from(bytes, 'hex').toString()}`);
    expect(texts.sort()).toEqual([2, 3, 4, 5, 6].map((dots) => `Code 128 DOT${dots}`));
  });

  it('has type of 7 pt or more inside the lines of the edge, free of marks and of other type', async () => {
    const { chart, words } = await page(media, grid);
    expect(Math.min(...chart.lines.map(({ fontSize }) => fontSize))).toBeGreaterThanOrEqual(7);
    const k = dotsPerPt(chart.grid);
    const edge = mmToPt(4.1);
    // The middle of a line of type, where its letters are.
    const cores = words.map(({ text, box }) => ({
      text,
      x: box.x,
      y: box.y + box.height * 0.3,
      width: box.width,
      height: box.height * 0.4,
    }));
    expect(cores.length).toBeGreaterThan(150);
    const inTheWay = cores.flatMap((core, index) => {
      const inDots = { x: core.x * k, y: core.y * k, width: core.width * k, height: core.height * k };
      const onMark = chart.marks.some((mark) => touch(mark, inDots));
      const onWord = cores.some((other, at) => at !== index && touch(other, core));
      const outside =
        core.x < edge || core.y < edge || core.x + core.width > mmToPt(chart.width) - edge || core.y > mmToPt(chart.height) - edge;
      return onMark || onWord || outside ? [core.text] : [];
    });
    expect(inTheWay).toEqual([]);
  });
});

/** Apart from the chart's own marks: these look at the drawn dots, at the words that lead to them. */
describe.each([
  ['4x6in', '203dpi'],
  ['100x150mm', '300dpi'],
] as const)('the dots of a ruler page of %s at %s', (media, grid) => {
  it('are pairs of bars of 1 to 6 dots as far apart, upright and level, and patches of one dot on, one off', async () => {
    const at = await page(media, grid);
    const per = perMm(at);
    const top = ((at.words.filter(({ text }) => text === 'bar.').at(-1)?.box.y ?? 0) / mmToPt(1) + 4) * per;
    const row = Math.round(top + 3 * per);
    const upright = blackRuns(at.dots, { y: row }, Math.round(18 * per), Math.round(38.5 * per)).map(({ length }) => length);
    expect(upright).toEqual([1, 1, 2, 2, 3, 3, 4, 4, 5, 5, 6, 6]);
    const starts = blackRuns(at.dots, { y: row }, Math.round(18 * per), Math.round(38.5 * per)).map(({ from }) => from);
    [1, 2, 3, 4, 5, 6].forEach((bar, index) => {
      expect((starts[2 * index + 1] ?? 0) - (starts[2 * index] ?? 0)).toBe(2 * bar);
    });
    const level = blackRuns(at.dots, { x: Math.round(45 * per) }, Math.round(top - 3 * per), Math.round(top + 15.5 * per));
    expect(level.map(({ length }) => length).slice(-12)).toEqual([1, 1, 2, 2, 3, 3, 4, 4, 5, 5, 6, 6]);
    const comb = blackRuns(at.dots, { y: row }, Math.round(55 * per), Math.round(72.4 * per));
    expect(comb.length).toBeGreaterThan(50);
    comb.forEach(({ from, length }, index) => {
      expect([from, length]).toEqual([(comb[0]?.from ?? 0) + 2 * index, 1]);
    });
    const lying = blackRuns(at.dots, { x: Math.round(80 * per) }, Math.round(top), Math.round(top + 10 * per));
    expect(lying.length).toBeGreaterThan(30);
    lying.forEach(({ from, length }, index) => {
      expect([from, length]).toEqual([(lying[0]?.from ?? 0) + 2 * index, 1]);
    });
  });

  it('are patches a quarter, half and three quarters black, and open white lines of 1, 2 and 3', async () => {
    const at = await page(media, grid);
    const per = perMm(at);
    const caption = (at.words.find(({ text }) => text === '25')?.box.y ?? 0) / mmToPt(1);
    const share = (x: number): number => {
      const [left, top, side] = [Math.round(x * per), Math.round((caption - 7) * per), 2 * Math.round(2 * per)];
      let black = 0;
      for (let y = top; y < top + side; y++)
        for (let i = left; i < left + side; i++) black += at.dots.data[y * at.dots.width + i] === 0 ? 1 : 0;
      return black / side ** 2;
    };
    expect([22, 37.4, 52.8].map(share)).toEqual([0.25, 0.5, 0.75]);
    const blocks = blackRuns(at.dots, { y: Math.round((caption - 4) * per) }, Math.round(64 * per), Math.round(78 * per));
    const gaps = blocks.slice(1).map(({ from }, index) => from - (blocks[index]?.from ?? 0) - (blocks[index]?.length ?? 0));
    expect(gaps.slice(0, 6)).toEqual([1, 2, 3, 1, 2, 3]);
  });

  it('are codes whose bars are whole modules of their own width', async () => {
    const at = await page(media, grid);
    const k = dotsPerPt(at.grid);
    for (const dots of [2, 3, 4, 5, 6]) {
      const code = at.codes.find(({ bytes }) => Buffer.from(bytes, 'hex').toString() === `DOT${dots}`);
      if (!code) throw new Error(`no code of ${dots} dots`);
      const box = { x: code.box.x * k, y: code.box.y * k, width: code.box.width * k, height: code.box.height * k };
      const runs = blackRuns(at.dots, { y: Math.round(box.y + box.height / 2) }, Math.round(box.x) - 2, Math.round(box.x + box.width) + 2);
      expect(runs.filter(({ length }) => length % dots !== 0)).toEqual([]);
      const [first, last] = [runs[0], runs.at(-1)];
      expect((last?.from ?? 0) + (last?.length ?? 0) - (first?.from ?? 0)).toBe(79 * dots);
      const clear = blackRuns(at.dots, { y: Math.round(box.y + box.height / 2) }, (first?.from ?? 0) - 10 * dots, first?.from);
      expect(clear, 'quiet zone').toEqual([]);
    }
  });
});

describe('rulerPage', () => {
  it('is the same bytes for the same media and grid, and is known again', async () => {
    const [media, grid] = [mediaNamed('4x6in'), gridOf('203dpi')];
    const bytes = await rulerPage(media, grid);
    expect(Buffer.compare(bytes, await rulerPage(media, grid))).toBe(0);
    expect(isRulerPage(bytes)).toBe(true);
    expect(isRulerPage(Buffer.from('%PDF-1.7\n% a label\n'))).toBe(false);
  });

  it('has room on every size of the table, and on none that is smaller than A6 either way', () => {
    for (const name of MEDIA_NAMES) {
      expect(hasRoom(mediaNamed(name)), name).toBe(true);
      expect(rulerChart(mediaNamed(name), gridOf('203dpi')).marks.length, name).toBeGreaterThan(1000);
    }
    for (const name of ['6x4in', '4x4in', '62x150mm', '99x210mm', '2x1in']) {
      expect(hasRoom(mediaNamed(name)), name).toBe(false);
      expect(() => rulerChart(mediaNamed(name), gridOf('203dpi')), name).toThrow(RangeError);
    }
  });

  it.each(['203dpi', '300dpi', '600dpi', '8dpmm', '12dpmm', '24dpmm'] as const)('fits the smallest page at %s', (name) => {
    expect(rulerChart(mediaNamed('99.5x147.5mm'), gridOf(name)).marks.length).toBeGreaterThan(1000);
  });
});
