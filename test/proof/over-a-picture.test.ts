import { deflateSync } from 'node:zlib';
import { PDFDocument, PDFName, PDFRawStream, rgb } from 'pdf-lib';
import { expect, it } from 'vitest';
import { mostPixelsPerPt } from '../../src/reading/page-codes.js';
import { MOST_PIXELS } from '../../src/reading/source.js';
import { pageSheet, type Sheet } from '../../src/sheet/sheet.js';
import { code128 } from '../samples/code-art.js';
import { ANY_BARS, openSource, pressAndProve, verdictOf } from './prove-sample.js';

/** A 4×6 in label, its code drawn over a faint picture of the whole page at `dpi`. */
async function label(dpi: number): Promise<Uint8Array> {
  const pdf = await PDFDocument.create({ updateMetadata: false });
  const page = pdf.addPage([288, 432]);
  const [Width, Height] = [4 * dpi, 6 * dpi];
  const dict = pdf.context.obj({ Type: 'XObject', Subtype: 'Image', Width, Height, BitsPerComponent: 8, ColorSpace: 'DeviceGray' });
  dict.set(PDFName.of('Filter'), PDFName.of('FlateDecode'));
  page.node.setXObject(
    PDFName.of('Im0'),
    pdf.context.register(PDFRawStream.of(dict, deflateSync(new Uint8Array(Width * Height).fill(252)))),
  );
  page.node.addContentStream(pdf.context.register(pdf.context.flateStream('q 288 0 0 432 0 0 cm /Im0 Do Q')));
  for (const [x, , width] of code128('SAMPLE-0042-7788').rects)
    page.drawRectangle({ x: 30 + x, y: 200, width, height: 60, color: rgb(0, 0, 0) });
  return pdf.save();
}

it.each([36, 72, 100])('bars over a faint picture are read as finely as any: a picture of %i dpi held the label', async (dpi) => {
  const source = await openSource(await label(dpi));
  const sheet: Sheet = { ...pageSheet(1, 288, 432), role: 'label', proof: ANY_BARS };
  const { proofs } = await pressAndProve(source, [sheet], '203dpi');
  expect(verdictOf(proofs[0])).toBe('proved');
  source.close();
});

it.each([
  [612, 792],
  [5000, 5000],
  [288, 432],
])('no area is read at more pixels than a raster may have: %i × %i pt', (width, height) => {
  const most = mostPixelsPerPt({ x: 0, y: 0, width, height });
  expect(width * most * height * most).toBeLessThanOrEqual(MOST_PIXELS);
  expect(width * most * height * most).toBeGreaterThan(0.99 * MOST_PIXELS);
});
