import { PDFArray, PDFDocument, PDFName, type PDFObject } from '../../src/reading/pdf-library.js';
import type { Box } from '../../src/geometry/box.js';
import type { Picture, PictureUnder, PressSource, SourceDocument, SourcePage } from '../../src/reading/source.js';

/** Only what the press asks of a source; anything else is a bug of the test. */
export function sourceDouble(
  pages: readonly { width: number; height: number; press: PressSource; pictureUnder?: (region: Box) => PictureUnder | undefined }[],
): SourceDocument {
  const nothing = (): never => {
    throw new Error('the press does not look at this');
  };
  const at = (number: number): (typeof pages)[number] => pages[number - 1] ?? nothing();
  const page = (number: number): SourcePage => ({
    number,
    width: at(number).width,
    height: at(number).height,
    skew: 0,
    slant: { degrees: 0, sure: true },
    words: nothing,
    images: nothing,
    render: nothing,
    coarse: nothing,
    ink: nothing,
    pictureUnder: (region) => at(number).pictureUnder?.(region),
    codes: nothing,
  });
  return { pageCount: pages.length, notes: [], page, pressSource: (number) => at(number).press, close: () => undefined };
}

/** A document whose only page is a picture of `width` × `height` pt. */
export function pictureSource(picture: Picture, width: number, height: number): SourceDocument {
  const under: PictureUnder = { pixelsPerPt: picture.width / width, origin: { x: 0, y: 0 } };
  return sourceDouble([{ width, height, press: { kind: 'picture', picture }, pictureUnder: () => under }]);
}

/** What a page dictionary says, as PDF writes it. */
export interface PageEntries {
  readonly mediaBox?: readonly number[];
  readonly cropBox?: readonly number[];
  readonly rotate?: number;
  readonly userUnit?: number;
  /** Puts the boxes and the turn on the page tree instead of on the page. */
  readonly inherit?: boolean;
}

/** A one-page PDF with this content in user space. */
export async function pdfWith(entries: PageEntries, content: string | readonly string[]): Promise<Uint8Array> {
  const document = await PDFDocument.create({ updateMetadata: false });
  const page = document.addPage([100, 100]).node;
  const { context } = document;
  const holder = entries.inherit === true ? document.catalog.Pages() : page;
  for (const key of ['MediaBox', 'CropBox', 'BleedBox', 'TrimBox', 'ArtBox']) page.delete(PDFName.of(key));
  const set = (on: typeof holder, key: string, value: PDFObject | undefined): void => {
    if (value) on.set(PDFName.of(key), value);
  };
  set(holder, 'MediaBox', entries.mediaBox && context.obj([...entries.mediaBox]));
  set(holder, 'CropBox', entries.cropBox && context.obj([...entries.cropBox]));
  set(holder, 'Rotate', entries.rotate === undefined ? undefined : context.obj(entries.rotate));
  set(page, 'UserUnit', entries.userUnit === undefined ? undefined : context.obj(entries.userUnit));
  const streams = (typeof content === 'string' ? [content] : content).map((each) => context.register(context.flateStream(each)));
  const [only] = streams;
  const contents = PDFArray.withContext(context);
  for (const stream of streams) contents.push(stream);
  page.set(PDFName.Contents, streams.length === 1 && only ? only : contents);
  return document.save({ useObjectStreams: false, addDefaultPage: false });
}
