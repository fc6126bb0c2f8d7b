import { MM_PER_IN } from '../geometry/length.js';
import type { Grid } from '../geometry/grid.js';
import type { Code, GreyRaster } from '../reading/source.js';
import { MAXICODE_MODULE, MAXICODE_WIDTH } from './limits.js';

/** What was measured of a MaxiCode on the printer's dots. */
export interface MaxiCodeMeasure {
  /** Against its one size. */
  readonly scale: number;
  /** Width of the symbol alone, without its clear paper. */
  readonly widthMm: number;
  /** Clear paper on the worst of the four sides, in modules, at most `MOST_QUIET`. */
  readonly quiet: number;
  /** Dots a module. */
  readonly moduleDots: number;
}

/** More clear paper than this is not measured, modules. */
const MOST_QUIET = 2;
/** A side is looked for so far inwards and outwards of where the reader has it, modules: its corners may be the one size about the finder's middle. */
const SIDE_OFF = 1.5;
/** Less paper than this inside the symbol is between its rows, modules. */
const HAIR = 0.25;

/**
 * Measures the size of a MaxiCode and the clear paper around it; where something touches it, its side is taken to be where the reader has it.
 * Undefined for other codes and slanted ones.
 * @param dots 1 bit a dot: 0 or 255
 */
export function measureMaxiCode(dots: GreyRaster, code: Code, grid: Grid): MaxiCodeMeasure | undefined {
  if (code.symbology !== 'MaxiCode' || code.turn === undefined) return undefined;
  const { box, turn } = code;
  const { pixelsPerPt: perPt, origin } = dots;
  const module = (MAXICODE_MODULE / MM_PER_IN) * grid.dpi;
  const [x0, x1] = [Math.round((box.x - origin.x) * perPt), Math.round((box.x + box.width - origin.x) * perPt)];
  const [y0, y1] = [Math.round((box.y - origin.y) * perPt), Math.round((box.y + box.height - origin.y) * perPt)];
  const sides = {
    left: sideFrom(dots, 'column', x0, -1, y0, y1, module),
    right: sideFrom(dots, 'column', x1 - 1, 1, y0, y1, module),
    top: sideFrom(dots, 'row', y0, -1, x0, x1, module),
    foot: sideFrom(dots, 'row', y1 - 1, 1, x0, x1, module),
  };
  const [start, end] = turn % 180 === 0 ? [sides.left, sides.right] : [sides.top, sides.foot];
  const [first, last] = turn % 180 === 0 ? [x0, x1 - 1] : [y0, y1 - 1];
  const widthDots = (end.ink ?? last) + 1 - (start.ink ?? first);
  const widthMm = (widthDots / grid.dpi) * MM_PER_IN;
  const scale = widthMm / MAXICODE_WIDTH;
  const moduleDots = module * scale;
  const least = Math.min(...Object.values(sides).map(({ paper }) => paper));
  return { scale, widthMm, quiet: Math.min(MOST_QUIET, least / moduleDots), moduleDots };
}

/** The outermost line of ink of one side, undefined where no clear line ends it, and how many clear lines follow. */
interface Side {
  readonly ink: number | undefined;
  readonly paper: number;
}

/** From inside the symbol outwards, whose rows and columns stand close together. */
function sideFrom(dots: GreyRaster, of: 'column' | 'row', side: number, step: 1 | -1, from: number, to: number, module: number): Side {
  const reach = Math.round(SIDE_OFF * module);
  for (let away = -reach; away <= reach; away++) {
    const line = side + step * away;
    if (!isClear(dots, of, line, from, to)) continue;
    let paper = 1;
    while (paper < Math.ceil(MOST_QUIET * module) && isClear(dots, of, line + step * paper, from, to)) paper += 1;
    // Some programs leave a hair between the rows.
    if (away < 0 && paper < HAIR * module) away += paper;
    else return { ink: line - step, paper };
  }
  return { ink: undefined, paper: 0 };
}

/** Beyond the page's edge there is no paper. */
function isClear({ data, width, height }: GreyRaster, of: 'column' | 'row', line: number, from: number, to: number): boolean {
  const [lines, most, first, step] = of === 'column' ? [width, height, line, width] : [height, width, line * width, 1];
  if (line < 0 || line >= lines || from < 0 || to > most) return false;
  for (let place = from, at = first + from * step; place < to; place++, at += step) if ((data[at] as number) < 128) return false;
  return true;
}
