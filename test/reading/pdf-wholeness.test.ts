import { deflateSync } from 'node:zlib';
import type { PDFPage } from 'pdf-lib';
import { decodePDFRawStream, PDFDocument, PDFName, PDFNumber, PDFRawStream, PDFRef } from '../../src/reading/pdf-library.js';
import { describe, expect, it } from 'vitest';
import { openPdf } from '../../src/reading/open-pdf.js';
import { isCutOff, lacksParts, lostLineEnds } from '../../src/reading/pdf-wholeness.js';
import { smallPdf } from '../faults/inputs/documents.js';

const load = (bytes: Uint8Array): Promise<PDFDocument> => PDFDocument.load(bytes, { updateMetadata: false, throwOnInvalidObject: false });

/** A file with a picture of 4×4 grey pixels, or what else `data` is, whose stream says `length`. */
async function withPicture(data: Uint8Array, filter: string | undefined, length: number | 'indirect'): Promise<Uint8Array> {
  const pdf = await PDFDocument.create({ updateMetadata: false });
  const page = pdf.addPage([288, 432]);
  const { context } = pdf;
  const dict = context.obj({ Type: 'XObject', Subtype: 'Image', Width: 4, Height: 4, BitsPerComponent: 8, ColorSpace: 'DeviceGray' });
  if (filter !== undefined) dict.set(PDFName.of('Filter'), PDFName.of(filter));
  page.node.setXObject(PDFName.of('Im0'), context.register(PDFRawStream.of(dict, data)));
  const text = Buffer.from(await pdf.save({ useObjectStreams: false })).toString('latin1');
  const said = `/Length ${data.length}`;
  expect(text).toContain(said);
  if (length !== 'indirect') return Buffer.from(text.replace(said, `/Length ${length}`), 'latin1');
  // As some writers do: no line end of its own before the keyword. The objects are no longer where the file says.
  const indirect = text.replace(said, '/Length 90 0 R').replace('\nendstream', 'endstream');
  return Buffer.from(indirect.replace('xref\n', `90 0 obj\n${data.length}\nendobj\n\nxref\n`), 'latin1');
}

const PIXELS = Uint8Array.from({ length: 16 }, (_, index) => index * 16);
/** Sixteen pixels of which the last has the value of a line end. */
const ENDS_IN_LINE_END = Uint8Array.from([...PIXELS.subarray(0, 15), 10]);

describe('a stream whose length is not what it says', () => {
  it.each([
    ['deflated data, too great a length', deflateSync(PIXELS), 'FlateDecode', 40],
    ['deflated data, too small a length', deflateSync(PIXELS), 'FlateDecode', 4],
    ['JPEG data, too great a length', Buffer.from('ffd8ffe000104a464946ffd9', 'hex'), 'DCTDecode', 40],
    ['base-85 data, too great a length', Buffer.from('zzzz~>\n'), 'ASCII85Decode', 40],
    ['hexadecimal data, too great a length', Buffer.from('00ff>'), 'ASCIIHexDecode', 40],
    ['plain data, too small a length', PIXELS, undefined, 4],
    ['plain data, a length in an object of its own', PIXELS, undefined, 'indirect'],
    ['plain data that ends like a line, a length in an object of its own', ENDS_IN_LINE_END, undefined, 'indirect'],
  ] as const)('is whole: %s', async (_, data, filter, length) => {
    const pdf = await load(await withPicture(data, filter, length));
    expect(lacksParts(pdf, 1)).toBe(false);
  });

  it.each([
    ['deflated data without its end', deflateSync(PIXELS).subarray(0, 9), 'FlateDecode'],
    ['JPEG data without its end', Buffer.from('ffd8ffe000104a464946', 'hex'), 'DCTDecode'],
    ['base-85 data without its end', Buffer.from('zzzz'), 'ASCII85Decode'],
    ['hexadecimal data without its end', Buffer.from('00ff00ff'), 'ASCIIHexDecode'],
    ['plain data, which does not tell', PIXELS, undefined],
  ] as const)('lacks a part: %s', async (_, data, filter) => {
    const pdf = await load(await withPicture(data, filter, 40));
    expect(lacksParts(pdf, 1)).toBe(true);
  });
});

describe('data that the parser takes for a line end', () => {
  it.each([
    ['a line feed', ENDS_IN_LINE_END, true],
    ['none', PIXELS, false],
  ])('%s', async (_, data, lost) => {
    expect(lostLineEnds(await load(await withPicture(data, undefined, 'indirect')))).toBe(lost);
  });

  it('is there again in what the press copies from', async () => {
    const document = await openPdf(await withPicture(ENDS_IN_LINE_END, undefined, 'indirect'));
    if ('refused' in document) throw new Error(document.refused.message);
    const source = document.pressSource(1);
    if (source.kind !== 'pdf') throw new Error('no PDF');
    const kept = source.pdf.context
      .enumerateIndirectObjects()
      .flatMap(([, object]) =>
        object instanceof PDFRawStream && object.dict.has(PDFName.of('Width')) ? [[...decodePDFRawStream(object).decode()]] : [],
      );
    expect(kept).toEqual([[...ENDS_IN_LINE_END]]);
    document.close();
  });
});

