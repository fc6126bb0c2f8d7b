import { sum } from '../geometry/sum.js';
import { MM_PER_IN } from '../geometry/length.js';
import type { Grid } from '../geometry/grid.js';
import type { Code, GreyRaster } from '../reading/source.js';
import { cutOut } from '../reading/cut-out.js';
import { transposed } from '../reading/transpose.js';
import { barModules, plannedModules, type PlannedBars } from './bar-modules.js';
import { decodability } from './decodability.js';
import { edgesAlong, symbolEdges, widthsOf } from './edges.js';
import { isLinear } from './linear.js';
import { profileAlong, spotReach, unevenness } from './profile.js';
import { gradeOf } from './simulated-grade.js';

/** What was measured of a row of bars on the printer's dots. Simulated: no verifier measured anything; paper and heat are not simulated. */
export interface CodeMeasure {
  readonly moduleDots: number;
  readonly moduleMm: number;
  readonly moduleMil: number;
  readonly barHeightMm: number;
  /** Clear paper before and behind the bars, in modules, at most `MOST_QUIET`. */
  readonly quiet: { readonly before: number; readonly after: number };
  /** How far the element that is farthest off is from its planned width, dots. */
  readonly farthestOff: number;
  /** Decodability without gain, mean and worst of the scans; with the stated gain off and on, the lesser mean. 0 where a scan does not decode. */
  readonly decodability: { readonly mean: number; readonly worst: number; readonly atGain: number };
  readonly modulation: number;
  readonly defects: number;
  /** The scans' mean, 0 to 4, one decimal. */
  readonly grade: number;
  /** The bars' modules as they stand on the page, from its left or top. */
  readonly modules: readonly number[];
}

/** Scans across the bars: ten, evenly over the inner 80 % of their height (ISO/IEC 15416, handbook section 5.1). */
const SCANS = 10;
const INNER = 0.8;
/** Paper beside the bars that is looked at, pt: 20 modules of 20 mil. */
const QUIET_PT = 29;
/** More quiet zone than this is not measured, modules. */
const MOST_QUIET = 20;

/**
 * Measures a linear code on a page of dots. Undefined for other codes, for slanted ones, and where no scan shows the symbol's bars.
 * @param dots 1 bit a dot: 0 or 255
 * @param planned how the bars are to come out, where that is known: what elements are off from; else the symbol's own mean
 * @param gain change of a bar's whole width in dots that the printer may make either way
 */
