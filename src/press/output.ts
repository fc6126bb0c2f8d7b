import { PDFDocument, PDFName, PDFPageLeaf, type PDFRef } from '../reading/pdf-library.js';
import type { Media } from '../geometry/media.js';

/** Named objects of a page: `{ XObject: { S: ref } }`. */
export type PageResources = Readonly<Record<string, Readonly<Record<string, PDFRef>>>>;

/** A document without dates, producer or any other word that would differ from run to run. */
export async function newDocument(): Promise<PDFDocument> {
  return PDFDocument.create({ updateMetadata: false });
}

/** Adds a page of exactly the media's size: MediaBox = CropBox from (0, 0), not turned, no UserUnit (handbook section 7.1). */
export function addPage(document: PDFDocument, media: Media, operators: string, resources: PageResources): void {
  const { context } = document;
  const content = context.register(context.flateStream(operators));
  const root = document.catalog.get(PDFName.of('Pages')) as PDFRef;
  const page = PDFPageLeaf.fromMapWithContext(new Map(), context);
  page.set(PDFName.of('Type'), PDFName.of('Page'));
  page.set(PDFName.of('Parent'), root);
  page.set(PDFName.of('MediaBox'), context.obj([0, 0, media.width, media.height]));
  page.set(PDFName.of('CropBox'), context.obj([0, 0, media.width, media.height]));
  page.set(PDFName.of('Resources'), context.obj(resources));
  page.set(PDFName.of('Contents'), content);
  document.catalog.Pages().pushLeafNode(context.register(page));
}

/** The bytes; nothing in them but what was put in, so equal documents are equal bytes. */
export async function saveDocument(document: PDFDocument): Promise<Uint8Array> {
  return document.save({ useObjectStreams: false, addDefaultPage: false, updateFieldAppearances: false, objectsPerTick: Infinity });
}
