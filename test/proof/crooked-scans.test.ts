import { describe, expect, it } from 'vitest';
import { dotsPerPt, gridOf } from '../../src/geometry/grid.js';
import { openImage } from '../../src/reading/open-image.js';
import { measureSlant } from '../../src/reading/measure-slant.js';
import { openPdf } from '../../src/reading/open-pdf.js';
import type { Code, GreyRaster, Point, SourceDocument } from '../../src/reading/source.js';
import { scanAsPdf, scanned } from '../reading/scanned.js';
import { LAYOUTS } from '../samples/layouts.js';
import { sample, type Sample } from '../samples/sample.js';
import { onWholeDots, media4x6, openSource, perfectSheets, pressAndProve, verdictOf } from './prove-sample.js';

const GRID = '203dpi';

async function sampleOf(name: string, kind: 'vector' | 'grey' = 'vector'): Promise<Sample> {
  const layout = LAYOUTS.find((each) => each.name === name);
  if (!layout) throw new Error(name);
  return sample(layout, kind, 0);
}

async function scanOf(from: Sample, dpi: number, degrees: number, as: 'pdf' | 'picture'): Promise<SourceDocument> {
  const [page] = from.expected.pages;
  if (!page) throw new Error('no page');
  const scan = await scanned(from.bytes, page, { dpi, degrees, seed: `${from.name} ${degrees}` });
  const document = as === 'pdf' ? await openPdf(await scanAsPdf(scan)) : await openImage(scan.jpeg);
  if ('refused' in document) throw new Error(document.refused.message);
  return document;
}

const lean = (from: Point, to: Point): number => {
  const degrees = (Math.atan2(to.y - from.y, to.x - from.x) * 180) / Math.PI;
  return Math.abs(degrees - 90 * Math.round(degrees / 90));
};

/** Degrees by which the first rows of ink at a sixth and at five sixths of a box's width differ from level: the frame's upper rule. */
function leanOfFrame({ width, height, data, pixelsPerPt: k }: GreyRaster, box: { x: number; y: number; width: number }): number {
  const firstInk = (x: number): number => {
    for (let y = Math.max(0, Math.floor(box.y * k)); y < height; y++) if ((data[y * width + x] ?? 255) < 128) return y;
    return NaN;
  };
  const [left, right] = [1 / 6, 5 / 6].map((share) => Math.round((box.x + share * box.width) * k)) as [number, number];
  return Math.abs((Math.atan2(firstInk(right) - firstInk(left), right - left) * 180) / Math.PI);
}

/** The mean grey of squares of half an inch, row by row: `box` in pt, all of it on the raster. */
function greys(
  { width, data, pixelsPerPt: k, origin }: GreyRaster,
  box: { x: number; y: number; width: number; height: number },
): number[] {
  const squares: number[] = [];
  for (let y = 0; y + 36 <= box.height; y += 36) {
    for (let x = 0; x + 36 <= box.width; x += 36) {
      let [sum, count] = [0, 0];
      for (let v = Math.round((box.y + y - origin.y) * k); v < Math.round((box.y + y + 36 - origin.y) * k); v++) {
        for (let u = Math.round((box.x + x - origin.x) * k); u < Math.round((box.x + x + 36 - origin.x) * k); u++) {
          sum += data[v * width + u] ?? 0;
          count += 1;
        }
      }
      squares.push(sum / count);
    }
  }
  return squares;
}

const said = (codes: readonly Pick<Code, 'identifier' | 'bytes'>[]): readonly string[] =>
  codes.map(({ identifier, bytes }) => `${identifier} ${bytes}`).sort();

describe('a crooked scan', () => {
  it.each([
    ['letter-ruled-cells', 200, -3, 'pdf'],
    ['letter-ruled-cells', 300, 1.3, 'pdf'],
    ['letter-ruled-cells', 200, 2.1, 'picture'],
    ['letter-ruled-cells', 300, -0.6, 'picture'],
    ['letter-upper-sideways', 300, 3, 'pdf'],
    ['letter-upper-sideways', 200, -1.8, 'picture'],
    ['a4-two-labels', 300, 2.4, 'pdf'],
  ] as const)('%s at %i dpi, turned by %f degrees, as %s: printed straight, each code as it was', async (name, dpi, degrees, as) => {
    const from = await sampleOf(name);
    const source = await scanOf(from, dpi, degrees, as);
    const page = source.page(1);
    expect(page.slant.sure).toBe(true);
    expect(Math.abs(page.skew - degrees)).toBeLessThan(0.1);
    expect([page.width, page.height]).toEqual([
      expect.closeTo(from.expected.pages[0]?.width ?? 0, 0),
      expect.closeTo(from.expected.pages[0]?.height ?? 0, 0),
    ]);
    expect(Math.abs(measureSlant(page.ink()).degrees)).toBeLessThan(0.1);

    const sheets = await onWholeDots(perfectSheets(from, source, GRID), source, GRID);
    const { pressed, proofs } = await pressAndProve(source, sheets, GRID);
    expect(proofs.map(verdictOf)).toEqual(sheets.map(() => 'proved'));
    expect(pressed.placements.every(({ pixelForDot }) => !pixelForDot)).toBe(true);
    const output = await openSource(pressed.bytes ?? new Uint8Array());
    for (const [index, label] of (from.expected.pages[0]?.labels ?? []).entries()) {
      const proved = proofs[index]?.codes ?? [];
      expect(said(proved.map(({ code }) => code))).toEqual(said(label.codes));
      const matrices = proved.filter(({ moduleDots }) => moduleDots === undefined);
      for (const { code } of matrices) expect(lean(code.corners[0], code.corners[1])).toBeLessThan(1);
      const shown = output.page(index + 1).render({ x: 0, y: 0, ...media4x6 }, dotsPerPt(gridOf(GRID)));
      // Unturned labels lie on the output as on the straightened page: the same ink in the same place.
      if (sheets[index]?.turn === 0) {
        const { box } = label;
        const [before, after] = [greys(page.ink(), box), greys(shown, pressed.placements[index]?.drawnBox ?? box)];
        expect(before.length).toBeGreaterThan(80);
        before.forEach((grey, square) => expect(Math.abs(grey - (after[square] ?? 0))).toBeLessThan(12));
      }
      expect(leanOfFrame(shown, pressed.placements[index]?.drawnBox ?? { x: 0, y: 0, width: 1 })).toBeLessThan(0.2);
    }
    output.close();
    source.close();
  });
});