export function measureCode(dots: GreyRaster, code: Code, grid: Grid, gain: number, planned?: PlannedBars): CodeMeasure | undefined {
  if (!isLinear(code) || code.turn === undefined) return undefined;
  const level = code.turn % 180 === 0;
  const piece = pieceAround(dots, code);
  const raster = level ? piece : transposed(piece);
  const { pixelsPerPt: perPt, origin } = raster;
  const { box } = code;
  const [x, width, y, height] = level ? [box.x, box.width, box.y, box.height] : [box.y, box.height, box.x, box.width];
  const slack = 0.06 * width + 3;
  const [from, to] = [
    Math.max(0, Math.floor((x - slack - origin.x) * perPt)),
    Math.min(raster.width, Math.ceil((x + width + slack - origin.x) * perPt)),
  ];
  const rowAt = (share: number): number => Math.min(raster.height - 1, Math.max(0, Math.floor((y + share * height - origin.y) * perPt)));
  const whole = [0.5, 0.4, 0.6, 0.3, 0.7].map((share) => rowAt(share)).flatMap((row) => symbolAt(raster, row, from, to, code) ?? [])[0];
  if (!whole) return undefined;
  const { first, last, modules, row } = whole;
  const bars = tall(raster, first, last, row);
  const dotsAModule = (last - first) / sum(modules);
  const meant = { first, last, modules, code, grid, gain, planned };
  const scans: Scan[] = [];
  for (let index = 0, before = NaN; index < SCANS; index++) {
    const share = (1 - INNER) / 2 + ((index + 0.5) / SCANS) * INNER;
    const at = Math.floor(bars.from + share * (bars.to - bars.from));
    // Bars drawn as they should be are the same dots all along: what was measured once need not be measured again.
    const known = scans.at(-1);
    scans.push(known && isAlike(raster, at, before, spotReach(grid)) ? known : scanAt(raster, at, meant));
    before = at;
  }
  const mean = (pick: (scan: Scan) => number): number => sum(scans.map(pick)) / scans.length;
  const quiet = quietOf(raster, first, last, innerOf(bars), dotsAModule);
  const mm = (dotsAModule / grid.dpi) * MM_PER_IN;
  return {
    moduleDots: dotsAModule,
    moduleMm: mm,
    moduleMil: (dotsAModule / grid.dpi) * 1000,
    barHeightMm: ((bars.to - bars.from) / grid.dpi) * MM_PER_IN,
    quiet,
    farthestOff: Math.max(...scans.map(({ farthestOff }) => farthestOff)),
    decodability: {
      mean: mean((scan) => scan.decodability),
      worst: Math.min(...scans.map((scan) => scan.decodability)),
      atGain: mean((scan) => scan.atGain),
    },
    modulation: Math.min(...scans.map(({ modulation }) => modulation)),
    defects: Math.max(...scans.map(({ defects }) => defects)),
    grade: Math.round(mean(({ grade }) => grade) * 10) / 10,
    modules,
  };
}

/** What a measurement looks at: the bars, their quiet zones, and writing above and below that they may touch. */
function pieceAround(dots: GreyRaster, { box, turn }: Code): GreyRaster {
  const long = Math.max(box.width, box.height);
  const [along, across] = [0.06 * long + QUIET_PT, Math.max(36, 0.6 * Math.min(box.width, box.height))];
  const [dx, dy] = turn === 0 || turn === 180 ? [along, across] : [across, along];
  return cutOut(dots, { x: box.x - dx, y: box.y - dy, width: box.width + 2 * dx, height: box.height + 2 * dy });
}

interface Symbol {
  readonly first: number;
  readonly last: number;
  readonly modules: readonly number[];
  readonly row: number;
}

function symbolAt(raster: GreyRaster, row: number, from: number, to: number, code: Code): Symbol | undefined {
  const edges = symbolEdges(edgesAlong(raster, row, from, to));
  const found = barModules(widthsOf(edges), code.symbology);
  const [first, last] = [edges[0], edges.at(-1)];
  return found && first !== undefined && last !== undefined ? { first, last, modules: found.modules, row } : undefined;
}

interface Scan {
  readonly decodability: number;
  readonly atGain: number;
  readonly modulation: number;
  readonly defects: number;
  readonly farthestOff: number;
  readonly grade: number;
}

interface Meant extends Omit<Symbol, 'row'> {
  readonly code: Code;
  readonly grid: Grid;
  readonly gain: number;
  readonly planned: PlannedBars | undefined;
}

function scanAt(raster: GreyRaster, row: number, { first, last, modules, code, grid, gain, planned }: Meant): Scan {
  const [from, to] = [Math.max(0, Math.round(first) - 3), Math.min(raster.width, Math.round(last) + 3)];
  const edges = edgesAlong(raster, row, from, to);
  const widths = widthsOf(edges);
  const module = (last - first) / sum(modules);
  // Where edges should be: a void in a bar must not pass for two bars.
  let at = first - from;
  const edgesMeant = [at, ...modules.map((each) => (at += each * module))];
  const { modulation, defects } = unevenness(profileAlong(raster, row, from, to, grid), edgesMeant);
  if (widths.length !== modules.length) return { decodability: 0, atGain: 0, modulation, defects, farthestOff: Infinity, grade: 0 };
  const backwards = code.turn === 180 || code.turn === 270;
  const inReadingOrder = <T>(list: readonly T[]): readonly T[] => (backwards ? list.toReversed() : list);
  const meant = { modules: inReadingOrder(modules), module: 1 };
  const [widthsMeant, dots] = planned ? [plannedModules(modules, planned), planned.moduleDots] : [modules, module];
  const share = (change: number): number => decodability(inReadingOrder(widths), meant, code.symbology, change) ?? 0;
  const plain = share(0);
  return {
    decodability: plain,
    atGain: gain === 0 ? plain : Math.min(share(gain), share(-gain)),
    modulation,
    defects,
    farthestOff: Math.max(...widths.map((width, index) => Math.abs(width - (widthsMeant[index] ?? 0) * dots))),
    grade: Math.min(gradeOf('decodability', plain), gradeOf('modulation', modulation), gradeOf('defects', defects)),
  };
}

