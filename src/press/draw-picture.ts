import { deflateSync } from 'node:zlib';
import { PDFRawStream, type PDFContext, type PDFRef } from '../reading/pdf-library.js';
import { compose, type Matrix } from '../geometry/placement.js';
import { bottom, right, type Box } from '../geometry/box.js';
import type { Picture } from '../reading/source.js';
import { flip } from './operators.js';

/** A part of a picture in the output document. */
export interface PlacedPart {
  readonly ref: PDFRef;
  /** The `cm` map of PDF's unit square. */
  readonly matrix: Matrix;
}

/** Pixels: left and top from 0, y down. */
interface PixelRect {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/**
 * Puts the pixels that `box` needs into the document, unchanged: 1 bit a pixel for black and white, else 8 bits grey or RGB.
 * @param page size of the source page that the whole picture fills, pt
 * @param placement source page (pt, y down) → output page (pt, y down)
 */
export function drawPicture(
  context: PDFContext,
  picture: Picture,
  page: { readonly width: number; readonly height: number },
  box: Box,
  placement: Matrix,
  pageHeight: number,
): PlacedPart | undefined {
  const perPtX = picture.width / page.width;
  const perPtY = picture.height / page.height;
  const rect = neededPixels(picture, box, perPtX, perPtY);
  if (rect === undefined) return undefined;
  const unitToSource: Matrix = [rect.width / perPtX, 0, 0, -rect.height / perPtY, rect.x / perPtX, (rect.y + rect.height) / perPtY];
  return { ref: imageObject(context, picture, rect), matrix: compose(compose(unitToSource, placement), flip(pageHeight)) };
}

/** A box that ends within this much of a pixel edge ends there. */
const EDGE = 1e-3;

function neededPixels(picture: Picture, box: Box, perPtX: number, perPtY: number): PixelRect | undefined {
  const x0 = Math.max(0, Math.floor(box.x * perPtX + EDGE));
  const y0 = Math.max(0, Math.floor(box.y * perPtY + EDGE));
  const x1 = Math.min(picture.width, Math.ceil(right(box) * perPtX - EDGE));
  const y1 = Math.min(picture.height, Math.ceil(bottom(box) * perPtY - EDGE));
  return x1 > x0 && y1 > y0 ? { x: x0, y: y0, width: x1 - x0, height: y1 - y0 } : undefined;
}

function imageObject(context: PDFContext, picture: Picture, rect: PixelRect): PDFRef {
  const data = picture.bilevel ? packedBits(picture, rect) : cutSamples(picture, rect);
  const dict = context.obj({
    Type: 'XObject',
    Subtype: 'Image',
    Width: rect.width,
    Height: rect.height,
    ColorSpace: picture.channels === 3 && !picture.bilevel ? 'DeviceRGB' : 'DeviceGray',
    BitsPerComponent: picture.bilevel ? 1 : 8,
    Interpolate: false,
    Filter: 'FlateDecode',
  });
  // Level 3: half the time of the default for a twentieth more bytes.
  return context.register(PDFRawStream.of(dict, deflateSync(data, { level: 3 })));
}

function cutSamples(picture: Picture, rect: PixelRect): Uint8Array {
  const { channels } = picture;
  const row = rect.width * channels;
  const out = new Uint8Array(row * rect.height);
  for (let y = 0; y < rect.height; y++) {
    const from = ((rect.y + y) * picture.width + rect.x) * channels;
    out.set(picture.data.subarray(from, from + row), y * row);
  }
  return out;
}

/** Rows of bits, most significant first, each row from a new byte; 1 is white (DeviceGray). */
function packedBits(picture: Picture, rect: PixelRect): Uint8Array {
  const row = (rect.width + 7) >> 3;
  const out = new Uint8Array(row * rect.height);
  for (let y = 0; y < rect.height; y++) {
    const from = (rect.y + y) * picture.width + rect.x;
    for (let x = 0; x < rect.width; x++) {
      if ((picture.data[(from + x) * picture.channels] ?? 0) >= 128) {
        const at = y * row + (x >> 3);
        out[at] = (out[at] ?? 0) | (128 >> (x & 7));
      }
    }
  }
  return out;
}
