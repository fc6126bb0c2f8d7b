import { mmToPt } from '../geometry/length.js';
import { contains, type Box } from '../geometry/box.js';
import { pixelsOf } from './cut-out.js';
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

/** What was found where on each raster: reading codes and judging what was not read look at the same. */
const looked = new WeakMap<GreyRaster, { readonly region: Box; readonly found: readonly Bullseye[] }[]>();

/** MaxiCode's finders on a raster: rings seen along x and, through the same middle, along y. Whatever the turn. A region inside one that was looked at before is answered from it. */
export function findBullseyes(raster: GreyRaster, region: Box): readonly Bullseye[] {
  const before = looked.get(raster) ?? [];
  const known = before.find((each) => contains(each.region, region, 0.01));
  if (known) return known.found.filter((bullseye) => contains(region, ringsOf(bullseye), 1));
  const found = searched(raster, region);
  looked.set(raster, [...before, { region, found }]);
  return found;
}

function ringsOf({ centre, scale }: Bullseye): Box {
  const radius = FINDER_RADIUS * scale;
  return { x: centre.x - radius, y: centre.y - radius, width: 2 * radius, height: 2 * radius };
}

function searched(raster: GreyRaster, region: Box): readonly Bullseye[] {
  const { pixelsPerPt, origin } = raster;
  const { x0, y0, x1, y1 } = pixelsOf(raster, region);
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

/** Where dark and light change along a line of pixels: the first pixel, each pixel that begins a run, the pixel after the last. */
interface Runs {
  readonly count: number;
  /** Whether the first run is dark; they take turns. */
  readonly dark: boolean;
  readonly starts: Int32Array;
}

/** One line is looked at after the other: their places are written into the same memory. */
let alongRow = new Int32Array(4096);
let alongColumn = new Int32Array(4096);

const alongX = ({ data, width }: GreyRaster, y: number, from: number, to: number): Runs =>
  runsOf(data, y * width, 1, from, to, (alongRow = roomFor(alongRow, to)));
const alongY = ({ data, width }: GreyRaster, x: number, from: number, to: number): Runs =>
  runsOf(data, x, width, from, to, (alongColumn = roomFor(alongColumn, to)));

const roomFor = (starts: Int32Array<ArrayBuffer>, pixels: number): Int32Array<ArrayBuffer> =>
  starts.length > pixels + 1 ? starts : new Int32Array(2 * pixels + 2);

function runsOf(data: Uint8Array, first: number, step: number, from: number, to: number, starts: Int32Array): Runs {
  const dark = (data[first + from * step] as number) < HALF;
  let now = dark;
  let count = 0;
  starts[0] = from;
  for (let index = from + 1, at = first + index * step; index < to; index++, at += step) {
    if ((data[at] as number) < HALF === now) continue;
    now = !now;
    count += 1;
    starts[count] = index;
  }
  count += 1;
  starts[count] = to;
  return { count, dark, starts };
}

/** Rows of runs that show the finder's rings: their middle and whole length, pixels. */
function ringed({ count, dark, starts }: Runs, full: number): { readonly middle: number; readonly long: number }[] {
  const found: { middle: number; long: number }[] = [];
  for (let first = dark ? 0 : 1; first + RUNS.length <= count; first += 2) {
    const from = starts[first] as number;
    const long = (starts[first + RUNS.length] as number) - from;
    if (long < SIZES.least * full || long > SIZES.most * full) continue;
    if (areRings(starts, first, long)) found.push({ middle: from + (long - 1) / 2, long });
  }
  return found;
}

function areRings(starts: Int32Array, first: number, long: number): boolean {
  const slack = Math.max(OFF * long, 1.2);
  for (let index = 0; index < RUNS.length; index++) {
    const wide = (starts[first + index + 1] as number) - (starts[first + index] as number);
    if (Math.abs(wide - (RUNS[index] as number) * long) > slack) return false;
  }
  return true;
}
