import { createHash } from 'node:crypto';
import { PDFDocument } from 'pdf-lib';
import { describe, expect } from 'vitest';
import { processDocument } from '../../src/batch/process-document.js';
import { area, contains, grow, type Box } from '../../src/geometry/box.js';
import { dotsPerPt, gridOf, type GridName } from '../../src/geometry/grid.js';
import { applyToBox, placementMatrix } from '../../src/geometry/placement.js';
import { PLAIN_PRINTER } from '../../src/geometry/printer.js';
import type { ItemResult } from '../../src/recipe/outcome.js';
import { LAYOUTS } from '../samples/layouts.js';
import { QUARTER_TURNS, sample, type PlacedCode, type Sample } from '../samples/sample.js';
import { recipeNamed } from '../steps/on-pages.js';
import { cut, dmtxCode, RASTERISERS, rasterisedPages, zbarCodes, type Dots } from './rasters.js';
import { runsAcross } from './runs.js';
import { outsideCheck } from './tools.js';

/** Poppler without soft edges rounds each edge to a dot, and keeps what is thinner; Ghostscript paints every dot that ink touches. */
const RULES = {
  pdftoppm: [
    [28, 1],
    [85, 1],
    [141, 2],
  ],
  gs: [
    [28, 1],
    [84, 2],
    [140, 3],
  ],
} as const;

/** Where ink begins, and for how many dots, along the middle of a page. */
function inkAcross({ width, height, data }: Dots): number[][] {
  const runs: number[][] = [];
  for (let x = 0, before = false; x < width; x++) {
    const ink = data[Math.floor(height / 2) * width + x] === 0;
    const last = runs.at(-1);
    if (ink && before && last) last[1] = (last[1] ?? 0) + 1;
    else if (ink) runs.push([x, 1]);
    before = ink;
  }
  return runs;
}

describe('two rasterisers with different rules', () => {
  for (const tool of RASTERISERS) {
    outsideCheck(`${tool}: what it makes of 0.3 dots, of one dot at 84.6 and of two at 140.97`, [tool, 'pdfinfo'], async () => {
      const pdf = await PDFDocument.create({ updateMetadata: false });
      const page = pdf.addPage([72, 144]);
      const dot = 72 / 203;
      for (const [x, width] of [
        [10, 0.1],
        [30, dot],
        [50, 2 * dot],
      ] as const)
        page.drawRectangle({ x, y: 10, width, height: 120 });
      const [raster] = await rasterisedPages(tool, await pdf.save(), 203);
      expect(raster && inkAcross(raster)).toEqual(RULES[tool]);
    });
  }
});

const GRIDS: readonly GridName[] = ['203dpi', '8dpmm', '300dpi'];
/** zbar reads linear codes and QR, libdmtx Data Matrix; for the others there is no reader independent of ours. */
const READ_BY_ZBAR = ['Code 128', 'ITF', 'Code 39', 'QR'];
/** Held by design: its bars are too fine for any printer. */
const NONE_READY = ['letter-ninety-percent'];

// Each layout once; kinds, grids, outputs and turns go round at different paces, so that every pair of them comes up.
const cases = LAYOUTS.filter(({ traits, name }) => !traits.includes('no-label') && !NONE_READY.includes(name)).map((layout, i) => ({
  layout,
  kind: layout.kinds[i % layout.kinds.length] ?? 'vector',
  turn: QUARTER_TURNS[i % 4] ?? 0,
  grid: GRIDS[(i + Math.floor(i / 3)) % 3] ?? '203dpi',
  output: i % 2 === 0 ? ('dots' as const) : ('vector' as const),
}));

interface Printed {
  readonly page: number;
  /** `anew`: the press drew the code itself, on whole dots. */
  readonly codes: readonly { readonly code: PlacedCode; readonly box: Box; readonly anew: boolean }[];
}

const digest = ({ identifier, bytes }: PlacedCode): string =>
  createHash('sha256').update(identifier).update(Buffer.from(bytes, 'hex')).digest('hex');

