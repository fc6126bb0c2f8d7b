import type { Box } from '../geometry/box.js';
import { INK_LEVEL, inkRuns } from './ink.js';
import type { GreyRaster } from './source.js';

/** A straight ruled line, level or upright. `box` has its thickness as the short side; pt. */
export interface RuledLine {
  readonly box: Box;
  readonly level: boolean;
  readonly dashed: boolean;
}

/** Shortest line, pt (12 mm). */
const SHORTEST = 34;
/** Thicker than this (pt, 2 mm) it is a bar or a filled area. */
const THICKEST = 6;
/** Longest gap inside a dashed line, pt. */
const GAP = 7;
/** A line with less ink than this share of its length is dashed; with less than the second it is no line. */
const SOLID = 0.93;
const SPARSE = 0.4;

/** Finds ruled lines on a coarse raster (about 108 dpi): long thin runs of ink with white on both sides. */
export function ruledLines(raster: GreyRaster): readonly RuledLine[] {
  return [...linesAlong(raster, true), ...linesAlong(raster, false)];
}

interface Run {
  readonly at: number;
  readonly from: number;
  readonly to: number;
  readonly ink: number;
}

function linesAlong(raster: GreyRaster, level: boolean): RuledLine[] {
  const { width, height, pixelsPerPt: k, origin } = raster;
  const [count, step, stride] = level ? [height, 1, width] : [width, width, 1];
  const runs = longRuns(raster, level);
  return joinRuns(runs, THICKEST * k)
    .filter((band) => isLine(band, raster, step, stride, count))
    .map((band) => {
      const alongFrom = band.from / k;
      const alongSize = (band.to - band.from + 1) / k;
      const acrossFrom = band.first / k;
      const acrossSize = (band.last - band.first + 1) / k;
      const box = level
        ? { x: origin.x + alongFrom, y: origin.y + acrossFrom, width: alongSize, height: acrossSize }
        : { x: origin.x + acrossFrom, y: origin.y + alongFrom, width: acrossSize, height: alongSize };
      return { box, level, dashed: band.ink < SOLID * (band.to - band.from + 1) };
    });
}

/** Long runs of ink with only small gaps, by row (`level`) or by column, in rising order of the row or column. */
function longRuns(raster: GreyRaster, level: boolean): Run[] {
  const { width, height, pixelsPerPt: k } = raster;
  const lines = new Lines(level ? height : width, SHORTEST * k, GAP * k);
  const { count, at } = inkRuns(raster);
  for (let run = 0; run < 3 * count; run += 3) {
    const [y, from, to] = [at[run] as number, at[run + 1] as number, at[run + 2] as number];
    if (level) lines.add(y, from, to);
    else lines.addAcross(from, to, y);
  }
  return lines.ended();
}

/** Rows or columns that are gone along, each from its beginning. */
class Lines {
  readonly #from: Int32Array;
  readonly #last: Int32Array;
  readonly #ink: Int32Array;
  readonly #shortest: number;
  readonly #gap: number;
  readonly #runs: Run[] = [];

  constructor(count: number, shortest: number, gap: number) {
    this.#from = new Int32Array(count).fill(-1);
    this.#last = new Int32Array(count);
    this.#ink = new Int32Array(count);
    this.#shortest = shortest;
    this.#gap = gap;
  }

  /** Ink on a line from a place up to before another, farther along than all before it. */
  add(line: number, from: number, to: number): void {
    if (this.#from[line] !== -1 && from - (this.#last[line] as number) > this.#gap) this.#end(line);
    if (this.#from[line] === -1) {
      this.#from[line] = from;
      this.#ink[line] = 0;
    }
    this.#last[line] = to - 1;
    this.#ink[line] = (this.#ink[line] as number) + to - from;
  }

  /** Ink on each of these lines at one place. */
  addAcross(first: number, end: number, at: number): void {
    const [from, last, ink, gap] = [this.#from, this.#last, this.#ink, this.#gap];
    for (let line = first; line < end; line++) {
      if (from[line] !== -1 && at - (last[line] as number) <= gap) {
        last[line] = at;
        ink[line] = (ink[line] as number) + 1;
      } else this.add(line, at, at + 1);
    }
  }

  ended(): Run[] {
    for (let line = 0; line < this.#from.length; line++) if (this.#from[line] !== -1) this.#end(line);
    return this.#runs.sort(byPlace);
  }

  #end(line: number): void {
    const [from, to, ink] = [this.#from[line] as number, this.#last[line] as number, this.#ink[line] as number];
    const length = to - from + 1;
    if (length >= this.#shortest && ink >= SPARSE * length) this.#runs.push({ at: line, from, to, ink });
    this.#from[line] = -1;
  }
}

const byPlace = (a: Run, b: Run): number => a.at - b.at || a.from - b.from;

interface Band {
  first: number;
  last: number;
  from: number;
  to: number;
  ink: number;
}

/** Neighbouring runs that cover the same stretch are one line with thickness. */
function joinRuns(runs: readonly Run[], thickest: number): Band[] {
  const open: Band[] = [];
  const done: Band[] = [];
  for (const run of runs) {
    const same = open.find(
      (band) => band.last >= run.at - 1 && alike(band, run) && overlap(band, run) >= 0.8 * Math.min(band.to - band.from, run.to - run.from),
    );
    if (same) {
      same.last = run.at;
      same.from = Math.min(same.from, run.from);
      same.to = Math.max(same.to, run.to);
      same.ink = Math.max(same.ink, run.ink);
    } else {
      open.push({ first: run.at, last: run.at, from: run.from, to: run.to, ink: run.ink });
    }
    for (let index = open.length - 1; index >= 0; index--) {
      const band = open[index];
      if (band && band.last < run.at - 1) done.push(...open.splice(index, 1));
    }
  }
  return [...done, ...open].filter((band) => band.last - band.first + 1 <= thickest);
}

/** A line that ends in a filled area is not one with it: the area's rows or columns are far shorter. */
const alike = (band: Band, run: Run): boolean => {
  const [a, b] = [band.to - band.from, run.to - run.from];
  return Math.min(a, b) >= 0.4 * Math.max(a, b);
};

const overlap = (band: Band, run: Run): number => Math.min(band.to, run.to) - Math.max(band.from, run.from);

/**
 * Lines of text also give long sparse runs: beside a ruled line there is white, or at least far less ink, just above or
 * just below along most of its length.
 */
function isLine(band: Band, { data }: GreyRaster, step: number, stride: number, count: number): boolean {
  const length = band.to - band.from + 1;
  if (band.ink >= SOLID * length) return true;
  const inkAt = (at: number): number => {
    if (at < 0 || at >= count) return 0;
    let ink = 0;
    for (let i = band.from; i <= band.to; i++) if ((data[at * stride + i * step] ?? 255) < INK_LEVEL) ink += 1;
    return ink;
  };
  const quiet = 0.1 * length;
  return inkAt(band.first - 2) <= quiet && inkAt(band.last + 2) <= quiet && inkAt(band.first - 3) <= quiet && inkAt(band.last + 3) <= quiet;
}
