import { describe, expect, it } from 'vitest';
import { outputNamed, outputsOf, pagesFor, placeOf, stackTarget } from '../../src/batch/outputs.js';
import { processDocument } from '../../src/batch/process-document.js';
import { loadRecipe } from '../../src/config/load-recipe.js';
import type { CompiledRecipe } from '../../src/config/recipe.js';
import { PLAIN_PRINTER, ROLL, type Output } from '../../src/geometry/printer.js';
import { openPdf } from '../../src/reading/open-pdf.js';
import type { DocumentResult } from '../../src/recipe/outcome.js';
import { ROOT } from '../house/tree.js';
import { code128 } from '../samples/code-art.js';
import { contentFor } from '../samples/content.js';
import { declaration } from '../samples/declaration.js';
import type { Drawing } from '../samples/drawing.js';
import { tidewick } from '../samples/labels/tidewick.js';
import { label, LETTER, other } from '../samples/layout.js';
import { documentOf, slipPageWithBars } from '../steps/on-pages.js';
import { TWO_UP } from './inbox.js';

const OFFICE: Output = { name: 'office', media: 'letter', grid: '300dpi', printer: PLAIN_PRINTER };
const PRINTERS = { media: '4x6in', grid: '203dpi', printer: PLAIN_PRINTER, outputs: [OFFICE], largePages: 'office' } as const;
const plain: CompiledRecipe = { name: 'plain', about: 'A recipe.', steps: [] };
const twoUp: CompiledRecipe = { ...plain, steps: [TWO_UP] };

describe('the printers of a channel', () => {
  it('are the roll and the one for large pages', () => {
    const { own, large, plan } = outputsOf(PRINTERS, { recipe: plain });
    expect([own, large]).toEqual([{ name: ROLL, media: '4x6in', grid: '203dpi', printer: PLAIN_PRINTER }, OFFICE]);
    expect(plan.impose).toBeUndefined();
    const { media, grid, printer, outputs } = PRINTERS;
    expect(outputsOf({ media, grid, printer, outputs }, { recipe: plain }).large).toBeUndefined();
  });

  it('are the one that it names, and no other for large pages when that is the same', () => {
    expect(outputsOf(PRINTERS, { recipe: plain, printOn: 'office' })).toMatchObject({ own: OFFICE, large: undefined });
    expect(outputsOf(PRINTERS, { recipe: plain, printOn: ROLL }).own.name).toBe(ROLL);
  });

  it('take labels of the roll where they are laid on the sheets of that printer', () => {
    const { own, large } = outputsOf(PRINTERS, { recipe: twoUp, printOn: 'office' });
    expect([own.media, own.grid, large?.media]).toEqual(['4x6in', '300dpi', 'letter']);
    expect(pagesFor(PRINTERS, 'office', false).media).toBe('letter');
    const { impose } = outputsOf(PRINTERS, { recipe: twoUp }).plan;
    expect(stackTarget(PRINTERS, { output: 'office', impose })).toEqual({
      media: '4x6in',
      grid: '300dpi',
      output: 'vector',
      offset: OFFICE.printer.offset,
    });
    // Without a name nobody knows by what printer the sheets are printed; the roll's faults are not its.
    expect(
      stackTarget({ ...PRINTERS, printer: { ...PRINTERS.printer, offset: { x: 9, y: 9 } } }, { output: ROLL, impose }).offset,
    ).toBeUndefined();
    expect(stackTarget(PRINTERS, { output: 'office', impose: undefined }).offset).toBeUndefined();
  });

  it('are known, or it is a bug', () => {
    expect(() => outputNamed(PRINTERS, 'desk')).toThrow('no printer desk');
    expect(() => placeOf([], 0)).toThrow('no channel 0');
  });
});

const content = contentFor('to the office', 1);

async function processed(drawing: Drawing, changes: Partial<Output> = {}, options: Record<string, unknown> = {}): Promise<DocumentResult> {
  const { value } = loadRecipe('any-page', ROOT);
  if (!value) throw new Error('any-page has mistakes');
  const steps = value.steps.map((step) => (step.name === 'customs-form' ? { ...step, options: { ...step.options, ...options } } : step));
  const bytes = await documentOf([
    { width: 288, height: 432, regions: [label(tidewick(content), 0, 0)] },
    { ...LETTER, regions: [other(drawing, 36, 40)] },
  ]);
  const job = { bytes, shownName: 'a.pdf', recipe: { ...value, steps }, media: '4x6in', grid: '203dpi' } as const;
  return processDocument({ ...job, large: { ...OFFICE, ...changes } });
}
const ends = ({ items }: DocumentResult): readonly string[] =>
  items.map(({ role, state }) => `${role} ${state.kind === 'ready' ? 'ready' : state.code}`);