describe('what a page draws with', () => {
  const NOWHERE = PDFRef.of(9999);
  const lacking = async (change: (page: PDFPage, pdf: PDFDocument) => void): Promise<boolean[]> => {
    const pdf = await PDFDocument.create({ updateMetadata: false });
    const [page] = [pdf.addPage([288, 432]), pdf.addPage([288, 432])];
    page.drawRectangle({ x: 20, y: 20, width: 30, height: 30 });
    change(page, pdf);
    const read = await load(await pdf.save({ useObjectStreams: true }));
    return [lacksParts(read, 1), lacksParts(read, 2)];
  };
  const form = (pdf: PDFDocument, resources: Record<string, unknown>): PDFRef =>
    pdf.context.register(
      pdf.context.stream('q Q', { Type: 'XObject', Subtype: 'Form', BBox: [0, 0, 9, 9], Resources: pdf.context.obj(resources as never) }),
    );
  const uses = (page: PDFPage, key: string, value: PDFRef): void =>
    page.node.Resources()?.set(PDFName.of(key), page.doc.context.obj({ X: value }));

  it.each([
    ['nothing', (page: PDFPage) => page.node.set(PDFName.of('Contents'), page.doc.context.obj([]))],
    ['only what is there', (page: PDFPage, pdf: PDFDocument) => uses(page, 'XObject', form(pdf, {}))],
    [
      'forms that draw one another',
      (page: PDFPage, pdf: PDFDocument) => {
        const [a, b] = [pdf.context.nextRef(), pdf.context.nextRef()];
        for (const [self, other] of [
          [a, b],
          [b, a],
        ] as const)
          pdf.context.assign(self, pdf.context.lookup(form(pdf, { XObject: { X: other } })) as never);
        uses(page, 'XObject', a);
      },
    ],
    ['what it does not use is missing', (page: PDFPage) => page.node.set(PDFName.of('Thumb'), NOWHERE)],
  ] as const)('whole: %s', async (_, change) => {
    expect(await lacking(change)).toEqual([false, false]);
  });

  it.each([
    ['its contents', (page: PDFPage) => page.node.set(PDFName.of('Contents'), NOWHERE)],
    ['one of its contents', (page: PDFPage) => page.node.set(PDFName.of('Contents'), page.doc.context.obj([NOWHERE]))],
    ['a font', (page: PDFPage) => uses(page, 'Font', NOWHERE)],
    ['a picture', (page: PDFPage) => uses(page, 'XObject', NOWHERE)],
    ['a pattern', (page: PDFPage) => uses(page, 'Pattern', NOWHERE)],
    ['all of its fonts', (page: PDFPage) => page.node.Resources()?.set(PDFName.of('Font'), NOWHERE)],
    [
      "a font's own file",
      (page: PDFPage, pdf: PDFDocument) => {
        const descriptor = pdf.context.register(pdf.context.obj({ Type: 'FontDescriptor', FontFile2: NOWHERE }));
        uses(page, 'Font', pdf.context.register(pdf.context.obj({ Type: 'Font', Subtype: 'TrueType', FontDescriptor: descriptor })));
      },
    ],
    ['a font of a form', (page: PDFPage, pdf: PDFDocument) => uses(page, 'XObject', form(pdf, { Font: { F: NOWHERE } }))],
  ] as const)('lacks %s, and the page after it lacks nothing', async (_, change) => {
    expect(await lacking(change)).toEqual([true, false]);
  });
});

describe('isCutOff', () => {
  const whole = smallPdf('a comment');
  const update = Buffer.from('3 0 obj\n<< /Type /Page >>\nendobj\nxref\n0 0\ntrailer\n<< >>\nstartxref\n9\n%%EOF\n');

  it.each([
    ['a file', whole, false],
    ['a file with junk behind its end', Buffer.concat([whole, Buffer.alloc(3000), Buffer.from('<html>\r\n')]), false],
    ['a file with an update', Buffer.concat([whole, update]), false],
    ['a file with half an update', Buffer.concat([whole, update.subarray(0, 30)]), true],
    ['a file without its last line', whole.subarray(0, whole.length - 8), true],
  ])('%s: %#', (_, bytes, cutOff) => {
    expect(isCutOff(bytes)).toBe(cutOff);
  });

  it('wherever the file is cut off, up to its last line', () => {
    for (let length = 0; length < whole.length - 6; length++) expect(isCutOff(whole.subarray(0, length)), String(length)).toBe(true);
  });

  it('says the same of a part of a larger memory', () => {
    const memory = Buffer.concat([Buffer.from('%%EOF'), whole, Buffer.from('7 0 obj')]);
    expect(isCutOff(new Uint8Array(memory.buffer, memory.byteOffset + 5, whole.length))).toBe(false);
  });
});

it('a page count that is told wrong is no cause to throw', async () => {
  const pdf = await load(smallPdf('count'));
  pdf.catalog.Pages().set(PDFName.of('Count'), PDFNumber.of(3));
  const document = await openPdf(await pdf.save({ useObjectStreams: false }));
  if ('refused' in document) expect(document.refused.code).toBe('reading/damaged');
  else expect(document.pageCount).toBe(1);
});
