import { bottom, grow, intersection, right, type Box } from '../geometry/box.js';
import { CELL, type PrintedDots } from './printed-dots.js';

/** Clear space kept to ink, to the label and to the page's edge, pt. */
const CLEAR = 3;
/** On a label more: 2.1 mm, so that the number is seen to be no part of it (common practice, no source). */
export const ON_LABEL_CLEAR = 6;
/** Darkness of a cell that counts as ink on a label, grey steps from white: half a step in 255 for each dot is smoothing, eight are a tint. */
const PALE = 8 * CELL * CELL;

/**
 * A rectangle of at least `size` (pt) that is known to be free of ink: as near to the bottom right corner as there is one,
 * bottom before right. Undefined when there is none.
 * @param reach the part of the page that the printer reaches, pt
 * @param keepOut pt on the output page that no number may touch, ink or not: a label's own box; undefined for slips
 */
export function freeNumberBox(
  dots: PrintedDots,
  reach: Box,
  size: { readonly width: number; readonly height: number },
  keepOut: Box | undefined,
): Box | undefined {
  if (keepOut && !roomBeside(keepOut, reach, size)) return undefined;
  const taken = Uint8Array.from(dots.burned);
  if (keepOut) markBox(taken, dots.columns, dots.rows, keepOut, dots.raster.pixelsPerPt);
  return search(dots, taken, reach, size, CLEAR);
}

/** What many printers of sheets can't print at an edge, pt: 1/4 in (common practice, no source). */
const SHEET_EDGE = 18;

/**
 * The same in the margin of a sheet alone: outside everything that is printed on it, so that no number is taken for an entry in a form. Away from
 * the paper's edge where there is room, else as near to it as the printer is said to reach.
 * @param sizes pt, the one wanted most first
 */
export function numberBoxInMargin(
  dots: PrintedDots,
  reach: Box,
  sizes: readonly { readonly width: number; readonly height: number }[],
): Box | undefined {
  const { raster } = dots;
  const page = { x: 0, y: 0, width: raster.width / raster.pixelsPerPt, height: raster.height / raster.pixelsPerPt };
  const inner = intersection(reach, grow(page, -SHEET_EDGE));
  const ink = inkBounds(dots);
  for (const area of inner ? [inner, reach] : [reach]) {
    for (const size of sizes) {
      const box = freeNumberBox(dots, area, size, ink);
      if (box) return box;
    }
  }
  return undefined;
}

/** Around all cells with ink, pt; undefined on a blank page. */
function inkBounds({ burned, columns, rows, raster }: PrintedDots): Box | undefined {
  let [x0, y0, x1, y1] = [columns, rows, -1, -1];
  for (let y = 0, at = 0; y < rows; y++) {
    for (let x = 0; x < columns; x++, at++) {
      if ((burned[at] as number) === 0) continue;
      if (x < x0) x0 = x;
      if (x > x1) x1 = x;
      if (y < y0) y0 = y;
      y1 = y;
    }
  }
  const pt = (cells: number): number => (cells * CELL) / raster.pixelsPerPt;
  return x1 < 0 ? undefined : { x: pt(x0), y: pt(y0), width: pt(x1 + 1 - x0), height: pt(y1 + 1 - y0) };
}

/** The lowest, then rightmost place in `reach` where no cell is taken `clear` pt around a rectangle of this size. */
function search(
  { columns, rows, raster }: PrintedDots,
  taken: Uint8Array,
  reach: Box,
  size: { readonly width: number; readonly height: number },
  clear: number,
): Box | undefined {
  const perPt = raster.pixelsPerPt;
  const cells = (pt: number): number => Math.ceil(((pt + 2 * clear) * perPt) / CELL);
  const needs = { across: cells(size.width), down: cells(size.height) };
  if (needs.across > columns || needs.down > rows) return undefined;
  const sums = sumsOf(taken, columns, rows);
  const cell = (pt: number): number => +((pt * perPt) / CELL).toFixed(3);
  const least = { x: Math.ceil(cell(reach.x)), y: Math.ceil(cell(reach.y)) };
  const most = { x: Math.min(columns, Math.floor(cell(right(reach)))), y: Math.min(rows, Math.floor(cell(bottom(reach)))) };
  for (let y = most.y - needs.down; y >= least.y; y--) {
    for (let x = most.x - needs.across; x >= least.x; x--) {
      if (sumOver(sums, columns, x, y, needs.across, needs.down) > 0) continue;
      const x1 = ((x + needs.across) * CELL) / perPt - clear;
      const y1 = ((y + needs.down) * CELL) / perPt - clear;
      return { x: x1 - size.width, y: y1 - size.height, width: size.width, height: size.height };
    }
  }
  return undefined;
}

/**
 * A rectangle of at least `size` (pt) on a label, as near to its bottom right corner as there is one: ON_LABEL_CLEAR from all ink, pale ink too,
 * from the label's edge and from what is to be kept clear. Undefined when there is none.
 * @param inside the label as far as the printer reaches, pt on the output page
 * @param keepOut its codes with their quiet zones, pt on the output page
 */
export function freeBoxOnLabel(
  dots: PrintedDots,
  inside: Box,
  size: { readonly width: number; readonly height: number },
  keepOut: readonly Box[],
): Box | undefined {
  const { columns, rows } = dots;
  const taken = Uint8Array.from(dots.darkness, (dark, at) => (dark > PALE || (dots.burned[at] as number) > 0 ? 1 : 0));
  for (const box of keepOut) markBox(taken, columns, rows, box, dots.raster.pixelsPerPt);
  return search(dots, taken, inside, size, ON_LABEL_CLEAR);
}

/** Whether any strip beside `box` is wide enough: a label that fills the page leaves nothing to search. */
function roomBeside(box: Box, reach: Box, size: { readonly width: number; readonly height: number }): boolean {
  const across = Math.max(box.x - reach.x, right(reach) - right(box));
  const down = Math.max(box.y - reach.y, bottom(reach) - bottom(box));
  return across >= size.width + 2 * CLEAR || down >= size.height + 2 * CLEAR;
}

function markBox(taken: Uint8Array, columns: number, rows: number, box: Box, perPt: number): void {
  const cell = (pt: number, most: number): number => Math.min(most, Math.max(0, (pt * perPt) / CELL));
  const y1 = Math.ceil(cell(box.y + box.height, rows));
  const x1 = Math.ceil(cell(box.x + box.width, columns));
  for (let y = Math.floor(cell(box.y, rows)); y < y1; y++) {
    taken.fill(1, y * columns + Math.floor(cell(box.x, columns)), y * columns + x1);
  }
}

/** Sums of everything above and to the left, one row and column larger than the cells. */
function sumsOf(taken: Uint8Array, columns: number, rows: number): Uint32Array {
  const sums = new Uint32Array((columns + 1) * (rows + 1));
  for (let y = 0; y < rows; y++) {
    let row = 0;
    for (let x = 0; x < columns; x++) {
      if ((taken[y * columns + x] as number) > 0) row += 1;
      sums[(y + 1) * (columns + 1) + x + 1] = row + (sums[y * (columns + 1) + x + 1] as number);
    }
  }
  return sums;
}

function sumOver(sums: Uint32Array, columns: number, x: number, y: number, across: number, down: number): number {
  const at = (column: number, row: number): number => sums[row * (columns + 1) + column] as number;
  return at(x + across, y + down) - at(x, y + down) - at(x + across, y) + at(x, y);
}
