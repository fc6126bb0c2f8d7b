import type { Box } from '../geometry/box.js';
import { INK_LEVEL } from './ink.js';
import type { GreyRaster } from './source.js';

/** Ink and white across the middle of a finder pattern, in modules (ISO/IEC 18004:2015, 6.3.3; from memory). */
const RATIO = [1, 1, 3, 1, 1] as const;
const MODULES = 7;
/** Edges are off by so much of a module, and by half a pixel, on the coarse raster. */
const OFF = 0.4;
/** A row through the middle of three modules must show the pattern in this many rows at least: coarse modules have three pixels or more. */
const LEAST_ROWS = 5;
/** A code is square, to this share. */
const SQUARE = 0.2;

/** Whether finder patterns of a QR code lie in at least three corners of a square box (pt), from the rows of a coarse raster; for codes with modules of three pixels or more. */
export function hasFinders(raster: GreyRaster, box: Box): boolean {
  if (Math.abs(box.width / box.height - 1) > SQUARE) return false;
  const rows = new Map<string, number>();
  const k = raster.pixelsPerPt;
  const [x0, y0] = [Math.max(0, Math.floor((box.x - raster.origin.x) * k)), Math.max(0, Math.floor((box.y - raster.origin.y) * k))];
  const [w, h] = [Math.min(raster.width - x0, Math.ceil(box.width * k)), Math.min(raster.height - y0, Math.ceil(box.height * k))];
  for (let y = 0; y < h; y++) {
    for (const middle of middlesIn(raster, (y0 + y) * raster.width + x0, w)) {
      const corner = `${thirdOf(y, h)} ${thirdOf(middle, w)}`;
      rows.set(corner, (rows.get(corner) ?? 0) + 1);
    }
  }
  return ['0 0', '0 2', '2 0', '2 2'].filter((corner) => (rows.get(corner) ?? 0) >= LEAST_ROWS).length >= 3;
}

const thirdOf = (at: number, length: number): number => Math.min(2, Math.floor((3 * at) / length));

/** The middles, in pixels from the start of a row, of everything in it that is like a finder pattern. */
function middlesIn({ data }: GreyRaster, start: number, length: number): readonly number[] {
  const edges: number[] = [];
  let dark = false;
  for (let x = 0; x <= length; x++) {
    const isDark = x < length && (data[start + x] as number) < INK_LEVEL;
    if (isDark !== dark) edges.push(x);
    dark = isDark;
  }
  const middles: number[] = [];
  // Every other edge begins ink.
  for (let at = 0; at + RATIO.length < edges.length; at += 2) {
    const [from, to] = [edges[at] as number, edges[at + RATIO.length] as number];
    const module = (to - from) / MODULES;
    const isLike = RATIO.every((modules, run) => {
      const width = (edges[at + run + 1] as number) - (edges[at + run] as number);
      return Math.abs(width - modules * module) <= OFF * module + 0.5;
    });
    if (module >= 2 && isLike) middles.push((from + to) / 2);
  }
  return middles;
}
