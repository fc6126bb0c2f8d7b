import type { GreyRaster } from '../reading/source.js';

/** Side of the squares in which the lightest and the darkest dot are looked up. */
const SQUARE = 4;
/** Less difference than this in and about a square is even tone or nothing, no edge of type or a line. */
const EDGE = 72;
/** Lighter than this is paper (a scan's noise), darker than `FULL` is black. */
const PAPER = 235;
const FULL = 40;

/**
 * A clustered-dot screen of 4 × 4 (common practice, no source): dots of one square grow together, because a thermal head prints single dots badly.
 * From the middle outwards; values 0 to 15.
 */
const SCREEN = [12, 5, 6, 13, 4, 0, 1, 7, 11, 3, 2, 8, 15, 10, 9, 14];

/**
 * A page as the printer's head burns it: type, lines and codes by the half way between ink and paper about them, so that grey type comes out as type;
 * even tone (a panel, a photograph) in a screen of dots rather than lost. Black on white comes out as a threshold at half grey would have it.
 * 0 is a burned dot, 255 is paper. The same page gives the same dots.
 */
export function burn(grey: GreyRaster): GreyRaster {
  const { width, height, data } = grey;
  const [columns, rows] = [Math.ceil(width / SQUARE), Math.ceil(height / SQUARE)];
  const { low, high } = extremes(grey, columns, rows);
  const out = new Uint8Array(data.length).fill(255);
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++) {
      // Nine squares of ten are bare paper.
      if ((low[row * columns + column] as number) >= PAPER) continue;
      const [dark, light] = around(low, high, columns, rows, column, row);
      const y1 = Math.min(height, (row + 1) * SQUARE);
      const x1 = Math.min(width, (column + 1) * SQUARE);
      const half = light - dark >= EDGE ? (light + dark) / 2 : undefined;
      for (let y = row * SQUARE; y < y1; y++) {
        for (let x = column * SQUARE, at = y * width + x; x < x1; x++, at++) {
          if (isBurned(data[at] as number, half, x, y)) out[at] = 0;
        }
      }
    }
  }
  return { ...grey, data: out };
}

function isBurned(value: number, half: number | undefined, x: number, y: number): boolean {
  if (half !== undefined) return value < half;
  if (value >= PAPER) return false;
  if (value <= FULL) return true;
  return 255 - value > (((SCREEN[(y & 3) * 4 + (x & 3)] as number) + 0.5) / 16) * 255;
}

interface Extremes {
  readonly low: Uint8Array;
  readonly high: Uint8Array;
}

function extremes({ width, height, data }: GreyRaster, columns: number, rows: number): Extremes {
  const low = new Uint8Array(columns * rows).fill(255);
  const high = new Uint8Array(columns * rows);
  for (let y = 0, at = 0; y < height; y++) {
    const row = (y >> 2) * columns;
    for (let x = 0; x < width; x++, at++) {
      const value = data[at] as number;
      const square = row + (x >> 2);
      if (value < (low[square] as number)) low[square] = value;
      if (value > (high[square] as number)) high[square] = value;
    }
  }
  return { low, high };
}

/** Darkest and lightest dot of a square and its eight neighbours. */
function around(low: Uint8Array, high: Uint8Array, columns: number, rows: number, column: number, row: number): [number, number] {
  let [dark, light] = [255, 0];
  for (let y = Math.max(0, row - 1); y <= Math.min(rows - 1, row + 1); y++) {
    for (let x = Math.max(0, column - 1); x <= Math.min(columns - 1, column + 1); x++) {
      const at = y * columns + x;
      if ((low[at] as number) < dark) dark = low[at] as number;
      if ((high[at] as number) > light) light = high[at] as number;
    }
  }
  return [dark, light];
}
