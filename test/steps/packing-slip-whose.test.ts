import { describe, expect, it } from 'vitest';
import { processDocument } from '../../src/batch/process-document.js';
import type { CompiledRecipe } from '../../src/config/recipe.js';
import { bareBox, letter, sidewaysLabel } from '../locating/survey-pages.js';
import { other, type LayoutPage } from '../samples/layout.js';
import {
  documentOf,
  instructionsPage,
  labelPage,
  labelPageWithoutCode,
  recipeNamed,
  sharedPage,
  slipPage,
  slipPageWithBars,
} from './on-pages.js';

/** Ends of all items but what labels leave of their pages, each with its parcel. */
async function ends(pages: readonly LayoutPage[], recipe: CompiledRecipe = recipeNamed('any-page')): Promise<readonly string[]> {
  const bytes = await documentOf(pages);
  const { items } = await processDocument({ bytes, shownName: 'pages.pdf', recipe, media: '4x6in', grid: '203dpi' });
  return items
    .filter(({ role }) => role !== 'remainder')
    .map(
      ({ id, role, state, parcel }) => `${id} ${role} ${state.kind === 'ready' ? 'ready' : `${state.kind} ${state.code}`} ${parcel ?? '-'}`,
    );
}

/** A recipe with one step's options changed. */
const changed = (recipe: CompiledRecipe, step: string, options: Readonly<Record<string, unknown>>): CompiledRecipe => ({
  ...recipe,
  steps: recipe.steps.map((each) => (each.name === step ? { ...each, options: { ...each.options, ...options } } : each)),
});

describe('whose packing slip it is', () => {
  it('the label before it, and every slip page behind it, until the next label', async () => {
    expect(await ends([labelPage(1), slipPage(1), slipPage(11), labelPage(2), slipPage(2)])).toEqual([
      'p1 label ready 1',
      'p2 slip ready 1',
      'p3 slip ready 1',
      'p4 label ready 2',
      'p5 slip ready 2',
    ]);
  });

  it('is not sure behind several labels in a row: none goes into the box of another', async () => {
    expect(await ends([labelPage(1), labelPage(2), slipPage(1), slipPage(2)])).toEqual([
      'p1 label held batch/parcel-held 1',
      'p2 label held batch/parcel-held 2',
      'p3 slip held packing-slip/whose 1',
      'p4 slip held packing-slip/whose 2',
    ]);
    expect(await ends([labelPage(1), labelPage(2), slipPage(2)])).toEqual(['p1 label ready 1', 'p2 label ready 2', 'p3 slip ready 2']);
  });

  it('is not sure behind a page on which something may be a further label: the slip is held, and the label with it', async () => {
    const box = other(bareBox(260, 240, '00340000123456789012', 1, 40), 90, 460);
    expect(await ends([letter(sidewaysLabel(3, 40), box), slipPage(3), labelPage(2), slipPage(2)])).toEqual([
      'p1.1 label held batch/parcel-held 1',
      'p1.2 page held locate-label/doubtful -',
      'p2 slip held packing-slip/whose 1',
      'p3 label ready 2',
      'p4 slip ready 2',
    ]);
    expect(await ends([letter(sidewaysLabel(3, 40), box)])).toEqual(['p1.1 label ready 1', 'p1.2 page held locate-label/doubtful -']);
  });

  it('a slip whose code would be lost by setting its words anew is held with its label', async () => {
    expect(await ends([labelPage(2), slipPageWithBars(2)])).toEqual([
      'p1 label held batch/parcel-held 1',
      'p2 slip held packing-slip/unreadable 1',
    ]);
  });

  it('is doubtful behind a page that may be a label nobody recognised: no slip goes into another box', async () => {
    expect(await ends([labelPage(1), slipPage(1), labelPageWithoutCode(2), slipPage(2), labelPage(3), slipPage(3)])).toEqual([
      'p1 label held batch/parcel-held 1',
      'p2 slip held batch/parcel-held 1',
      'p3 page skipped split-pages/no-code -',
      'p4 slip held packing-slip/whose 1',
      'p5 label ready 2',
      'p6 slip ready 2',
    ]);
  });

  it('is clear again when the recipe names what stands between', async () => {
    const recipe = changed(recipeNamed('any-page'), 'split-pages', { 'skip-words': ['how to use your label'] });
    expect(await ends([labelPage(1), instructionsPage(), slipPage(1)], recipe)).toEqual([
      'p1 label ready 1',
      'p2 page skipped split-pages/skipped -',
      'p3 slip ready 1',
    ]);
  });

  it('is doubtful in the whole document when a slip comes first', async () => {
    expect(await ends([slipPage(1), labelPage(1), slipPage(2), labelPage(2)])).toEqual([
      'p1 slip held packing-slip/whose 1',
      'p2 label held batch/parcel-held 1',
      'p3 slip held packing-slip/whose 2',
      'p4 label held batch/parcel-held 2',
    ]);
  });

  it('a page with a label of its own is no slip of the label before it, whatever it says', async () => {
    expect(await ends([labelPage(1), sharedPage(2)])).toEqual(['p1 label ready 1', 'p2 label ready 2', 'p2.slip slip ready 2']);
    const byWords = changed(recipeNamed('any-page'), 'split-pages', { 'slip-words': ['packing slip'] });
    expect(await ends([labelPage(1), sharedPage(2)], byWords)).toEqual(['p1 label ready 1', 'p2 page held split-pages/shared-page -']);
  });

  it('on a shared page it is that of the one label there', async () => {
    const recipe = recipeNamed('label-and-slip');
    expect(await ends([sharedPage(1), sharedPage(2)], recipe)).toEqual([
      'p1 label ready 1',
      'p1.slip slip ready 1',
      'p2 label ready 2',
      'p2.slip slip ready 2',
    ]);
  });

  it('beside its label it is that label’s, though another slip comes first: no label is printed without its own', async () => {
    expect(await ends([slipPage(1), sharedPage(2), sharedPage(3)])).toEqual([
      'p1 slip held packing-slip/whose 1',
      'p2 label held batch/parcel-held 1',
      'p2.slip slip held batch/parcel-held 1',
      'p3 label ready 2',
      'p3.slip slip ready 2',
    ]);
  });

  it('that the recipe names a place for takes the place of the one that was found', async () => {
    const named = changed(recipeNamed('any-page'), 'packing-slip', { from: 'same-page', place: 'lower-half' });
    expect(await ends([sharedPage(1)], named)).toEqual(['p1 label ready 1', 'p1.slip slip ready 1']);
  });

  it('a region that lies over the label is held, and the label with it', async () => {
    const recipe = changed(recipeNamed('label-and-slip'), 'packing-slip', { place: 'left-half' });
    expect(await ends([sharedPage(1)], recipe)).toEqual([
      'p1 label held batch/parcel-held 1',
      'p1.slip slip held packing-slip/overlaps-label 1',
    ]);
  });

  it('holds the label with its unreadable slip, or prints it alone where the recipe says so', async () => {
    const unreadable = { layout: 'shrink', readable: { value: 11, unit: 'pt' } };
    const recipe = recipeNamed('any-page');
    expect(await ends([labelPage(1), slipPage(1)], changed(recipe, 'packing-slip', unreadable))).toEqual([
      'p1 label held batch/parcel-held 1',
      'p2 slip held packing-slip/unreadable 1',
    ]);
    const printed = changed(recipe, 'packing-slip', { ...unreadable, 'if-held': 'print-label' });
    expect(await ends([labelPage(1), slipPage(1)], printed)).toEqual(['p1 label ready 1', 'p2 slip held packing-slip/unreadable 1']);
  });
});
