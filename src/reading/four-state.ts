import { boxFromCorners, grow, intersection, type Box } from '../geometry/box.js';
import { mmToPt } from '../geometry/length.js';
import { cutOut } from './cut-out.js';
import type { GreyRaster, SourcePage } from './source.js';
import { transposed } from './transpose.js';

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
    for (const place of placesOf(asLevel(cutOut(page.ink(), region), run), run)) {
      const area = intersection(grow(place, mmToPt(2)), region);
      if (!area || rows.some((row) => intersection(row.box, place) !== undefined)) continue;
      const own = page.pictureUnder(area)?.pixelsPerPt;
      const raster = page.render(area, own !== undefined && own < FINE ? 'own' : FINE);
      const row = measure(asLevel(raster, run), run);
      if (row) rows.push(row);
    }
  }
  return rows;
}

/** A raster whose bars stand upright: itself, or with x and y changed for each other. */
const asLevel = (raster: GreyRaster, run: FourStateRow['run']): GreyRaster => (run === 'level' ? raster : transposed(raster));

const changedBack = ({ x, y, width, height }: Box, run: FourStateRow['run']): Box =>
  run === 'level' ? { x, y, width, height } : { x: y, y: x, width: height, height: width };

/** Where rows of bars are on a coarse raster, pt on the page. */
function placesOf(raster: GreyRaster, run: FourStateRow['run']): readonly Box[] {
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

/** Stretches of a row in which bars stand at even distances. */
function evenBars({ data, width, pixelsPerPt }: GreyRaster, row: number): readonly (readonly Bar[])[] {
  const [least, most] = [(72 / PITCH.most) * pixelsPerPt, (72 / PITCH.least) * pixelsPerPt];
  const found: Bar[][] = [];
  let bars: Bar[] = [];
  const end = (): void => {
    if (bars.length >= LEAST_BARS) found.push(bars);
    bars = [];
  };
  for (let x = 0; x < width; x++) {
    if ((data[row * width + x] as number) >= INK) continue;
    const from = x;
    while (x < width && (data[row * width + x] as number) < INK) x += 1;
    const bar = { from, to: x };
    const before = bars.at(-1);
    if (before) {
      const distance = middle(bar) - middle(before);
      const pitch = bars.length > 3 ? (middle(before) - middle(bars[0] as Bar)) / (bars.length - 1) : undefined;
      const slack = Math.max(1, OFF * (pitch ?? distance));
      if (distance < least - 1 || distance > most + 1 || (pitch !== undefined && Math.abs(distance - pitch) > slack)) end();
    }
    if (x - from > 0.8 * most) end();
    else bars.push(bar);
  }
  end();
  return found;
}

const middle = ({ from, to }: Bar): number => (from + to) / 2;

/** How far each bar reaches up and down from a row: its first and its last row. */
function extents(
  { data, width, height, pixelsPerPt }: GreyRaster,
  row: number,
  bars: readonly Bar[],
): { readonly tops: number[]; readonly bottoms: number[] } {
  const most = Math.ceil(HIGHEST * pixelsPerPt);
  const end = (bar: Bar, by: 1 | -1): number => {
    const x = Math.min(width - 1, Math.floor(middle(bar)));
    let y = row;
    while (y + by >= 0 && y + by < height && Math.abs(y - row) < most && (data[(y + by) * width + x] as number) < INK) y += by;
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
function measure(raster: GreyRaster, run: FourStateRow['run']): FourStateRow | undefined {
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
