import { grow, intersection, type Box } from '../geometry/box.js';
import { hasFinders } from './finder-patterns.js';
import { inkRuns } from './ink.js';
import { hasSolidSides } from './solid-sides.js';
import type { GreyRaster, SourcePage } from './source.js';

/** An area that looks like a code by its texture, found on the coarse ink raster without decoding. */
export interface CodeLikeArea {
  /** Pt on the visible page; to about 2 mm. */
  readonly box: Box;
  readonly kind: 'linear' | 'matrix';
  /** For linear areas, which way the row of bars runs: along x (`level`) or along y (`upright`, a ladder). */
  readonly run: 'level' | 'upright' | undefined;
}

/** Side of a texture cell in pixels of the ink raster: 8 px are 5.3 pt or 1.9 mm. */
const CELL = 8;
/** Mean step of grey between neighbouring pixels from which a cell counts as busy: text stays below in one direction or is patchy. */
const BUSY = 26;
/** The same in both directions for matrix codes, whose modules may be several pixels wide … */
const MATRIX_BUSY = 15;
/** … and which are about half dark everywhere (grey steps from white), where text is a quarter. */
const HALF_DARK = { least: 75, most: 195 };
/** In a linear code the steps along the bars are this much weaker than across. */
const ALONG = 0.34;
/** Smallest linear area: 15 mm long, 5.6 mm high; two cells high would take in large type. */
const LINEAR_CELLS = { long: 8, high: 3 };
/** Smallest matrix area: 3 × 3 cells, about 6 mm. */
const MATRIX_CELLS = 3;
/** Share of a matrix area's cells that must be busy: lines of text leave white rows between them. */
const MATRIX_FILL = 0.8;

/** A dense area is at least this many cells either way (5.6 mm counts in part of the outer cells), and so full. */
const DENSE_CELLS = 3;
const DENSE_FILL = 0.5;
/** No stacked code is longer than this many times its height; a line of heavy type is. */
const DENSE_LONGEST = 7;
/** Words reach so far (pt) beyond their letters' boxes, and cover this share of an area that is writing. */
const BESIDE_WORDS = 2;
const WRITTEN = 0.6;
/** A cell is dense when its mean darkness (grey steps) lies between these: finest codes are an even grey here, solid areas are not. */
const DENSE = { least: 45, most: 235 };
/** A dense cell of nothing but a rule has hardly any steps of grey along it, this share of those across: it joins a frame and the code in it to one area. */
const RULE = 0.1;

const textures = new WeakMap<GreyRaster, Texture>();
const areasOf = new WeakMap<SourcePage, readonly CodeLikeArea[]>();
const texturedOf = new WeakMap<SourcePage, readonly CodeLikeArea[]>();
const denseOf = new WeakMap<SourcePage, readonly Box[]>();

function memo<K extends object, T>(cache: WeakMap<K, T>, of: K, find: () => T): T {
  let known = cache.get(of);
  if (known === undefined) cache.set(of, (known = find()));
  return known;
}

/** Kept no longer than the page's ink. */
const pageTexture = (page: SourcePage): Texture => memo(textures, page.ink(), () => textureOf(page.ink()));

/** The code-like areas of a page, from the top; each page is looked at once. */
export function codeLikeAreas(page: SourcePage): readonly CodeLikeArea[] {
  return memo(areasOf, page, () => {
    const areas = texturedAreas(page);
    const isKnown = (box: Box): boolean => areas.some((area) => intersection(area.box, box) !== undefined);
    const coarse = denseAreas(page).filter((box) => !isKnown(box) && (hasFinders(page.ink(), box) || hasSolidSides(page.ink(), box)));
    return [...areas, ...coarse.map((box): CodeLikeArea => ({ box, kind: 'matrix', run: undefined }))].sort(fromTop);
  });
}

/** Those whose texture shows them: not the matrix codes with modules as large as a cell. */
const texturedAreas = (page: SourcePage): readonly CodeLikeArea[] =>
  memo(texturedOf, page, () => findCodeLike(page.ink(), pageTexture(page)));

