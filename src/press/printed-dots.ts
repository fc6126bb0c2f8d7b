import { blackAndWhite } from '../reading/black-and-white.js';
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
  const marks = burnt?.data ?? from;
  const columns = Math.floor(width / CELL);
  const rows = Math.floor(height / CELL);
  const data = blackAndWhite(marks);
  const burned = new Uint8Array(columns * rows);
  const darkness = new Uint16Array(columns * rows);
  const [greys, dots] = [wordsOf(from, width, rows), wordsOf(data, width, rows)];
  for (let row = 0, cell = 0; row < rows; row++) {
    for (let at = row * CELL * columns, end = at + columns; at < end; at++, cell++) {
      const [grey0, grey1] = [greys[at] as number, greys[at + columns] as number];
      const [grey2, grey3] = [greys[at + 2 * columns] as number, greys[at + 3 * columns] as number];
      const [dots0, dots1] = [dots[at] as number, dots[at + columns] as number];
      const [dots2, dots3] = [dots[at + 2 * columns] as number, dots[at + 3 * columns] as number];
      // Most of a label is paper.
      if ((grey0 & grey1 & grey2 & grey3 & dots0 & dots1 & dots2 & dots3) === PAPER) continue;
      burned[cell] = CELL * CELL - sumOfBytes((dots0 & ONES) + (dots1 & ONES) + (dots2 & ONES) + (dots3 & ONES));
      darkness[cell] = CELL * CELL * 255 - sumOfBytes(grey0) - sumOfBytes(grey1) - sumOfBytes(grey2) - sumOfBytes(grey3);
    }
  }
  return { raster: { ...grey, data }, columns, rows, burned, darkness };
}

/** Four white dots as one word, and the lowest bit of each of its bytes. */
const PAPER = -1;
const ONES = 0x01010101;

/** The rows of whole cells, four dots a word; copied where they don't begin on words. */
function wordsOf(data: Uint8Array, width: number, rows: number): Int32Array {
  const columns = Math.floor(width / CELL);
  const words = columns * rows * CELL;
  if (width % CELL === 0 && data.byteOffset % 4 === 0) return new Int32Array(data.buffer, data.byteOffset, words);
  const copy = new Uint8Array(words * 4);
  for (let y = 0; y < rows * CELL; y++) copy.set(data.subarray(y * width, y * width + columns * CELL), y * columns * CELL);
  return new Int32Array(copy.buffer);
}

function sumOfBytes(word: number): number {
  const pairs = (word & 0xff00ff) + ((word >>> 8) & 0xff00ff);
  return (pairs & 0xffff) + (pairs >>> 16);
}
