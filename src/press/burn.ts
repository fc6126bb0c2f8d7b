import { bottom, right, type Box } from '../geometry/box.js';
import type { GreyRaster } from '../reading/source.js';

/** Side of the squares in which the lightest and the darkest dot are looked up. */
const SQUARE = 4;
/** Less difference than this in and about a square is even tone or nothing, no edge of type or a line. */
const EDGE = 72;
/** The same where there is small type: a screen would take it apart. */
const EDGE_OF_TYPE = 24;
/** Lighter than this is paper (a scan's noise), darker than `FULL` is black. */
const PAPER = 235;
const FULL = 40;
const HALF = 128;
/** Paper that isn't white: the commonest tone of the page, where it is lighter than this, and what is no more than so much darker. */
const DARKEST_PAPER = 176;
const PAPER_NOISE = 20;
/** The commonest tone is looked up on every so manieth dot of every so manieth row, in bands of so many grey steps: paper is never quite even. */
const SAMPLED = 5;
const BAND = 16;

/**
 * A clustered-dot screen of 4 × 4 (common practice, no source): dots of one square grow together, because a thermal head prints single dots badly.
 * From the middle outwards; values 0 to 15.
 */
const SCREEN = [12, 5, 6, 13, 4, 0, 1, 7, 11, 3, 2, 8, 15, 10, 9, 14];

/**
 * A page as the printer's head burns it: type, lines and codes by the half way between ink and paper about them, so that grey type comes out as type;
 * even tone (a panel, a photograph) in a screen of dots rather than lost. Black on white comes out as a threshold at half grey would have it. The page's own
 * tone, as of a scan of coloured paper, is paper.
 * 0 is a burned dot, 255 is paper. The same page gives the same dots.
 * @param plain where there is no screen and half grey is the limit, pt on the raster's page: codes with the clear space about them
 * @param type where there is small type, which comes out solid however pale it is
 */
export function burn(grey: GreyRaster, plain: readonly Box[] = [], type: readonly Box[] = []): GreyRaster {
  const { width, height, data } = grey;
  const paper = paperOf(grey);
  const [columns, rows] = [Math.ceil(width / SQUARE), Math.ceil(height / SQUARE)];
  const { low, high } = extremes(grey, columns, rows);
  const out = new Uint8Array(data.length).fill(255);
  const kinds = new Uint8Array(columns * rows);
  markSquares(kinds, IN_CODE, plain, grey, columns);
  markSquares(kinds, IN_TYPE, type, grey, columns);
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++) {
      // Nine squares of ten are bare paper.
      if ((low[row * columns + column] as number) >= paper) continue;
      const [dark, light] = around(low, high, columns, rows, column, row);
      const y1 = Math.min(height, (row + 1) * SQUARE);
      const x1 = Math.min(width, (column + 1) * SQUARE);
      const half = limit(kinds[row * columns + column] as number, dark, light);
      for (let y = row * SQUARE; y < y1; y++) {
        for (let x = column * SQUARE, at = y * width + x; x < x1; x++, at++) {
          if (isBurned(data[at] as number, half, paper, x, y)) out[at] = 0;
        }
      }
    }
  }
  return { ...grey, data: out };
}

/** What a square and its neighbours hold, as far as it was told. */
const IN_CODE = 1;
const IN_TYPE = 2;

/** Below which tone a dot is burned; undefined where a screen tells. */
function limit(kind: number, dark: number, light: number): number | undefined {
  const between = light - dark >= (kind === IN_TYPE ? EDGE_OF_TYPE : EDGE) ? (light + dark) / 2 : undefined;
  return kind === IN_CODE ? Math.min(HALF, between ?? HALF) : between;
}

function isBurned(value: number, half: number | undefined, paper: number, x: number, y: number): boolean {
  if (value >= paper) return false;
  if (half !== undefined) return value < half;
  if (value <= FULL) return true;
  return 255 - value > (((SCREEN[(y & 3) * 4 + (x & 3)] as number) + 0.5) / 16) * 255;
}

/** From which tone on a dot is paper. */
function paperOf({ width, height, data }: GreyRaster): number {
  const counts = new Uint32Array(256 / BAND);
  const sums = new Uint32Array(counts.length);
  for (let y = 0; y < height; y += SAMPLED) {
    for (let x = 0, at = y * width; x < width; x += SAMPLED, at += SAMPLED) {
      const tone = data[at] as number;
      const band = Math.floor(tone / BAND);
      counts[band] = (counts[band] as number) + 1;
      sums[band] = (sums[band] as number) + tone;
    }
  }
  const band = counts.indexOf(Math.max(...counts));
  const commonest = (sums[band] as number) / (counts[band] as number);
  return commonest < DARKEST_PAPER ? PAPER : Math.min(PAPER, commonest - PAPER_NOISE);
}

/** Marks each square that reaches into one of the boxes. */
function markSquares(squares: Uint8Array, kind: number, boxes: readonly Box[], { pixelsPerPt, origin }: GreyRaster, columns: number): void {
  const rows = squares.length / columns;
  const square = (pt: number, from: number, most: number): number =>
    Math.min(most, Math.max(0, Math.floor(((pt - from) * pixelsPerPt) / SQUARE)));
  for (const box of boxes) {
    const [x0, x1] = [square(box.x, origin.x, columns), square(right(box), origin.x, columns - 1)];
    const [y0, y1] = [square(box.y, origin.y, rows), square(bottom(box), origin.y, rows - 1)];
    for (let row = y0; row <= y1; row++) squares.fill(kind, row * columns + x0, row * columns + x1 + 1);
  }
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
