import { INK_LEVEL } from './ink.js';
import type { GreyRaster } from './source.js';

/** Ink of a page with anything on it is this share of its pixels or more; less is dirt. */
const LEAST = 0.002;
/** Of the pixels of ink this share is as dark as its bars and letters are in their middles … */
const DARK = 0.1;
/** … which is this dark (grey) or darker on any page that was printed and scanned as it should be … */
const FAINT = 100;
/** … and is made so dark otherwise. */
const BLACK = 40;

/** A faint print, or a scan with too little contrast, shows bars and letters as greys, which have no texture: its ink is made as dark as that of others. Any other raster is given back as it is. */
export function fullBlack(raster: GreyRaster): GreyRaster {
  const histogram = new Uint32Array(256);
  for (const grey of raster.data) histogram[grey] = (histogram[grey] as number) + 1;
  const ink = histogram.subarray(0, INK_LEVEL).reduce((sum, count) => sum + count, 0);
  if (ink < LEAST * raster.data.length) return raster;
  let dark = 0;
  for (let seen = histogram[0] as number; seen < DARK * ink; seen += histogram[dark] as number) dark += 1;
  if (dark <= FAINT) return raster;
  const factor = (255 - BLACK) / (255 - dark);
  const darker = Uint8Array.from({ length: 256 }, (_, grey) => Math.max(0, Math.round(255 - (255 - grey) * factor)));
  return { ...raster, data: raster.data.map((grey) => darker[grey] as number) };
}
