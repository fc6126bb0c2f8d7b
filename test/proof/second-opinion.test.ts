import { describe, expect, it } from 'vitest';
import { gridOf } from '../../src/geometry/grid.js';
import { reasonOf, SecondOpinions, type SecondOpinion, type SecondOpinionMode } from '../../src/proof/second-opinion.js';
import { takeCounts } from '../../src/reading/counters.js';
import { pictureSource } from '../press/source-double.js';
import { BY_NUMBER, opened, pageOf, RARE_LETTERS, STANDARD, textIn, UNDESCRIBED } from '../reading/risky-pages.js';
import { LAYOUTS } from '../samples/layouts.js';
import { QUARTER_TURNS, sample, type QuarterTurn, type Sample } from '../samples/sample.js';

const PAGE = { x: 0, y: 0, width: 288, height: 432 };

async function opinionOn(bytes: Uint8Array, mode: SecondOpinionMode, seenBySecond = bytes, region = PAGE): Promise<SecondOpinion> {
  const source = await opened(bytes);
  const opinions = new SecondOpinions(source, seenBySecond, mode, gridOf('203dpi'));
  try {
    return await opinions.about(1, region);
  } finally {
    await opinions.close();
    source.close();
  }
}

function layoutNamed(name: string): (typeof LAYOUTS)[number] {
  const layout = LAYOUTS.find((each) => each.name === name);
  if (!layout) throw new Error(`no layout ${name}`);
  return layout;
}
const labelOf = ({ expected }: Sample): NonNullable<(typeof expected.pages)[number]['labels'][number]> => {
  const label = expected.pages[0]?.labels[0];
  if (!label) throw new Error('the sample has no label');
  return label;
};

describe('when it is asked', () => {
  it('not with `never`, and not on a page without risk with `at-risk`; nothing is drawn then', async () => {
    takeCounts();
    expect(await opinionOn(await textIn(BY_NUMBER, '<00240025>'), 'never')).toEqual({ kind: 'not-asked' });
    const lines = await pageOf(() => ({}), '20 100 200 40 re f');
    expect(await opinionOn(lines, 'at-risk')).toEqual({ kind: 'not-asked' });
    expect(takeCounts().secondRasters).toBe(0);
    expect(await opinionOn(lines, 'always')).toEqual({ kind: 'alike', risks: [] });
    expect(takeCounts().secondRasters).toBe(1);
  });

  it('never of a source that is a picture: it has one decoder', async () => {
    const picture = { width: 2, height: 1, channels: 1, data: new Uint8Array(2) } as const;
    const opinions = new SecondOpinions(pictureSource(picture as never, 2, 1), new Uint8Array(), 'always', gridOf('203dpi'));
    expect(await opinions.about(1, PAGE)).toEqual({ kind: 'not-asked' });
  });
});

describe('what two engines truly draw differently', () => {
  it.each([
    ['glyphs by number of a font that is not there', BY_NUMBER, '<002400250026002700280029>'],
    ["letters that are missing from one engine's own font", RARE_LETTERS, '(ABCD)'],
  ])('%s', async (_, font, shown) => {
    const opinion = await opinionOn(await textIn(font, shown), 'at-risk');
    if (opinion.kind !== 'differs') throw new Error(opinion.kind);
    expect(opinion.risks).toEqual(['font not embedded']);
    expect(opinion.share).toBeGreaterThan(0);
    // The text stands at y 300 of a page with y up, in 14 pt; the bar below is alike in both.
    for (const { y, height } of opinion.where) {
      expect(y).toBeGreaterThan(432 - 300 - 14 - 9);
      expect(y + height).toBeLessThan(432 - 300 + 5 + 9);
    }
    expect(reasonOf(opinion)).toMatchObject({ code: 'verify/engines-differ' });
    expect(opinion.drawings.first.data).not.toEqual(opinion.drawings.second.data);
  });

  it('a font of which nothing is said stops the second engine', async () => {
    const opinion = await opinionOn(await textIn(UNDESCRIBED, '<00240025>'), 'at-risk');
    expect(opinion).toEqual({ kind: 'not-drawn', risks: ['font not embedded'], why: 'it stopped while drawing' });
    expect(reasonOf(opinion)?.message).toContain('(font not embedded)');
  });

  it('letters of the standard fonts differ in their cut only', async () => {
    expect(await opinionOn(await textIn(STANDARD, '(Sample 11, 74 Example Street)'), 'always')).toEqual({ kind: 'alike', risks: [] });
    expect(await opinionOn(await textIn(STANDARD, '(Sample 11, 74 Example Street)'), 'at-risk')).toEqual({ kind: 'not-asked' });
  });
});

