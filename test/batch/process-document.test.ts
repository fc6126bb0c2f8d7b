import { PDFDocument, PDFName } from 'pdf-lib';
import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import { processDocument } from '../../src/batch/process-document.js';
import { loadRecipe } from '../../src/config/load-recipe.js';
import type { CompiledRecipe } from '../../src/config/recipe.js';
import { PLAIN_PRINTER, type PrinterSetup } from '../../src/geometry/printer.js';
import { stampSize } from '../../src/press/stamp.js';
import type { DocumentResult, ItemResult } from '../../src/recipe/outcome.js';
import { NO_LABELS } from '../faults/inputs/documents.js';
import { ROOT } from '../house/tree.js';
import { bareBox } from '../locating/survey-pages.js';
import { other } from '../samples/layout.js';
import { LAYOUTS } from '../samples/layouts.js';
import { FAMILY, GIVEN, STREETS, TOWNS } from '../samples/names.js';
import { sample, type Sample } from '../samples/sample.js';
import { documentOf } from '../steps/on-pages.js';

function processed(bytes: Uint8Array, recipe = 'any-page'): Promise<DocumentResult> {
  const { value } = loadRecipe(recipe, ROOT);
  if (!value) throw new Error(`${recipe} has mistakes`);
  return processDocument({ bytes, shownName: 'sample.pdf', recipe: value, media: '4x6in', grid: '203dpi' });
}

function samplesOf(name: string): Promise<Sample> {
  const layout = LAYOUTS.find((each) => each.name === name);
  if (!layout) throw new Error(`no layout ${name}`);
  return sample(layout, 'vector', 0);
}

const sampleOf = async (name: string): Promise<Uint8Array> => (await samplesOf(name)).bytes;

/** The first page of a sample three times, the second of them changed. */
async function withOddPage(name: string, change: (pdf: PDFDocument) => void): Promise<Uint8Array> {
  const source = await PDFDocument.load(await sampleOf(name));
  const pdf = await PDFDocument.create({ updateMetadata: false });
  for (let count = 0; count < 3; count++) for (const page of await pdf.copyPages(source, [0])) pdf.addPage(page);
  change(pdf);
  return pdf.save({ useObjectStreams: false });
}

const numberStep = (size: number): CompiledRecipe['steps'][number] => {
  const { value } = loadRecipe('label-pages', ROOT);
  const step = value?.steps.find(({ name }) => name === 'number');
  if (!step) throw new Error('label-pages has no numbers');
  return { ...step, options: { ...step.options, size: { value: size, unit: 'pt' } } };
};

const statesOf = (items: readonly ItemResult[]): readonly string[] =>
  items.map(({ id, state }) => (state.kind === 'ready' ? `${id} ready` : `${id} ${state.kind} ${state.code}`));

describe('a printer that is not true, or does not reach everywhere', () => {
  const on = async (printer: Partial<PrinterSetup>): Promise<DocumentResult> => {
    const { value } = loadRecipe('any-page', ROOT);
    if (!value) throw new Error('any-page has mistakes');
    const bytes = await sampleOf('picture-4x6');
    return processDocument({
      bytes,
      shownName: 'sample.pdf',
      recipe: value,
      media: '4x6in',
      grid: '203dpi',
      printer: { ...PLAIN_PRINTER, ...printer },
    });
  };

  it('moves everything by the offset', async () => {
    const [plain, moved] = [await on({}), await on({ offset: { x: 0.5, y: -0.5 } })];
    expect(statesOf(moved.items)).toEqual(['p1 ready']);
    const [before, after] = [plain.items[0]?.drawnBox, moved.items[0]?.drawnBox];
    expect((after?.x ?? NaN) - (before?.x ?? NaN)).toBeCloseTo(0.5, 0);
    expect((after?.y ?? NaN) - (before?.y ?? NaN)).toBeCloseTo(-0.5, 0);
    expect(after).not.toEqual(before);
  });

  it('holds a label that the offset would push over the edge', async () => {
    expect(statesOf((await on({ offset: { x: 14, y: 0 } })).items)).toEqual(['p1 held verify/beyond-page']);
  });

  it('holds a label with ink where the printer does not reach', async () => {
    expect(statesOf((await on({ margins: { top: 30, right: 0, bottom: 0, left: 0 } })).items)).toEqual(['p1 held verify/out-of-reach']);
    expect(statesOf((await on({ printWidth: 200 })).items)).toEqual(['p1 held verify/out-of-reach']);
  });
});

