import { PDFDict, PDFDocument, PDFName, PDFNumber, PDFString, type PDFPage } from 'pdf-lib';
import { describe, expect, it } from 'vitest';
import { gridOf } from '../../src/geometry/grid.js';
import { pressDocument } from '../../src/press/press-document.js';
import { openPdf } from '../../src/reading/open-pdf.js';
import type { GreyRaster, SourceDocument } from '../../src/reading/source.js';
import { pageSheet } from '../../src/sheet/sheet.js';

/** Annotation flags (ISO 32000 table of annotation flags, via fpdf_annot.h). */
const HIDDEN = 2;
const PRINT = 4;

async function opened(change: (page: PDFPage, pdf: PDFDocument) => void): Promise<SourceDocument> {
  const pdf = await PDFDocument.create({ updateMetadata: false });
  const page = pdf.addPage([288, 432]);
  page.drawRectangle({ x: 20, y: 380, width: 30, height: 30 });
  change(page, pdf);
  const document = await openPdf(await pdf.save({ useObjectStreams: false }));
  if ('refused' in document) throw new Error(document.refused.code);
  return document;
}

/** An annotation at (50, 200) in user space, 100×20 pt, whose appearance is a black bar of 100×10 pt at its foot. */
function annotate(page: PDFPage, subtype: string, flags: number, more: Readonly<Record<string, PDFString | PDFNumber>> = {}): void {
  const { context } = page.doc;
  const look = context.register(context.stream('0 0 100 10 re f', { Type: 'XObject', Subtype: 'Form', BBox: [0, 0, 100, 20] }));
  const annotation = context.obj({ Type: 'Annot', Subtype: subtype, Rect: [50, 200, 150, 220], F: flags, AP: { N: look }, ...more });
  page.node.set(PDFName.of('Annots'), context.obj([context.register(annotation)]));
}

/** Bounds of all ink below the page's own square, to half a pt: x, y, width, height in pt. */
function inkOf({ data, width, pixelsPerPt }: GreyRaster, from: { readonly x: number; readonly y: number }): readonly number[] {
  let [x0, y0, x1, y1] = [Infinity, Infinity, -1, -1];
  data.forEach((value, at) => {
    const [x, y] = [at % width, Math.floor(at / width)];
    if (value >= 128 || x < from.x * pixelsPerPt || y < from.y * pixelsPerPt) return;
    [x0, y0, x1, y1] = [Math.min(x0, x), Math.min(y0, y), Math.max(x1, x + 1), Math.max(y1, y + 1)];
  });
  return x1 < 0 ? [] : [x0, y0, x1 - x0, y1 - y0].map((each) => Math.round((2 * each) / pixelsPerPt) / 2);
}

/** What is seen on the page, and then on what the press makes of it at true size. */
async function seen(document: SourceDocument, from = { x: 0, y: 100 }): Promise<{ source: readonly number[]; pressed: readonly number[] }> {
  const page = document.page(1);
  const { width, height } = page;
  const whole = { x: 0, y: 0, width, height };
  const { bytes } = await pressDocument(document, [pageSheet(1, width, height)], { name: 'whole', width, height }, gridOf('203dpi'));
  const output = bytes && (await openPdf(bytes, { as: 'output' }));
  if (!output || 'refused' in output) throw new Error('nothing was pressed');
  const both = { source: inkOf(page.render(whole, 4), from), pressed: inkOf(output.page(1).render(whole, 4), from) };
  output.close();
  return both;
}

const NOTE = 'annotations or form fields on 1 page were made part of the page';
/** The bar: 432 − 200 − 10 from the top. */
const BAR = [50, 222, 100, 10];

describe('what lies on top of a page', () => {
  it.each(['FreeText', 'Stamp', 'Square'])('a %s annotation is seen, pressed, and told', async (subtype) => {
    const document = await opened((page) => {
      annotate(page, subtype, PRINT, { DA: PDFString.of('/Helv 9 Tf'), Contents: PDFString.of('left at the door') });
    });
    expect(document.notes).toEqual([NOTE]);
    expect(await seen(document)).toEqual({ source: BAR, pressed: BAR });
    document.close();
  });

  it('turns with the page', async () => {
    const document = await opened((page) => {
      annotate(page, 'Stamp', PRINT);
      page.node.set(PDFName.of('Rotate'), PDFNumber.of(90));
    });
    // The page's own square ends where the bar begins, 50 pt from the top.
    const turned = [200, 50, 10, 100];
    expect(await seen(document, { x: 0, y: 50 })).toEqual({ source: turned, pressed: turned });
    document.close();
  });

  it('is twice as large on a page with a UserUnit of 2', async () => {
    const document = await opened((page) => {
      annotate(page, 'Stamp', PRINT);
      page.node.set(PDFName.of('UserUnit'), PDFNumber.of(2));
    });
    const doubled = BAR.map((each) => 2 * each);
    expect(await seen(document, { x: 0, y: 200 })).toEqual({ source: doubled, pressed: doubled });
    document.close();
  });

  it.each([
    ['a hidden annotation', (page: PDFPage) => annotate(page, 'Stamp', HIDDEN)],
    [
      'a link, even with a border',
      (page: PDFPage) => {
        const { context } = page.doc;
        const link = context.obj({ Type: 'Annot', Subtype: 'Link', Rect: [50, 200, 150, 220], Border: [0, 0, 1] });
        page.node.set(PDFName.of('Annots'), context.obj([context.register(link)]));
      },
    ],
  ])('%s is neither seen nor told', async (_, change) => {
    const document = await opened(change);
    expect(await seen(document)).toEqual({ source: [], pressed: [] });
    expect(document.notes).toEqual([]);
    document.close();
  });

  it.each([true, false])('a filled text field is seen and pressed; with an appearance of its own: %s', async (withAppearance) => {
    const document = await opened((page, pdf) => {
      const field = pdf.getForm().createTextField('to');
      field.setText('MMMM');
      field.addToPage(page, { x: 50, y: 200, width: 100, height: 20, borderWidth: 0 });
      field.updateAppearances(pdf.getForm().getDefaultFont());
      if (withAppearance) return;
      for (const widget of field.acroField.getWidgets()) widget.dict.delete(PDFName.of('AP'));
      const form = pdf.catalog.lookup(PDFName.of('AcroForm'), PDFDict);
      form.set(PDFName.of('NeedAppearances'), pdf.context.obj(true));
    });
    expect(document.notes).toEqual([NOTE]);
    expect(
      document
        .page(1)
        .words()
        .map(({ text }) => text),
    ).toEqual(['MMMM']);
    const { source, pressed } = await seen(document);
    expect(source).toHaveLength(4);
    expect(source[0]).toBeGreaterThanOrEqual(50);
    expect(source[1]).toBeGreaterThanOrEqual(212);
    expect(pressed).toEqual(source);
    document.close();
  });
});
