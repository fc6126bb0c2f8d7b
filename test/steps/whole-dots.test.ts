import bwipjs from 'bwip-js';
import { PDFDocument, rgb } from 'pdf-lib';
import { describe, expect, it } from 'vitest';
import { openSource } from '../../src/batch/open-source.js';
import { gridOf, type GridName } from '../../src/geometry/grid.js';
import { mediaNamed } from '../../src/geometry/media.js';
import type { SourceDocument } from '../../src/reading/source.js';
import { pageSheet, type Sheet } from '../../src/sheet/sheet.js';
import { ontoWholeDots } from '../../src/steps/whole-dots.js';
import { pressAndProve, verdictOf } from '../proof/prove-sample.js';

const [{ sbs }] = bwipjs.raw({ bcid: 'code128', text: 'SAMPLE-0042-7788' } as never) as unknown as [{ sbs: number[] }];
const MODULES = sbs.length % 2 === 0 ? sbs.slice(0, -1) : sbs;
const TOTAL = MODULES.reduce((sum, each) => sum + each, 0);

interface Drawn {
  readonly mil: number;
  /** Left edge of the bars, pt; a whole number of dots it is not. */
  readonly x?: number;
  /** A ruled line at this x, pt. */
  readonly rule?: number;
  readonly ladder?: boolean;
  /** Places and widths are rounded so, in pt; not at all by default. */
  readonly rounding?: number;
}

/** A page of 4×6 in with one code that says "sample": its bars 60 pt high. */
async function label({ mil, x = 40.37, rule, ladder = false, rounding }: Drawn): Promise<SourceDocument> {
  const pdf = await PDFDocument.create({ updateMetadata: false });
  const page = pdf.addPage([288, 432]);
  const module = (mil / 1000) * 72;
  const rounded = (value: number): number => (rounding === undefined ? value : Math.round(value / rounding) * rounding);
  let at = x;
  MODULES.forEach((each, index) => {
    const [from, width] = [rounded(at), rounded(each * module)];
    if (index % 2 === 0) {
      page.drawRectangle(
        ladder
          ? { x: 100, y: from, width: 60, height: width, color: rgb(0, 0, 0) }
          : { x: from, y: 200.2, width, height: 60, color: rgb(0, 0, 0) },
      );
    }
    at += each * module;
  });
  if (rule !== undefined) page.drawRectangle({ x: rule, y: 150, width: 2, height: 200, color: rgb(0, 0, 0) });
  page.drawText('SAMPLE, NOT VALID FOR CARRIAGE', { x: 20, y: 20, size: 12 });
  const source = await openSource(await pdf.save());
  if ('refused' in source) throw new Error(source.refused.message);
  return source;
}

const SHEET: Sheet = { ...pageSheet(1, 288, 432), role: 'label', proof: { codes: 'required' } };
const CONTEXT = { media: mediaNamed('4x6in'), floor: 0.95, fixedSize: false };

async function brought(
  drawn: Drawn,
  gridName: GridName = '203dpi',
  changes: Partial<Sheet> = {},
  fixedSize = false,
): Promise<Sheet & { verdict: string; dots: number }> {
  const source = await label(drawn);
  const sheet = await ontoWholeDots({ ...SHEET, ...changes }, source.page(1), { ...CONTEXT, grid: gridOf(gridName), fixedSize });
  const { proofs } = await pressAndProve(source, [sheet], gridName);
  source.close();
  return { ...sheet, verdict: verdictOf(proofs[0]), dots: proofs[0]?.codes[0]?.measure?.moduleDots ?? NaN };
}

