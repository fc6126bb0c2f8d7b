import { sum } from '../geometry/sum.js';
import { STOP } from '../press/code128.js';
import type { Symbology } from '../reading/source.js';
import { isSymbol, modulesOf, valueOf } from './code128.js';

/** A row of bars, understood. */
export interface BarModules {
  /** Bar, space, bar … in modules. Whole for Code 128; for ITF and Code 39 narrow is 1, and wide the symbol's own ratio. */
  readonly modules: readonly number[];
  /** Length of a module, in what the widths were given in: the whole symbol's length by its number of modules. */
  readonly module: number;
}

/** How a row of bars is to come out. */
export interface PlannedBars {
  /** Dots a module. */
  readonly moduleDots: number;
  /** Of ITF and Code 39: a wide element in modules. */
  readonly wide: number | undefined;
}

/** The widths that elements are planned to have, in modules: narrow ones of few dots come out by a share off their mean, and wide ones by another. */
export const plannedModules = (modules: readonly number[], { wide }: PlannedBars): readonly number[] =>
  wide === undefined ? modules : modules.map((each) => (each > 1 ? wide : 1));

/** Of the modules of ITF or Code 39: a wide element; undefined for a code whose elements are whole modules. */
export const wideOf = (modules: readonly number[], symbology: Symbology): number | undefined =>
  symbology === 'Code 128' ? undefined : Math.max(...modules);

/** A wide element is so many times a narrow one (ISO/IEC 16390 and 16388: 2 to 3; from memory). */
const RATIO = { least: 1.8, most: 3.4 };

/**
 * What the widths of bar, space, bar … of a linear code are in modules, in the reading direction or against it. Undefined when they are no such symbol:
 * a smear, a speck, a cut.
 */
export function barModules(widths: readonly number[], symbology: Symbology): BarModules | undefined {
  if (symbology !== 'Code 128') return twoWidths(widths, symbology);
  const forward = code128(widths);
  if (forward) return forward;
  const backward = code128(widths.toReversed());
  return backward && { ...backward, modules: backward.modules.toReversed() };
}

function code128(widths: readonly number[]): BarModules | undefined {
  // Six elements a character, and the stop's last bar.
  if (widths.length % 6 !== 1 || widths.length < 25) return undefined;
  const values: number[] = [];
  for (let first = 0; first + 1 < widths.length; first += 6) {
    const value = valueOf(widths.slice(first, first + 6));
    if (value === undefined) return undefined;
    values.push(value);
  }
  if (!isSymbol(values)) return undefined;
  const modules = values.flatMap((value) => modulesOf(value));
  if (modules.length !== widths.length || values.indexOf(STOP) !== values.length - 1) return undefined;
  return { modules, module: sum(widths) / sum(modules) };
}

/** ITF and Code 39: every element is narrow or wide. */
function twoWidths(widths: readonly number[], symbology: Symbology): BarModules | undefined {
  const fits =
    symbology === 'ITF' ? widths.length >= 17 && (widths.length - 7) % 10 === 0 : widths.length >= 29 && (widths.length + 1) % 10 === 0;
  if (!fits) return undefined;
  const sorted = widths.toSorted((a, b) => a - b);
  // Narrow and wide ones lie on either side of the widest gap; on coarse dots others may be as wide, but leave no symbol.
  const gaps = sorted
    .map((width, at) => ({ at, wide: at === 0 ? 0 : width - (sorted[at - 1] ?? 0) }))
    .sort((a, b) => b.wide - a.wide)
    .slice(0, MOST_GAPS);
  for (const { at, wide } of gaps) {
    if (wide === 0) break;
    const [narrow, broad] = [mean(sorted.slice(0, at)), mean(sorted.slice(at))];
    const ratio = broad / narrow;
    if (!(ratio >= RATIO.least && ratio <= RATIO.most)) continue;
    const wideOnes = widths.map((width) => width >= (sorted[at] ?? 0));
    if (isPlausible(wideOnes, symbology)) return { modules: wideOnes.map((each) => (each ? ratio : 1)), module: narrow };
  }
  return undefined;
}

/** Between six widths, from 2 to 7 dots: narrow elements of 3 and wide ones of 6, each a dot off. */
const MOST_GAPS = 5;

/** ITF: start of four narrow ones, stop of a wide and two narrow, two wide of five bars and of five spaces in each pair. Code 39: three wide of nine. */
function isPlausible(wide: readonly boolean[], symbology: Symbology): boolean {
  const count = (elements: readonly boolean[]): number => elements.filter(Boolean).length;
  if (symbology === 'ITF') {
    const whole = (row: readonly boolean[]): boolean => {
      if (count(row.slice(0, 4)) !== 0 || row.at(-3) !== true || row.at(-2) === true || row.at(-1) === true) return false;
      for (let first = 4; first + 10 <= row.length - 3; first += 10) {
        const pair = row.slice(first, first + 10);
        if (count(pair.filter((_, index) => index % 2 === 0)) !== 2 || count(pair.filter((_, index) => index % 2 === 1)) !== 2)
          return false;
      }
      return true;
    };
    return whole(wide) || whole(wide.toReversed());
  }
  for (let first = 0; first < wide.length; first += 10) {
    if (count(wide.slice(first, first + 9)) !== 3 || wide[first + 9] === true) return false;
  }
  return true;
}

const mean = (values: readonly number[]): number => sum(values) / Math.max(1, values.length);