describe('processDocument', () => {
  it.each(NO_LABELS.map(([what, code, content]) => [what, code, content] as const))(
    '%s ends as one failed item: %s',
    async (_, code, content) => {
      const { items, pageCount, pressed } = await processed(content);
      expect(items.map(({ state }) => [state.kind, state.kind === 'ready' ? '' : state.code])).toEqual([['failed', code]]);
      expect([pageCount, pressed]).toEqual([0, undefined]);
    },
  );

  it('tells the end of a long code and nothing of a short one', async () => {
    const drawn = ['BOX-17', '00340000123456789012'].map((number) => other(bareBox(288, 432, number, 1.2, 60), 0, 0));
    const bytes = await documentOf(drawn.map((region) => ({ width: 288, height: 432, regions: [region] })));
    const { items } = await processed(bytes, 'label-pages');
    expect(items.map(({ codes }) => codes.map(({ tail }) => tail))).toEqual([[''], ['9012']]);
  });

  it.each([
    [6, 6],
    [9, 9],
    [14, 14],
    [60, 9],
  ])('looks for free paper of the size that numbers have: type of %i pt, %i pt where there is too little', async (size, found) => {
    const { value } = loadRecipe('any-page', ROOT);
    if (!value) throw new Error('any-page has mistakes');
    const recipe = { ...value, steps: [...value.steps.filter(({ name }) => name !== 'number'), numberStep(size)] };
    const bytes = await sampleOf('label-then-slip');
    const { items } = await processDocument({ bytes, shownName: 'sample.pdf', recipe, media: '4x6in', grid: '203dpi' });
    const boxes = items.flatMap(({ numberBox, role }) => (numberBox ? [{ numberBox, role }] : []));
    expect(boxes.length).toBeGreaterThan(0);
    // A slip says more, where it has the room.
    const onSlip = [stampSize('1000/1000 ·WWWW', size), stampSize('1000/1000', found)];
    for (const { numberBox, role } of boxes) {
      const sizes = (role === 'slip' ? onSlip : [stampSize('1000/1000', found)]).map(({ width, height }) => [
        width.toFixed(6),
        height.toFixed(6),
      ]);
      expect(sizes).toContainEqual([numberBox.width.toFixed(6), numberBox.height.toFixed(6)]);
    }
  });

  it('a held item has a picture of its page, at 100 dpi', async () => {
    const { items, pictures } = await processed(await sampleOf('letter-ninety-percent'));
    const held = items.filter((item) => item.state.kind === 'held');
    expect(pictures.map((picture) => picture.itemId)).toEqual(held.map((item) => item.id));
    const { format, width, height } = await sharp(pictures[0]?.png).metadata();
    expect([format, width, height]).toEqual(['png', 850, 1100]);
  });

  it('tells no name, no street and no whole number of a label', async () => {
    const { bytes, expected } = await samplesOf('letter-upper-sideways');
    const { items, diagnostics } = await processed(bytes);
    const told = JSON.stringify([items, diagnostics]);
    for (const word of [...FAMILY, ...GIVEN, ...STREETS, ...TOWNS]) expect(told).not.toContain(word);
    const numbers = expected.pages.flatMap(({ labels }) => labels.flatMap(({ codes }) => codes.map((code) => code.bytes)));
    expect(numbers.length).toBeGreaterThan(0);
    for (const number of numbers) {
      expect(told).not.toContain(number);
      for (const part of Buffer.from(number, 'hex')
        .toString('latin1')
        .match(/\d{8,}/g) ?? [])
        expect(told).not.toContain(part);
    }
    expect(items[0]?.codes.length).toBeGreaterThan(0);
    for (const code of items[0]?.codes ?? []) expect(code.tail.length).toBeLessThanOrEqual(4);
  });

  it('a page of monstrous size is held alone, with a picture that is no monster', async () => {
    const bytes = await withOddPage('page-4x6', (pdf) => pdf.getPage(1).setSize(14_000, 7_000));
    const { items, pictures, pageCount } = await processed(bytes, 'label-pages');
    expect(pageCount).toBe(3);
    expect(statesOf(items)).toEqual(['p1 ready', 'p2 held reading/huge-page', 'p3 ready']);
    expect(pictures.map((picture) => picture.itemId)).toEqual(['p2']);
    const { width, height } = await sharp(pictures[0]?.png, { limitInputPixels: 12_500_000 }).metadata();
    expect([width, height]).toEqual([5000, 2500]);
  });

  it('a page of which nothing is visible is held alone, and there is nothing to picture', async () => {
    const bytes = await withOddPage('page-4x6', (pdf) =>
      pdf.getPage(1).node.set(PDFName.of('CropBox'), pdf.context.obj([9000, 9000, 9100, 9100])),
    );
    const { items, pictures } = await processed(bytes, 'label-pages');
    expect(statesOf(items)).toEqual(['p1 ready', 'p2 held reading/huge-page', 'p3 ready']);
    expect(pictures).toEqual([]);
  });

  it.each(['any-page', 'label-then-slip'])('the label before a page that may be its slip is held with it by %s', async (recipe) => {
    const huge = (pdf: PDFDocument): void => pdf.getPage(1).setSize(14_000, 7_000);
    const { items } = await processed(await withOddPage('page-4x6', huge), recipe);
    expect(statesOf(items)).toEqual(['p1 held batch/parcel-held', 'p2 held reading/huge-page', 'p3 ready']);
  });
});
