import { describe, expect, it } from 'vitest';
import type { AsItIs, ExplainedPage, OnPage } from '../../src/explain/explained.js';
import { explainDocument } from '../../src/explain/explain-document.js';
import { loadRecipe } from '../../src/config/load-recipe.js';
import { PLAIN_PRINTER, ROLL } from '../../src/geometry/printer.js';
import { explainSample } from './explain-sample.js';

function whole(page: ExplainedPage | undefined): ExplainedPage & { readonly onPage: OnPage; readonly asItIs: AsItIs } {
  if (!page?.onPage || !page.asItIs) throw new Error('a page that was looked at');
  return { ...page, onPage: page.onPage, asItIs: page.asItIs };
}

describe('the known failure: a letter page with a sideways label, sent to a 4×6 in printer as it is', () => {
  it('comes out with the worked figures of handbook sections 5.5 and 11.6', async () => {
    const { known, explained } = await explainSample('letter-upper-sideways');
    const [expected] = known.expected.pages;
    const { onPage, asItIs, size } = whole(explained.pages[0]);
    expect(size).toEqual({ width: 612, height: 792, name: 'letter' });
    // Section 11.6, COMPUTED: fit 612×792 pt into 288×432: 0.470588.
    expect(Math.abs(asItIs.factor - 0.470588)).toBeLessThan(2e-6);
    expect(asItIs.pageTurned).toBe(false);

    const [label] = expected?.labels ?? [];
    const [seen] = onPage.labels;
    expect(onPage.labels).toHaveLength(1);
    for (const side of ['x', 'y', 'width', 'height'] as const)
      expect(Math.abs((seen?.box[side] ?? 0) - (label?.box[side] ?? 0))).toBeLessThan(72 / 25.4);
    expect(seen?.turn).toBe(label?.turn);

    const [printed] = asItIs.labels;
    expect(printed).toMatchObject({ lies: 'on-its-side', turnNeeded: label?.turn });
    expect(printed?.width).toBeCloseTo(432 * (8 / 17), -1);
    // 6×4 in at 0.4706 on 4×6 in: the square of the factor.
    expect(printed?.share).toBeCloseTo((8 / 17) ** 2, 2);

    // Drawn with 3 dots; section 5.5: times 0.4706, that is 1.41 dots and 6.95 mil.
    const code = asItIs.codes.find(({ moduleDots }) => moduleDots !== undefined);
    expect(code?.moduleDots).toBeGreaterThan(1.39);
    expect(code?.moduleDots).toBeLessThan(1.44);
    expect(code?.moduleMil).toBeCloseTo((3 / 203) * 1000 * (8 / 17), 1);
    expect(code).toMatchObject({ standing: 'too-fine', readBack: false });
    expect(asItIs.verdict.kind).toBe('too-fine');
    expect(asItIs.verdict.sentence).toMatch(
      /^Fitted whole, .* 47 % of its size, on its side, on 22 % of the print, .* 1\.4 dots .* 2 dots and 0\.25 mm .*\.$/,
    );
  });

  it('is put right by any-page: true size, turned upright, bars of 3 dots', async () => {
    const { known, explained } = await explainSample('letter-upper-sideways');
    const { slipyard } = whole(explained.pages[0]);
    const [label, rest, ...others] = slipyard.items;
    expect(slipyard.recipe).toBe('any-page');
    expect(label).toMatchObject({
      role: 'label',
      state: 'ready',
      scale: 1,
      turn: known.expected.pages[0]?.labels[0]?.turn,
      codesProved: 2,
    });
    expect(label?.moduleDots).toBeCloseTo(3, 1);
    expect(label?.moduleMil).toBeCloseTo(14.78, 1);
    expect(rest).toMatchObject({ role: 'remainder', state: 'skipped' });
    expect(others).toEqual([]);
  });

  it('is the same failure for a raster that was turned', async () => {
    const { explained } = await explainSample('letter-upper-sideways', { kind: 'bilevel', turn: 90 });
    const { asItIs } = whole(explained.pages[0]);
    expect(asItIs).toMatchObject({ pageTurned: true, verdict: { kind: 'too-fine' } });
    expect(asItIs.factor).toBeCloseTo(8 / 17, 5);
    expect(asItIs.factorUnturned).toBeCloseTo(4 / 11, 5);
  });
});

