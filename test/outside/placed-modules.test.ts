import { PDFDocument } from 'pdf-lib';
import { describe, expect } from 'vitest';
import { gridOf } from '../../src/geometry/grid.js';
import { parseMedia } from '../../src/geometry/media.js';
import { applyToPoint, TURNS } from '../../src/geometry/placement.js';
import { pressDocument } from '../../src/press/press-document.js';
import { openPdf } from '../../src/reading/open-pdf.js';
import { pageSheet } from '../../src/sheet/sheet.js';
import { zintModules } from './modules.js';
import { RASTERISERS, rasterisedPages } from './rasters.js';
import { outsideCheck } from './tools.js';

/** No reader independent of ours reads these: so every module that zint draws is looked up where the press must have put it. */
const SYMBOLS = [
  { name: 'PDF417', zint: ['-b', '55', '-d', 'ROUTE 12 STOP 9 DEPOT NORTH DOCK 4'], dots: 2, rowDots: 6 },
  { name: 'Aztec', zint: ['-b', '92', '-d', 'RETURN 0417 DEPOT NORTH'], dots: 4, rowDots: 4 },
  { name: 'Data Matrix', zint: ['-b', '71', '--square', '-d', 'SAMPLE-0417'], dots: 4, rowDots: 4 },
] as const;

const DOT = 72 / 203;

/** A letter page with a symbol's modules as rectangles, its top-left corner at (100, 120) pt, y down. */
async function letterPageWith(rows: readonly string[], width: number, height: number): Promise<Uint8Array> {
  const pdf = await PDFDocument.create({ updateMetadata: false });
  const page = pdf.addPage([612, 792]);
  rows.forEach((row, y) => {
    for (const { index, 0: run } of row.matchAll(/1+/g)) {
      page.drawRectangle({ x: 100 + index * width, y: 792 - 120 - (y + 1) * height, width: run.length * width, height });
    }
  });
  return pdf.save();
}

describe("an independent writer's modules, pressed at true size", () => {
  for (const { name, zint, dots, rowDots } of SYMBOLS) {
    for (const rasteriser of RASTERISERS) {
      outsideCheck(
        `${name}: every module where it must be, in all four turns (zint, ${rasteriser})`,
        ['zint', rasteriser, 'pdfinfo'],
        async () => {
          const padded = zintModules(zint);
          const columns = Math.max(...padded.map(({ length }) => length));
          const rows = padded.map((row) => row.padEnd(columns, '0'));
          const source = await openPdf(await letterPageWith(rows, dots * DOT, rowDots * DOT));
          const media = parseMedia('4x6in');
          if ('refused' in source || !media) throw new Error('the page must open');
          const box = { x: 90, y: 110, width: columns * dots * DOT + 20, height: rows.length * rowDots * DOT + 20 };
          const sheets = TURNS.map((turn) => ({ ...pageSheet(1, 612, 792), id: `t${turn}`, role: 'label' as const, box, turn }));
          const { bytes, placements } = await pressDocument(source, sheets, media, gridOf('203dpi'));
          source.close();
          const pages = await rasterisedPages(rasteriser, bytes ?? new Uint8Array(), 203);
          expect(pages).toHaveLength(4);
          placements.forEach(({ matrix }, i) => {
            const page = pages[i];
            if (!matrix || !page) throw new Error('a page for each turn');
            const seen = rows.map((row, y) =>
              Array.from(row, (_, x) => {
                const at = applyToPoint(matrix, 100 + (x + 0.5) * dots * DOT, 120 + (y + 0.5) * rowDots * DOT);
                return page.data[Math.floor(at.y / DOT) * page.width + Math.floor(at.x / DOT)] === 0 ? '1' : '0';
              }).join(''),
            );
            expect(seen).toEqual(rows);
          });
        },
      );
    }
  }
});
