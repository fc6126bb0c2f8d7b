import { mmToPt } from '../geometry/length.js';
import type { Box } from '../geometry/box.js';
import type { GreyRaster, Point } from './source.js';

/** Darker than this is ink: half, because rings are three pixels wide on a coarse raster. */
const HALF = 150;
/**
 * Outer radius of MaxiCode's finder, mm: three dark rings 0.67 mm wide, as far apart (ISO/IEC 16023 by way of the figures in zint's sources;
 * secondary). It comes at one size only (handbook section 4.4).
 */
const FINDER_RADIUS = mmToPt(3.87);
/** How far the finder may be from its one size: a page shrunk to fit shows it still, and it is to be told. */
const SIZES = { least: 0.45, most: 1.15 };
/** Dark and light runs of a line through the middle, in shares of the diameter: three rings, the light middle, three rings. */
const RUNS = [0.67, 0.68, 0.67, 0.68, 0.67, 1.02, 0.67, 0.68, 0.67, 0.68, 0.67].map((mm) => mm / 7.74);
/** A run may be off by this share of the diameter: a pixel or two of a coarse raster. */
const OFF = 0.06;

export interface Bullseye {
  /** Pt. */
  readonly centre: Point;
  /** Outer radius of the finder against that of the standard's one size. */
  readonly scale: number;
}

/** MaxiCode's finders on a raster: rings seen along x and, through the same middle, along y. Whatever the turn. */
export function findBullseyes(raster: GreyRaster, region: Box): readonly Bullseye[] {
  const { pixelsPerPt, origin } = raster;
  const pixel = (pt: number, from: number, most: number): number => Math.min(most, Math.max(0, Math.round((pt - from) * pixelsPerPt)));
  const [x0, x1] = [pixel(region.x, origin.x, raster.width), pixel(region.x + region.width, origin.x, raster.width)];
  const [y0, y1] = [pixel(region.y, origin.y, raster.height), pixel(region.y + region.height, origin.y, raster.height)];
  const full = 2 * FINDER_RADIUS * pixelsPerPt;
  const found: Bullseye[] = [];
  for (let y = y0; y < y1; y += 2) {
    for (const across of ringed(alongX(raster, y, x0, x1), full)) {
      const column = Math.round(across.middle);
      const centred = ringed(alongY(raster, column, y0, y1), full).find(
        (down) => Math.abs(down.middle - y) < full * OFF * 2 && Math.abs(down.long / across.long - 1) < 0.15,
      );
      if (!centred) continue;
      const centre = { x: origin.x + (across.middle + 0.5) / pixelsPerPt, y: origin.y + (centred.middle + 0.5) / pixelsPerPt };
      const near = (other: Bullseye): boolean => Math.hypot(other.centre.x - centre.x, other.centre.y - centre.y) < FINDER_RADIUS;
      if (!found.some(near)) found.push({ centre, scale: centred.long / full });
    }
  }
  return found;
}

interface Run {
  readonly dark: boolean;
  readonly from: number;
  readonly long: number;
}

const alongX = ({ data, width }: GreyRaster, y: number, from: number, to: number): Run[] =>
  runsOf((x) => data[y * width + x] as number, from, to);
const alongY = ({ data, width }: GreyRaster, x: number, from: number, to: number): Run[] =>
  runsOf((y) => data[y * width + x] as number, from, to);

function runsOf(at: (index: number) => number, from: number, to: number): Run[] {
  const runs: Run[] = [];
  let start = from;
  let dark = at(from) < HALF;
  for (let index = from + 1; index <= to; index++) {
    const now = index < to ? at(index) < HALF : !dark;
    if (now === dark) continue;
    runs.push({ dark, from: start, long: index - start });
    start = index;
    dark = now;
  }
  return runs;
}

/** Rows of runs that show the finder's rings: their middle and whole length, pixels. */
function ringed(runs: readonly Run[], full: number): { readonly middle: number; readonly long: number }[] {
  const found: { middle: number; long: number }[] = [];
  for (let first = 0; first + RUNS.length <= runs.length; first++) {
    const [head, tail] = [runs[first], runs[first + RUNS.length - 1]];
    if (!head?.dark || !tail) continue;
    const long = tail.from + tail.long - head.from;
    if (long < SIZES.least * full || long > SIZES.most * full) continue;
    const slack = Math.max(OFF * long, 1.2);
    if (RUNS.every((share, index) => Math.abs((runs[first + index]?.long ?? 0) - share * long) <= slack)) {
      found.push({ middle: head.from + (long - 1) / 2, long });
    }
  }
  return found;
}
