import { bottom, right, type Box } from '../geometry/box.js';
import type { GreyRaster } from './source.js';

/** The whole pixels of a raster that show a box (pt): from the first column and row to before the last ones; what lies beyond the raster is left away. */
export function pixelsOf(
  { width, height, pixelsPerPt, origin }: GreyRaster,
  box: Box,
): { readonly x0: number; readonly y0: number; readonly x1: number; readonly y1: number } {
  const pixel = (pt: number, most: number): number => Math.min(most, Math.max(0, Math.round(pt * pixelsPerPt)));
  return {
    x0: pixel(box.x - origin.x, width),
    y0: pixel(box.y - origin.y, height),
    x1: pixel(right(box) - origin.x, width),
    y1: pixel(bottom(box) - origin.y, height),
  };
}

/** The part of a raster that shows `box` (pt), to whole pixels; what lies beyond the raster is left away. */
export function cutOut(raster: GreyRaster, box: Box): GreyRaster {
  const { width, data, pixelsPerPt, origin } = raster;
  const { x0, y0, x1, y1 } = pixelsOf(raster, box);
  const piece = new Uint8Array(Math.max(0, (x1 - x0) * (y1 - y0)));
  for (let y = y0; y < y1; y++) piece.set(data.subarray(y * width + x0, y * width + x1), (y - y0) * (x1 - x0));
  return {
    width: x1 - x0,
    height: y1 - y0,
    data: piece,
    pixelsPerPt,
    origin: { x: origin.x + x0 / pixelsPerPt, y: origin.y + y0 / pixelsPerPt },
  };
}
