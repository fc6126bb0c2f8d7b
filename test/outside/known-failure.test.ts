import { join } from 'node:path';
import { describe, expect } from 'vitest';
import { loadRecipe } from '../../src/config/load-recipe.js';
import type { Box } from '../../src/geometry/box.js';
import { gridOf } from '../../src/geometry/grid.js';
import { fitFactor, parseMedia } from '../../src/geometry/media.js';
import { applyToBox } from '../../src/geometry/placement.js';
import { pressDocument } from '../../src/press/press-document.js';
import { openPdf } from '../../src/reading/open-pdf.js';
import { applyRecipe } from '../../src/recipe/apply.js';
import { isLabel } from '../../src/sheet/sheet.js';
import { LAYOUTS } from '../samples/layouts.js';
import { sample } from '../samples/sample.js';
import { RASTERISERS, rasterisedPages } from './rasters.js';
import { modulesFromRuns, runsAcross, totalDots } from './runs.js';
import { outsideCheck } from './tools.js';
import { DESIGNED_DOTS, zintOf } from './zint-code.js';

/**
 * What happens every day (common practice, no source): a letter page with the label sideways on its upper half is sent to a
 * 4×6 printer, which fits the whole page. Measured in modules, because decoding a clean raster is a lenient judge.
 */
const layout = LAYOUTS.find(({ name }) => name === 'letter-upper-sideways');

/** ISO 15394:2017 Annex A: X at least 0.25 mm (VERIFIED-S, handbook section 2.2): 2 dots of 8 dots/mm. */
const LEAST_DOTS = 2;
/** USPS Publication 199: modules of at least 13 mil (VERIFIED-S, handbook section 3.1). */
const LEAST_MIL = 13;

const media = parseMedia('4x6in');

async function knownPage() {
  if (!layout || !media) throw new Error('the layout or the media is gone');
  const known = await sample(layout, 'vector', 0);
  const [page] = known.expected.pages;
  const code = page?.labels[0]?.codes.find(({ symbology }) => symbology === 'Code 128');
  if (!page || !code) throw new Error('a label with a linear code');
  return { bytes: known.bytes, page, code, media };
}

describe('the known failure: a letter page with a sideways label, fitted whole to 4×6 in', () => {
  for (const rasteriser of RASTERISERS) {
    outsideCheck(`comes out sideways with bars of about 1.4 dots (${rasteriser})`, [rasteriser, 'pdfinfo', 'zint'], async () => {
      const { bytes, page, code } = await knownPage();
      const factor = fitFactor(page.width, page.height, 288, 432);
      expect(factor).toBeCloseTo(0.4706, 4);

      const [fitted] = await rasterisedPages(rasteriser, bytes, 203, { width: 812, height: 1218 });
      if (!fitted) throw new Error('a fitted page');
      // One tool pads the page below, the other above and below: the code is where its column says, at any height.
      const top = rasteriser === 'gs' ? (432 - page.height * factor) / 2 : 0;
      const scaled: Box = {
        x: code.box.x * factor,
        y: code.box.y * factor + top,
        width: code.box.width * factor,
        height: code.box.height * factor,
      };
      const ladder = runsAcross(fitted, scaled, 'y');
      const modules = zintOf(code.bytes);
      const perModule = totalDots(ladder) / modules.length;
      // Sideways: the row of bars runs down the page, and across the page there is one bar or one space.
      expect(scaled.height).toBeGreaterThan(2 * scaled.width);
      expect(runsAcross(fitted, scaled, 'x').length).toBeLessThanOrEqual(3);
      expect(perModule).toBeGreaterThan(1.35);
      expect(perModule).toBeLessThan(1.45);
      expect(perModule).toBeLessThan(LEAST_DOTS);
      expect((perModule / 203) * 1000).toBeLessThan(LEAST_MIL);
      // Whole dots can't show modules of 1.4: bars and spaces are no longer what was written.
      expect(modulesFromRuns(ladder, perModule)).not.toBe(modules);
    });
  }
});

describe('the same page through the recipe', () => {
  for (const rasteriser of RASTERISERS) {
    outsideCheck(`comes out upright at true size (${rasteriser})`, [rasteriser, 'pdfinfo', 'zint'], async () => {
      const { bytes, code, media: roll } = await knownPage();
      const recipe = loadRecipe(join(import.meta.dirname, '..', '..', 'recipes', 'any-page.yaml'), '.').value;
      const source = await openPdf(bytes);
      if (!recipe || 'refused' in source) throw new Error('the recipe and the page must load');
      const grid = gridOf('203dpi');
      const sheets = await applyRecipe(recipe, { document: source, media: roll, grid });
      const labels = sheets.filter((sheet) => isLabel(sheet) && sheet.state.kind === 'planned');
      expect(labels).toHaveLength(1);
      const { bytes: pdf, placements } = await pressDocument(source, labels, roll, grid);
      source.close();
      const [page] = await rasterisedPages(rasteriser, pdf ?? new Uint8Array(), 203);
      const matrix = placements[0]?.matrix;
      if (!page || !matrix) throw new Error('one page with one label');
      const box = applyToBox(matrix, code.box);
      const runs = runsAcross(page, box, 'x');
      const modules = zintOf(code.bytes);
      // Upright: the row of bars runs along x, in reading order, so that it equals what zint writes from left to right.
      expect(box.width).toBeGreaterThan(2 * box.height);
      expect(modulesFromRuns(runs, DESIGNED_DOTS)).toBe(modules);
      expect(Math.abs(totalDots(runs) / modules.length - DESIGNED_DOTS)).toBeLessThan(0.01);
      expect(((totalDots(runs) / modules.length) * 1000) / 203).toBeGreaterThanOrEqual(LEAST_MIL);
    });
  }
});
