import { sum } from '../geometry/sum.js';
import { union, type Box } from '../geometry/box.js';
import { dotsPerPt, type Grid } from '../geometry/grid.js';
import { applyToBox, applyToPoint, type Matrix } from '../geometry/placement.js';
import type { RedrawnCode } from '../sheet/sheet.js';
import { num } from './operators.js';

/** A row of bars on the output page, in whole dots from its top-left corner, y down. */
export interface BarRow {
  /** Which way the row runs on the output page. */
  readonly run: 'level' | 'upright';
  /** Where the first bar begins along the run. */
  readonly start: number;
  /** Both ends of the bars, across the run. */
  readonly from: number;
  readonly to: number;
  /** Widths of bar, space, bar … in dots. */
  readonly widths: readonly number[];
}

/**
 * Where a code that is drawn anew comes to lie on the output page.
 * @param matrix source page → output page, pt, y down; turns by quarters
 */
export function barRow(code: RedrawnCode, matrix: Matrix, grid: Grid): BarRow {
  const perPt = dotsPerPt(grid);
  const [a, b, c, d] = matrix;
  const sideways = Math.abs(a) < Math.abs(b);
  const level = code.run === 'level';
  const run = level === sideways ? 'upright' : 'level';
  const backwards = (level ? a + b : c + d) < 0;
  const old = applyToBox(matrix, code.box);
  const middle = level ? applyToPoint(matrix, code.middle, code.box.y) : applyToPoint(matrix, code.box.x, code.middle);
  const modules = backwards ? code.modules.toReversed() : code.modules;
  const widths = modules.map((each) => each * code.moduleDots);
  const long = sum(widths);
  const [first, last] = run === 'level' ? [old.y, old.y + old.height] : [old.x, old.x + old.width];
  return {
    run,
    start: Math.round((run === 'level' ? middle.x : middle.y) * perPt - long / 2),
    from: Math.round(first * perPt),
    to: Math.round(last * perPt),
    widths,
  };
}

/** What a rasteriser may paint of the source's own bars beyond their box, in dots: beyond their ends there may be writing, beside them is paper. */
const HAIR = { ends: 1, sides: 3 };

/**
 * Bars end so much short of the line between two dots, in dots: rasterisers that paint every dot that ink touches then paint none too many, and those that
 * round or look at a dot's middle paint none too few.
 */
const SHORT = 0.02;

/** PDF operators that paint the source's bars white and the new ones black. */
export function redrawOperators(codes: readonly RedrawnCode[], matrix: Matrix, grid: Grid, pageHeight: number): string {
  const perPt = dotsPerPt(grid);
  const rect = ({ x, y, width, height }: Box): string => `${num(x)} ${num(pageHeight - y - height)} ${num(width)} ${num(height)} re`;
  return codes
    .map((code) => {
      const bars = barsOf(barRow(code, matrix, grid)).map((bar) =>
        rect({
          x: (bar.x + SHORT) / perPt,
          y: (bar.y + SHORT) / perPt,
          width: (bar.width - 2 * SHORT) / perPt,
          height: (bar.height - 2 * SHORT) / perPt,
        }),
      );
      return `q\n1 g\n${rect(oldBars(code, matrix, perPt))} f\n0 g\n${bars.join('\n')} f\nQ`;
    })
    .join('\n');
}

/** All of the output page (pt) that drawing a code anew may change. */
export function redrawnArea(code: RedrawnCode, matrix: Matrix, grid: Grid): Box {
  const perPt = dotsPerPt(grid);
  const bars = barsOf(barRow(code, matrix, grid)).map(({ x, y, width, height }) => ({
    x: x / perPt,
    y: y / perPt,
    width: width / perPt,
    height: height / perPt,
  }));
  return union([oldBars(code, matrix, perPt), ...bars]) ?? oldBars(code, matrix, perPt);
}

/** What is painted white, pt. */
function oldBars({ box, run }: RedrawnCode, matrix: Matrix, perPt: number): Box {
  const old = applyToBox(matrix, box);
  const sideways = Math.abs(matrix[0]) < Math.abs(matrix[1]);
  const [across, down] = (run === 'level') === sideways ? [HAIR.ends, HAIR.sides] : [HAIR.sides, HAIR.ends];
  const [x, y] = [across / perPt, down / perPt];
  return { x: old.x - x, y: old.y - y, width: old.width + 2 * x, height: old.height + 2 * y };
}

/** The bars alone, in dots. */
function barsOf({ run, start, from, to, widths }: BarRow): Box[] {
  const bars: Box[] = [];
  let at = start;
  widths.forEach((width, index) => {
    if (index % 2 === 0) {
      bars.push(run === 'level' ? { x: at, y: from, width, height: to - from } : { x: from, y: at, width: to - from, height: width });
    }
    at += width;
  });
  return bars;
}