describe('ontoWholeDots', () => {
  it.each([
    // Handbook section 11.6 (computed): 0.381 mm at 203 dpi, 3.045 dots -> 3.
    [15, '203dpi', 3, 0.9852],
    [15, '8dpmm', 3, 0.9843],
    [10, '300dpi', 3, 1],
    [13.2, '300dpi', 4, 1.0101],
  ] as const)('scales a label of %s mil on %s to %s dots a module', async (mil, grid, dots, scale) => {
    const made = await brought({ mil }, grid, { box: { x: 20, y: 100, width: 240, height: 320 } });
    expect([made.verdict, made.dots]).toEqual(['proved', dots]);
    expect(made.scale).toBeCloseTo(scale, 3);
    expect(made.redrawn).toBeUndefined();
  });

  it.each([
    [13, '203dpi', 3],
    [14, '203dpi', 3],
    [16, '203dpi', 3],
    [17, '203dpi', 3],
    [15, '300dpi', 5],
  ] as const)('draws a code of %s mil anew on %s, at %s dots a module', async (mil, grid, dots) => {
    const made = await brought({ mil, x: 30.1 }, grid);
    expect([made.verdict, made.dots, made.scale]).toEqual(['proved', dots, 1]);
    expect(made.redrawn?.map(({ modules, moduleDots }) => [modules, moduleDots])).toEqual([[MODULES, dots]]);
  });

  // PDF 32000-1 leaves decimals to the writer; many write two or three. 14.764 mil are 3 dots of a head of 8 dots/mm.
  it.each([0.01, 0.001, 0.05])('brings bars onto dots that the file rounds to %s pt, wherever they begin', async (rounding) => {
    for (const [grid, mil] of [
      ['203dpi', 14.764],
      ['8dpmm', 14.764],
      ['300dpi', 13.333],
    ] as const)
      for (const x of [30.1, 30.19, 30.28, 30.37]) {
        const made = await brought({ mil, x: x > 30.2 ? x + 20 : x, rounding, ladder: x > 30.2 }, grid, { turn: x > 30.3 ? 180 : 0 });
        expect([made.verdict, made.dots], `${grid} from ${x}`).toEqual(['proved', grid === '300dpi' ? 4 : 3]);
      }
  });

  it('draws it smaller where it has no room to grow, and leaves it where it has none at all', async () => {
    const end = 30.1 + TOTAL * 0.015 * 72;
    const tight = await brought({ mil: 15, x: 30.1, rule: end + 11 * 0.015 * 72 }, '300dpi');
    expect([tight.verdict, tight.dots]).toEqual(['proved', 4]);
    const rule = 60 + TOTAL * 0.013 * 72 + 10.2 * 0.013 * 72;
    const none = await brought({ mil: 13, x: 60, rule }, '203dpi', { box: { x: 60 - 10.2 * 0.013 * 72, y: 0, width: 200, height: 432 } });
    expect(none.redrawn).toBeUndefined();
    expect(none.scale).toBe(1);
    expect(['verify/uneven-bars', 'verify/decodability']).toContain(none.verdict);
  });

  it('moves it aside where there is room on one side only', async () => {
    const x = 60;
    const rule = x - 21 * 0.013 * 72 - 2;
    const made = await brought({ mil: 13, x, rule });
    expect([made.verdict, made.dots]).toEqual(['proved', 3]);
    const [redrawn] = made.redrawn ?? [];
    expect(redrawn?.middle).toBeGreaterThan(x + (TOTAL * 0.013 * 72) / 2 + 1);
  });

  it.each([0, 90, 180, 270] as const)('whichever way the label is turned: %s°', async (turn) => {
    for (const ladder of [false, true]) {
      const made = await brought({ mil: 13, x: 50, ladder }, '203dpi', { turn, box: { x: 20, y: 160, width: 248, height: 262 } });
      expect([made.verdict, made.dots, made.redrawn?.length]).toEqual(['proved', 3, 1]);
    }
  });

  it('does not change the size of a label with something of a fixed size on it', async () => {
    const made = await brought({ mil: 15 }, '203dpi', { box: { x: 20, y: 100, width: 240, height: 320 } }, true);
    expect(made.scale).toBe(1);
    expect([made.verdict, made.dots, made.redrawn?.length]).toEqual(['proved', 3, 1]);
  });

  it('leaves a label without bars as it is', async () => {
    const pdf = await PDFDocument.create();
    pdf.addPage([288, 432]);
    const source = await openSource(await pdf.save());
    if ('refused' in source) throw new Error(source.refused.message);
    expect(await ontoWholeDots(SHEET, source.page(1), { ...CONTEXT, grid: gridOf('203dpi') })).toBe(SHEET);
    source.close();
  });
});