const fromTop = (a: CodeLikeArea, b: CodeLikeArea): number => a.box.y - b.box.y || a.box.x - b.box.x;

/**
 * Everything on a page, beside its rows of bars, dense enough to hold a code: all matrix codes, and some heavy type and art
 * besides. Where to read such codes, not a sign that there are any.
 */
export function denseAreas(page: SourcePage): readonly Box[] {
  return memo(denseOf, page, () => {
    const texture = pageTexture(page);
    const raster = page.ink();
    const bars = texturedAreas(page).filter((area) => area.kind === 'linear');
    const cells = texture.cells.slice();
    for (const { box } of bars) clearCells(cells, texture, raster, box, 1);
    const dense = components({ ...texture, cells }, DENSE_CELL);
    const boxOf = ({ x0, y0, x1, y1 }: Component): Box => toPt(raster, x0, y0, x1 + 1, y1 + 1);
    const joined = dense.filter((each) => isWide(each) && (!mayBeCode(each) || isWriting(page, boxOf(each))));
    for (const { box } of joined.length > 0 ? page.words() : []) clearCells(cells, texture, raster, box, 0);
    const kept = withoutLines({ ...texture, cells }, joined);
    const parted = kept ? components({ ...texture, cells: kept }, DENSE_CELL) : [];
    return [...dense, ...parted].filter(mayBeCode).map(boxOf);
  });
}

/** Heavy type is as dense as a code; where the text layer says that there are words, there is none. Rows of bars set in a barcode's font are found as rows. */
export function isWriting(page: SourcePage, area: Box): boolean {
  let written = 0;
  for (const { box } of page.words()) {
    const shared = intersection(grow(box, BESIDE_WORDS), area);
    if (shared) written += shared.width * shared.height;
  }
  return written > WRITTEN * area.width * area.height;
}

function mayBeCode({ x0, y0, x1, y1, cells }: Component): boolean {
  const [w, h] = [x1 - x0 + 1, y1 - y0 + 1];
  return Math.min(w, h) >= DENSE_CELLS && Math.max(w, h) <= DENSE_LONGEST * Math.min(w, h) && cells >= DENSE_FILL * w * h;
}

/** Whether the smallest code has room in a component. */
const isWide = ({ x0, y0, x1, y1 }: Component): boolean => Math.min(x1 - x0, y1 - y0) >= DENSE_CELLS - 1;

/**
 * The dense cells of components that are no code by their shape, or writing, without rules and what is narrower than a code: those beside one join it to them.
 * A cell stays where it belongs to a square of `DENSE_CELLS` a side with at most one gap. Undefined where none does.
 */
function withoutLines({ columns, cells }: Texture, joined: readonly Component[]): Uint8Array | undefined {
  let kept: Uint8Array | undefined;
  for (const { x0, y0, x1, y1 } of joined) {
    for (let y = y0; y <= y1 - DENSE_CELLS + 1; y++) {
      for (let x = x0; x <= x1 - DENSE_CELLS + 1; x++) {
        if (!isDenseSquare(cells, columns, y * columns + x)) continue;
        kept ??= new Uint8Array(cells.length);
        for (let row = y; row < y + DENSE_CELLS; row++) kept.fill(DENSE_CELL, row * columns + x, row * columns + x + DENSE_CELLS);
      }
    }
  }
  return kept;
}

function isDenseSquare(cells: Uint8Array, columns: number, corner: number): boolean {
  let gaps = 0;
  for (let row = corner; row < corner + DENSE_CELLS * columns; row += columns) {
    for (let cell = row; cell < row + DENSE_CELLS; cell++) {
      if (((cells[cell] as number) & (DENSE_CELL | RULE_CELL)) !== DENSE_CELL && ++gaps > 1) return false;
    }
  }
  return true;
}

