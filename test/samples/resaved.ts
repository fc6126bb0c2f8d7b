import { PDFDocument } from 'pdf-lib';

/** The same document as another program saves it: other bytes, the same pages. The same bytes each time. */
export async function resaved(pdf: Uint8Array): Promise<Uint8Array> {
  const document = await PDFDocument.load(pdf, { updateMetadata: false });
  document.setProducer('Resaved');
  return document.save({ useObjectStreams: true });
}
