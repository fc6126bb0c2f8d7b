import { describe, expect, it } from 'vitest';
import { bottom, type Box } from '../../src/geometry/box.js';
import { alikePlaces, haveFrames } from '../../src/locating/alike-places.js';
import { judgedOn } from '../../src/locating/locate.js';
import { inkBlobs } from '../../src/locating/ink-blobs.js';
import { EDGES } from '../../src/locating/candidate.js';
import { survey } from '../../src/locating/survey.js';
import { drawnPage } from '../reading/drawn-page.js';
import { code128 } from '../samples/code-art.js';
import { Drawing } from '../samples/drawing.js';
import { mediaNamed } from '../steps/on-sample.js';
import { barsAt, matrixAt, nothingSaid } from './judged.js';

const at = (x: number, y: number, width: number, height: number): Box => ({ x, y, width, height });

/** A label of 270 × 400 pt without an edge, with a wider white inside than between two labels: its ink, and its bars. */
const inkOf = (x: number, y: number): readonly Box[] => [
  at(x, y, 270, 80),
  at(x, y + 130, 200, 40),
  at(x, y + 230, 180, 60),
  at(x, y + 320, 270, 80),
];
const barsOf = (x: number, y: number) => barsAt(at(x + 20, y + 235, 170, 50));
const PLACES = [
  [20, 10],
  [310, 10],
  [20, 425],
  [310, 425],
] as const;
const sheet = (places: readonly (readonly [number, number])[], more: readonly Box[] = []): readonly Box[] =>
  alikePlaces(
    [...places.flatMap(([x, y]) => inkOf(x, y)), ...more],
    places.flatMap(([x, y]) => [barsOf(x, y), matrixAt(at(x + 200, y + 20, 40, 40))]),
  );

describe('alikePlaces', () => {
  it('finds each label of a sheet, though the white between two is narrower than inside one', () => {
    expect(sheet(PLACES)).toEqual(PLACES.map(([x, y]) => at(x, y, 270, 400)));
    expect(sheet(PLACES.slice(0, 2))).toHaveLength(2);
    expect(sheet([PLACES[0], PLACES[2]])).toHaveLength(2);
  });

  it('knows a sheet that is not full', () => {
    expect(sheet(PLACES.slice(0, 3)).map(bottom)).toEqual([410, 410, 825]);
    expect(sheet([PLACES[0], PLACES[3]])).toHaveLength(2);
  });

  it.each<[string, readonly Box[]]>([
    ['one label', sheet(PLACES.slice(0, 1))],
    ['bars at unequal distances', sheet([PLACES[0], [20, 425], [20, 900]])],
    ['other ink on the sheet', sheet(PLACES.slice(0, 2), [at(20, 600, 400, 20)])],
    ['ink in a place without bars', sheet(PLACES.slice(0, 3), [at(310, 600, 200, 20)])],
    ['ink that reaches from one place into the next', sheet(PLACES.slice(0, 2), [at(280, 300, 40, 10)])],
    ['places of unlike size', sheet([PLACES[0], PLACES[1]], [at(310, 415, 100, 40)])],
  ])('answers nothing for %s', (_, labels) => {
    expect(labels).toEqual([]);
  });

  it('knows places of which none is as large as a label', () => {
    const rows = [0, 1, 2].map((row) => at(20, 100 * row, 200, 60));
    expect(
      alikePlaces(
        rows,
        rows.map((row) => barsAt({ ...row, width: 150 })),
      ),
    ).toEqual([]);
  });
});

describe('judgedOn', () => {
  const judged = async (framed: boolean) => {
    const d = new Drawing(595, 842);
    for (const [x, y] of PLACES) {
      for (const { x: left, y: top, width, height } of inkOf(x, y).filter((_, index) => index !== 2)) d.rect(left, top, width, height);
      d.bars(code128('SAMPLE000123'), x + 130, y + 230, 1, 60);
      if (framed) d.frame(x - 3, y - 3, 276, 406, 1);
    }
    const page = await drawnPage(d);
    const all = { x: 0, y: 0, width: page.width, height: page.height };
    return judgedOn(page, all, EDGES, mediaNamed('4x6in'), inkBlobs(page.ink()), () => nothingSaid);
  };

  it('leaves nothing but the labels of a sheet, and says how many they are', async () => {
    const labels = await judged(false);
    expect(labels.map(({ alike }) => alike)).toEqual([4, 4, 4, 4]);
    expect(labels[0]?.evidence).toContain('one of 4 places alike, and nothing else on the page');
  });

  it('leaves labels that have an edge to it', async () => {
    expect((await judged(true)).filter(({ alike }) => alike)).toEqual([]);
  });
});

describe('survey', () => {
  it('leaves it to a person whether paper of one label holds one or several alike', async () => {
    const d = new Drawing(288, 432);
    for (const [top, number] of [
      [14, 'XQ433195708ZZ'],
      [228, 'XQ433195711ZZ'],
    ] as const) {
      d.block(20, top + 10, ['Ship to', 'Ada Invented', '14 Sample Lane', 'Larch Halt EX 00187', 'Weight 2.1 kg'], { size: 11 });
      d.bars(code128(number), 144, top + 130, 1.2, 50)
        .text(20, top + 175, 'Sample, not valid for carriage', { size: 8 })
        .rect(14, top, 260, 2);
    }
    const page = await drawnPage(d);
    expect(await survey(page, mediaNamed('4x6in'), (box) => page.codes(box, 203 / 72))).toMatchObject({
      kind: 'doubtful',
      why: expect.stringMatching(/^more than one answer: page 4\.00×6\.00 in or ink/) as string,
    });
  });
});

describe('haveFrames', () => {
  const place = at(60, 60, 280, 230);
  const frame = at(60, 60, 280, 196);
  const bars = barsAt(at(100, 120, 180, 43));
  const line = at(60, 276, 170, 10);
  const has = (blobs: readonly Box[], frames: readonly Box[] = [frame], codes = [bars]): boolean =>
    haveFrames([place], { frames, blobs, codes, phrases: [] });

  it('are the labels where a line of the page stands below each', () => {
    expect(has([frame, line])).toBe(true);
  });

  it('are none where what is beside them is as near as lines are, or has a code, or one has none', () => {
    expect(has([frame, { ...line, y: 260 }])).toBe(false);
    expect(has([frame, line], [frame], [bars, barsAt(at(70, 265, 100, 20))])).toBe(false);
    expect(has([frame, line], [])).toBe(false);
    expect(haveFrames([], { frames: [frame], blobs: [], codes: [bars], phrases: [] })).toBe(false);
  });
});