/** Takes a box, and so many part-filled cells along its edge, out of the cells. */
function clearCells(cells: Uint8Array, { columns, rows }: Texture, { pixelsPerPt, origin }: GreyRaster, box: Box, beside: number): void {
  const k = pixelsPerPt / CELL;
  const from = (at: number, start: number): number => Math.max(0, Math.round((at - start) * k) - beside);
  const to = (at: number, start: number): number => Math.round((at - start) * k) - 1 + beside;
  for (let y = from(box.y, origin.y); y <= Math.min(rows - 1, to(box.y + box.height, origin.y)); y++) {
    for (let x = from(box.x, origin.x); x <= Math.min(columns - 1, to(box.x + box.width, origin.x)); x++) cells[y * columns + x] = 0;
  }
}

/** The code-like areas of any coarse raster (about 108 dpi). */
export function findCodeLike(raster: GreyRaster, grid: Texture = textureOf(raster)): readonly CodeLikeArea[] {
  const areas: CodeLikeArea[] = [];
  for (const kind of [LEVEL, UPRIGHT, MATRIX]) {
    for (const { x0, y0, x1, y1, cells } of components(grid, kind)) {
      const w = x1 - x0 + 1;
      const h = y1 - y0 + 1;
      if (kind === MATRIX) {
        if (Math.min(w, h) < MATRIX_CELLS || cells < MATRIX_FILL * w * h) continue;
      } else {
        const [long, high] = kind === LEVEL ? [w, h] : [h, w];
        if (long < LINEAR_CELLS.long || high < LINEAR_CELLS.high || cells < 0.6 * w * h) continue;
      }
      areas.push({
        box: toPt(raster, x0, y0, x1 + 1, y1 + 1),
        kind: kind === MATRIX ? 'matrix' : 'linear',
        run: kind === MATRIX ? undefined : kind === LEVEL ? 'level' : 'upright',
      });
    }
  }
  return areas.sort(fromTop);
}

/** What a cell's texture is, as bits: it may be dense beside being of one of the other kinds. */
const [LEVEL, UPRIGHT, MATRIX, DENSE_CELL, RULE_CELL, SEEN] = [1, 2, 4, 8, 16, 32];

export interface Texture {
  readonly columns: number;
  readonly rows: number;
  /** Of each cell, row by row, the sum of what it is: a row of bars `LEVEL` or `UPRIGHT`, `MATRIX`, or `DENSE_CELL` enough to be part of a matrix code, perhaps nothing but a `RULE_CELL`. */
  readonly cells: Uint8Array;
}

function textureOf(raster: GreyRaster): Texture {
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
  return cells.map((all, cell) => {
    const run = all & (LEVEL | UPRIGHT);
    if (run === 0) return all;
    const [at, count, step] = run === LEVEL ? [cell % columns, columns, 1] : [Math.floor(cell / columns), rows, columns];
    let beside = 0;
    for (let away = -2; away <= 2; away++) {
      if (at + away >= 0 && at + away < count && ((cells[cell + away * step] as number) & run) !== 0) beside += 1;
    }
    return beside >= 3 ? all : all & ~run;
  });
}

/** What a cell is whose first pixel is at `corner`; the last pixel of the raster is its own neighbour. */
function look(data: Uint8Array, width: number, corner: number): number {
  let across = 0;
  let down = 0;
  let dark = 0;
  const last = data.length - 1;
  for (let start = corner; start < corner + CELL * width; start += width) {
    for (let at = start; at < start + CELL; at++) {
      const here = data[at] as number;
      dark += 255 - here;
      across += Math.abs(here - (data[at < last ? at + 1 : at] as number));
      down += Math.abs(here - (data[at + width <= last ? at + width : at] as number));
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

interface Component {
  x0: number;
  y0: number;
  x1: number;
  y1: number;
  cells: number;
}

/** Groups of cells of one kind that touch by a side; in bar codes one quiet cell may be jumped along the row, in dense areas either way. */
function components({ columns, rows, cells }: Texture, kind: number): Component[] {
  const open = cells.map((each) => ((each & kind) !== 0 ? 1 : 0));
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

function toPt({ pixelsPerPt, origin }: GreyRaster, x0: number, y0: number, x1: number, y1: number): Box {
  const k = CELL / pixelsPerPt;
  return { x: origin.x + x0 * k, y: origin.y + y0 * k, width: (x1 - x0) * k, height: (y1 - y0) * k };
}