describe('a second engine that sees something else', () => {
  const words = '(Sample, Unit 11, 74 Example Street)';

  it('no words: in one place', async () => {
    const opinion = await opinionOn(await textIn(STANDARD, words), 'always', await textIn(STANDARD, '()'));
    expect(opinion).toMatchObject({ kind: 'differs', codes: [] });
    expect(opinion.kind === 'differs' && opinion.where).toHaveLength(1);
  });

  it('other words', async () => {
    const opinion = await opinionOn(await textIn(STANDARD, words), 'always', await textIn(STANDARD, '(Muster, Haus 83, 2 Beispielweg)'));
    expect(opinion.kind).toBe('differs');
  });

  it('no grey panel', async () => {
    const panel = await pageOf(() => ({}), '0.5 g 20 200 100 100 re f');
    const opinion = await opinionOn(panel, 'always', await pageOf(() => ({}), '0.8 g 20 200 100 100 re f'));
    expect(opinion.kind).toBe('differs');
  });

  it('another code: told by what it says, though its bars look much alike', async () => {
    const one = await sample(layoutNamed('letter-lying-design'), 'bilevel', 0);
    const other = await sample(layoutNamed('letter-at-corner'), 'bilevel', 0);
    const { box } = labelOf(one);
    const opinion = await opinionOn(one.bytes, 'always', other.bytes, box);
    if (opinion.kind !== 'differs') throw new Error(opinion.kind);
    const all = new Set(labelOf(one).codes.map(({ bytes }) => bytes));
    expect(opinion.codes.filter(({ bytes }) => all.has(bytes)).length).toBeGreaterThan(0);
    expect(reasonOf(opinion)?.message).toContain('code');
  });

  it('no document, no such page, a page of another shape', async () => {
    const bytes = await textIn(STANDARD, words);
    const wide = await sample(layoutNamed('letter-upper-sideways'), 'vector', 0);
    for (const [seen, why] of [
      [new TextEncoder().encode('no PDF at all'), 'the document does not open in it'],
      [wide.bytes, 'it sees a page of another shape'],
    ] as const) {
      const opinion = await opinionOn(bytes, 'always', seen);
      expect(opinion).toMatchObject({ kind: 'not-drawn', why });
      expect(reasonOf(opinion)).toMatchObject({ code: 'verify/second-not-drawn' });
    }
    const source = await opened(await textIn(STANDARD, words));
    const opinions = new SecondOpinions(
      { ...source, pressSource: (n) => source.pressSource(n), page: () => ({ ...at(source), number: 2 }) },
      bytes,
      'always',
      gridOf('203dpi'),
    );
    expect(await opinions.about(1, PAGE)).toMatchObject({ kind: 'not-drawn', why: 'it finds no such page' });
    await opinions.close();
    source.close();
  });
});

const at = (source: Awaited<ReturnType<typeof opened>>): ReturnType<typeof source.page> => {
  const page = source.page(1);
  return { ...page, width: page.width, height: page.height, render: (...args) => page.render(...args) };
};

describe('two engines agree on the samples, in every turn and kind', () => {
  const some = ['letter-lying-design', 'a4-two-labels', 'page-a6', 'letter-upper-sideways'];
  it.each(
    some.flatMap((name, index) => layoutNamed(name).kinds.map((kind) => [name, kind, QUARTER_TURNS[index % 4] as QuarterTurn] as const)),
  )('%s as %s, turned %i', async (name, kind, turn) => {
    const made = await sample(layoutNamed(name), kind, turn);
    if (!made.fileName.endsWith('.pdf')) return;
    const opinion = await opinionOn(made.bytes, 'always', made.bytes, labelOf(made).box);
    expect(opinion.kind).toBe('alike');
  });
});