/** Whether all that a scan along one row looks at is the same dots along another. */
function isAlike({ data, width, height }: GreyRaster, one: number, other: number, reach: number): boolean {
  for (let off = -reach; off <= reach; off++) {
    const [a, b] = [one, other].map((row) => Math.min(height - 1, Math.max(0, row + off)) * width) as [number, number];
    if (Buffer.compare(data.subarray(a, a + width), data.subarray(b, b + width)) !== 0) return false;
  }
  return true;
}

interface Rows {
  readonly from: number;
  readonly to: number;
}

/** The rows over which the bars are there: up to twice as far as a speck reaches, a damaged row among them counts. */
function tall(raster: GreyRaster, first: number, last: number, row: number): Rows {
  const bars = { raster, x0: Math.round(first), x1: Math.round(last), row };
  return { from: reachOf(bars, -1), to: reachOf(bars, 1) + 1 };
}

/** A row of bars, and the columns over which it is compared with others. */
interface BarRow {
  readonly raster: GreyRaster;
  readonly x0: number;
  readonly x1: number;
  readonly row: number;
}

function reachOf(bars: BarRow, step: 1 | -1): number {
  let y = bars.row;
  while (isSame(bars, y + step) || isSame(bars, y + 2 * step) || isSame(bars, y + 3 * step)) y += step;
  return y;
}

function isSame({ raster: { data, width, height }, x0, x1, row }: BarRow, y: number): boolean {
  if (y < 0 || y >= height) return false;
  const [one, other] = [row * width, y * width];
  if (Buffer.compare(data.subarray(one + x0, one + x1), data.subarray(other + x0, other + x1)) === 0) return true;
  let differ = 0;
  for (let x = x0; x < x1; x++) if (data[one + x] !== data[other + x]) differ += 1;
  return differ <= 0.06 * (x1 - x0);
}

/** The rows that scans are laid across: a speck at a bar's corner, such as JPEG leaves, is in none of them. */
function innerOf({ from, to }: Rows): Rows {
  const edge = Math.round(((to - from) * (1 - INNER)) / 2);
  return { from: from + edge, to: to - edge };
}

function quietOf(raster: GreyRaster, first: number, last: number, rows: Rows, dotsAModule: number): CodeMeasure['quiet'] {
  const most = Math.ceil(MOST_QUIET * dotsAModule);
  return {
    before: clearDots(raster, Math.round(first) - 1, -1, rows, most) / dotsAModule,
    after: clearDots(raster, Math.round(last), 1, rows, most) / dotsAModule,
  };
}

function clearDots(raster: GreyRaster, start: number, step: 1 | -1, rows: Rows, most: number): number {
  let dots = 0;
  while (dots < most && isClear(raster, start + step * dots, rows)) dots += 1;
  return dots;
}

/** Beyond the page's edge there is no paper. */
function isClear({ data, width }: GreyRaster, x: number, { from, to }: Rows): boolean {
  if (x < 0 || x >= width) return false;
  for (let y = from, at = from * width + x; y < to; y++, at += width) if ((data[at] as number) < 128) return false;
  return true;
}
