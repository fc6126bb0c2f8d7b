import { describe, expect, it } from 'vitest';
import { union, type Box } from '../../src/geometry/box.js';
import type { Judged } from '../../src/locating/candidate.js';
import { doubtsOf, leftOver, sureBeside, type Doubt, type Weighed } from '../../src/locating/doubts.js';
import type { Code, SourcePage } from '../../src/reading/source.js';
import { inkBlobs } from '../../src/locating/ink-blobs.js';
import { drawnPage } from '../reading/drawn-page.js';
import { Drawing } from '../samples/drawing.js';
import { inches, judged, nothingSaid } from './judged.js';

const ORIGIN = { x: 0, y: 0 };
const number = (text: string): Code => ({
  symbology: 'Code 128',
  identifier: ']C0',
  bytes: Buffer.from(text).toString('hex'),
  corners: [ORIGIN, ORIGIN, ORIGIN, ORIGIN],
  box: { x: 0, y: 0, width: 100, height: 30 },
  turn: 0,
});
const NONE: readonly Doubt[] = [];
/** A framed label with a number of its own, as sure as can be. */
const weighed = (box: Box, more: Partial<Weighed> = {}, label: Partial<Judged> = {}): Weighed => ({
  label: { ...judged(box, 1, label), next: undefined },
  strength: 5,
  codes: [number(`SAMPLE-${box.x.toFixed(0)}-0000001${box.y.toFixed(0)}`)],
  ...more,
});
const doubt = (box: Box): Doubt => ({ why: 'why', answers: [judged(box, 0.8)] });
const LEFT = inches(0.2, 0.2, 4, 6);
const RIGHT = inches(4.4, 0.2, 4, 6);

describe('labels beside a doubtful part of their page', () => {
  const sureWith = (label: Weighed, doubts = [doubt(RIGHT)], others: readonly Weighed[] = []): number =>
    sureBeside([label], [label, ...others], doubts).length;

  it('are sure when they are whole, with a number of their own, apart from it', () => {
    expect(sureWith(weighed(LEFT))).toBe(1);
    expect(sureWith(weighed(LEFT, {}, { edge: 'ink' }))).toBe(1);
    expect(sureWith(weighed(LEFT), NONE as Doubt[])).toBe(1);
  });

  it.each<[string, Weighed, ...(readonly Weighed[])]>([
    ['has too little of a label', weighed(LEFT, { strength: 2 })],
    ['has no number', weighed(LEFT, { codes: [number('AISLE-7')] })],
    ['has codes that were not read', weighed(LEFT, { codes: undefined })],
    [
      'shares its number',
      weighed(LEFT, { codes: [number('SAMPLE-0000000001')] }),
      weighed(RIGHT, { codes: [number('SAMPLE-0000000001')] }),
    ],
    ['is ink of no known size', weighed(inches(0.2, 0.2, 3.7, 4.2), {}, { edge: 'ink' })],
    ['is a frame of no proportion', weighed(inches(0.2, 0.2, 3, 6))],
    ['is hardly ahead of another answer', weighed(LEFT, { label: { ...judged(LEFT, 0.9), next: judged(LEFT, 0.85) } })],
    ['touches what is doubtful', weighed(inches(0.38, 0.2, 4, 6))],
  ])('are not when one %s', (_, label, ...others) => {
    expect(sureWith(label, [doubt(RIGHT)], others)).toBe(0);
  });

  it('are not when both together have the size of one label', () => {
    const [upper, lower] = [inches(0.2, 0.2, 4, 5.3), inches(0.2, 5.8, 4, 2.4)];
    expect(sureWith(weighed(upper, {}, { edge: 'picture' }), [doubt(lower)])).toBe(0);
  });

  it('are sure at another size where one beside them has the same and is whole', () => {
    const [first, second] = [inches(0.2, 0.2, 3.5, 5.25), inches(0.2, 5.6, 3.5, 5.25)];
    const third = doubt(inches(4, 0.2, 3.5, 4));
    const ink = weighed(second, {}, { edge: 'ink' });
    expect(sureBeside([ink], [ink], [third])).toEqual([]);
    const frame = weighed(first);
    expect(sureBeside([frame, ink], [frame, ink], [third])).toEqual([frame, ink]);
  });
});

