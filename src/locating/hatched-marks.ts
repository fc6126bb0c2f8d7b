import { boxFromCorners, type Box } from '../geometry/box.js';
import { mmToPt } from '../geometry/length.js';
import type { GreyRaster } from '../reading/source.js';

/** Darker than this is ink: stripes are often red. */
const INK = 170;
/** Stripe and gap together along a row, mm. */
const PERIOD = { least: 1.6, most: 16 };
/** So many stripes one beside the other, the same within so much. */
const LEAST_STRIPES = 6;
const UNEVEN = { pixels: 1.3, share: 0.14 };
/** Rows between two looks, pixels. */
const STEP = 4;
/** A slanted stripe is moved on the next rows: so much of it is found there, and no more than so much where it was. */
const MOVED = 0.85;
const STILL = 0.72;
/** The band, mm: 5 mm by rule (handbook section 6), thinner on a page that was shrunk; wider is a filled area. */
const BAND = { least: 2, most: 12 };
/** Between the upper and the lower band, mm. */
const LEAST_INSIDE = 8;
/** Ends of both bands agree within so many periods: a band begins anywhere in a stripe. */
const SAME_ENDS = 1.3;

interface Band {
  readonly x0: number;
  readonly x1: number;
  readonly y0: number;
  readonly y1: number;
  readonly period: number;
}

/** Frames of slanted stripes on a raster, as around a lithium battery mark; boxes in pt, to about 1 mm. */
export function findHatchedFrames(raster: GreyRaster, region: Box): readonly Box[] {
  const { pixelsPerPt: perPt, origin } = raster;
  const mm = (value: number): number => mmToPt(value) * perPt;
  const pixel = (pt: number, from: number, most: number): number => Math.min(most, Math.max(0, Math.round((pt - from) * perPt)));
  const [x0, x1] = [pixel(region.x, origin.x, raster.width), pixel(region.x + region.width, origin.x, raster.width)];
  const [y0, y1] = [pixel(region.y, origin.y, raster.height), pixel(region.y + region.height, origin.y, raster.height)];
  const bands: Band[] = [];
  for (let y = y0; y < y1; y += STEP) {
    for (const row of stripedRows(raster, y, x0, x1, mm)) {
      const covered = bands.some((band) => y >= band.y0 && y <= band.y1 && row.x0 < band.x1 && row.x1 > band.x0);
      const band = covered ? undefined : bandAround(raster, y, row, y0, y1);
      if (band && band.y1 - band.y0 >= mm(BAND.least)) bands.push(band);
    }
  }
  const thin = bands.filter((band) => band.y1 - band.y0 <= mm(BAND.most));
  const frames: Box[] = [];
  for (const [index, upper] of thin.entries()) {
    for (const lower of thin.slice(index + 1)) {
      const ends = SAME_ENDS * upper.period;
      if (lower.y0 - upper.y1 < mm(LEAST_INSIDE)) continue;
      if (Math.abs(lower.x0 - upper.x0) > ends || Math.abs(lower.x1 - upper.x1) > ends) continue;
      const sides = stripedSides(raster, upper, lower);
      if (!sides) continue;
      const at = (x: number, from: number): number => from + x / perPt;
      frames.push(
        boxFromCorners(at(sides.left, origin.x), at(upper.y0, origin.y), at(sides.right + 1, origin.x), at(lower.y1 + 1, origin.y)),
      );
      break;
    }
  }
  return frames;
}

interface StripedRow {
  readonly x0: number;
  readonly x1: number;
  readonly period: number;
}

