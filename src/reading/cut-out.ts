import type { Box } from '../geometry/box.js';
import type { GreyRaster } from './source.js';

/** The part of a raster that shows `box` (pt), to whole pixels; what lies beyond the raster is left away. */
export function cutOut({ width, height, data, pixelsPerPt, origin }: GreyRaster, box: Box): GreyRaster {
  const pixel = (pt: number, most: number): number => Math.min(most, Math.max(0, Math.round(pt * pixelsPerPt)));
  const [x0, x1] = [pixel(box.x - origin.x, width), pixel(box.x + box.width - origin.x, width)];
  const [y0, y1] = [pixel(box.y - origin.y, height), pixel(box.y + box.height - origin.y, height)];
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
