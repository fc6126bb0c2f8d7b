import { describe, expect, it } from 'vitest';
import { processDocument } from '../../src/batch/process-document.js';
import type { CompiledRecipe } from '../../src/config/recipe.js';
import { PLAIN_PRINTER } from '../../src/geometry/printer.js';
import { DOT, Drawing } from '../samples/drawing.js';
import { label, layout, type LayoutPage } from '../samples/layout.js';
import { SAMPLE_MARKS } from '../samples/names.js';
import { sample } from '../samples/sample.js';
import { recipeNamed } from '../steps/on-pages.js';
import { RASTERISERS, rasterisedPages, zbarCodes } from './rasters.js';
import { outsideCheck } from './tools.js';
import { WORKED_EXAMPLES } from './worked-examples.js';

/** So many on a label, each 15 mm high and 3 dots a module: the longest is 244 modules, 99 mm with its quiet zones. */
const ON_A_LABEL = 5;
const HIGH = 42;

function labelWith(examples: typeof WORKED_EXAMPLES): Drawing {
  const d = new Drawing(288, 432);
  d.edge = 'page';
  d.text(144, 16, SAMPLE_MARKS[0], { size: 8, align: 'center' });
  examples.forEach(({ art }, index) => {
    // `bars` is given the middle: its ends come to lie between dots.
    const middle = 406 + ((art.columns * 3) % 2) / 2;
    d.bars(art, middle * DOT, 60 + index * 80, 3 * DOT, HIGH);
  });
  return d;
}

const pages = Array.from({ length: Math.ceil(WORKED_EXAMPLES.length / ON_A_LABEL) }, (_, page) =>
  WORKED_EXAMPLES.slice(page * ON_A_LABEL, (page + 1) * ON_A_LABEL),
);

/** Five to a label are lower than their schemes ask for, and an SSCC's bars finer: what is tried here is what they say. */
function anySize(recipe: CompiledRecipe): CompiledRecipe {
  const steps = recipe.steps.map((step) =>
    step.name === 'verify' ? { ...step, options: { ...step.options, allow: ['module-range', 'bar-height'] } } : step,
  );
  return { ...recipe, steps };
}

async function printed(output: 'vector' | 'dots'): Promise<Uint8Array> {
  const drawn: readonly LayoutPage[] = pages.map((each) => ({ width: 288, height: 432, regions: [label(labelWith(each), 0, 0)] }));
  const made = await sample(layout({ name: 'worked', about: 'Published numbers.', traits: [], pages: () => drawn }), 'vector', 0);
  const { items, pressed } = await processDocument({
    bytes: made.bytes,
    shownName: 'worked.pdf',
    recipe: anySize(recipeNamed('label-pages')),
    media: '4x6in',
    grid: '203dpi',
    printer: { ...PLAIN_PRINTER, output },
  });
  expect(items.map(({ state }) => state)).toEqual(pages.map(() => ({ kind: 'ready' })));
  if (!pressed) throw new Error('nothing was pressed');
  return pressed;
}

const text = (hex: string): string => Buffer.from(hex, 'hex').toString('latin1');

describe('published numbers (handbook section 11), pressed and proved, as zbar reads them off an outside raster', () => {
  it('every example has a source', () => {
    expect(WORKED_EXAMPLES.filter(({ source }) => !/^11\.\d .+/.test(source))).toEqual([]);
  });

  for (const [output, rasteriser] of [
    ['vector', RASTERISERS[0]],
    ['vector', RASTERISERS[1]],
    ['dots', RASTERISERS[0]],
  ] as const) {
    outsideCheck(
      `${output}, ${rasteriser}: identical characters, check digits as computed`,
      [rasteriser, 'pdfinfo', 'zbarimg'],
      async () => {
        const rasters = await rasterisedPages(rasteriser, await printed(output), 203);
        expect(rasters).toHaveLength(pages.length);
        for (const [index, raster] of rasters.entries()) {
          const read = (await zbarCodes(raster)).map(({ bytes }) => bytes);
          expect(read.toSorted()).toEqual(pages[index]?.map(({ art }) => art.expected.bytes).toSorted());
          for (const { art, checked } of pages[index] ?? []) {
            const found = read.find((each) => each === art.expected.bytes);
            if (!checked || found === undefined) continue;
            const { digits, expected } = checked(text(found));
            expect(digits.at(-1), digits).toBe(String(expected));
          }
        }
      },
    );
  }
});
