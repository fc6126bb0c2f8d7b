import type { GreyRaster } from './source.js';

/** Grey below this is ink on a coarse raster: a hairline is light grey there, not black; a light-grey watermark is no ink. */
export const INK_LEVEL = 200;

const cache = new WeakMap<GreyRaster, Uint32Array>();

/**
 * Where a raster has ink: indices (y × width + x) in rising order. Most of a page is white, so whatever looks at a page
 * goes through these instead of through all pixels. Each raster is looked at once.
 */
export function inkPixels(raster: GreyRaster): Uint32Array {
  let pixels = cache.get(raster);
  if (!pixels) cache.set(raster, (pixels = find(raster.data)));
  return pixels;
}

function find(data: Uint8Array): Uint32Array {
  const found = new Uint32Array(data.length);
  let count = 0;
  const wide = data.byteOffset % 4 === 0 ? new Uint32Array(data.buffer, data.byteOffset, data.length >> 2) : undefined;
  const inspect = (from: number, to: number): void => {
    for (let at = from; at < to; at++) if ((data[at] as number) < INK_LEVEL) found[count++] = at;
  };
  if (!wide) inspect(0, data.length);
  else {
    for (let four = 0; four < wide.length; four++) if (wide[four] !== 0xffffffff) inspect(four * 4, four * 4 + 4);
    inspect(wide.length * 4, data.length);
  }
  return found.slice(0, count);
}