/** Parts of a row with even stripes. */
function stripedRows(
  { data, width }: GreyRaster,
  y: number,
  from: number,
  to: number,
  mm: (value: number) => number,
): readonly StripedRow[] {
  const starts: number[] = [];
  for (let x = from, before = false; x < to; x++) {
    const dark = (data[y * width + x] as number) < INK;
    if (dark && !before) starts.push(x);
    before = dark;
  }
  const rows: StripedRow[] = [];
  let first = 0;
  for (let index = 1; index < starts.length; index++) {
    const long = (starts[index] as number) - (starts[index - 1] as number);
    const mean = index - 1 > first ? ((starts[index - 1] as number) - (starts[first] as number)) / (index - 1 - first) : long;
    const even = Math.abs(long - mean) <= Math.max(UNEVEN.pixels, UNEVEN.share * mean);
    if (!even || long < mm(PERIOD.least) || long > mm(PERIOD.most)) {
      first = even || index - 1 === first ? index : index - 1;
      continue;
    }
    const isLast = index === starts.length - 1;
    const next = isLast ? Infinity : (starts[index + 1] as number) - (starts[index] as number);
    const goesOn = Math.abs(next - mean) <= Math.max(UNEVEN.pixels, UNEVEN.share * mean);
    if (goesOn || index - first < LEAST_STRIPES) continue;
    const [x0, x1] = [starts[first] as number, starts[index] as number];
    rows.push({ x0, x1, period: (x1 - x0) / (index - first) });
  }
  return rows;
}

/** How far up and down the stripes of a row go on, slanting; undefined where they don't slant. */
function bandAround(raster: GreyRaster, y: number, { x0, x1, period }: StripedRow, top: number, bottom: number): Band | undefined {
  const quarter = Math.max(1, Math.round(period / 4));
  const agreement = (dy: number, dx: number): number => {
    let [same, all] = [0, 0];
    for (let x = x0; x < x1; x++) {
      if (x + dx < 0 || x + dx >= raster.width) continue;
      all += 1;
      if (isDark(raster, x, y) === isDark(raster, x + dx, y + dy)) same += 1;
    }
    return all === 0 ? 0 : same / all;
  };
  for (const slant of [1, -1]) {
    const isOne = (dy: number): boolean => y + dy >= top && y + dy < bottom && agreement(dy, slant * dy) >= MOVED;
    // At the band's edge only one of the two directions is inside.
    const way = isOne(quarter) ? quarter : -quarter;
    if (!isOne(way) || agreement(way, 0) > STILL) continue;
    let [above, below] = [0, 0];
    while (isOne(above - 1)) above -= 1;
    while (isOne(below + 1)) below += 1;
    return { x0, x1, y0: y + above, y1: y + below, period };
  }
  return undefined;
}

/** Where stripes run down the ends of two bands, which begin and end anywhere in a stripe; undefined where they don't at both. */
function stripedSides(raster: GreyRaster, upper: Band, lower: Band): { readonly left: number; readonly right: number } | undefined {
  const out = Math.round(SAME_ENDS * upper.period);
  const inside = upper.y1 - upper.y0;
  const columns = (from: number, to: number): number[] =>
    Array.from({ length: to - from }, (_, index) => from + index).filter((x) => isStripedColumn(raster, x, upper, lower));
  const left = columns(Math.min(upper.x0, lower.x0) - out, upper.x0 + inside)[0];
  const right = columns(upper.x1 - inside, Math.max(upper.x1, lower.x1) + out).at(-1);
  return left === undefined || right === undefined ? undefined : { left, right };
}

/** Whether ink and paper take turns in a column between two bands, as evenly as along them. */
function isStripedColumn(raster: GreyRaster, x: number, upper: Band, lower: Band): boolean {
  let [changes, dark] = [0, 0];
  let before = isDark(raster, x, upper.y1);
  for (let y = upper.y1; y < lower.y0; y++) {
    const now = isDark(raster, x, y);
    if (now !== before) changes += 1;
    if (now) dark += 1;
    before = now;
  }
  const long = lower.y0 - upper.y1;
  const expected = (2 * long) / upper.period;
  return Math.abs(changes - expected) <= 2 && dark > 0.25 * long && dark < 0.75 * long;
}

function isDark({ data, width, height }: GreyRaster, x: number, y: number): boolean {
  return x >= 0 && x < width && y >= 0 && y < height && (data[y * width + x] as number) < INK;
}
