import type { GreyRaster } from './source.js';

/** Grey below this is ink on a coarse raster: a hairline is light grey there, not black; a light-grey watermark is no ink. */
export const INK_LEVEL = 200;

/** Unbroken ink along the rows of a raster, from the top, in each row from the left. */
export interface InkRuns {
  readonly count: number;
  /** Of each run its row, its first column and the column after its last, one run after the other. */
  readonly at: Int32Array;
}

const cache = new WeakMap<GreyRaster, InkRuns>();

/**
 * Where a raster has ink. Most of a page is white, so whatever looks at a page goes through these instead of through all
 * pixels. Each raster is looked at once.
 */
export function inkRuns(raster: GreyRaster): InkRuns {
  let runs = cache.get(raster);
  if (!runs) cache.set(raster, (runs = find(raster)));
  return runs;
}

/** Grows to what the largest raster of this thread needed. */
let scratch = new Int32Array(3 * 8192);

function find({ width, height, data }: GreyRaster): InkRuns {
  const wide = data.byteOffset % 4 === 0 ? new Uint32Array(data.buffer, data.byteOffset, data.length >> 2) : undefined;
  let at = 0;
  for (let y = 0, start = 0; y < height; y++, start += width) {
    const end = start + width;
    // A row has at most every second pixel as a run of its own.
    if (at + 3 * (width + 1) > scratch.length) scratch = larger(scratch, at + 3 * (width + 1));
    for (let pixel = start; pixel < end;) {
      if (wide && (pixel & 3) === 0) {
        const before = pixel;
        while (pixel < end && wide[pixel >> 2] === WHITE) pixel += 4;
        if (pixel !== before) continue;
      }
      if ((data[pixel] as number) >= INK_LEVEL) {
        pixel += 1;
        continue;
      }
      const from = pixel;
      while (pixel < end && (data[pixel] as number) < INK_LEVEL) pixel += 1;
      scratch[at] = y;
      scratch[at + 1] = from - start;
      scratch[at + 2] = pixel - start;
      at += 3;
    }
  }
  return { count: at / 3, at: scratch.slice(0, at) };
}

/** Four white pixels in one. */
const WHITE = 0xffffffff;

function larger(array: Int32Array, least: number): Int32Array<ArrayBuffer> {
  const grown = new Int32Array(Math.max(2 * array.length, least));
  grown.set(array);
  return grown;
}
