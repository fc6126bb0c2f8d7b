import { grow, type Box } from '../geometry/box.js';
import { INK_LEVEL } from './ink.js';
import type { GreyRaster } from './source.js';

/** The fewest modules along a side of a square Data Matrix, and the most of those on labels (ISO/IEC 16022:2006, table 7; from memory): both even. */
const MODULES = { least: 10, most: 52 };
/** Pixels of the coarse raster a module: finer ones are told by their texture. */
const LEAST_MODULE = 1.6;
/** Edges are off by so much of a module, and by so many pixels, on the coarse raster. */
const OFF = { module: 0.35, pixels: 0.8 };
/** The sides of a square are alike to this share. */
const SQUARE = 0.08;

/** An area's own edges are off by up to half a texture cell, pt. */
const AROUND = 2.7;

/** Lines of type are longer than this many times their height; a code with a word beside it is not. */
const LONGEST = 2;

/** A stretch of a row or a column, in pixels of the raster: from its first pixel to the one after its last. */
interface Run {
  readonly at: number;
  readonly from: number;
  readonly to: number;
}

/**
 * The box (pt) of a square Data Matrix in an area of a coarse raster by its finder pattern: two sides of ink that meet in a corner, and across from them two of modules that are
 * dark and light in turn, through all of its regions. For codes with modules of two pixels or more. Undefined where there is none.
 */
export function matrixBySides(raster: GreyRaster, area: Box): Box | undefined {
  if (Math.max(area.width, area.height) > LONGEST * Math.min(area.width, area.height)) return undefined;
  const box = grow(area, AROUND);
  const k = raster.pixelsPerPt;
  const [x0, y0] = [Math.max(0, Math.floor((box.x - raster.origin.x) * k)), Math.max(0, Math.floor((box.y - raster.origin.y) * k))];
  const [x1, y1] = [
    Math.min(raster.width, Math.ceil((box.x - raster.origin.x + box.width) * k)),
    Math.min(raster.height, Math.ceil((box.y - raster.origin.y + box.height) * k)),
  ];
  const isDark = (x: number, y: number): boolean => (raster.data[y * raster.width + x] as number) < INK_LEVEL;
  const least = MODULES.least * LEAST_MODULE;
  const level = solidRuns(y0, y1, x0, x1, least, (at, along) => isDark(along, at));
  if (level.length === 0) return undefined;
  const upright = solidRuns(x0, x1, y0, y1, least, (at, along) => isDark(at, along));
  for (const row of level) {
    const column = upright.find((each) => isFinder(row, each, isDark));
    if (!column) continue;
    const [x, y] = [raster.origin.x + row.from / k, raster.origin.y + column.from / k];
    return { x, y, width: (row.to - row.from) / k, height: (column.to - column.from) / k };
  }
  return undefined;
}

/** The longest stretch of ink of each line, where it is as long as a side. */
function solidRuns(
  first: number,
  end: number,
  from: number,
  to: number,
  least: number,
  isDark: (at: number, along: number) => boolean,
): readonly Run[] {
  const runs: Run[] = [];
  for (let at = first; at < end; at++) {
    let longest: Run = { at, from, to: from };
    let start = from;
    for (let along = from; along <= to; along++) {
      if (along < to && isDark(at, along)) continue;
      if (along - start > longest.to - longest.from) longest = { at, from: start, to: along };
      start = along + 1;
    }
    if (longest.to - longest.from >= least) runs.push(longest);
  }
  return runs;
}

/** Whether a row and a column of ink meet in a corner of a square, and modules in turn lie across from both. */
function isFinder(row: Run, column: Run, isDark: (x: number, y: number) => boolean): boolean {
  const [across, down] = [row.to - row.from, column.to - column.from];
  if (Math.abs(across / down - 1) > SQUARE) return false;
  const near = (a: number, b: number): boolean => Math.abs(a - b) <= across / MODULES.least;
  const [isLeft, isRight] = [near(column.at, row.from), near(column.at, row.to - 1)];
  const [isTop, isBottom] = [near(row.at, column.from), near(row.at, column.to - 1)];
  if (!(isLeft || isRight) || !(isTop || isBottom)) return false;
  return inset(down).some(
    (by) =>
      alternates(row.from, row.to, (x) => isDark(x, isTop ? column.to - 1 - by : column.from + by)) &&
      alternates(column.from, column.to, (y) => isDark(isLeft ? row.to - 1 - by : row.from + by, y)),
  );
}

/** How far inside the square, in pixels, its outermost modules may have their middles: at most half the largest module. */
const inset = (side: number): readonly number[] => Array.from({ length: Math.ceil(side / MODULES.least / 2) + 1 }, (_, by) => by);

/** Whether a line is dark and light in turn in steps of one width, an even number of them. */
function alternates(from: number, to: number, isDark: (along: number) => boolean): boolean {
  const edges: number[] = [from];
  for (let along = from + 1; along < to; along++) if (isDark(along) !== isDark(along - 1)) edges.push(along);
  edges.push(to);
  const modules = edges.length - 1;
  const module = (to - from) / modules;
  return (
    modules >= MODULES.least &&
    modules <= MODULES.most &&
    modules % 2 === 0 &&
    module >= LEAST_MODULE &&
    edges.slice(1).every((edge, index) => Math.abs(edge - from - (index + 1) * module) <= OFF.module * module + OFF.pixels)
  );
}
