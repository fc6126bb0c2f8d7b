import { describe, expect } from 'vitest';
import { dotsPerPt, gridOf, wholeDots, type GridName } from '../../src/geometry/grid.js';
import { mediaNamed } from '../../src/geometry/media.js';
import { dotsDocument } from '../../src/press/dots-document.js';
import type { GreyRaster } from '../../src/reading/source.js';
import { rasterisedPages, RASTERISERS } from './rasters.js';
import { outsideCheck } from './tools.js';

/** Bars of one to six dots both ways, a comb, noise, and lines on all four edges: whatever moves, is lost or doubled shows. */
function page(media: string, gridName: GridName, seed: number): GreyRaster {
  const grid = gridOf(gridName);
  const { width: wide, height: high } = mediaNamed(media);
  const [width, height] = [wholeDots(wide, grid), wholeDots(high, grid)];
  const data = new Uint8Array(width * height).fill(255);
  let state = seed;
  for (let y = 0, at = 0; y < height; y++) {
    for (let x = 0; x < width; x++, at++) {
      state = (Math.imul(state, 1103515245) + 12345) & 0x7fffffff;
      const field = Math.floor((6 * y) / height);
      const pitch = 2 * (1 + (Math.floor((6 * x) / width) % 6));
      const inside =
        [x % 2 === 0, x % pitch < pitch / 2, y % pitch < pitch / 2, (state >> 16) % 2 === 0, y % 2 === 0, false][field] ?? false;
      const edge = x === 0 || y === 0 || x === width - 1 || y === height - 1;
      if (inside || edge) data[at] = 0;
    }
  }
  return { width, height, data, pixelsPerPt: dotsPerPt(grid), origin: { x: 0, y: 0 } };
}

describe('a page of dots is the same dots by rasterisers that share no code with ours', () => {
  for (const tool of RASTERISERS) {
    for (const [media, grid] of [
      ['4x6in', '203dpi'],
      ['4x6in', '8dpmm'],
      ['4x6in', '300dpi'],
      ['4x6in', '12dpmm'],
      ['4x6in', '600dpi'],
      ['100x150mm', '203dpi'],
      ['100x150mm', '8dpmm'],
      ['a6', '300dpi'],
      ['4x8in', '203dpi'],
    ] as const) {
      outsideCheck(`${tool}: ${media} at ${grid}`, [tool, 'pdfinfo'], async () => {
        const pages = [page(media, grid, 1)];
        const drawn = await rasterisedPages(tool, await dotsDocument(pages, mediaNamed(media), gridOf(grid)), gridOf(grid).dpi);
        expect(drawn).toHaveLength(pages.length);
        for (const [index, { width, height, data }] of pages.entries()) {
          const shown = drawn[index];
          if (!shown) throw new Error('no page');
          // A page ends in part of a dot: the rasteriser may round it up, and what it adds is paper.
          expect(shown.width - width).toBeGreaterThanOrEqual(0);
          expect(shown.width - width).toBeLessThanOrEqual(1);
          expect(shown.height - height).toBeGreaterThanOrEqual(0);
          expect(shown.height - height).toBeLessThanOrEqual(1);
          let differing = 0;
          for (let y = 0; y < shown.height; y++) {
            for (let x = 0; x < shown.width; x++) {
              const meant = x < width && y < height ? data[y * width + x] : 255;
              if (shown.data[y * shown.width + x] !== meant) differing += 1;
            }
          }
          expect(differing).toBe(0);
        }
      });
    }
  }
});
