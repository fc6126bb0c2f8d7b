import { INK_LEVEL } from './ink.js';
import type { GreyRaster, Slant } from './source.js';

/** Angles are looked for up to this many degrees either way: more than is straightened, so that a page beyond is seen to be. */
const FARTHEST = 5;
/** Steps of the two passes, degrees: the first on pixels of half the size, with slices of twice the width. */
const COARSE_STEP = 1 / 3;
const FINE_STEP = 0.05;
/** Parts of a pixel that the later passes shift slices by. */
const FINE_PARTS = 4;
/** What the second pass says is checked, unless it is this near to straight, by a third of these steps, so far around it, degrees … */
const AS_GOOD_AS_STRAIGHT = 0.1;
const CHECK_STEP = 0.1;
const CHECKED_AROUND = 0.4;
/** … which is believed where it differs by more than this. Along the whole page a line tells more finely. */
const SAME = 0.06;
/** How sharp a top of the third pass is shows at this many of its steps beside it. */
const SHOULDER = 2;
/** The second pass looks so far around the first one's best, degrees. */
const AROUND = 0.2;
/** Slices, pixels: at 5 degrees a line moves by less than a pixel within one of 8. */
const SLICE_BITS = 3;
const SLICE = 1 << SLICE_BITS;
/** The third pass adds up so many slices (256 pixels, 2.4 in): the bars of two codes farther apart fall together by chance only. */
const BLOCK = 32;
/** Scanners leave shadows along the edges of their glass, which are straight whatever lies on it: share of a side that is left out. */
const RIM = 0.02;
/** Paper may be grey: ink is darker than this share of it. */
const OF_PAPER = 0.8;
/** How far the best angle must stand out over the middle of all angles, in times that middle … */
const CLEAR = 0.6;
/** … and any other peak may stand out at most by this share of it: else the page shows two directions. */
const SECOND = 0.4;
/** Rows and columns each tell an angle. One that rises over its middle by this share of it is heard … */
const HEARD = 0.3;
/** … and agrees when it has this share of its height at the angle of both: else the page is sheared, or shows two directions. */
const AGREED = 0.5;

const NOTHING: Slant = { degrees: 0, sure: false };

/** Steps from light to dark across slices of a raster, and the energy that they have if the slices have nothing to do with each other. */
interface Slices {
  readonly steps: Int32Array;
  readonly count: number;
  readonly length: number;
  readonly floor: number;
}

/**
 * How far the straight things of a page (lines of writing, rules, bars) lie turned clockwise. The steps between light and
 * dark are added up along lines at each angle; at the right one they fall together. Not sure when nothing stands out: a page
 * with little on it, a photograph, two directions, or a slant beyond what is looked for.
 * @param ink the page at a coarse resolution (about 108 dpi)
 */
export function measureSlant(ink: GreyRaster): Slant {
  const [rows, columns] = slicesOf(ink);
  if (rows.floor + columns.floor === 0) return NOTHING;
  const coarse = curve([halved(rows), halved(columns)], -FARTHEST, FARTHEST, COARSE_STEP, 1, Infinity);
  const finely = (degrees: number): Point[] => curve([rows, columns], degrees - AROUND, degrees + AROUND, FINE_STEP, FINE_PARTS, Infinity);
  let fine = finely(highest(coarse).degrees);
  // The first pass may be a step off; then the top lies at the end of what was looked at.
  const top = highest(fine);
  if (top === fine[0] || top === fine.at(-1)) fine = finely(top.degrees);
  const degrees = summit(fine, FINE_STEP);
  return {
    degrees: Math.abs(degrees) < AS_GOOD_AS_STRAIGHT ? degrees : checked([rows, columns], degrees),
    sure: isClear(softened(coarse)),
  };
}

/** The angle that blocks of the page tell, each for itself, where it is another one. */
function checked(slices: readonly [Slices, Slices], degrees: number): number {
  const blocks = weighed(curve(slices, degrees - CHECKED_AROUND, degrees + CHECKED_AROUND, CHECK_STEP, FINE_PARTS, BLOCK));
  const told = summit(blocks, CHECK_STEP);
  return Math.abs(told - degrees) > SAME ? told : degrees;
}

