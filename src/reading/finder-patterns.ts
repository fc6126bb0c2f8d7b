import { union, type Box } from '../geometry/box.js';
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

/**
 * The box (pt) of a QR code by its finder patterns in at least three corners of a square area, from the rows of a coarse raster; for codes with modules of three pixels or
 * more. Undefined where there are none.
 */
export function qrByFinders(raster: GreyRaster, box: Box): Box | undefined {
  if (Math.abs(box.width / box.height - 1) > SQUARE) return undefined;
  const rows = new Map<string, Pattern[]>();
  const k = raster.pixelsPerPt;
  const [x0, y0] = [Math.max(0, Math.floor((box.x - raster.origin.x) * k)), Math.max(0, Math.floor((box.y - raster.origin.y) * k))];
  const [w, h] = [Math.min(raster.width - x0, Math.ceil(box.width * k)), Math.min(raster.height - y0, Math.ceil(box.height * k))];
  for (let y = 0; y < h; y++) {
    for (const { from, to } of patternsIn(raster, (y0 + y) * raster.width + x0, w)) {
      const corner = `${thirdOf(y, h)} ${thirdOf((from + to) / 2, w)}`;
      rows.set(corner, [...(rows.get(corner) ?? []), { at: y0 + y, from: x0 + from, to: x0 + to }]);
    }
  }
  const corners = ['0 0', '0 2', '2 0', '2 2'].map((corner) => rows.get(corner) ?? []).filter((found) => found.length >= LEAST_ROWS);
  return corners.length >= 3 ? around(raster, corners) : undefined;
}

/** A row of pixels, in the raster, through the middle of a finder pattern: the pattern's first pixel and the one after its last. */
interface Pattern {
  readonly at: number;
  readonly from: number;
  readonly to: number;
}

/** The box around finder patterns, each known by its rows: what is above and below the middle of one is as high as what is beside it is wide. */
function around({ pixelsPerPt: k, origin }: GreyRaster, corners: readonly (readonly Pattern[])[]): Box {
  const boxes = corners.map((found) => {
    const [y, x, right] = [
      middle(found.map(({ at }) => at + 0.5)),
      middle(found.map(({ from }) => from)),
      middle(found.map(({ to }) => to)),
    ];
    const side = right - x;
    return { x: origin.x + x / k, y: origin.y + (y - side / 2) / k, width: side / k, height: side / k };
  });
  return union(boxes) as Box;
}

const middle = (values: readonly number[]): number => values.toSorted((a, b) => a - b)[values.length >> 1] as number;

const thirdOf = (at: number, length: number): number => Math.min(2, Math.floor((3 * at) / length));

/** Everything in a stretch of a row that is like the middle of a finder pattern, in pixels from the start of the stretch. */
function patternsIn({ data }: GreyRaster, start: number, length: number): readonly Omit<Pattern, 'at'>[] {
  const edges: number[] = [];
  let dark = false;
  for (let x = 0; x <= length; x++) {
    const isDark = x < length && (data[start + x] as number) < INK_LEVEL;
    if (isDark !== dark) edges.push(x);
    dark = isDark;
  }
  const patterns: Omit<Pattern, 'at'>[] = [];
  // Every other edge begins ink.
  for (let at = 0; at + RATIO.length < edges.length; at += 2) {
    const [from, to] = [edges[at] as number, edges[at + RATIO.length] as number];
    const module = (to - from) / MODULES;
    const isLike = RATIO.every((modules, run) => {
      const width = (edges[at + run + 1] as number) - (edges[at + run] as number);
      return Math.abs(width - modules * module) <= OFF * module + 0.5;
    });
    if (module >= 2 && isLike) patterns.push({ from, to });
  }
  return patterns;
}
