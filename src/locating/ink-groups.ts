import { bottom, intersection, near, right, union, type Box } from '../geometry/box.js';
import { mmToPt } from '../geometry/length.js';
import { linesOf } from '../reading/frames.js';
import { inkRuns } from '../reading/ink.js';
import type { GreyRaster, SourcePage } from '../reading/source.js';

/** Side of a cell in pixels of the ink raster (4 px are 2.7 pt or 0.94 mm). */
const CELL = 4;
/** White gaps across which ink belongs together, one after the other, pt. */
const GAPS = [2, 3, 4, 5, 6.5, 8, 10, 13, 16, 20].map(mmToPt);
/** A rule from edge to edge of a larger page divides it; this near (pt) to both edges. */
const EDGE_TO_EDGE = mmToPt(12);

const blobsOf = new WeakMap<GreyRaster, readonly Box[]>();

/** Connected ink: bounding boxes to about 1 mm, tight to the pixel. Each raster is looked at once. */
export function inkBlobs(raster: GreyRaster): readonly Box[] {
  let blobs = blobsOf.get(raster);
  if (!blobs) blobsOf.set(raster, (blobs = findBlobs(raster)));
  return blobs;
}

function findBlobs(raster: GreyRaster): readonly Box[] {
  const { width, height, pixelsPerPt: k, origin } = raster;
  const cells = inkedCells(raster);
  const { columns, state, left, top, right: rightmost, bottom: lowest } = cells;
  const around = [-columns - 1, -columns, -columns + 1, -1, 1, columns - 1, columns, columns + 1];
  const stack = new Int32Array(cells.inked);
  const blobs: Box[] = [];
  for (let start = 0; start < state.length; start++) {
    if (state[start] !== INKED) continue;
    let [x0, y0, x1, y1] = [width, height, 0, 0];
    let depth = 0;
    stack[depth++] = start;
    state[start] = TAKEN;
    while (depth > 0) {
      const cell = stack[--depth] as number;
      x0 = Math.min(x0, left[cell] as number);
      y0 = Math.min(y0, top[cell] as number);
      x1 = Math.max(x1, rightmost[cell] as number);
      y1 = Math.max(y1, lowest[cell] as number);
      for (let way = 0; way < 8; way++) {
        const next = cell + (around[way] as number);
        if (state[next] !== INKED) continue;
        state[next] = TAKEN;
        stack[depth++] = next;
      }
    }
    blobs.push({ x: origin.x + x0 / k, y: origin.y + y0 / k, width: (x1 - x0 + 1) / k, height: (y1 - y0 + 1) / k });
  }
  return blobs;
}

const [INKED, TAKEN] = [1, 2];

/** Cells of a raster, row by row, with an empty one all around, so that each has eight beside it; how far the ink of each reaches, pixels. */
interface Cells {
  readonly columns: number;
  readonly state: Uint8Array;
  readonly inked: number;
  readonly left: Int32Array;
  readonly top: Int32Array;
  readonly right: Int32Array;
  readonly bottom: Int32Array;
}

function inkedCells(raster: GreyRaster): Cells {
  const columns = Math.ceil(raster.width / CELL) + 2;
  const count = columns * (Math.ceil(raster.height / CELL) + 2);
  const state = new Uint8Array(count);
  const [left, top, rightmost, lowest] = [new Int32Array(count), new Int32Array(count), new Int32Array(count), new Int32Array(count)];
  let inked = 0;
  const { count: runs, at } = inkRuns(raster);
  for (let run = 0; run < 3 * runs; run += 3) {
    const [y, from, to] = [at[run] as number, at[run + 1] as number, at[run + 2] as number];
    const row = (Math.floor(y / CELL) + 1) * columns + 1;
    for (let x = from; x < to;) {
      const column = Math.floor(x / CELL);
      const end = Math.min(to, (column + 1) * CELL);
      const cell = row + column;
      if (state[cell] === 0) {
        state[cell] = INKED;
        inked += 1;
        left[cell] = x;
        top[cell] = y;
        rightmost[cell] = end - 1;
      } else {
        if (x < (left[cell] as number)) left[cell] = x;
        if (end - 1 > (rightmost[cell] as number)) rightmost[cell] = end - 1;
      }
      lowest[cell] = y;
      x = end;
    }
  }
  return { columns, state, inked, left, top, right: rightmost, bottom: lowest };
}

/**
 * Every group of ink that is one at some width of white gap: from blocks of text up to the whole page. Rules that divide the
 * page from edge to edge, and borders around the whole page, belong to no group.
 */
export function inkGroups(page: SourcePage, blobs: readonly Box[]): readonly Box[] {
  const dividers = pageDividers(page);
  const content = blobs.filter((blob) => !dividers.some((line) => covers(line, blob)) && !isPageBorder(blob, page));
  const groups: Box[] = [];
  let boxes = [...content];
  for (const gap of GAPS) {
    boxes = merge(boxes, gap, dividers);
    for (const box of boxes) if (!groups.some((known) => same(known, box))) groups.push(box);
  }
  return groups;
}

/** The rules that divide a page larger than any label from edge to edge: cut and fold lines. */
export function pageDividers(page: SourcePage): readonly Box[] {
  if (Math.min(page.width, page.height) < mmToPt(140)) return [];
  return linesOf(page)
    .filter(({ box, level }) =>
      level
        ? box.x <= EDGE_TO_EDGE && right(box) >= page.width - EDGE_TO_EDGE
        : box.y <= EDGE_TO_EDGE && bottom(box) >= page.height - EDGE_TO_EDGE,
    )
    .map((line) => line.box);
}

const covers = (line: Box, blob: Box): boolean =>
  intersection({ x: line.x - 3, y: line.y - 3, width: line.width + 6, height: line.height + 6 }, blob) !== undefined &&
  blob.x >= line.x - 4 &&
  right(blob) <= right(line) + 4 &&
  blob.y >= line.y - 4 &&
  bottom(blob) <= bottom(line) + 4;

const isPageBorder = (blob: Box, page: SourcePage): boolean =>
  Math.min(page.width, page.height) >= mmToPt(140) && blob.width > 0.85 * page.width && blob.height > 0.85 * page.height;

function merge(start: readonly Box[], gap: number, dividers: readonly Box[]): Box[] {
  const boxes = [...start];
  for (let changed = true; changed;) {
    changed = false;
    for (let i = 0; i < boxes.length; i++) {
      for (let j = i + 1; j < boxes.length; j++) {
        const [a, b] = [boxes[i], boxes[j]];
        if (!a || !b || !near(a, b, gap) || dividers.some((line) => divides(line, a, b))) continue;
        const both = union([a, b]);
        if (both) boxes[i] = both;
        boxes.splice(j, 1);
        changed = true;
        j = i;
      }
    }
  }
  return boxes;
}

function divides(line: Box, a: Box, b: Box): boolean {
  if (line.width > line.height) {
    const y = line.y + line.height / 2;
    return (bottom(a) <= y + 2 && b.y >= y - 2) || (bottom(b) <= y + 2 && a.y >= y - 2);
  }
  const x = line.x + line.width / 2;
  return (right(a) <= x + 2 && b.x >= x - 2) || (right(b) <= x + 2 && a.x >= x - 2);
}

const same = (a: Box, b: Box): boolean =>
  Math.abs(a.x - b.x) < 1 && Math.abs(a.y - b.y) < 1 && Math.abs(a.width - b.width) < 1 && Math.abs(a.height - b.height) < 1;
