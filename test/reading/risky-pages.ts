import { PDFDocument, PDFName, PDFString, type PDFContext, type PDFRef } from '../../src/reading/pdf-library.js';
import { openPdf } from '../../src/reading/open-pdf.js';
import type { SourceDocument } from '../../src/reading/source.js';

type Entry = PDFRef | string | number | boolean | readonly Entry[] | { readonly [key: string]: Entry | PDFString };
export type Resources = Readonly<Record<string, Entry>>;

/** One 4×6 in page with these resources and this content. */
export async function pageOf(resources: (context: PDFContext) => Resources, content = ''): Promise<Uint8Array> {
  const pdf = await PDFDocument.create({ updateMetadata: false });
  const { context } = pdf;
  const { node } = pdf.addPage([288, 432]);
  node.set(PDFName.of('Resources'), context.obj(resources(context) as never));
  node.set(PDFName.of('Contents'), context.register(context.flateStream(content)));
  return pdf.save({ useObjectStreams: false });
}

export async function opened(bytes: Uint8Array): Promise<SourceDocument> {
  const source = await openPdf(bytes);
  if ('refused' in source) throw new Error(source.refused.message);
  return source;
}

/** Text in a font that the file names and does not hold. */
export const textIn = (font: (context: PDFContext) => Resources, shown: string): Promise<Uint8Array> =>
  pageOf(
    (context) => ({ Font: { F: context.register(context.obj(font(context) as never)) } }),
    `BT /F 14 Tf 20 300 Td ${shown} Tj ET 20 100 200 40 re f`,
  );

export const STANDARD = (): Resources => ({ Type: 'Font', Subtype: 'Type1', BaseFont: 'Helvetica', Encoding: 'WinAnsiEncoding' });

/** Glyphs by number in a font that is not there: which letters they are nobody can know. */
export const BY_NUMBER = (context: PDFContext): Resources =>
  byNumber(context, { FontDescriptor: context.register(context.obj(DESCRIPTOR)) });

/** The same without a word about the font: more than one engine can bear. */
export const UNDESCRIBED = (context: PDFContext): Resources => byNumber(context, {});

const DESCRIPTOR = {
  Type: 'FontDescriptor',
  FontName: 'Unheard',
  Flags: 4,
  FontBBox: [0, -200, 1000, 900],
  ItalicAngle: 0,
  Ascent: 900,
  Descent: -200,
  CapHeight: 700,
  StemV: 80,
};

const byNumber = (context: PDFContext, more: Resources): Resources => ({
  Type: 'Font',
  Subtype: 'Type0',
  BaseFont: 'Unheard',
  Encoding: 'Identity-H',
  DescendantFonts: [
    context.register(
      context.obj({
        Type: 'Font',
        Subtype: 'CIDFontType2',
        BaseFont: 'Unheard',
        CIDSystemInfo: { Registry: PDFString.of('Adobe'), Ordering: PDFString.of('Identity'), Supplement: 0 },
        ...more,
      }),
    ),
  ],
});

/** Letters that one engine's own font has and the other's has not. */
export const RARE_LETTERS = (): Resources => ({
  Type: 'Font',
  Subtype: 'Type1',
  BaseFont: 'Helvetica',
  Encoding: { Type: 'Encoding', Differences: [65, 'Euro', 'zcaron', 'Gbreve', 'alpha'] },
});
