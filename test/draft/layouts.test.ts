import { createHash } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import type { ItemResult } from '../../src/recipe/outcome.js';
import { LAYOUTS, NO_LABEL_LAYOUTS } from '../samples/layouts.js';
import { sample, type ExpectedLabel, type Kind, type Layout, type Sample } from '../samples/sample.js';
import { drafted, itemsBy, recipeFor, stepOf } from './drafting.js';

/** By what the recipe for each layout locates its labels; a rung may only go up, to more stable evidence. */
const LOCATED_BY: Readonly<Record<string, string>> = {
  'a4-at-corner-frameless': 'locate-label: { place: left-half, by: [frame, picture, ink] }',
  'a4-quarter-ruled-cells': 'locate-label: { place: upper-half, by: frame }',
  'a4-two-labels': 'locate-label: frame',
  'label-then-slip': 'locate-label: auto',
  'letter-advert': 'locate-label: { place: upper-half, by: frame }',
  'letter-at-corner': 'locate-label: { place: upper-half, by: frame }',
  'letter-code-outside': 'locate-label: { place: upper-half, by: [frame, picture, ink] }',
  'letter-cut-line': 'locate-label: { place: left-half, by: frame }',
  'letter-label-and-slip': 'locate-label: { place: upper-half, by: frame }',
  'letter-lying-design': 'locate-label: { place: upper-half, by: frame }',
  'letter-return-label': 'locate-label: frame',
  'letter-right-half-frameless': 'locate-label: { place: right-half, by: [frame, picture, ink] }',
  'letter-ruled-cells': 'locate-label: { place: upper-half, by: frame }',
  'letter-upper-sideways': 'locate-label: { place: upper-half, by: frame }',
  'letter-upper-sideways-frameless': 'locate-label: { place: upper-half, by: [frame, picture, ink] }',
  'letter-whole-picture': 'locate-label: { place: upper-half, by: frame }',
  'page-4x6': 'locate-label: page',
  'page-4x6-full-bleed': 'locate-label: page',
  'page-a6': 'locate-label: frame',
  'picture-4x6': 'locate-label: page',
};

/** No printer of 203 dpi prints its bars, whatever the recipe. */
const TOO_FINE = 'letter-ninety-percent';

const digest = ({ identifier, bytes }: { identifier: string; bytes: string }): string =>
  createHash('sha256').update(identifier).update(Buffer.from(bytes, 'hex')).digest('hex');
const sortedCodes = ({ codes }: ExpectedLabel): string[] => codes.map(digest).sort();

/** Ready labels that are the expected ones: every edge within 1 mm, and exactly their codes. */
function expectLabels(items: readonly ItemResult[], { expected }: Sample): void {
  for (const [index, page] of expected.pages.entries()) {
    const own = items.filter((item) => item.page === index + 1);
    expect(own.filter(({ state }) => state.kind === 'held' || state.kind === 'failed')).toEqual([]);
    const labels = own.filter(({ role, state }) => state.kind === 'ready' && role !== 'slip');
    const edges = ({ x, y, width, height }: { x: number; y: number; width: number; height: number }): number[] => [
      x,
      y,
      x + width,
      y + height,
    ];
    expect(labels.length).toBe(page.labels.length);
    for (const label of page.labels) {
      const found = labels.find(
        ({ box }) => box && edges(box).every((edge, side) => Math.abs(edge - (edges(label.box)[side] ?? NaN)) <= 2.84),
      );
      expect(found?.codes.map((code) => code.digest).sort(), JSON.stringify(label.box)).toEqual(sortedCodes(label));
    }
    expect(own.filter(({ role, state }) => role === 'slip' && state.kind === 'ready').length >= page.slips.length).toBe(true);
  }
}

/** Samples of all kinds but one; the other is what the recipe meets later. */
const kindsOf = (layout: Layout): { readonly shown: readonly Kind[]; readonly other: Kind } => ({
  shown: layout.kinds.slice(0, -1),
  other: layout.kinds.at(-1) ?? 'grey',
});

describe('a recipe drafted from some documents of a layout', () => {
  it.each(LAYOUTS.filter(({ name }) => name !== TOO_FINE).map((layout) => [layout.name, layout] as const))(
    'finds the labels of others: %s',
    { timeout: 120_000 },
    async (name, layout) => {
      const { shown, other } = kindsOf(layout);
      const text = await recipeFor(...(await Promise.all(shown.map(async (kind) => (await sample(layout, kind, 0)).bytes))));
      expect(stepOf(text, 'locate-label')).toBe(LOCATED_BY[name]);
      const unseen = await sample(layout, other, 0);
      expectLabels(await itemsBy(text, unseen.bytes), unseen);
    },
  );

  it('is not given where no label can be printed', { timeout: 60_000 }, async () => {
    const layout = LAYOUTS.find(({ name }) => name === TOO_FINE) as Layout;
    const result = await drafted((await sample(layout, 'vector', 0)).bytes);
    expect(result).toMatchObject({ kind: 'none', summary: { code: 'draft/no-recipe' } });
    expect(result.kind === 'none' && result.problems.map(({ page, reason }) => [page, reason.code])).toEqual([[1, 'verify/too-fine']]);
  });

  it.each(NO_LABEL_LAYOUTS.map((layout) => [layout.name, layout] as const))('is not given without a label: %s', async (name, layout) => {
    const result = await drafted((await sample(layout, 'vector', 0)).bytes);
    const code = name === 'advert' ? 'draft/unsettled' : 'draft/no-label';
    expect(result).toMatchObject({ kind: 'none', summary: { code }, problems: [{ page: 1, reason: { code } }] });
  });
});