describe('a document with a slip for another printer', () => {
  it('has it pressed there whole, proved, in the parcel of its label, with room for its number', async () => {
    const { value } = loadRecipe('any-page', ROOT);
    if (!value) throw new Error('any-page has mistakes');
    const readable = { value: 9, unit: 'pt' };
    const steps = value.steps.map((step) => (step.name === 'packing-slip' ? { ...step, options: { ...step.options, readable } } : step));
    const bytes = await documentOf([{ width: 288, height: 432, regions: [label(tidewick(content), 0, 0)] }, slipPageWithBars(1)]);
    const job = { bytes, shownName: 'a.pdf', recipe: { ...value, steps }, media: '4x6in', grid: '203dpi' } as const;
    const result = await processDocument({ ...job, large: OFFICE });
    expect(ends(result)).toEqual(['label ready', 'slip ready']);
    expect(result.items.map(({ output, parcel, scale }) => [output, parcel, scale])).toEqual([
      [undefined, 1, 1],
      ['office', 1, 1],
    ]);
    expect(result.items[1]?.numberBox).toBeDefined();
    const opened = await openPdf(result.pressedElsewhere?.get('office') ?? new Uint8Array());
    if ('refused' in opened) throw new Error(opened.refused.message);
    expect([opened.pageCount, opened.page(1).width, opened.page(1).height]).toEqual([1, 612, 792]);
    opened.close();
  });
});

describe('a document with a page for another printer', () => {
  it('is pressed apart for each, the page at true size on its own media and proved on its own grid', async () => {
    const result = await processed(declaration(540, 660, content, '1/1'));
    expect(ends(result)).toEqual(['label ready', 'customs-form ready']);
    expect(result.items.map(({ output, pressedPage }) => [output, pressedPage])).toEqual([
      [undefined, 1],
      ['office', 1],
    ]);
    expect([...(result.pressedElsewhere?.keys() ?? [])]).toEqual(['office']);
    const opened = await openPdf(result.pressedElsewhere?.get('office') ?? new Uint8Array());
    if ('refused' in opened) throw new Error(opened.refused.message);
    const page = opened.page(1);
    expect([opened.pageCount, page.width, page.height]).toEqual([1, 612, 792]);
    expect(page.words().find(({ text }) => text === 'DECLARATION')?.fontSize).toBeCloseTo(17, 1);
    opened.close();
  });

  it('has its number in the margin, outside all that is printed, away from the edge of the paper', async () => {
    const { items } = await processed(declaration(540, 660, content, '1/1'));
    const box = items[1]?.numberBox;
    if (!box) throw new Error('no number');
    expect(box.y).toBeGreaterThan(700);
    expect(box.y + box.height).toBeLessThan(792 - 18);
    expect(box.x + box.width).toBeLessThan(612 - 18);
  });

  it('goes without a number where its margin is full', async () => {
    const drawing = declaration(600, 780, content, '1/1');
    const { value } = loadRecipe('any-page', ROOT);
    if (!value) throw new Error('any-page has mistakes');
    const bytes = await documentOf([
      { width: 288, height: 432, regions: [label(tidewick(content), 0, 0)] },
      { ...LETTER, regions: [other(drawing, 6, 6)] },
    ]);
    const { items } = await processDocument({ bytes, shownName: 'a.pdf', recipe: value, media: '4x6in', grid: '203dpi', large: OFFICE });
    expect(items.map(({ state, numberBox }) => [state.kind, numberBox !== undefined])[1]).toEqual(['ready', false]);
  });

  it('goes out as that printer’s dots where it takes dots', async () => {
    const result = await processed(declaration(540, 660, content, '1/1'), { printer: { ...PLAIN_PRINTER, output: 'dots' } });
    expect(ends(result)).toEqual(['label ready', 'customs-form ready']);
    const opened = await openPdf(result.pressedElsewhere?.get('office') ?? new Uint8Array());
    if ('refused' in opened) throw new Error(opened.refused.message);
    expect(opened.page(1).words()).toEqual([]);
    opened.close();
  });

  it('is held with its label when its print is held, unless the recipe lets the label go', async () => {
    // Bars of 0.3 pt are 0.85 dots of 203 dpi: read from the page, lost in the dots.
    const fine = declaration(540, 660, content, '1/1');
    fine.bars(code128('TOO-FINE-FOR-THAT-PRINTER'), 300, 330, 0.3, 30);
    const coarse = { grid: '203dpi' } as const;
    expect(ends(await processed(fine, coarse))).toEqual(['label batch/parcel-held', 'customs-form verify/code-lost']);
    const released = await processed(fine, coarse, { 'if-held': 'print-label' });
    expect(ends(released)).toEqual(['label ready', 'customs-form verify/code-lost']);
    expect(released.pressedElsewhere).toBeUndefined();
  });
});
