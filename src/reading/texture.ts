import type { Box } from '../geometry/box.js';
import { inkRuns } from './ink.js';
import type { GreyRaster } from './source.js';

/** Side of a texture cell in pixels of the ink raster: 8 px are 5.3 pt or 1.9 mm. */
export const CELL = 8;
/** Mean step of grey between neighbouring pixels from which a cell counts as busy: text stays below in one direction or is patchy. */
const BUSY = 26;
/** The same in both directions for matrix codes, whose modules may be several pixels wide … */
const MATRIX_BUSY = 15;
/** … and which are about half dark everywhere (grey steps from white), where text is a quarter. */
const HALF_DARK = { least: 75, most: 195 };
/** In a linear code the steps along the bars are this much weaker than across. */
const ALONG = 0.34;
/** A cell is dense when its mean darkness (grey steps) lies between these: finest codes are an even grey here, solid areas are not. */
const DENSE = { least: 45, most: 235 };
/** A dense cell of nothing but a rule has hardly any steps of grey along it, this share of those across: it joins a frame and the code in it to one area. */
const RULE = 0.1;

/** What a cell's texture is, as bits: it may be dense beside being of one of the other kinds. */
export const [LEVEL, UPRIGHT, MATRIX, DENSE_CELL, RULE_CELL, SEEN] = [1, 2, 4, 8, 16, 32];

export interface Texture {
  readonly columns: number;
  readonly rows: number;
  /** Of each cell, row by row, the sum of what it is: a row of bars `LEVEL` or `UPRIGHT`, `MATRIX`, or `DENSE_CELL` enough to be part of a matrix code, perhaps nothing but a `RULE_CELL`. */
  readonly cells: Uint8Array;
}

/** The cells of a coarse raster (about 108 dpi), each looked at where it has ink. */
export function textureOf(raster: GreyRaster): Texture {
  const { width, height, data } = raster;
  const columns = Math.floor(width / CELL);
  const rows = Math.floor(height / CELL);
  const cells = new Uint8Array(columns * rows);
  const { count, at } = inkRuns(raster);
  for (let run = 0; run < 3 * count; run += 3) {
    const row = Math.floor((at[run] as number) / CELL);
    if (row >= rows) break;
    const to = Math.min(columns * CELL, at[run + 2] as number);
    for (let column = Math.floor((at[run + 1] as number) / CELL); column * CELL < to; column++) {
      const cell = row * columns + column;
      if (cells[cell] === 0) cells[cell] = SEEN | look(data, width, row * CELL * width + column * CELL);
    }
  }
  return { columns, rows, cells: withoutRules(cells, columns, rows) };
}

/** A single ruled line has the texture of bars, too; bars have more of them beside it: three of five cells across. */
function withoutRules(cells: Uint8Array, columns: number, rows: number): Uint8Array {
  const kept = cells.slice();
  for (let cell = 0; cell < cells.length; cell++) {
    const run = (cells[cell] as number) & (LEVEL | UPRIGHT);
    if (run === 0) continue;
    const [at, count, step] = run === LEVEL ? [cell % columns, columns, 1] : [Math.floor(cell / columns), rows, columns];
    let beside = 0;
    for (let away = -2; away <= 2; away++) {
      if (at + away >= 0 && at + away < count && ((cells[cell + away * step] as number) & run) !== 0) beside += 1;
    }
    if (beside < 3) kept[cell] = (cells[cell] as number) & ~run;
  }
  return kept;
}

/** What a cell is whose first pixel is at `corner`; the last pixel of the raster is its own neighbour. */
function look(data: Uint8Array, width: number, corner: number): number {
  let across = 0;
  let down = 0;
  let dark = 0;
  const last = data.length - 1;
  for (let start = corner; start < corner + CELL * width; start += width) {
    let here = data[start] as number;
    for (let at = start; at < start + CELL; at++) {
      const next = data[Math.min(at + 1, last)] as number;
      dark += 255 - here;
      across += Math.abs(here - next);
      down += Math.abs(here - (at + width > last ? here : (data[at + width] as number)));
      here = next;
    }
  }
  const cell = CELL * CELL;
  const rule = Math.min(across, down) < RULE * Math.max(across, down) ? RULE_CELL : 0;
  const dense = dark >= DENSE.least * cell && dark <= DENSE.most * cell ? DENSE_CELL | rule : 0;
  if (across >= BUSY * cell && down < ALONG * across) return LEVEL | dense;
  if (down >= BUSY * cell && across < ALONG * down) return UPRIGHT | dense;
  const half = dark >= HALF_DARK.least * cell && dark <= HALF_DARK.most * cell;
  return (half && across >= MATRIX_BUSY * cell && down >= MATRIX_BUSY * cell ? MATRIX : 0) | dense;
}

/** Cells that belong together: the first and the last column and row, and how many they are. */
export interface Component {
  x0: number;
  y0: number;
  x1: number;
  y1: number;
  cells: number;
}

/** Groups of cells of one kind that touch by a side; in bar codes one quiet cell may be jumped along the row, in dense areas either way. */
export function components({ columns, rows, cells }: Texture, kind: number): Component[] {
  const open = new Uint8Array(cells.length);
  for (let cell = 0; cell < cells.length; cell++) if (((cells[cell] as number) & kind) !== 0) open[cell] = 1;
  const found: Component[] = [];
  const jumpX = kind === LEVEL || kind === DENSE_CELL ? 2 : 1;
  const jumpY = kind === UPRIGHT || kind === DENSE_CELL ? 2 : 1;
  const stack: number[] = [];
  for (let start = open.indexOf(1); start !== -1; start = open.indexOf(1, start + 1)) {
    const component: Component = { x0: columns, y0: rows, x1: 0, y1: 0, cells: 0 };
    stack.push(start);
    open[start] = 0;
    for (let cell = stack.pop(); cell !== undefined; cell = stack.pop()) {
      const x = cell % columns;
      const y = Math.floor(cell / columns);
      component.x0 = Math.min(component.x0, x);
      component.x1 = Math.max(component.x1, x);
      component.y0 = Math.min(component.y0, y);
      component.y1 = Math.max(component.y1, y);
      component.cells += 1;
      for (let nx = Math.max(0, x - jumpX); nx <= Math.min(columns - 1, x + jumpX); nx++) take(open, y * columns + nx, stack);
      for (let ny = Math.max(0, y - jumpY); ny <= Math.min(rows - 1, y + jumpY); ny++) take(open, ny * columns + x, stack);
    }
    found.push(component);
  }
  return found;
}

function take(open: Uint8Array, cell: number, stack: number[]): void {
  if (open[cell] === 0) return;
  open[cell] = 0;
  stack.push(cell);
}

/** From cells of a raster to pt on its page. */
export function toPt({ pixelsPerPt, origin }: GreyRaster, x0: number, y0: number, x1: number, y1: number): Box {
  const k = CELL / pixelsPerPt;
  return { x: origin.x + x0 * k, y: origin.y + y0 * k, width: (x1 - x0) * k, height: (y1 - y0) * k };
}
