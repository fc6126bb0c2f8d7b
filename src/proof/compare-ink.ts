import { sum } from '../geometry/sum.js';
import { bottom, intersection, right, type Box } from '../geometry/box.js';
import { applyToBox, applyToPoint, invert, type Matrix } from '../geometry/placement.js';
import { CELL, type PrintedDots } from '../press/printed-dots.js';
import type { GreyRaster } from '../reading/source.js';

/** Side of the squares in which ink is weighed, pt: a line of writing more or less does not empty one. */
const SQUARE = 36;
/** A square with less ink than this share is as good as white: one ruled line at its edge. */
const FAINT = 0.05;
/** A square has kept its ink when the fainter of the two has at least this share of the other's: coarse rasters thicken hairlines. */
const KEPT = 0.35;
/** The page may have less than this share of all ink to be called blank. */
const BLANK = 0.02;

export type InkVerdict =
  | { readonly kind: 'alike' }
  | { readonly kind: 'blank' }
  /** `squares`: how many of them lost or gained their ink. */
  | { readonly kind: 'differs'; readonly squares: number };

/**
 * Weighs the ink of a sheet's region on the source against the ink of what was drawn, square by square on the output page.
 * Coarse on purpose: it finds art that went missing, not a changed letter. Grey is weighed against grey: a pale panel behind an
 * address burns no dot, and that is how it should be.
 * @param source the source page in grey, at any resolution
 * @param output the whole output page
 * @param drawn where the sheet lies on the output page, pt
 * @param except parts of the output page (pt) that are meant to differ
 */
export function compareInk(source: GreyRaster, output: PrintedDots, matrix: Matrix, drawn: Box, except: readonly Box[] = []): InkVerdict {
  const before = weighSource(source, matrix, drawn);
  const after = weighOutput(output, drawn);
  if (sum(before) > 0 && sum(after) < BLANK * sum(before)) return { kind: 'blank' };
  const different = before.filter((ink, index) => {
    const other = after[index] ?? 0;
    if (except.some((box) => intersection(box, squareAt(drawn, index)) !== undefined)) return false;
    return Math.max(ink, other) > FAINT && Math.min(ink, other) < KEPT * Math.max(ink, other);
  });
  return different.length === 0 ? { kind: 'alike' } : { kind: 'differs', squares: different.length };
}

/** Whether anything at all is drawn: for pages that have no source to compare with. */
export function hasInk(output: PrintedDots): boolean {
  return output.burned.some((dots) => dots > 0);
}

const columnsOf = (drawn: Box): number => Math.max(1, Math.round(drawn.width / SQUARE));
const rowsOf = (drawn: Box): number => Math.max(1, Math.round(drawn.height / SQUARE));

/** The square of this number, pt on the output page. */
function squareAt(drawn: Box, index: number): Box {
  const [columns, width, height] = [columnsOf(drawn), drawn.width / columnsOf(drawn), drawn.height / rowsOf(drawn)];
  return { x: drawn.x + (index % columns) * width, y: drawn.y + Math.floor(index / columns) * height, width, height };
}

/** Squares stretch a little so that a whole number of them fills the box: the number of the part, from 0, that each place along it lies in. */
function partsOf(places: Float64Array, start: number, length: number, count: number): Int32Array {
  const parts = new Int32Array(places.length);
  for (let index = 0; index < places.length; index++)
    parts[index] = clamp(Math.floor((((places[index] as number) - start) / length) * count), count);
  return parts;
}

/** Evenly spaced places: `count` steps from the first. */
function placesFrom(first: number, step: number, count: number): Float64Array {
  const places = new Float64Array(count);
  for (let index = 0; index < count; index++) places[index] = first + index * step;
  return places;
}

/** For each place along x the column of squares … */
const acrossOf = (drawn: Box, x: Float64Array): Int32Array => partsOf(x, drawn.x, drawn.width, columnsOf(drawn));
/** … and for each place along y the number of the first square of the row that it lies in. */
const downOf = (drawn: Box, y: Float64Array): Int32Array => {
  const columns = columnsOf(drawn);
  return partsOf(y, drawn.y, drawn.height, rowsOf(drawn)).map((row) => row * columns);
};

