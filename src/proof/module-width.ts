import { sum } from '../geometry/sum.js';
import { isLinear } from './linear.js';
import type { Code, GreyRaster, Point } from '../reading/source.js';

/** Scan lines at these shares of the bars' length: away from the ends, where writing may touch the bars. */
const SCANS = [0.2, 0.35, 0.5, 0.65, 0.8];
/** A scan line goes on for this share of the symbol beyond both ends: reported corners may be a module short. */
const BEYOND = 0.02;
/** A scan line that meets fewer elements missed the bars: the shortest Code 128 symbol has 25 (6 each for start, character and check, 7 for stop). */
const FEWEST_ELEMENTS = 13;
/** Where ink ends: half way between black and white. */
const EDGE = 128;

/**
 * Width of the narrowest element of a linear code in pixels of the raster, to a fraction of a pixel: along several lines
 * across the bars the edges are found where grey crosses one half, and the narrow bars and narrow spaces averaged apart, so
 * that print growth cancels out. Undefined for matrix codes and where no line shows bars.
 * @param raster in which the code was read; its soft edges carry the fraction
 */
export function moduleWidth(raster: GreyRaster, code: Code): number | undefined {
  if (!isLinear(code)) return undefined;
  const widths = SCANS.flatMap((share) => {
    const [topLeft, topRight, bottomRight, bottomLeft] = code.corners;
    const from = between(topLeft, bottomLeft, share);
    const to = between(topRight, bottomRight, share);
    const measured = narrowElement(elementsBetween(raster, between(from, to, -BEYOND), between(from, to, 1 + BEYOND)));
    return measured === undefined ? [] : [measured];
  });
  return widths.length === 0 ? undefined : median(widths);
}

interface Elements {
  readonly bars: readonly number[];
  readonly spaces: readonly number[];
}

/** Bars and spaces, in pixels, between two points given in pt of the raster's page. */
function elementsBetween(raster: GreyRaster, from: Point, to: Point): Elements {
  const toPixel = (p: Point): Point => ({
    x: (p.x - raster.origin.x) * raster.pixelsPerPt,
    y: (p.y - raster.origin.y) * raster.pixelsPerPt,
  });
  const [a, b] = [toPixel(from), toPixel(to)];
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const level = Math.abs(dx) >= Math.abs(dy);
  const [start, long] = level ? [a.x, dx] : [a.y, dy];
  if (long === 0) return { bars: [], spaces: [] };
  // One sample on the centre of each pixel along the longer direction: a sample between two pixels would shift the edges.
  const direction = Math.sign(long);
  const count = Math.floor(Math.abs(long));
  const values = Array.from({ length: count }, (_, index) => {
    const at = Math.floor(start) + 0.5 + index * direction;
    const share = (at - start) / long;
    return greyAt(raster, { x: a.x + dx * share, y: a.y + dy * share });
  });
  const stretch = Math.hypot(dx, dy) / Math.abs(long);
  const edges: { at: number; dark: boolean }[] = [];
  for (let index = 1; index < values.length; index++) {
    const before = values[index - 1] ?? 255;
    const after = values[index] ?? 255;
    if (before >= EDGE === after >= EDGE) continue;
    edges.push({ at: (index - 1 + (before - EDGE) / (before - after)) * stretch, dark: after < EDGE });
  }
  const bars: number[] = [];
  const spaces: number[] = [];
  for (let index = 1; index < edges.length; index++) {
    const [first, second] = [edges[index - 1], edges[index]];
    if (first && second) (first.dark ? bars : spaces).push(second.at - first.at);
  }
  return { bars, spaces };
}

function greyAt(raster: GreyRaster, { x, y }: Point): number {
  const [column, row] = [Math.floor(x), Math.floor(y)];
  if (column < 0 || row < 0 || column >= raster.width || row >= raster.height) return 255;
  return raster.data[row * raster.width + column] ?? 255;
}

function narrowElement({ bars, spaces }: Elements): number | undefined {
  if (bars.length + spaces.length < FEWEST_ELEMENTS) return undefined;
  const bar = narrowest(bars);
  const space = narrowest(spaces);
  return bar === undefined || space === undefined ? undefined : (bar + space) / 2;
}

/** Mean of the smallest cluster: what lies within half as much again of itself, since the next wider element is twice as wide. */
function narrowest(widths: readonly number[]): number | undefined {
  const sorted = widths.toSorted((a, b) => a - b);
  // A tenth in: one speck must not become the narrowest bar.
  let width = sorted[Math.floor(sorted.length / 10)];
  if (width === undefined) return undefined;
  for (let round = 0; round < 4; round++) {
    const limits: readonly [number, number] = [0.5 * width, 1.5 * width];
    const cluster = sorted.filter((each) => each >= limits[0] && each <= limits[1]);
    width = sum(cluster) / Math.max(1, cluster.length);
  }
  return width;
}

const between = (a: Point, b: Point, share: number): Point => ({ x: a.x + (b.x - a.x) * share, y: a.y + (b.y - a.y) * share });

function median(values: readonly number[]): number {
  const sorted = values.toSorted((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? NaN;
}
