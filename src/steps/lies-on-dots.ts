import type { Box } from '../geometry/box.js';
import { dotsPerPt, type Grid } from '../geometry/grid.js';
import { applyToBox, applyToPoint, invert, type Matrix } from '../geometry/placement.js';
import { sum } from '../geometry/sum.js';
import type { SourceBars } from '../proof/source-bars.js';
import type { GreyRaster, SourcePage } from '../reading/source.js';
import { transposed } from '../reading/transpose.js';

/** Edges no farther from dot edges than this, in dots, all fall on the dots that they should. */
const ON_EDGE = 0.3;
/** How much of the bars' height, as far as the reader saw it, is looked at, about the middle. */
const SEEN = 0.4;
/** Darker than this is a dot that is printed. */
const INK = 128;

/**
 * Whether every edge of a row of bars falls on the dots that it should, once the sheet lies where it is to lie: by the measure of
 * its modules first, then by drawing it on just those dots. Programs round each bar to a hundredth of a pt or so: bars that are whole dots by their
 * mean then run a hair over a dot's edge here and there, and such a bar comes out a dot too wide.
 * @param matrix source page → output page, pt, y down; turns by quarters
 */
export function liesOnDots(page: SourcePage, bars: SourceBars, matrix: Matrix, scale: number, grid: Grid): boolean {
  return shouldLieOnDots(bars, matrix, scale, grid) && isDrawnOnDots(page, bars, matrix, scale, grid);
}

function shouldLieOnDots({ run, start, module, modules }: SourceBars, matrix: Matrix, scale: number, grid: Grid): boolean {
  const toDots = scale * dotsPerPt(grid);
  const dots = module * toDots;
  const drift = Math.abs(dots - Math.round(dots)) * sum(modules);
  const edge = run === 'level' ? applyToPoint(matrix, start, 0) : applyToPoint(matrix, 0, start);
  const sideways = Math.abs(matrix[0]) < Math.abs(matrix[1]);
  const phase = ((run === 'level') === sideways ? edge.y : edge.x) * dotsPerPt(grid);
  // ITF and Code 39 may have wide bars that are no whole number of narrow ones.
  const between = Math.max(...modules.map((each) => Math.abs(each * Math.round(dots) - Math.round(each * Math.round(dots)))));
  return Math.abs(phase - Math.round(phase)) + drift + between <= ON_EDGE;
}

function isDrawnOnDots(page: SourcePage, bars: SourceBars, matrix: Matrix, scale: number, grid: Grid): boolean {
  const level = bars.run === 'level';
  const { box } = bars.code;
  const [across, high] = level ? [box.y, box.height] : [box.x, box.width];
  const [first, seen, long] = [across + ((1 - SEEN) / 2) * high, SEEN * high, bars.end - bars.start];
  const wanted = level ? { x: bars.start, y: first, width: long, height: seen } : { x: first, y: bars.start, width: seen, height: long };
  const raster = page.render(wholeDotsAbout(wanted, matrix, grid), scale * dotsPerPt(grid), false);
  const lying = level ? raster : transposed(raster);
  const dots = Math.round(bars.module * scale * dotsPerPt(grid));
  const widths = bars.modules.map((each) => Math.round(each * dots));
  return [0, 0.5, 1].every((look) => hasRuns(lying, Math.round(look * (lying.height - 1)), widths));
}

/** The whole dots of the output page that `box` touches, and two more all around, as a box on the source page. */
function wholeDotsAbout(box: Box, matrix: Matrix, grid: Grid): Box {
  const perPt = dotsPerPt(grid);
  const { x, y, width, height } = applyToBox(matrix, box);
  const [left, top] = [Math.floor(x * perPt) - MORE, Math.floor(y * perPt) - MORE];
  const [right, bottom] = [Math.ceil((x + width) * perPt) + MORE, Math.ceil((y + height) * perPt) + MORE];
  return applyToBox(invert(matrix), { x: left / perPt, y: top / perPt, width: (right - left) / perPt, height: (bottom - top) / perPt });
}
const MORE = 2;

/** Whether a row of dots holds just these runs of ink and paper, the first and the last of them ink. */
function hasRuns({ data, width }: GreyRaster, row: number, widths: readonly number[]): boolean {
  const isInk = (x: number): boolean => (data[row * width + x] ?? 255) < INK;
  let x = 0;
  while (x < width && !isInk(x)) x += 1;
  for (const [index, run] of widths.entries()) {
    const from = x;
    while (x < width && isInk(x) === (index % 2 === 0)) x += 1;
    if (x - from !== run) return false;
  }
  return true;
}
