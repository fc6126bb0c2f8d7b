import { boxFromCorners, grow, intersection, type Box } from '../geometry/box.js';
import { mmToPt } from '../geometry/length.js';
import { pixelsOf } from './cut-out.js';
import type { GreyRaster, SourcePage } from './source.js';

/** A row of bars that tell by their height: short ones in the middle, others reaching up, down or both ways. */
export interface FourStateRow {
  /** Around all bars, pt on the visible page. */
  readonly box: Box;
  /** `level`: bars stand upright beside each other; `upright`: they lie one under the other. */
  readonly run: 'level' | 'upright';
  /** One letter a bar, T tracker, A ascender, D descender, F full: from the left as seen upright; of an upright row from the top, seen in a mirror. */
  readonly bars: string;
  readonly barsPerInch: number;
  /** Medians of what was measured, pt; undefined for a state that no bar has. */
  readonly barWidth: number;
  readonly heights: Readonly<Record<FourState, number | undefined>>;
}
export type FourState = 'T' | 'A' | 'D' | 'F';

/** Darker than this is ink. */
const INK = 150;
/** Fewer even bars are a ruling or a leader. The shortest 4-state codes in use have more (from memory). */
const LEAST_BARS = 30;
/** Bars to the inch that are looked for; 20 to 24 are right (USPS-B-3200 2.3.1, handbook section 3.2), the rest is there to be told. */
const PITCH = { least: 15, most: 32 };
/** Rows between two looks, pt: trackers are 2.8 pt high at least. */
const STEP = 1.6;
/** A bar may be off its place by this share of the pitch. */
const OFF = 0.3;
/** No bar is higher, pt. */
const HIGHEST = 20;
/** Each side must have bars that reach out and bars that don't, this share of all; reaching out is at least this much, pt. */
const EACH_STATE = 0.12;
const REACH = 1.4;
/** Bars are measured at this resolution, pixels per pt (600 dpi), or at a picture's own. */
const FINE = 600 / 72;

/** The rows of 4-state bars in a region (pt) of a page, measured; none is decoded. */
export function findFourState(page: SourcePage, region: Box): readonly FourStateRow[] {
  const rows: FourStateRow[] = [];
  for (const run of ['level', 'upright'] as const) {
    for (const place of placesOf(asLevel(page.ink(), region, run), run)) {
      const area = intersection(grow(place, mmToPt(2)), region);
      if (!area || rows.some((row) => intersection(row.box, place) !== undefined)) continue;
      const own = page.pictureUnder(area)?.pixelsPerPt;
      const raster = page.render(area, own !== undefined && own < FINE ? 'own' : FINE);
      const row = measure(asLevel(raster, area, run), run);
      if (row) rows.push(row);
    }
  }
  return rows;
}

/** A part of a raster gone through so that bars stand upright beside each other: along its rows, or along its columns. Nothing is copied. */
interface Rows {
  readonly data: Uint8Array;
  /** Where the first pixel of the first row is in the data; from one pixel of a row to the next; from one row to the next. */
  readonly start: number;
  readonly step: number;
  readonly next: number;
  /** Pixels in a row, and rows. */
  readonly width: number;
  readonly height: number;
  readonly pixelsPerPt: number;
  /** Where the first pixel lies, pt; x and y changed for each other in an upright run. */
  readonly origin: { readonly x: number; readonly y: number };
}

function asLevel(raster: GreyRaster, region: Box, run: FourStateRow['run']): Rows {
  const { data, width, pixelsPerPt, origin } = raster;
  const { x0, y0, x1, y1 } = pixelsOf(raster, region);
  const [x, y] = [origin.x + x0 / pixelsPerPt, origin.y + y0 / pixelsPerPt];
  const start = y0 * width + x0;
  return run === 'level'
    ? { data, start, step: 1, next: width, width: x1 - x0, height: y1 - y0, pixelsPerPt, origin: { x, y } }
    : { data, start, step: width, next: 1, width: y1 - y0, height: x1 - x0, pixelsPerPt, origin: { x: y, y: x } };
}

const changedBack = ({ x, y, width, height }: Box, run: FourStateRow['run']): Box =>
  run === 'level' ? { x, y, width, height } : { x: y, y: x, width: height, height: width };

/** Where rows of bars are on a coarse raster, pt on the page. */
function placesOf(raster: Rows, run: FourStateRow['run']): readonly Box[] {
  const { pixelsPerPt: perPt, origin } = raster;
  const step = Math.max(1, Math.floor(STEP * perPt));
  const places: Box[] = [];
  for (let row = 0; row < raster.height; row += step) {
    for (const bars of evenBars(raster, row)) {
      const { tops, bottoms } = extents(raster, row, bars);
      if (!tellsByHeight(tops, perPt) || !tellsByHeight(bottoms, perPt)) continue;
      const [first, last] = [bars[0] as Bar, bars.at(-1) as Bar];
      const place = boxFromCorners(
        origin.x + first.from / perPt,
        origin.y + Math.min(...tops) / perPt,
        origin.x + last.to / perPt,
        origin.y + (Math.max(...bottoms) + 1) / perPt,
      );
      if (!places.some((other) => intersection(other, place) !== undefined)) places.push(place);
    }
  }
  return places.map((place) => changedBack(place, run));
}

interface Bar {
  readonly from: number;
  /** The first pixel behind it. */
  readonly to: number;
}

/** Where bars of a row begin and end; kept from one row to the next. */
let [begins, ends] = [new Int32Array(0), new Int32Array(0)];

