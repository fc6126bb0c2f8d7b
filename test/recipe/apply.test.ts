import { describe, expect, it } from 'vitest';
import { applyRecipe } from '../../src/recipe/apply.js';
import type { CompiledRecipe, CompiledStep } from '../../src/config/recipe.js';
import type { SourceDocument } from '../../src/reading/source.js';
import type { Sheet } from '../../src/sheet/sheet.js';
import { STEPS } from '../../src/steps/index.js';
import { blankPages, endOf, onMedia, opened, optionsOf } from '../steps/on-sample.js';

/** A step of a recipe with its declared defaults, changed where a test says so. */
function step(name: string, changed: Readonly<Record<string, unknown>> = {}): CompiledStep {
  const declared = STEPS.find((each) => each.name === name);
  if (!declared) throw new Error(`no step ${name}`);
  return { name, options: { ...optionsOf(declared), ...changed } };
}

/** The whole of a 4×6 page: nothing is left over. */
const BOX = [0, 0, 4, 6].map((value) => ({ value, unit: 'in' }));

const recipe = (...steps: readonly CompiledStep[]): CompiledRecipe => ({ name: 'test', about: 'Made by a test.', steps });
const told = (sheets: readonly Sheet[]): readonly string[] =>
  sheets.map((sheet) => `${sheet.id} ${sheet.role} ${sheet.parcel ?? '-'} ${endOf(sheet) ?? ''}`);

describe('applyRecipe', () => {
  it('takes every page for a label where no step says otherwise, each a parcel of its own', async () => {
    expect(told(await applyRecipe(recipe(), onMedia(blankPages(288, 432, 3))))).toEqual([
      'p1 label 1 planned',
      'p2 label 2 planned',
      'p3 label 3 planned',
    ]);
  });

  it('runs its steps in the order of the recipe', async () => {
    const [sheet] = await applyRecipe(
      recipe(
        step('rotate', { to: '90' }),
        step('rotate', { to: '180' }),
        step('crop', { inset: { value: 9, unit: 'pt' } }),
        step('verify', { codes: 'none' }),
      ),
      onMedia(blankPages(288, 432)),
    );
    expect(sheet?.turn).toBe(180);
    expect(sheet?.box).toEqual({ x: 9, y: 9, width: 270, height: 414 });
    expect(sheet?.proof).toMatchObject({ codes: 'none' });
  });

  it('leaves steps of the whole run to the run', async () => {
    const context = onMedia(blankPages(288, 432));
    expect(await applyRecipe(recipe(step('number'), step('impose')), context)).toEqual(await applyRecipe(recipe(), context));
  });

  it('holds a slip that no step has put behind a label', async () => {
    const sheets = await applyRecipe(recipe(step('split-pages', { labels: 'odd', slips: 'even' })), onMedia(blankPages(288, 432, 2)));
    expect(told(sheets)).toEqual(['p1 label 1 planned', 'p2 slip - held packing-slip/parcel']);
  });

  it('numbers no parcel twice and loses no page', async () => {
    const { document, sheets: fresh } = await opened('label-then-slip');
    const sheets = await applyRecipe(
      recipe(
        step('split-pages', { labels: 'odd', slips: 'even' }),
        step('locate-label'),
        step('rotate'),
        step('scale'),
        step('packing-slip'),
        step('verify'),
      ),
      onMedia(document),
    );
    expect(told(sheets)).toEqual(['p1 label 1 planned', 'p1.rest remainder - skipped locate-label/remainder', 'p2 slip 1 planned']);
    expect(new Set(sheets.map(({ page }) => page))).toEqual(new Set(fresh.map(({ page }) => page)));
    document.close();
  });

  it('holds a page that cannot be used, shows it to no step, and goes on with the others', async () => {
    const unfit = { code: 'reading/damaged', message: 'the page lacks its font', remedy: 'Download it again.' } as const;
    const blank = blankPages(288, 432, 3);
    const shown: number[] = [];
    const document: SourceDocument = {
      ...blank,
      page: (number) => {
        const page = blank.page(number);
        if (number !== 2) return page;
        const looked = (): never => {
          shown.push(number);
          throw new Error('a page that cannot be used is not looked at');
        };
        return { ...page, unfit, words: looked, images: looked, ink: looked, render: looked, codes: looked };
      },
    };
    const steps = recipe(
      step('locate-label', { box: BOX }),
      step('rotate', { to: '0' }),
      step('scale'),
      step('packing-slip'),
      step('verify'),
    );
    const sheets = await applyRecipe(steps, onMedia(document));
    expect(sheets.map((sheet) => `${sheet.page} ${endOf(sheet) ?? ''}`)).toEqual(['1 planned', '2 held reading/damaged', '3 planned']);
    expect(shown).toEqual([]);
  });

  it('throws for a step that does not exist: recipes are checked before', async () => {
    await expect(applyRecipe(recipe({ name: 'fold', options: {} }), onMedia(blankPages(288, 432)))).rejects.toThrow('no step fold');
  });
});
