import type { GreyRaster } from './source.js';

/** Side of the tiles that are gone through one after the other, pixels: written columns then stay in the processor's cache. */
const TILE = 32;

/** A raster's data with x and y changed for each other: what was a row from the left becomes a column from the top. One byte a pixel, row by row. */
export function transposedData(data: Uint8Array, width: number, height: number): Uint8Array {
  const changed = new Uint8Array(width * height);
  for (let top = 0; top < height; top += TILE) {
    const bottom = Math.min(height, top + TILE);
    for (let left = 0; left < width; left += TILE) {
      const right = Math.min(width, left + TILE);
      for (let x = left; x < right; x++) {
        for (let y = top, from = top * width + x, to = x * height + top; y < bottom; y++, from += width, to++)
          changed[to] = data[from] as number;
      }
    }
  }
  return changed;
}

/** A raster with x and y changed for each other: a row of bars that runs along y then runs along x, in the same direction. */
export function transposed({ width, height, data, pixelsPerPt, origin }: GreyRaster): GreyRaster {
  return { width: height, height: width, data: transposedData(data, width, height), pixelsPerPt, origin: { x: origin.y, y: origin.x } };
}