/** Share of ink in each square of the drawn box, from the source. */
function weighSource(source: GreyRaster, matrix: Matrix, drawn: Box): number[] {
  const { pixelsPerPt: perPt, origin } = source;
  const box = applyToBox(invert(matrix), drawn);
  const pixel = (pt: number, from: number, most: number): number => Math.min(most, Math.max(0, Math.round((pt - from) * perPt)));
  const x0 = pixel(box.x, origin.x, source.width);
  const y0 = pixel(box.y, origin.y, source.height);
  const width = pixel(right(box), origin.x, source.width) - x0;
  const height = pixel(bottom(box), origin.y, source.height) - y0;
  // Turns are quarters: a column of the source is a column or a row of the output, never both.
  const sideways = Math.abs(matrix[0]) < Math.abs(matrix[1]);
  const first = applyToPoint(matrix, origin.x + (x0 + 0.5) / perPt, origin.y + (y0 + 0.5) / perPt);
  const byColumn = sideways
    ? downOf(drawn, placesFrom(first.y, matrix[1] / perPt, width))
    : acrossOf(drawn, placesFrom(first.x, matrix[0] / perPt, width));
  const byRow = sideways
    ? acrossOf(drawn, placesFrom(first.x, matrix[2] / perPt, height))
    : downOf(drawn, placesFrom(first.y, matrix[3] / perPt, height));
  const scales = new Scales(drawn);
  for (let row = 0; row < height; row++) {
    scales.addRow(byRow[row] as number, byColumn, source.data, (y0 + row) * source.width + x0, width, 255);
  }
  return scales.shares();
}

/** The same from the output page, by its cells. */
function weighOutput(dots: PrintedDots, drawn: Box): number[] {
  const size = CELL / dots.raster.pixelsPerPt;
  const x0 = Math.max(0, Math.round(drawn.x / size));
  const y0 = Math.max(0, Math.round(drawn.y / size));
  const width = Math.min(dots.columns, Math.round(right(drawn) / size)) - x0;
  const height = Math.min(dots.rows, Math.round(bottom(drawn) / size)) - y0;
  const across = acrossOf(drawn, placesFrom((x0 + 0.5) * size, size, width));
  const down = downOf(drawn, placesFrom((y0 + 0.5) * size, size, height));
  const scales = new Scales(drawn);
  for (let row = 0; row < height; row++) {
    scales.addRow(down[row] as number, across, dots.darkness, (y0 + row) * dots.columns + x0, width, 0);
  }
  return scales.shares(CELL * CELL * 255);
}

/** Columns of a row that lie in one part, one after the other: from the first to before `end`. */
interface Stretch {
  readonly part: number;
  readonly first: number;
  readonly end: number;
}

class Scales {
  private readonly ink: Float64Array;
  /** Pixels in each square. */
  private readonly seen: Uint32Array;
  private columns: { readonly of: Int32Array; readonly stretches: readonly Stretch[] } | undefined;

  constructor(drawn: Box) {
    const squares = columnsOf(drawn) * rowsOf(drawn);
    this.ink = new Float64Array(squares);
    this.seen = new Uint32Array(squares);
  }

  /** @param paper the value of white, from which all others differ the same way */
  addRow(rowPart: number, columnParts: Int32Array, data: Uint8Array | Uint16Array, from: number, width: number, paper: number): void {
    if (this.columns?.of !== columnParts) this.columns = { of: columnParts, stretches: stretchesOf(columnParts.subarray(0, width)) };
    for (const { part, first, end } of this.columns.stretches) {
      let total = 0;
      for (let at = from + first; at < from + end; at++) total += data[at] as number;
      this.seen[rowPart + part] = (this.seen[rowPart + part] as number) + (end - first);
      this.ink[rowPart + part] = (this.ink[rowPart + part] as number) + Math.abs(paper * (end - first) - total);
    }
  }

  /** @param full what a pixel full of ink weighs */
  shares(full = 255): number[] {
    const shares: number[] = [];
    for (let square = 0; square < this.ink.length; square++)
      shares.push((this.ink[square] as number) / full / Math.max(1, this.seen[square] as number));
    return shares;
  }
}

function stretchesOf(parts: Int32Array): readonly Stretch[] {
  const stretches: Stretch[] = [];
  for (let first = 0, end = 0; first < parts.length; first = end) {
    const part = parts[first] as number;
    while (end < parts.length && parts[end] === part) end += 1;
    stretches.push({ part, first, end });
  }
  return stretches;
}

const clamp = (index: number, count: number): number => (index < 0 ? 0 : index >= count ? count - 1 : index);
