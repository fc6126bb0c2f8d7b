import { wholeDots, type Grid } from '../../src/geometry/grid.js';
import { allocate, free, pdfium } from '../../src/reading/pdfium.js';

/** Grey samples of a page as PDFium itself shows it: its own reading of boxes and turns, none of ours. */
export interface Shown {
  readonly width: number;
  readonly height: number;
  readonly data: Uint8Array;
}

/**
 * Draws page `number` (from 1) stretched to `width` × `height` pixels.
 * @param extra FPDF_RenderPageBitmap flags besides annotations and grey
 */
export async function showPage(bytes: Uint8Array, number: number, width: number, height: number, extra = 0): Promise<Shown> {
  const engine = await pdfium();
  const file = allocate(engine, bytes.length);
  engine.pdfium.HEAPU8.set(bytes, file);
  const document = engine.FPDF_LoadMemDocument(file, bytes.length, '');
  if (document === 0) throw new Error('the engine does not open the file');
  const page = engine.FPDF_LoadPage(document, number - 1);
  const bitmap = engine.FPDFBitmap_Create(width, height, 0);
  engine.FPDFBitmap_FillRect(bitmap, 0, 0, width, height, 0xffffffff);
  engine.FPDF_RenderPageBitmap(bitmap, page, 0, 0, width, height, 0, 1 | 8 | extra);
  const stride = engine.FPDFBitmap_GetStride(bitmap);
  const from = engine.FPDFBitmap_GetBuffer(bitmap);
  const data = new Uint8Array(width * height);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) data[y * width + x] = engine.pdfium.HEAPU8[from + y * stride + x * 4] ?? 0;
  }
  engine.FPDFBitmap_Destroy(bitmap);
  engine.FPDF_ClosePage(page);
  engine.FPDF_CloseDocument(document);
  free(engine, file);
  return { width, height, data };
}

/** Draws a page of `pageWidth` × `pageHeight` pt on a grid's whole dots. */
export const showOnGrid = (bytes: Uint8Array, number: number, pageWidth: number, pageHeight: number, grid: Grid): Promise<Shown> =>
  showPage(bytes, number, wholeDots(pageWidth, grid), wholeDots(pageHeight, grid));

/** Centre of the dark pixels in pt, and how many there are; NaN for none. */
export function inkCentre(shown: Shown, pixelsPerPt: number): { x: number; y: number; count: number } {
  let x = 0;
  let y = 0;
  let count = 0;
  shown.data.forEach((value, index) => {
    if (value >= 128) return;
    x += (index % shown.width) + 0.5;
    y += Math.floor(index / shown.width) + 0.5;
    count += 1;
  });
  return { x: x / count / pixelsPerPt, y: y / count / pixelsPerPt, count };
}

/** Share of pixels that differ by more than `by`. */
export function shareDifferent(a: Shown, b: Shown, by = 64): number {
  if (a.width !== b.width || a.height !== b.height) throw new Error(`sizes differ: ${a.width}×${a.height} and ${b.width}×${b.height}`);
  let different = 0;
  a.data.forEach((value, index) => {
    if (Math.abs(value - (b.data[index] ?? 0)) > by) different += 1;
  });
  return different / a.data.length;
}
