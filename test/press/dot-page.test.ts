import { describe, expect, it } from 'vitest';
import { PDFDocument, PDFName } from 'pdf-lib';
import { gridOf, wholeDots, type GridName } from '../../src/geometry/grid.js';
import { mediaNamed } from '../../src/geometry/media.js';
import { pressDotPage } from '../../src/press/dot-page.js';
import { dotsPerPt } from '../../src/geometry/grid.js';
import { openPdf } from '../../src/reading/open-pdf.js';

/** Single dots in the corners and scattered over the page, by columns and rows of the grid. */
const scattered = (columns: number, rows: number): { x: number; y: number; width: number; height: number }[] => [
  ...[0, columns - 1].flatMap((x) => [0, rows - 1].map((y) => ({ x, y, width: 1, height: 1 }))),
  ...Array.from({ length: 60 }, (_, i) => ({
    x: 7 + ((i * 131) % (columns - 20)),
    y: 11 + i * 19,
    width: 1 + (i % 3),
    height: 1 + (i % 2),
  })),
];

describe('pressDotPage', () => {
  it.each([
    ['4x6in', '203dpi'],
    ['4x6in', '300dpi'],
    ['100x150mm', '203dpi'],
    ['100x150mm', '8dpmm'],
    ['a6', '12dpmm'],
  ] as const)('draws single dots of %s at %s, and no dot beside them', async (name, gridName: GridName) => {
    const [media, grid] = [mediaNamed(name), gridOf(gridName)];
    const [columns, rows] = [wholeDots(media.width, grid), wholeDots(media.height, grid)];
    const marks = scattered(columns, rows);
    const pdf = await openPdf(await pressDotPage({ title: 'dots', media, grid, marks, lines: [] }), { as: 'output' });
    if ('refused' in pdf) throw new Error(pdf.refused.message);
    const { width, height, data } = pdf.page(1).render({ x: 0, y: 0, width: media.width, height: media.height }, dotsPerPt(grid));
    pdf.close();
    expect([width, height]).toEqual([columns, rows]);
    const wanted = new Uint8Array(columns * rows);
    for (const mark of marks) {
      for (let y = mark.y; y < mark.y + mark.height; y++) wanted.fill(1, y * columns + mark.x, y * columns + mark.x + mark.width);
    }
    expect(
      Buffer.compare(
        data.map((value) => (value < 128 ? 1 : 0)),
        wanted,
      ),
    ).toBe(0);
  });

  it('sets type, gives its title, and asks for true size', async () => {
    const media = mediaNamed('4x6in');
    const lines = [{ text: 'Größe 7 pt', fontSize: 7, x: 72, y: 144 }];
    const bytes = await pressDotPage({ title: 'A page', media, grid: gridOf('203dpi'), marks: [], lines });
    const document = await PDFDocument.load(bytes);
    expect(document.getTitle()).toBe('A page');
    expect(document.catalog.get(PDFName.of('ViewerPreferences'))?.toString()).toContain('/PrintScaling /None');
    const pdf = await openPdf(bytes, { as: 'output' });
    if ('refused' in pdf) throw new Error(pdf.refused.message);
    const words = pdf.page(1).words();
    pdf.close();
    expect(words.map(({ text }) => text)).toEqual(['Größe', '7', 'pt']);
    expect(words[0]?.box.x).toBeCloseTo(72, 0);
    expect((words[0]?.box.y ?? 0) >= 143 && (words[0]?.box.y ?? 0) < 152).toBe(true);
  });
});
