import { MM_PER_IN } from '../geometry/length.js';
import type { Grid } from '../geometry/grid.js';
import type { Code, GreyRaster } from '../reading/source.js';
import { matrixGrid, type MatrixGrid } from './matrix-grid.js';
import { moduleModulation } from './module-modulation.js';
import { gradeOf } from './simulated-grade.js';

/** What was measured of a matrix or stacked code on the printer's dots. Simulated: no verifier measured anything; paper and heat are not simulated. */
export interface MatrixMeasure {
  /** Modules across and down the page; of PDF417 modules one way and rows of bars the other. */
  readonly columns: number;
  readonly rows: number;
  /** Width of a module: the mean of both directions; of PDF417 that along its rows. */
  readonly moduleDots: number;
  readonly moduleMm: number;
  readonly moduleMil: number;
  /** The lesser of both directions, dots; of PDF417 that along its rows. */
  readonly leastModuleDots: number;
  /** Difference of both directions against their mean (axial non-uniformity). Undefined for PDF417, whose rows have a height of their own. */
  readonly axial: number | undefined;
  /** Of PDF417: height of a row in modules. */
  readonly rowHeight: number | undefined;
  /** How far the line between modules that is farthest off lies from its even place, in modules over both directions (grid non-uniformity). */
  readonly gridOff: number;
  /** Clear paper over a whole side on the worst of the four, in modules, at most `MOST_QUIET`. */
  readonly quiet: number;
  /** The least clearly printed module, 0 to 1: without gain, and with the stated gain off and on, the lesser. */
  readonly modulation: number;
  readonly modulationAtGain: number;
  /** Share of the error correction that reading these dots did not need; undefined where the reader did not tell. */
  readonly unusedCorrection: number | undefined;
  /** 0 to 4, one decimal: the least of all without gain. Stricter than the standard, which lets error correction make up for single modules. */
  readonly grade: number;
}

/** More quiet zone than this is not measured, modules. */
const MOST_QUIET = 10;

/**
 * Measures a QR, Data Matrix, Aztec or PDF417 code on a page of dots. Undefined for other codes, for slanted ones, and where the dots show no even modules.
 * @param dots 1 bit a dot: 0 or 255
 * @param gain change of an element's whole width in dots that the printer may make either way, up to 2
 */
export function measureMatrix(dots: GreyRaster, code: Code, grid: Grid, gain: number): MatrixMeasure | undefined {
  const lines = matrixGrid(dots, code);
  if (!lines) return undefined;
  const { x, y } = lines;
  const stacked = code.symbology === 'PDF417';
  const [along, over] = code.turn === 0 || code.turn === 180 ? [x, y] : [y, x];
  const moduleDots = stacked ? along.module : (x.module + y.module) / 2;
  const axial = stacked ? undefined : Math.abs(x.module - y.module) / moduleDots;
  const gridOff = Math.hypot(x.farthestOff / x.module, y.farthestOff / y.module);
  const [modulation, modulationAtGain] = moduleModulation(dots, lines, grid, gain);
  const { unusedCorrection } = code;
  const grades = [
    gradeOf('gridOff', gridOff),
    gradeOf('moduleModulation', modulation),
    ...(axial === undefined ? [] : [gradeOf('axial', axial)]),
    ...(unusedCorrection === undefined ? [] : [gradeOf('unusedCorrection', unusedCorrection)]),
  ];
  return {
    columns: x.count,
    rows: y.count,
    moduleDots,
    moduleMm: (moduleDots / grid.dpi) * MM_PER_IN,
    moduleMil: (moduleDots / grid.dpi) * 1000,
    leastModuleDots: stacked ? along.module : Math.min(x.module, y.module),
    axial,
    rowHeight: stacked ? over.module / along.module : undefined,
    gridOff,
    quiet: quietOf(dots, lines, moduleDots),
    modulation,
    modulationAtGain,
    unusedCorrection,
    grade: Math.min(...grades),
  };
}

function quietOf(dots: GreyRaster, { x, y }: MatrixGrid, module: number): number {
  const [x0, x1] = [Math.round(x.start - x.growth / 2), Math.round(x.start + x.count * x.module + x.growth / 2)];
  const [y0, y1] = [Math.round(y.start - y.growth / 2), Math.round(y.start + y.count * y.module + y.growth / 2)];
  const most = Math.ceil(MOST_QUIET * module);
  const least = Math.min(
    paperFrom(dots, 'column', x0 - 1, -1, y0, y1, most),
    paperFrom(dots, 'column', x1, 1, y0, y1, most),
    paperFrom(dots, 'row', y0 - 1, -1, x0, x1, most),
    paperFrom(dots, 'row', y1, 1, x0, x1, most),
  );
  return Math.min(MOST_QUIET, least / module);
}

/** How many columns or rows beside an edge are clear from `from` up to before `to`. */
function paperFrom(dots: GreyRaster, of: 'column' | 'row', edge: number, step: 1 | -1, from: number, to: number, most: number): number {
  // An outermost line may have been rounded to the next dot.
  const start = isClear(dots, of, edge, from, to) ? edge : edge + step;
  let paper = 0;
  while (paper < most && isClear(dots, of, start + step * paper, from, to)) paper += 1;
  return paper;
}

/** Beyond the page's edge there is no paper. */
function isClear({ data, width, height }: GreyRaster, of: 'column' | 'row', line: number, from: number, to: number): boolean {
  const [lines, most, first, step] = of === 'column' ? [width, height, line, width] : [height, width, line * width, 1];
  if (line < 0 || line >= lines || (to > from && (from < 0 || to > most))) return false;
  for (let place = from, at = first + from * step; place < to; place++, at += step) if ((data[at] as number) < 128) return false;
  return true;
}
