import { PDFDocument, PDFName, type PDFRawStream } from 'pdf-lib';
import { describe, expect, it } from 'vitest';
import { dotsPerPt, GRID_NAMES, gridOf, wholeDots, type GridName } from '../../src/geometry/grid.js';
import { mediaNamed } from '../../src/geometry/media.js';
import { dotsDocument } from '../../src/press/dots-document.js';
import { openPdf } from '../../src/reading/open-pdf.js';
import type { GreyRaster } from '../../src/reading/source.js';

/** Dots in no order, with lines on all four edges of the page. */
function page(media: string, gridName: GridName, seed: number): GreyRaster {
  const grid = gridOf(gridName);
  const size = mediaNamed(media);
  const [width, height] = [wholeDots(size.width, grid), wholeDots(size.height, grid)];
  const data = new Uint8Array(width * height);
  let state = seed;
  for (let y = 0, at = 0; y < height; y++) {
    for (let x = 0; x < width; x++, at++) {
      state = (state * 16807) % 2147483647;
      const edge = x === 0 || y === 0 || x === width - 1 || y === height - 1;
      data[at] = edge || ((x >> 3) + (y >> 3)) % 5 === 0 || state % 97 === 0 ? 0 : 255;
    }
  }
  return { width, height, data, pixelsPerPt: dotsPerPt(grid), origin: { x: 0, y: 0 } };
}

const CASES = [
  ...GRID_NAMES.filter((name) => name !== '24dpmm').map((grid) => ['4x6in', grid] as const),
  ['100x150mm', '8dpmm'],
  ['a6', '203dpi'],
  ['4x8in', '300dpi'],
] as const;

describe('dotsDocument', () => {
  it.each(CASES)('gives back every dot of a page of %s on %s', async (media, gridName) => {
    const pages = [page(media, gridName, 5), page(media, gridName, 77)];
    const bytes = await dotsDocument(pages, mediaNamed(media), gridOf(gridName));
    const document = await openPdf(bytes, { as: 'output' });
    if ('refused' in document) throw new Error(document.refused.message);
    expect(document.pageCount).toBe(2);
    for (const [index, dots] of pages.entries()) {
      const shown = document.page(index + 1);
      const { width, height } = mediaNamed(media);
      const drawn = shown.render({ x: 0, y: 0, width, height }, dotsPerPt(gridOf(gridName)));
      expect([drawn.width, drawn.height]).toEqual([dots.width, dots.height]);
      expect(drawn.data.findIndex((value, at) => value !== dots.data[at])).toBe(-1);
    }
    document.close();
  });

  it('holds one picture of 1 bit a page and nothing else, the same bytes each time', async () => {
    const pages = [page('4x6in', '203dpi', 5)];
    const [once, again] = [
      await dotsDocument(pages, mediaNamed('4x6in'), gridOf('203dpi')),
      await dotsDocument(pages, mediaNamed('4x6in'), gridOf('203dpi')),
    ];
    expect(Buffer.compare(once, again)).toBe(0);
    const pdf = await PDFDocument.load(once);
    const streams = pdf.context.enumerateIndirectObjects().flatMap(([, object]) => ('contents' in object ? [object as PDFRawStream] : []));
    expect(streams.map((stream) => String(stream.dict.get(PDFName.of('Subtype')) ?? 'content')).sort()).toEqual(['/Image', 'content']);
    expect(streams.some((stream) => String(stream.dict.get(PDFName.of('Filter'))) === '/CCITTFaxDecode')).toBe(true);
    expect(Buffer.from(once).includes('/Font')).toBe(false);
  });
});
