import { bottom, grow, intersection, right, type Box } from '../geometry/box.js';
import { qrByFinders } from './finder-patterns.js';
import { matrixBySides } from './solid-sides.js';
import type { GreyRaster, SourcePage } from './source.js';
import { CELL, components, DENSE_CELL, RULE_CELL, textureOf, toPt, type Component, type Texture } from './texture.js';
import { memo, pageTexture, texturedAreas } from './textured-areas.js';

/** A dense area is at least this many cells either way (5.6 mm counts in part of the outer cells), and so full. */
const DENSE_CELLS = 3;
const DENSE_FILL = 0.5;
/** No stacked code is longer than this many times its height; a line of heavy type is. */
const DENSE_LONGEST = 7;
/** Words reach so far (pt) beyond their letters' boxes, and cover this share of an area that is writing. */
const BESIDE_WORDS = 2;
const WRITTEN = 0.6;
/** Where no code is seen, there may be a matrix code with modules larger than cells: it is looked for on a raster so many times as coarse. */
const COARSER = 3;

interface Dense {
  readonly all: readonly Box[];
  /** The codes among them by their finder patterns, which no texture shows. */
  readonly patterned: readonly Box[];
}
const denseOf = new WeakMap<SourcePage, Dense>();

/**
 * Everything on a page, beside its rows of bars, dense enough to hold a code: all matrix codes, and some heavy type and art
 * besides. Where to read such codes, not a sign that there are any.
 */
export const denseAreas = (page: SourcePage): readonly Box[] => lookedAt(page).all;

/** The matrix codes among them by their finder patterns, to half a module: those with modules too large for their texture to show it. */
export const patternedAreas = (page: SourcePage): readonly Box[] => lookedAt(page).patterned;

const lookedAt = (page: SourcePage): Dense =>
  memo(denseOf, page, () => {
    const known = texturedAreas(page);
    const all = denseOn(page, page.ink(), pageTexture(page));
    const patterned = all.flatMap((box) => (known.some((area) => intersection(area.box, box)) ? [] : (patternIn(page, box) ?? [])));
    if (known.length + patterned.length > 0) return { all, patterned };
    const coarse = coarser(page.ink());
    // The edges of an area are off by half a cell.
    const grown = denseOn(page, coarse, textureOf(coarse)).map((box) => grow(box, CELL / coarse.pixelsPerPt / 2));
    const large = grown.flatMap((box) => patternIn(page, box) ?? []);
    return { all: [...all, ...large], patterned: large };
  });

/** The QR code or the square Data Matrix in an area, with modules of two pixels or more of the page's ink. */
const patternIn = (page: SourcePage, box: Box): Box | undefined => qrByFinders(page.ink(), box) ?? matrixBySides(page.ink(), box);

/** Each pixel the mean of a square of them. */
function coarser({ width, height, data, pixelsPerPt, origin }: GreyRaster): GreyRaster {
  const [columns, rows] = [Math.floor(width / COARSER), Math.floor(height / COARSER)];
  const means = new Uint8Array(columns * rows);
  for (let y = 0; y < rows; y++) {
    for (let x = 0; x < columns; x++) {
      let sum = 0;
      for (let row = y * COARSER; row < (y + 1) * COARSER; row++)
        for (let at = row * width + x * COARSER; at < row * width + (x + 1) * COARSER; at++) sum += data[at] as number;
      means[y * columns + x] = Math.round(sum / COARSER ** 2);
    }
  }
  return { width: columns, height: rows, data: means, pixelsPerPt: pixelsPerPt / COARSER, origin };
}

function denseOn(page: SourcePage, raster: GreyRaster, texture: Texture): readonly Box[] {
  const bars = texturedAreas(page).filter((area) => area.kind === 'linear');
  const cells = texture.cells.slice();
  for (const { box } of bars) clearCells(cells, texture, raster, box, 1);
  const dense = components({ ...texture, cells }, DENSE_CELL);
  const boxOf = ({ x0, y0, x1, y1 }: Component): Box => toPt(raster, x0, y0, x1 + 1, y1 + 1);
  const joined = dense.filter((each) => isWide(each) && (!mayBeCode(each) || isWriting(page, boxOf(each))));
  for (const { box } of joined.length > 0 ? page.words() : []) clearCells(cells, texture, raster, box, 0);
  // What is an area by itself may lie in the midst of what is none.
  for (const { x0, y0, x1, y1 } of dense.filter((each) => mayBeCode(each) && !joined.includes(each)))
    for (let y = y0; y <= y1; y++) cells.fill(0, y * texture.columns + x0, y * texture.columns + x1 + 1);
  const kept = withoutLines({ ...texture, cells }, joined);
  const parted = kept ? components({ ...texture, cells: kept }, DENSE_CELL) : [];
  return [...dense, ...parted].filter(mayBeCode).map(boxOf);
}

/** Heavy type is as dense as a code; where the text layer says that there are words, there is none. Rows of bars set in a barcode's font are found as rows. */
export function isWriting(page: SourcePage, area: Box): boolean {
  let written = 0;
  for (const { box } of page.words()) {
    const across = Math.min(right(area), right(box) + BESIDE_WORDS) - Math.max(area.x, box.x - BESIDE_WORDS);
    const down = Math.min(bottom(area), bottom(box) + BESIDE_WORDS) - Math.max(area.y, box.y - BESIDE_WORDS);
    if (across > 0 && down > 0) written += across * down;
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
