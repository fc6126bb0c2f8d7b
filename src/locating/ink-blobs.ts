import type { Box } from '../geometry/box.js';
import { inkRuns } from '../reading/ink.js';
import type { GreyRaster } from '../reading/source.js';

/** Side of a cell in pixels of the ink raster (4 px are 2.7 pt or 0.94 mm), as a power of two: dividing is what takes the time here. */
const BITS = 2;
const CELL = 1 << BITS;

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
    const row = ((y >> BITS) + 1) * columns + 1;
    for (let x = from; x < to;) {
      const column = x >> BITS;
      const end = Math.min((column + 1) << BITS, to);
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