/** Whole pixels make neighbours of the first pass jump where bars are as narrow as its pixels. */
function softened(points: readonly Point[]): Point[] {
  return points.map((point, index) => {
    const [before, after] = [points[index - 1] ?? point, points[index + 1] ?? point];
    const soft = (of: (each: Point) => number): number => (of(before) + 2 * of(point) + of(after)) / 4;
    const [rows, columns] = [soft((each) => each.rows), soft((each) => each.columns)];
    return { degrees: point.degrees, rows, columns, both: rows + columns };
  });
}

/**
 * Rows and columns by how sharp a top each has, not by how much ink: the bars of codes have much, but are short, and those of two codes
 * fall together by chance.
 */
function weighed(points: readonly Point[]): Point[] {
  const rows = weightOf(points.map((each) => each.rows));
  const columns = weightOf(points.map((each) => each.columns));
  return points.map((each) => ({ ...each, both: rows * each.rows + columns * each.columns }));
}

/** How much of its height a curve loses on both sides of its top, for each unit of that height. */
function weightOf(values: readonly number[]): number {
  const { top } = shapeOf(values);
  const at = Math.min(Math.max(top, SHOULDER), values.length - 1 - SHOULDER);
  const best = values[top] as number;
  const beside = ((values[at - SHOULDER] as number) + (values[at + SHOULDER] as number)) / 2;
  return best === 0 ? 0 : (1 - beside / best) / best;
}

interface Point {
  readonly degrees: number;
  readonly rows: number;
  readonly columns: number;
  readonly both: number;
}

function curve([rows, columns]: readonly [Slices, Slices], from: number, to: number, step: number, parts: number, block: number): Point[] {
  const count = Math.round((to - from) / step);
  return Array.from({ length: count + 1 }, (_, index) => {
    const degrees = from + index * step;
    const slope = Math.tan((degrees * Math.PI) / 180);
    const r = energy(rows, slope, parts, block);
    const c = energy(columns, -slope, parts, block);
    return { degrees, rows: r, columns: c, both: r + c };
  });
}

/**
 * Adds the slices up along lines of a slope, block by block, and the squares of what comes out.
 * @param parts of a pixel that a slice may be shifted by: whole pixels would favour angles near 0, where none is shifted
 */
function energy(slices: Slices, slope: number, parts: number, block: number): number {
  let total = 0;
  for (let from = 0; from < slices.count; from += block)
    total += energyOfBlock(slices, slope, parts, from, Math.min(block, slices.count - from));
  return total;
}

function energyOfBlock({ steps, length }: Slices, slope: number, parts: number, first: number, count: number): number {
  const most = Math.ceil((Math.abs(slope) * count * SLICE) / 2) + 3;
  const sums = new Int32Array((length + 2 * most) * parts);
  for (let slice = 0; slice < count; slice++) {
    const shift = most * parts - Math.round(slope * (slice + 0.5 - count / 2) * SLICE * parts);
    const from = (first + slice) * length;
    for (let i = 0, at = shift; i < length; i++, at += parts) sums[at] = (sums[at] as number) + (steps[from + i] as number);
  }
  const soft = boxSums(boxSums(sums, 2 * parts), 2 * parts);
  let total = 0;
  for (const each of soft) total += each * each;
  return total / parts;
}

/** The sum of each value and those before it, `width` in all. */
function boxSums(values: Int32Array, width: number): Int32Array {
  const out = new Int32Array(values.length);
  let sum = 0;
  for (let i = 0; i < values.length; i++) {
    sum += (values[i] as number) - (i < width ? 0 : (values[i - width] as number));
    out[i] = sum;
  }
  return out;
}

/** Slices of columns, in which level things are steps from row to row, and slices of rows, in which upright things are. */
function slicesOf({ width, height, data }: GreyRaster): readonly [rows: Slices, columns: Slices] {
  const lightest = Math.floor(Math.min(INK_LEVEL, OF_PAPER * paperOf(data)));
  const [rimX, rimY] = [Math.round(RIM * width), Math.round(RIM * height)];
  const across = Math.floor((width - 2 * rimX) / SLICE);
  const down = Math.floor((height - 2 * rimY) / SLICE);
  const [w, h] = [across * SLICE, down * SLICE];
  const rows = new Int32Array(across * h);
  const columns = new Int32Array(down * w);
  for (let y = 0; y < h; y++) {
    const from = (y + rimY) * width + rimX;
    const slice = Math.floor(y / SLICE) * w;
    for (let x = 0; x < w; x++) {
      const grey = data[from + x] as number;
      if (grey >= lightest) continue;
      const dark = lightest - grey;
      const at = (x >> SLICE_BITS) * h + y;
      rows[at] = (rows[at] as number) + dark;
      columns[slice + x] = (columns[slice + x] as number) + dark;
    }
  }
  return [asSteps(rows, across, h), asSteps(columns, down, w)];
}

