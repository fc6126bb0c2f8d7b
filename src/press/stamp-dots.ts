import { deflateSync } from 'node:zlib';
import { PDFRawStream, type PDFContext, type PDFRef } from '../reading/pdf-library.js';
import { bottom, right } from '../geometry/box.js';
import { dotsPerPt, type Grid } from '../geometry/grid.js';
import type { Media } from '../geometry/media.js';
import { openPdf } from '../reading/open-pdf.js';
import type { GreyRaster } from '../reading/source.js';
import { num } from './operators.js';
import { addPage, newDocument, saveDocument } from './output.js';
import { stampOperators, type Stamp } from './stamp.js';
import { embedFace } from './text-face.js';

/** A number as dots of the page: where its top left dot lies, and its dots (0 burned, 255 paper). */
export interface StampDots {
  readonly x: number;
  readonly y: number;
  readonly dots: Pick<GreyRaster, 'width' | 'height' | 'data'>;
}

/** Draws numbers once, as type would be drawn, and gives their dots on the printer's grid; in the order of the stamps. */
export async function stampDots(stamps: readonly Stamp[], media: Media, grid: Grid): Promise<readonly StampDots[]> {
  if (stamps.length === 0) return [];
  const document = await newDocument();
  const face = await embedFace(document);
  for (const stamp of stamps) addPage(document, media, stampOperators(stamp, media.height, face, 'N'), { Font: { N: face.ref } });
  const drawn = await openPdf(await saveDocument(document), { as: 'output' });
  if ('refused' in drawn) throw new Error(`stamp-dots: the press's own document does not open (${drawn.refused.code})`);
  try {
    return stamps.map(({ box }, index) => {
      const perPt = dotsPerPt(grid);
      const [x, y] = [Math.ceil(box.x * perPt), Math.ceil(box.y * perPt)];
      const [x1, y1] = [Math.floor(right(box) * perPt), Math.floor(bottom(box) * perPt)];
      const region = { x: x / perPt, y: y / perPt, width: (x1 - x) / perPt, height: (y1 - y) / perPt };
      const { width, height, data } = drawn.page(index + 1).render(region, perPt);
      return { x, y, dots: { width, height, data: data.map((value) => (value < 128 ? 0 : 255)) } };
    });
  } finally {
    drawn.close();
  }
}

/** A number's dots as a picture of 1 bit in a document, and the operators that draw it on whole dots. */
export function stampPicture(
  { x, y, dots }: StampDots,
  context: PDFContext,
  media: Media,
  grid: Grid,
  name: string,
): { readonly ref: PDFRef; readonly operators: string } {
  const { width, height, data } = dots;
  const row = (width + 7) >> 3;
  const bits = new Uint8Array(row * height);
  for (let line = 0, at = 0; line < height; line++) {
    for (let column = 0; column < width; column++, at++) {
      if ((data[at] as number) > 0) bits[line * row + (column >> 3)] = (bits[line * row + (column >> 3)] as number) | (128 >> (column & 7));
    }
  }
  const dict = context.obj({
    Type: 'XObject',
    Subtype: 'Image',
    Width: width,
    Height: height,
    ColorSpace: 'DeviceGray',
    BitsPerComponent: 1,
    Interpolate: false,
    Filter: 'FlateDecode',
  });
  const perPt = dotsPerPt(grid);
  // Drawn in by a hundredth of a dot, as every picture on whole dots (see `place`).
  const pt = (count: number): number => (count - 0.02) / perPt;
  const [left, low] = [(x + 0.01) / perPt, media.height - (y + 0.01) / perPt - pt(height)];
  const operators = `q\n${num(pt(width))} 0 0 ${num(pt(height))} ${num(left)} ${num(low)} cm\n/${name} Do\nQ`;
  return { ref: context.register(PDFRawStream.of(dict, deflateSync(bits))), operators };
}
