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
  const data = new Uint8Array(from.length);
  const columns = Math.floor(width / CELL);
  const rows = Math.floor(height / CELL);
  // One cell more on the right takes the dots beyond the last whole one, so that the loop has no case of its own for them.
  const counted = new Uint8Array((columns + 1) * (rows + 1));
  const weighed = new Uint16Array(counted.length);
  // Where rows don't begin on words of four bytes, dots are looked at one by one.
  const inWords = width % CELL === 0 && from.byteOffset % 4 === 0 && marks.byteOffset % 4 === 0;
  const [greys, dots] = [wordsOf(inWords ? from : data), wordsOf(inWords ? marks : data)];
  const out = new Int32Array(data.buffer, 0, data.length >> 2);
  for (let y = 0; y < height; y++) {
    const row = (y >> 2) * (columns + 1);
    for (let left = 0, cell = row, first = y * width; left < width; left += CELL, first += CELL, cell++) {
      // Most of a label is paper, and most of the rest black: four dots at once.
      const word = inWords ? (greys[first >> 2] as number) : GREY;
      if ((word === PAPER || word === 0) && dots[first >> 2] === word) {
        out[first >> 2] = word;
        if (word === PAPER) continue;
        counted[cell] = (counted[cell] as number) + CELL;
        weighed[cell] = (weighed[cell] as number) + CELL * 255;
        continue;
      }
      const end = first + Math.min(CELL, width - left);
      let [black, dark] = [0, 0];
      for (let at = first; at < end; at++) {
        const paper = (marks[at] as number) >> 7;
        data[at] = -paper;
        black += 1 - paper;
        dark += 255 - (from[at] as number);
      }
      counted[cell] = (counted[cell] as number) + black;
      weighed[cell] = (weighed[cell] as number) + dark;
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

/** Four white dots as one word, and a word that is neither white nor black. */
const PAPER = -1;
const GREY = 1;

const wordsOf = (data: Uint8Array): Int32Array => new Int32Array(data.buffer, data.byteOffset, data.length >> 2);