function asSteps(dark: Int32Array, count: number, length: number): Slices {
  let floor = 0;
  for (let slice = 0; slice < count; slice++) {
    for (let at = (slice + 1) * length - 1; at > slice * length; at--) {
      const step = (dark[at] as number) - (dark[at - 1] as number);
      dark[at] = step;
      floor += step * step;
    }
    dark[slice * length] = 0;
  }
  return { steps: dark, count, length, floor };
}

/** Two slices and two pixels each become one. */
function halved({ steps, count, length, floor }: Slices): Slices {
  const [fewer, shorter] = [count >> 1, length >> 1];
  const out = new Int32Array(fewer * shorter);
  for (let slice = 0; slice < fewer; slice++) {
    for (let i = 0; i < shorter; i++) {
      const a = 2 * slice * length + 2 * i;
      out[slice * shorter + i] =
        (steps[a] as number) + (steps[a + 1] as number) + (steps[a + length] as number) + (steps[a + length + 1] as number);
    }
  }
  return { steps: out, count: fewer, length: shorter, floor };
}

/** The commonest light grey: one pixel in seven is enough to tell, and falls on no pattern of the page. */
function paperOf(data: Uint8Array): number {
  const counts = new Uint32Array(256);
  for (let at = 0; at < data.length; at += 7) {
    const grey = data[at] as number;
    counts[grey] = (counts[grey] as number) + 1;
  }
  let paper = 255;
  for (let grey = 254; grey >= 128; grey--) if ((counts[grey] as number) > (counts[paper] as number)) paper = grey;
  return paper;
}

const highest = (points: readonly Point[]): Point => points.reduce((best, each) => (each.both > best.both ? each : best));

/** The top of a curve, between its samples, by a parabola through the highest three. */
function summit(points: readonly Point[], step: number): number {
  const top = shapeOf(points.map((each) => each.both)).top;
  const here = points[top] as Point;
  const [before, after] = [points[top - 1], points[top + 1]];
  if (!before || !after) return here.degrees;
  const [a, b, c] = [before.both, here.both, after.both];
  const bend = a - 2 * b + c;
  return here.degrees + (bend === 0 ? 0 : (0.5 * (a - c)) / bend) * step;
}

/** Whether the page as a whole tells one angle, and neither its rows nor its columns speak against it. */
function isClear(points: readonly Point[]): boolean {
  const values = points.map((each) => each.both);
  const { top, middle, height } = shapeOf(values);
  if (height <= CLEAR * middle || secondRise(values) >= SECOND * height) return false;
  return [points.map((each) => each.rows), points.map((each) => each.columns)].every((axis) => agrees(axis, top));
}

function agrees(values: readonly number[], at: number): boolean {
  const { middle, height } = shapeOf(values);
  return height <= HEARD * middle || (values[at] as number) - middle >= AGREED * height;
}

/** Where a curve is highest, its middle value, and how far it rises over that. */
function shapeOf(values: readonly number[]): { readonly top: number; readonly middle: number; readonly height: number } {
  const top = values.indexOf(Math.max(...values));
  const middle = values.toSorted((a, b) => a - b)[values.length >> 1] as number;
  return { top, middle, height: (values[top] as number) - middle };
}

/** How far any other peak rises out of the valley between it and the highest. */
function secondRise(values: readonly number[]): number {
  const top = shapeOf(values).top;
  let rise = 0;
  for (const step of [-1, 1]) {
    let valley = Infinity;
    for (let index = top; index >= 0 && index < values.length; index += step) {
      const value = values[index] as number;
      valley = Math.min(valley, value);
      rise = Math.max(rise, value - valley);
    }
  }
  return rise;
}
