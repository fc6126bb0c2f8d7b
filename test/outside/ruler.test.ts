import { describe, expect } from 'vitest';
import { gridOf } from '../../src/geometry/grid.js';
import { mediaNamed } from '../../src/geometry/media.js';
import { rulerChart, rulerPage } from '../../src/ruler/ruler-page.js';
import { wrongDots } from '../ruler/drawn.js';
import { RASTERISERS, rasterisedPages, zbarCodes, type Dots } from './rasters.js';
import { outsideCheck } from './tools.js';

describe('the ruler page, drawn by other rasterisers', () => {
  // On 4×6 in both grids have a whole number of dots, so that every rasteriser begins on the same dot. Ghostscript paints every dot that a mark touches.
  for (const tool of RASTERISERS) {
    for (const grid of ['203dpi', '300dpi'] as const) {
      outsideCheck(
        `${tool} at ${grid}: every bar has exactly its dots, and zbar reads the codes`,
        [tool, 'pdfinfo', 'zbarimg'],
        async () => {
          const chart = rulerChart(mediaNamed('4x6in'), gridOf(grid));
          const [page] = await rasterisedPages(tool, await rulerPage(mediaNamed('4x6in'), gridOf(grid)), gridOf(grid).dpi);
          if (!page) throw new Error('no page');
          expect([page.width, page.height]).toEqual([chart.columns, chart.rows]);
          expect(wrongDots(chart, page.data)).toBe(0);
          const codes = await zbarCodes(page);
          expect(codes.map(({ type, bytes }) => `${type} ${Buffer.from(bytes, 'hex').toString()}`).sort()).toEqual(
            [2, 3, 4, 5, 6].map((dots) => `CODE-128 DOT${dots}`),
          );
        },
      );
    }
  }

  outsideCheck('fitted to a printable area 3 mm smaller, the comb is uneven: the ruler shows it', ['pdftoppm', 'pdfinfo'], async () => {
    const media = mediaNamed('4x6in');
    const grid = gridOf('203dpi');
    const pdf = await rulerPage(media, grid);
    const evenRows = (page: Dots): number => {
      let even = 0;
      for (let y = 0; y < page.height; y++) {
        const row = Buffer.from(page.data.subarray(y * page.width, (y + 1) * page.width)).toString('latin1');
        if (row.includes('\x00\xff'.repeat(50))) even += 1;
      }
      return even;
    };
    const [whole] = await rasterisedPages('pdftoppm', pdf, grid.dpi);
    const [fitted] = await rasterisedPages('pdftoppm', pdf, grid.dpi, { width: 764, height: 1146 });
    if (!whole || !fitted) throw new Error('no page');
    expect(evenRows(whole)).toBeGreaterThan(80);
    expect(evenRows(fitted)).toBe(0);
  });
});