describe('what is on a page', () => {
  it('names every code of the sample once, by symbology and its last four characters', async () => {
    const { known, explained } = await explainSample('a4-two-labels');
    const labels = known.expected.pages[0]?.labels ?? [];
    const { onPage } = whole(explained.pages[0]);
    expect(onPage.labels).toHaveLength(2);
    for (const [index, { codes }] of labels.entries()) {
      const seen = onPage.codes.filter(({ label }) => label === index + 1);
      expect(seen.map(({ symbology }) => symbology).sort()).toEqual(codes.map(({ symbology }) => symbology).sort());
    }
    expect(onPage.codes.every(({ tail }) => tail.length === 4)).toBe(true);
  });

  it('numbers labels and codes from 1, each number once', async () => {
    const { explained } = await explainSample('a4-two-labels');
    const { labels, codes } = whole(explained.pages[0]).onPage;
    expect([...labels, ...codes].map(({ mark }) => mark)).toEqual([1, 2, 3, 4, 5, 6]);
  });

  it('tells bars from what can not be measured', async () => {
    const { explained } = await explainSample('letter-upper-sideways');
    const { onPage, asItIs } = whole(explained.pages[0]);
    const byName = Object.fromEntries(onPage.codes.map((code) => [code.symbology, code]));
    expect(byName['Code 128']?.moduleMm).toBeCloseTo((3 / 203) * 25.4, 2);
    expect(byName['Data Matrix']?.moduleMm).toBeUndefined();
    expect(asItIs.codes.find(({ mark }) => mark === byName['Data Matrix']?.mark)).toMatchObject({
      standing: 'not-measured',
      range: undefined,
    });
  });

  it('is a slip, and no label, where it says so', async () => {
    const { explained } = await explainSample('label-then-slip');
    const [first, second] = explained.pages.map(whole);
    expect(first?.onPage.kind).toBe('label');
    expect(second?.onPage).toMatchObject({ kind: 'named', about: 'packing slip', labels: [] });
    expect(second?.asItIs.verdict.kind).toBe('no-label');
    expect(second?.slipyard.items).toMatchObject([{ role: 'slip', state: 'ready' }]);
  });
});

describe('a page that has the size of the label', () => {
  it('can be printed as it is', async () => {
    const { explained } = await explainSample('page-4x6');
    const { asItIs } = whole(explained.pages[0]);
    expect(asItIs).toMatchObject({ factor: 1, verdict: { kind: 'fit' } });
    expect(asItIs.codes.every(({ readBack, standing }) => readBack && standing === 'in-range')).toBe(true);
  });

  it('is measured on the media and the grid that are asked for', async () => {
    const { explained } = await explainSample('page-4x6', { media: '100x150mm', grid: '300dpi' });
    const { asItIs } = whole(explained.pages[0]);
    // Handbook section 5.5: 100×150 mm on 4×6 in is 1.0160, the other way round 1/1.016.
    expect(asItIs).toMatchObject({ media: '100x150mm', grid: '300dpi', verdict: { kind: 'not-true-size' } });
    expect(asItIs.factor).toBeCloseTo(1 / 1.016, 4);
  });
});

describe('what a run would do', () => {
  it('follows the recipe that is asked for', async () => {
    const { explained } = await explainSample('letter-upper-sideways', { recipe: 'two-halves' });
    const { slipyard } = whole(explained.pages[0]);
    expect(slipyard.recipe).toBe('two-halves');
    // Its lower half is a receipt.
    expect(slipyard.items.map(({ role, state }) => `${role} ${state}`)).toContain('label held');
    expect(slipyard.items.find(({ state }) => state === 'held')?.reason?.remedy).toMatch(/^[A-Z].+\.$/);
  });

  it('says why it holds, and still knows the label', async () => {
    const { explained } = await explainSample('letter-ninety-percent');
    const { onPage, slipyard } = whole(explained.pages[0]);
    expect(slipyard.items[0]).toMatchObject({ state: 'held', reason: { code: 'verify/too-fine' } });
    expect(onPage.labels).toHaveLength(1);
  });
});

it('a document that can not be read is refused with its reason', async () => {
  const recipe = loadRecipe('any-page', '.').value;
  if (!recipe) throw new Error('the recipe must load');
  const output = { name: ROLL, media: '4x6in', grid: '203dpi', printer: PLAIN_PRINTER } as const;
  const bytes = new TextEncoder().encode('%PDF-1.7\n% that is all\n');
  const explained = await explainDocument({ bytes, shownName: 'a.pdf', recipe, output, pictures: true });
  expect(explained).toMatchObject({ refused: { code: expect.stringMatching(/^reading\//) as unknown } });
});