/** The ready labels with their codes, boxes as printed. */
function labelsOf(items: readonly ItemResult[], { expected }: Sample): readonly Printed[] {
  return items.flatMap(({ page, box, turn, scale, drawnBox, pressedPage, role, codes: told }) => {
    if (!box || !drawnBox || pressedPage === undefined || (role !== 'label' && role !== 'return-label')) return [];
    const matrix = placementMatrix(box, turn, scale, drawnBox.x, drawnBox.y);
    const codes = expected.pages[page - 1]?.labels.flatMap((label) => label.codes.filter((code) => contains(grow(box, 2), code.box)));
    const anew = new Set(told.flatMap((code) => (code.redrawn === undefined ? [] : [code.digest])));
    const placed = (codes ?? []).map((code) => ({ code, box: applyToBox(matrix, code.box), anew: anew.has(digest(code)) }));
    return [{ page: pressedPage, codes: placed }];
  });
}

/** Drawn anew on whole dots, a code may be a tenth longer; so much of it at each end. */
const LONGER = 0.06;

async function readByOutside(raster: Dots, code: PlacedCode, box: Box): Promise<boolean> {
  const part = cut(raster, grow(box, 3 + LONGER * Math.max(box.width, box.height)));
  if (READ_BY_ZBAR.includes(code.symbology)) expect((await zbarCodes(part)).map(({ bytes }) => bytes)).toContain(code.bytes);
  else if (code.symbology === 'Data Matrix') expect(await dmtxCode(part, code.identifier === ']d2')).toBe(code.bytes);
  else return false;
  return true;
}

/** The label's largest Code 128. */
function leadingOf({ codes }: Printed): Printed['codes'][number] {
  const rows = codes.filter(({ code }) => code.symbology === 'Code 128').toSorted((a, b) => area(b.box) - area(a.box));
  const [leading] = rows;
  if (!leading) throw new Error('a label has a row of bars');
  return leading;
}

/** Every bar and space of a Code 128 as a multiple of the narrowest, in whole dots; from first bar to last, of an allowed length. */
function expectWholeDots(raster: Dots, leading: Printed['codes'][number]): void {
  const level = leading.box.width > leading.box.height;
  const { x, y, width, height } = grow(leading.box, LONGER * Math.max(leading.box.width, leading.box.height));
  const runs = runsAcross(raster, { ...leading.box, ...(level ? { x, width } : { y, height }) }, level ? 'x' : 'y').map(({ dots }) => dots);
  const module = Math.min(...runs);
  expect(module).toBeGreaterThanOrEqual(2);
  const modules = runs.map((dots) => dots / module);
  expect(modules.filter((each) => ![1, 2, 3, 4].includes(each))).toEqual([]);
  // Code 128: 11 modules a character in six elements, 13 in seven for the stop (handbook section 2.1).
  expect(modules.length % 6).toBe(1);
  expect(modules.reduce((sum, each) => sum + each, 0)).toBe(11 * ((modules.length - 7) / 6) + 13);
}

describe('prints of the samples through both', () => {
  for (const { layout, kind, turn, grid, output } of cases) {
    outsideCheck(
      `${layout.name}, ${kind}, turned ${turn}, ${output} at ${grid}: every code reads, with identical bytes`,
      [...RASTERISERS, 'pdfinfo', 'zbarimg', 'dmtxread'],
      async () => {
        const made = await sample(layout, kind, turn);
        const { items, pressed } = await processDocument({
          bytes: made.bytes,
          shownName: made.fileName,
          recipe: recipeNamed('any-page'),
          media: '4x6in',
          grid,
          printer: { ...PLAIN_PRINTER, output },
        });
        const labels = labelsOf(items, made);
        if (!pressed || labels.length === 0) throw new Error(JSON.stringify(items.map(({ state }) => state)));
        for (const tool of RASTERISERS) {
          const rasters = await rasterisedPages(tool, pressed, dotsPerPt(gridOf(grid)) * 72);
          let read = 0;
          for (const printed of labels) {
            const raster = rasters[printed.page - 1];
            if (!raster) throw new Error(`page ${printed.page} is missing`);
            for (const { code, box } of printed.codes) if (await readByOutside(raster, code, box)) read += 1;
            const leading = leadingOf(printed);
            // What stays vector is painted by each rasteriser's own rule; bars that the press drew are made so that both agree. Ladders on a page of
            // 1219.2 dots are left out: tools count its rows from either end.
            const isAsked = leading.anew && (grid !== '8dpmm' || leading.box.width > leading.box.height);
            if (output === 'dots' || isAsked) expectWholeDots(raster, leading);
          }
          expect(read).toBeGreaterThan(0);
        }
      },
    );
  }
});
