import { sum } from '../geometry/sum.js';
import { bottom, intersection, right, type Box } from '../geometry/box.js';
import type { Code, GreyRaster, SourcePage } from '../reading/source.js';
import { transposed } from '../reading/transpose.js';
import { barExtent } from './bar-extent.js';
import { barModules } from './bar-modules.js';
import { edgesAlong, fitModules, symbolEdges, widthsOf } from './edges.js';
import { isLinear } from './linear.js';

/** The bars of a linear code of the source, measured along their run; pt on the source page. */
export interface SourceBars {
  readonly code: Code;
  readonly run: 'level' | 'upright';
  /** Bar, space, bar … from the left or the top of the page. */
  readonly modules: readonly number[];
  /** Length of a module. */
  readonly module: number;
  /** Where the first bar begins and the last one ends along the run, to a few thousandths of a pt. */
  readonly start: number;
  readonly end: number;
}

/** The bars of a code and the paper about them, pt on the source page. */
export interface BarsAndPaper {
  /** The bars and nothing else. */
  readonly box: Box;
  /** Clear paper before the first and behind the last bar over their whole height. */
  readonly before: number;
  readonly after: number;
}

/** How much of the bars' height is looked at, about the middle. */
const SEEN = 0.36;
/** A reader's corners are a module or two short: so much more is looked at along the run, as a share of it and pt. */
const SHORT = { share: 0.06, pt: 3 };
/** Paper that is looked at beside and around the bars, pt: quiet zone, and growth. */
const BESIDE = 48;
const ABOVE = 60;
/** A reader mostly sees the whole height: looked at first, pt. */
const CLOSE_ABOVE = 6;

/** How a code's bars run, and its box along and across the run. */
interface Run {
  readonly level: boolean;
  readonly from: number;
  readonly to: number;
  readonly top: number;
  readonly foot: number;
}

function runOf({ box, turn }: Pick<Code, 'box' | 'turn'>): Run | undefined {
  if (turn === undefined) return undefined;
  return turn % 180 === 0
    ? { level: true, from: box.x, to: right(box), top: box.y, foot: bottom(box) }
    : { level: false, from: box.y, to: bottom(box), top: box.x, foot: right(box) };
}

/** A part of the page in which the row of bars runs along x, or undefined when nothing of it lies in `region`. */
function drawn(page: SourcePage, run: Run, region: Box, fineness: number): GreyRaster | undefined {
  const [along, across] = [run.to - run.from, run.foot - run.top];
  const wanted = run.level
    ? { x: run.from, y: run.top, width: along, height: across }
    : { x: run.top, y: run.from, width: across, height: along };
  const part = intersection(wanted, region);
  if (!part) return undefined;
  const picture = page.pictureUnder(part);
  const raster = page.render(part, picture && picture.pixelsPerPt >= fineness ? 'own' : fineness);
  return run.level ? raster : transposed(raster);
}

/**
 * Measures the bars of a linear code on its page. Undefined for other codes, slanted ones, and bars that are not clearly one symbol.
 * @param region the label's box: nothing beyond it counts
 * @param fineness pixels per pt; a finer picture is measured at its own pixels
 */
export function sourceBars(page: SourcePage, code: Code, region: Box, fineness: number): SourceBars | undefined {
  const known = measured.get(code);
  if (known && known.fineness === fineness && known.region === region) return known.bars;
  const bars = measureBars(page, code, region, fineness);
  measured.set(code, { region, fineness, bars });
  return bars;
}

/** Measured once: the plan and the proof ask for the same. */
const measured = new WeakMap<Code, { readonly region: Box; readonly fineness: number; readonly bars: SourceBars | undefined }>();

function measureBars(page: SourcePage, code: Code, region: Box, fineness: number): SourceBars | undefined {
  const run = runOf(code);
  if (!run || !isLinear(code)) return undefined;
  const more = SHORT.share * (run.to - run.from) + SHORT.pt;
  const [middle, high] = [(run.top + run.foot) / 2, run.foot - run.top];
  const strip = { ...run, from: run.from - more, to: run.to + more, top: middle - (SEEN / 2) * high, foot: middle + (SEEN / 2) * high };
  const raster = drawn(page, strip, region, fineness);
  if (!raster) return undefined;
  const { pixelsPerPt: perPt, origin } = raster;
  const profile = meanRow(raster);
  const edges = symbolEdges(edgesAlong(profile, 0, 0, profile.width));
  const found = barModules(widthsOf(edges), code.symbology);
  if (!found) return undefined;
  const { start, module } = fitModules(edges, found.modules);
  const length = sum(found.modules) * module;
  return {
    code,
    run: run.level ? 'level' : 'upright',
    modules: found.modules,
    module: module / perPt,
    start: origin.x + start / perPt,
    end: origin.x + (start + length) / perPt,
  };
}

/** All rows in one: what a scan's noise does to single rows is gone. */
function meanRow({ width, height, data, ...raster }: GreyRaster): GreyRaster {
  const sums = new Float64Array(width);
  for (let y = 0, at = 0; y < height; y++) for (let x = 0; x < width; x++, at++) sums[x] = (sums[x] as number) + (data[at] as number);
  return { ...raster, width, height: 1, data: Uint8Array.from(sums, (sum) => Math.round(sum / height)) };
}

/** How high measured bars stand, and how much paper is clear beside them. Undefined when they lie outside `region`. */
export function barsAndPaper(page: SourcePage, bars: SourceBars, region: Box, fineness: number): BarsAndPaper | undefined {
  const run = runOf(bars.code);
  if (!run) return undefined;
  const near = extentWithin(page, run, bars, region, fineness, CLOSE_ABOVE);
  return near?.isCut === true ? extentWithin(page, run, bars, region, fineness, ABOVE) : near;
}

/** @returns whether the bars reach to the edge of what was looked at, too */
function extentWithin(
  page: SourcePage,
  run: Run,
  { start, end }: SourceBars,
  region: Box,
  fineness: number,
  above: number,
): (BarsAndPaper & { readonly isCut: boolean }) | undefined {
  const raster = drawn(
    page,
    { ...run, from: start - BESIDE, to: end + BESIDE, top: run.top - above, foot: run.foot + above },
    region,
    fineness,
  );
  if (!raster) return undefined;
  const { pixelsPerPt: perPt, origin } = raster;
  const row = Math.floor(((run.top + run.foot) / 2 - origin.y) * perPt);
  if (row < 0 || row >= raster.height) return undefined;
  const { from, to, before, after } = barExtent(raster, (start - origin.x) * perPt, (end - origin.x) * perPt, row);
  const [top, high] = [origin.y + from / perPt, (to - from) / perPt];
  const box = run.level ? { x: start, y: top, width: end - start, height: high } : { x: top, y: start, width: high, height: end - start };
  return { box, before: before / perPt, after: after / perPt, isCut: from === 0 || to === raster.height };
}
