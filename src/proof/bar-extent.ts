import type { GreyRaster } from '../reading/source.js';

/** Pixels of a row of bars that runs along x: everything in whole pixels of the raster. */
export interface BarExtent {
  /** First row of the bars, and the row after their last. */
  readonly from: number;
  readonly to: number;
  /** Clear columns beside the first and the last bar, over the whole height of the bars; at most as many as the raster has. */
  readonly before: number;
  readonly after: number;
}

/** Darker than this is ink. */
const HALF = 128;
/** A row still shows the same bars when no more of its pixels differ than this share: edges of a scan are rough. */
const ROUGH = 0.06;

/**
 * How high a row of bars stands, and how much paper is clear beside it.
 * @param raster in which the row runs along x
 * @param start column of the first bar's outer edge, `end` that after the last bar's
 * @param row any row through all bars
 */
export function barExtent(raster: GreyRaster, start: number, end: number, row: number): BarExtent {
  const { width, height } = raster;
  const [x0, x1] = [Math.max(0, Math.round(start)), Math.min(width, Math.round(end))];
  const most = ROUGH * (x1 - x0);
  let from = row;
  while (from > 0 && unlike(raster, row, from - 1, x0, x1) <= most) from -= 1;
  let to = row + 1;
  while (to < height && unlike(raster, row, to, x0, x1) <= most) to += 1;
  // The edge's own pixel is half ink.
  let before = 0;
  while (x0 - 1 - before >= 0 && (before === 0 || isClear(raster, x0 - 1 - before, from, to))) before += 1;
  let after = 0;
  while (x1 + after < width && (after === 0 || isClear(raster, x1 + after, from, to))) after += 1;
  return { from, to, before, after };
}

/** How many pixels of two rows differ between two columns. */
function unlike({ width, data }: GreyRaster, row: number, other: number, x0: number, x1: number): number {
  let differ = 0;
  for (let x = x0, a = row * width + x0, b = other * width + x0; x < x1; x++, a++, b++) {
    if ((data[a] as number) < HALF !== (data[b] as number) < HALF) differ += 1;
  }
  return differ;
}

function isClear({ width, data }: GreyRaster, x: number, from: number, to: number): boolean {
  for (let y = from, at = from * width + x; y < to; y++, at += width) if ((data[at] as number) < HALF) return false;
  return true;
}