describe('doubts about a page', () => {
  const page = (d = new Drawing(842, 842)): Promise<SourcePage> => drawnPage(d);

  it('are none when nothing is doubtful', async () => {
    const label = judged(LEFT, 1);
    expect(
      doubtsOf(
        { labels: [label], rivals: [], unsure: [], unlike: undefined, twice: [], ticked: [], several: [] },
        { page: await page(), blobs: [], said: () => nothingSaid },
      ),
    ).toEqual([]);
  });

  it('name each place once, with every answer for it', async () => {
    const [label, rival, other] = [judged(LEFT, 0.8), judged(inches(0.2, 0.2, 4, 6.6), 0.79), judged(RIGHT, 0.8)];
    const doubts = doubtsOf(
      { labels: [label, other], rivals: [rival], unsure: [], unlike: label, twice: [], ticked: [], several: [] },
      { page: await page(), blobs: [], said: () => nothingSaid },
    );
    expect(doubts).toEqual([{ why: 'more than one answer: frame 4.00×6.00 in or frame 4.00×6.60 in', answers: [label, rival] }]);
  });

  it('about ink that may go on give all of that ink as the one answer', async () => {
    const part = judged(inches(0.2, 1, 3.8, 4.2), 0.8, { edge: 'ink' });
    const [head, foot] = [inches(0.2, 0.5, 3.8, 0.3), inches(0.2, 5.6, 2, 0.2)];
    const doubts = doubtsOf(
      { labels: [part], rivals: [], unsure: [], unlike: part, twice: [], ticked: [], several: [] },
      { page: await page(), blobs: [part.box, head, foot], said: () => nothingSaid },
    );
    expect(doubts.map(({ why }) => why)).toEqual(['the ink 3.80×4.20 in may go on: more ink stands in line with it']);
    const [answer] = doubts[0]?.answers ?? [];
    expect((answer?.box.y ?? NaN) / 72).toBeCloseTo(0.5, 1);
    expect((answer?.box.height ?? NaN) / 72).toBeCloseTo(5.3, 1);
  });

  it('about a head that may be the page’s give the label with it and without', async () => {
    const drawing = new Drawing(612, 792).text(40, 60, 'Thistle & Tin', { size: 16 });
    for (const y of [100, 160]) drawing.rect(40, y, 260, 40).text(40, y + 52, 'Ada Invented, 14 Sample Lane', { size: 10 });
    const drawn = await drawnPage(drawing);
    const blobs = inkBlobs(drawn.ink());
    const label = judged(union(blobs) ?? LEFT, 0.8, { edge: 'ink' });
    const doubts = doubtsOf(
      { labels: [label], rivals: [], unsure: [], unlike: undefined, twice: [], ticked: [], several: [] },
      { page: drawn, blobs, said: () => nothingSaid },
    );
    expect(doubts.map(({ why }) => why.replace(/ink [\d.×]+ in/, 'ink'))).toEqual([
      "the ink has a head far from the rest that may be the page's",
    ]);
    expect(doubts[0]?.answers.map(({ box }) => Math.round(box.y / 10))).toEqual([5, 10]);
  });

  it('about writing of the page at two edges give the label without one, too, and without both', async () => {
    const drawing = new Drawing(612, 792)
      .text(40, 60, 'Parcel 1 of 2', { size: 10 })
      .text(40, 245, 'Thank you for your order!', { size: 10 });
    for (const y of [80, 150]) drawing.rect(40, y, 260, 50).text(40, y + 62, 'Ada Invented, 14 Sample Lane', { size: 10 });
    const drawn = await drawnPage(drawing);
    const blobs = inkBlobs(drawn.ink());
    const label = judged(union(blobs) ?? LEFT, 0.8, { edge: 'ink' });
    const [doubt, ...more] = doubtsOf(
      { labels: [label], rivals: [], unsure: [], unlike: undefined, twice: [], ticked: [], several: [] },
      { page: drawn, blobs, said: () => nothingSaid },
    );
    const edges = doubt?.answers.map(({ box: { y, height } }) => [y, y + height].map((at) => Math.round(at / 10)));
    expect([edges, more]).toEqual([
      [
        [5, 25],
        [8, 25],
        [8, 21],
      ],
      [],
    ]);
  });

  it('about a line below a label that may be its last give all of it first', async () => {
    const drawing = new Drawing(612, 792);
    drawing.block(40, 80, ['Rufus Sampleton', '3 Example Yard', 'Mockton EX 00532'], { size: 10 });
    drawing.block(40, 122, ['Ada Invented', '14 Sample Lane', 'Larch Halt EX1 2AB'], { size: 10 });
    const drawn = await drawnPage(drawing.text(40, 210, '316-H80', { size: 10 }));
    const blobs = inkBlobs(drawn.ink());
    const label = judged({ x: 39, y: 71, width: 260, height: 80 }, 0.8, { edge: 'ink' });
    const doubts = doubtsOf(
      { labels: [label], rivals: [], unsure: [], unlike: undefined, twice: [], ticked: [], several: [] },
      { page: drawn, blobs, said: () => nothingSaid },
    );
    expect(doubts.map(({ why }) => why.replace(/ink [\d.×]+ in/, 'ink'))).toEqual(['a line below the ink may be its last']);
    expect(doubts[0]?.answers.map(({ box }) => Math.round(box.height / 10))).toEqual([14, 8]);
  });

  it('is ink across an edge, unless it touches a line to cut along', async () => {
    const label = judged(LEFT, 0.8, { clear: -30 });
    const about = async (drawing: Drawing, blobs: readonly Box[]): Promise<readonly string[]> =>
      doubtsOf(
        { labels: [label], rivals: [], unsure: [], unlike: undefined, twice: [], ticked: [], several: [] },
        { page: await drawnPage(drawing), blobs: [LEFT, ...blobs], said: () => nothingSaid },
      ).map(({ why }) => why);
    const across = inches(2, 6, 1, 0.6);
    expect(await about(new Drawing(612, 792), [across])).toEqual(['other ink crosses the edge of the frame 4.00×6.00 in']);
    expect(await about(new Drawing(612, 792), [inches(2, 6, 1, 0.22), inches(0, 0, 8, 8), inches(5, 6, 1, 1)])).toEqual([]);
    expect(await about(new Drawing(612, 792).rect(0, 460, 612, 1), [across])).toEqual([]);
    const scissors = inches(1, 0.1, 0.2, 0.2);
    const cut = new Drawing(612, 792).line(16, 14.5, 300, 14.5, 1, 4);
    expect(await about(cut, [scissors])).toEqual([]);
    expect(await about(cut, [{ ...LEFT, y: LEFT.y - 6, height: LEFT.height + 6 }])).toEqual([]);
    expect(await about(cut, [inches(1, 0.1, 0.6, 0.2)])).toHaveLength(1);
    expect(await about(new Drawing(612, 792), [scissors])).toHaveLength(1);
  });

  it('is ink that rules go through and beyond, as a piece of a form is', async () => {
    const form = (to: number, rules: readonly number[]): Drawing => rules.reduce((d, y) => d.line(10, y, to, y, 1), new Drawing(612, 792));
    const about = async (drawing: Drawing, edge: Judged['edge'] = 'ink'): Promise<number> =>
      doubtsOf(
        {
          labels: [judged(inches(0.5, 1, 4, 6), 0.9, { edge })],
          rivals: [],
          unsure: [],
          unlike: undefined,
          twice: [],
          ticked: [],
          several: [],
        },
        { page: await drawnPage(drawing), blobs: [], said: () => nothingSaid },
      ).filter(({ why }) => why.startsWith('rules go through the ink 4.00×6.00 in')).length;
    expect(await about(form(600, [200, 300]))).toBe(1);
    expect(await about(form(600, [200]))).toBe(0);
    expect(await about(form(300, [200, 300]))).toBe(0);
    expect(await about(form(600, [40, 600]))).toBe(0);
    expect(await about(form(600, [200, 300]), 'frame')).toBe(0);
  });

  it.each<[string, number, number, number]>([
    ['what was found is offered, too, where all of it is larger than most labels', 4.2, 5.6, 2],
    ['not where that is as large itself', 6.2, 7.3, 1],
  ])('about ink that may go on: %s', async (_, height, foot, answers) => {
    const part = judged(inches(0.2, 1, 3.8, height), 0.8, { edge: 'ink' });
    const ink = [part.box, inches(0.2, 0.3, 3.8, 0.3), inches(0.2, foot, 2, 1)];
    const [only, ...more] = doubtsOf(
      { labels: [part], rivals: [], unsure: [], unlike: undefined, twice: [], ticked: [], several: [] },
      { page: await page(), blobs: ink, said: () => nothingSaid },
    );
    expect([only?.answers.length, more]).toEqual([answers, []]);
    expect(only?.answers[0]?.box.height).toBeGreaterThan(part.box.height);
    expect(answers === 1 || only?.answers[1] === part).toBe(true);
  });

  it('take in every label that is not sure beside them: none gets lost', () => {
    const [first, second, third] = [judged(LEFT, 1), judged(RIGHT, 1), judged(inches(0.2, 6.6, 4, 4), 1)];
    const doubts = [doubt(RIGHT)];
    expect(leftOver([first, second, third], [first], doubts)).toMatchObject([{ answers: [third] }]);
    expect(leftOver([first, second], [first], doubts)).toEqual([]);
  });
});