/** Stretches of a row in which bars stand at even distances. */
function evenBars(raster: Rows, row: number): readonly (readonly Bar[])[] {
  const count = barsAlong(raster, row);
  if (count < LEAST_BARS) return NONE;
  const { pixelsPerPt } = raster;
  const [least, most] = [(72 / PITCH.most) * pixelsPerPt - 1, (72 / PITCH.least) * pixelsPerPt + 1];
  const widest = 0.8 * (72 / PITCH.least) * pixelsPerPt;
  const found: Bar[][] = [];
  let first = 0;
  for (let index = 0; index <= count; index++) {
    const goesOn = index < count && (index === first || isInStep(first, index, least, most));
    const isBar = index < count && (ends[index] as number) - (begins[index] as number) <= widest;
    if (goesOn && isBar) continue;
    if (index - first >= LEAST_BARS) {
      const bars: Bar[] = [];
      for (let each = first; each < index; each++) bars.push({ from: begins[each] as number, to: ends[each] as number });
      found.push(bars);
    }
    first = isBar ? index : index + 1;
  }
  return found;
}

const NONE: readonly (readonly Bar[])[] = [];

/** Finds the bars of a row and counts them. */
function barsAlong({ data, start, step, next, width }: Rows, row: number): number {
  if (begins.length < width) [begins, ends] = [new Int32Array(width), new Int32Array(width)];
  let count = 0;
  let isInk = false;
  for (let x = 0, at = start + row * next; x < width; x++, at += step) {
    if ((data[at] as number) < INK === isInk) continue;
    if (isInk) ends[count++] = x;
    else begins[count] = x;
    isInk = !isInk;
  }
  if (isInk) ends[count++] = width;
  return count;
}

const middleOf = (bar: number): number => ((begins[bar] as number) + (ends[bar] as number)) / 2;

/** Whether a bar stands where the one before it and all since the first lead to expect it. */
function isInStep(first: number, index: number, least: number, most: number): boolean {
  const before = middleOf(index - 1);
  const distance = middleOf(index) - before;
  if (distance < least || distance > most) return false;
  const bars = index - first;
  const pitch = bars > 3 ? (before - middleOf(first)) / (bars - 1) : distance;
  return Math.abs(distance - pitch) <= Math.max(1, OFF * pitch);
}

const middle = ({ from, to }: Bar): number => (from + to) / 2;

/** How far each bar reaches up and down from a row: its first and its last row. */
function extents(
  { data, start, step, next, width, height, pixelsPerPt }: Rows,
  row: number,
  bars: readonly Bar[],
): { readonly tops: number[]; readonly bottoms: number[] } {
  const most = Math.ceil(HIGHEST * pixelsPerPt);
  const end = (bar: Bar, by: 1 | -1): number => {
    const x = Math.min(width - 1, Math.floor(middle(bar)));
    let y = row;
    const isInk = (at: number): boolean => at >= 0 && at < height && (data[start + at * next + x * step] as number) < INK;
    while (Math.abs(y - row) < most && isInk(y + by)) y += by;
    return y;
  };
  return { tops: bars.map((bar) => end(bar, -1)), bottoms: bars.map((bar) => end(bar, 1)) };
}

/** Whether ends lie on two levels, and on each of them enough. */
function tellsByHeight(ends: readonly number[], pixelsPerPt: number): boolean {
  const [least, most] = [Math.min(...ends), Math.max(...ends)];
  const [between, slack] = [(least + most) / 2, Math.max(1, 0.28 * (most - least))];
  if (most - least < REACH * pixelsPerPt || most - least > HIGHEST * pixelsPerPt) return false;
  if (ends.some((end) => Math.min(end - least, most - end) > slack)) return false;
  const low = ends.filter((end) => end > between).length;
  return Math.min(low, ends.length - low) >= EACH_STATE * ends.length;
}

/** Measures the one row of bars on a raster. */
function measure(raster: Rows, run: FourStateRow['run']): FourStateRow | undefined {
  const { pixelsPerPt: perPt, origin } = raster;
  const step = Math.max(1, Math.floor((STEP / 2) * perPt));
  for (let row = step; row < raster.height; row += step) {
    for (const bars of evenBars(raster, row)) {
      const { tops, bottoms } = extents(raster, row, bars);
      if (!tellsByHeight(tops, perPt) || !tellsByHeight(bottoms, perPt)) continue;
      const isOut = (ends: readonly number[]) => {
        const between = (Math.min(...ends) + Math.max(...ends)) / 2;
        return (end: number | undefined): boolean => (end ?? 0) < between;
      };
      const [up, notDown] = [isOut(tops), isOut(bottoms)];
      const states = bars.map((_, index): FourState => {
        const down = !notDown(bottoms[index]);
        return up(tops[index]) ? (down ? 'F' : 'A') : down ? 'D' : 'T';
      });
      const heightOf = (state: FourState): number | undefined =>
        median(states.flatMap((each, index) => (each === state ? [((bottoms[index] ?? 0) - (tops[index] ?? 0) + 1) / perPt] : [])));
      const [first, last] = [bars[0] as Bar, bars.at(-1) as Bar];
      const box = boxFromCorners(
        origin.x + first.from / perPt,
        origin.y + Math.min(...tops) / perPt,
        origin.x + last.to / perPt,
        origin.y + (Math.max(...bottoms) + 1) / perPt,
      );
      return {
        box: changedBack(box, run),
        run,
        bars: states.join(''),
        barsPerInch: (72 * (bars.length - 1) * perPt) / (middle(last) - middle(first)),
        barWidth: median(bars.map(({ from, to }) => (to - from) / perPt)) ?? 0,
        heights: { T: heightOf('T'), A: heightOf('A'), D: heightOf('D'), F: heightOf('F') },
      };
    }
  }
  return undefined;
}

function median(values: readonly number[]): number | undefined {
  return values.toSorted((a, b) => a - b)[values.length >> 1];
}
