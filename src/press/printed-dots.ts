import type { GreyRaster } from '../reading/source.js';

/** Side of the squares in which black dots are counted, dots. */
export const CELL = 4;

/** An output page as the printer's head burns it. */
export interface PrintedDots {
  /** 0 for a burned dot, 255 for paper. */
  readonly raster: GreyRaster;
  /** Whole cells across and down; dots beyond the last whole cell are in the raster only. */
  readonly columns: number;
  readonly rows: number;
  /** Burned dots in each cell, 0 to 16, row by row from the top. */
  readonly burned: Uint8Array;
  /** Darkness of each cell before any dot was made black or white: grey steps from white, 0 to 16 × 255. */
  readonly darkness: Uint16Array;
}

/**
 * Every dot black or white, counted by cells in the same pass: at half grey, as a driver for vector pages does it, or as `burnt` has them.
 */
export function printedDots(grey: GreyRaster, burnt?: GreyRaster): PrintedDots {
  const { width, height } = grey;
  const from = grey.data;
  const marks = burnt?.data;
  const data = new Uint8Array(from.length);
  const columns = Math.floor(width / CELL);
  const rows = Math.floor(height / CELL);
  // One cell more on the right takes the dots beyond the last whole one, so that the loop has no case of its own for them.
  const counted = new Uint8Array((columns + 1) * (rows + 1));
  const weighed = new Uint16Array(counted.length);
  for (let y = 0, at = 0; y < height; y++) {
    const row = (y >> 2) * (columns + 1);
    for (let x = 0; x < width; x++, at++) {
      const value = from[at] as number;
      const paper = (marks === undefined ? value : (marks[at] as number)) >> 7;
      const cell = row + (x >> 2);
      data[at] = -paper;
      counted[cell] = (counted[cell] as number) + 1 - paper;
      weighed[cell] = (weighed[cell] as number) + 255 - value;
    }
  }
  const burned = new Uint8Array(columns * rows);
  const darkness = new Uint16Array(columns * rows);
  for (let row = 0; row < rows; row++) {
    const start = row * (columns + 1);
    burned.set(counted.subarray(start, start + columns), row * columns);
    darkness.set(weighed.subarray(start, start + columns), row * columns);
  }
  return { raster: { ...grey, data }, columns, rows, burned, darkness };
}
