import { PDFDocument, PDFName, PDFRef, type PDFPage } from 'pdf-lib';
import { describe, expect, it } from 'vitest';
import { openPdf } from '../../src/reading/open-pdf.js';

const drawn = async (pages: number, change: (page: PDFPage, pdf: PDFDocument) => void = () => undefined): Promise<PDFDocument> => {
  const pdf = await PDFDocument.create({ updateMetadata: false });
  for (let number = 1; number <= pages; number++) pdf.addPage([288, 432]).drawRectangle({ x: 20, y: 20, width: 100, height: 50 });
  const second = pages > 1 ? 1 : 0;
  change(pdf.getPage(second), pdf);
  return pdf;
};

/** What openPdf says: the code of its refusal, or of each page why it is unfit. */
async function told(pdf: PDFDocument): Promise<string | readonly string[]> {
  const document = await openPdf(await pdf.save({ useObjectStreams: false }));
  if ('refused' in document) return document.refused.code;
  const pages = Array.from({ length: document.pageCount }, (_, index) => document.page(index + 1).unfit?.code ?? 'fit');
  document.close();
  return pages;
}

const UNFIT = [
  ['of monstrous size', 'reading/huge-page', (page: PDFPage) => page.setSize(14_000, 14_000)],
  ['of monstrous length', 'reading/huge-page', (page: PDFPage) => page.setSize(288, 5001)],
  [
    'of which nothing is visible',
    'reading/huge-page',
    (page: PDFPage) => page.node.set(PDFName.of('CropBox'), page.doc.context.obj([5000, 5000, 5100, 5100])),
  ],
  ['without its contents', 'reading/damaged', (page: PDFPage) => page.node.set(PDFName.of('Contents'), PDFRef.of(9999))],
] as const;

describe("a page that can't be used", () => {
  it.each(UNFIT)('%s says so, and the pages around it are fit: %s', async (_, code, change) => {
    expect(await told(await drawn(3, change))).toEqual(['fit', code, 'fit']);
  });

  it.each(UNFIT)('%s is refused when there is no other: %s', async (_, code, change) => {
    expect(await told(await drawn(1, change))).toBe(code);
  });

  it('a page of A0 is fit, and one as long as may be', async () => {
    expect(await told(await drawn(2, (page) => page.setSize(2384, 3370)))).toEqual(['fit', 'fit']);
    expect(await told(await drawn(2, (page) => page.setSize(288, 5000)))).toEqual(['fit', 'fit']);
  });

  it('a page whose box says nothing is taken as viewers take it', async () => {
    expect(await told(await drawn(3, (page) => page.node.set(PDFName.of('MediaBox'), PDFRef.of(9999))))).toEqual(['fit', 'fit', 'fit']);
  });
});

describe('a document that is refused', () => {
  it('has no pages', async () => {
    const pdf = await drawn(1);
    pdf.catalog.Pages().set(PDFName.of('Kids'), pdf.context.obj([]));
    pdf.catalog.Pages().set(PDFName.of('Count'), pdf.context.obj(0));
    expect(await told(pdf)).toBe('reading/no-pages');
  });

  it('names a page that is not there: pages may be missing', async () => {
    const pdf = await drawn(3, (page, { catalog, context }) =>
      catalog.Pages().set(PDFName.of('Kids'), context.obj([page.ref, PDFRef.of(9999)])),
    );
    pdf.catalog.Pages().set(PDFName.of('Count'), pdf.context.obj(2));
    expect(await told(pdf)).toBe('reading/damaged');
  });

  it.each([
    ['a user password', { userPassword: 'secret', ownerPassword: 'owner' }, 'reading/needs-password'],
    ['an owner password only', { userPassword: '', ownerPassword: 'owner' }, ['fit']],
  ])('or not: %s', async (_, passwords, expected) => {
    const pdf = await drawn(1);
    pdf.encrypt(passwords);
    expect(await told(pdf)).toEqual(expected);
  });
});
