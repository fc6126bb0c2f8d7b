import { PDFDocument } from 'pdf-lib';
import { expect, it } from 'vitest';
import { openPdf } from '../../src/reading/open-pdf.js';
import { takeCounts } from '../../src/reading/counters.js';

it('a document of many pages keeps the ink of the last 64 only: 1,000 pages took 2 GB', async () => {
  const pdf = await PDFDocument.create({ updateMetadata: false });
  for (let page = 0; page < 70; page++) pdf.addPage([72, 72]).drawRectangle({ x: 10, y: 10, width: 1 + page / 2, height: 20 });
  const document = await openPdf(await pdf.save());
  if ('refused' in document) throw new Error(document.refused.message);
  const rasters = (number: number): number => {
    document.page(number).ink();
    return takeCounts().sourceRasters;
  };
  takeCounts();
  const first = document.page(1).ink();
  for (let number = 2; number <= 64; number++) rasters(number);
  expect([rasters(1), document.page(1).ink() === first]).toEqual([0, true]);
  for (let number = 65; number <= 70; number++) expect(rasters(number)).toBe(1);
  // 2 to 7 were longest unused; what is drawn again is the same.
  expect([1, 8, 70].map(rasters)).toEqual([0, 0, 0]);
  expect([2, 7].map(rasters)).toEqual([1, 1]);
  document.close();
});
