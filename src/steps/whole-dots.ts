import { sum } from '../geometry/sum.js';
import { dotsPerPt, type Grid } from '../geometry/grid.js';
import { MM_PER_IN, mmToPt } from '../geometry/length.js';
import type { Media } from '../geometry/media.js';
import { arePixelsWholeDots, fits, place } from '../press/place.js';
import { codeUses } from '../proof/code-role.js';
import { LEAST_DOTS, LEAST_MODULE, leastModuleDots } from '../proof/limits.js';
import { barsAndPaper, sourceBars, type SourceBars } from '../proof/source-bars.js';
import type { Code, SourcePage } from '../reading/source.js';
import type { RedrawnCode, Sheet } from '../sheet/sheet.js';
import { liesOnDots } from './lies-on-dots.js';

/** The whole label is moved to whole dots by no more than this: nothing on it is seen to change, and no fixed size is left. */
const SNAP = 0.02;
/** A code alone may grow or shrink so far in its place: 13 mil become 3 dots at 203 dpi (1.136), 15 mil 4 or 5 at 300 (0.889, 1.111). */
const REDRAW = { least: 0.8, most: 1.25 };
/** Quiet zone each side in modules: ISO/IEC 15417 4.4.2 (handbook section 2.1, secondary); 10 also for ITF and Code 39 (section 4.4). */
const QUIET = 10;
/** A code is not moved aside by more, pt (1.5 mm): it is to be found in its place. */
const ASIDE = mmToPt(1.5);

export interface WholeDotsContext {
  readonly media: Media;
  readonly grid: Grid;
  /** The least factor that the recipe allows. */
  readonly floor: number;
  /** Whether something on the label has a fixed size, so that the label as a whole keeps its own. */
  readonly fixedSize: boolean;
}

/**
 * Brings the bars of a label onto whole dots: the label as a whole where a factor within 2 % and a shift of less than a dot do it for its leading code;
 * every other row of bars by having it drawn anew in its place, where its quiet zones still fit. What can't be brought there is left as it is,
 * and proof judges it.
 */
export async function ontoWholeDots(sheet: Sheet, page: SourcePage, context: WholeDotsContext): Promise<Sheet> {
  const { grid } = context;
  const picture = page.pictureUnder(sheet.box);
  if (picture && arePixelsWholeDots(sheet.scale, grid, picture)) return sheet;
  const fineness = 2 * dotsPerPt(grid);
  const codes = await page.codes(sheet.box, fineness);
  const bars = codes.flatMap((code) => sourceBars(page, code, sheet.box, fineness) ?? []);
  const leading = leadingOf(bars, codes);
  if (!leading) return sheet;
  // A picture's codes are drawn anew, so nothing is won by moving the rest.
  const bound = isPicture(page, leading);
  const scaled =
    bound || codes.some(({ symbology }) => symbology === 'MaxiCode') || context.fixedSize ? sheet : snapped(sheet, leading, context);
  const other = bars.filter(({ run }) => run !== leading.run).sort(longest)[0];
  const [along, across] = [leading.start, other?.start ?? 0];
  const onDots = leading.run === 'level' ? { x: along, y: across } : { x: across, y: along };
  const placed: Sheet = bound ? scaled : { ...scaled, onDots };
  const { matrix } = place(placed, 1, context.media, grid, picture);
  if (matrix === undefined) return sheet;
  const redrawn = bars
    .filter((each) => isPicture(page, each) || !liesOnDots(page, each, matrix, placed.scale, grid))
    .flatMap((each) => redrawnOf(each, page, placed, grid) ?? []);
  return {
    ...placed,
    ...(redrawn.length > 0 ? { redrawn: redrawn.map(({ plan }) => plan) } : {}),
    evidence: [...placed.evidence, ...redrawn.map(({ evidence }) => evidence)],
  };
}

/** A picture's pixels that are no whole dots are drawn unevenly, wherever its bars' edges are meant to be. */
const isPicture = (page: SourcePage, { code }: SourceBars): boolean => page.skew !== 0 || page.pictureUnder(code.box) !== undefined;

const longest = (a: SourceBars, b: SourceBars): number => b.end - b.start - (a.end - a.start);

/** The row of bars that matters most: the tracking code's, or else the longest. */
function leadingOf(bars: readonly SourceBars[], codes: readonly Code[]): SourceBars | undefined {
  const uses = codeUses(codes);
  const isTracking = ({ code }: SourceBars): boolean => uses[codes.indexOf(code)]?.role === 'tracking';
  return bars.toSorted((a, b) => Number(isTracking(b)) - Number(isTracking(a)) || longest(a, b))[0];
}

/** The narrowest module that may be printed on this grid, in dots. */
const leastDots = (grid: Grid): number => Math.max(LEAST_DOTS.value, Math.ceil((LEAST_MODULE.value / MM_PER_IN) * grid.dpi - 0.02));

/** The snap rule of handbook section 5.4: k = round(module in dots); the factor that makes it k. */
function snapped(sheet: Sheet, { module }: SourceBars, { media, grid, floor }: WholeDotsContext): Sheet {
  const perPt = dotsPerPt(grid);
  const dots = Math.round(module * sheet.scale * perPt);
  const scale = dots / (module * perPt);
  const change = scale / sheet.scale - 1;
  if (Math.abs(change) > SNAP || dots < leastDots(grid) || (scale < 1 && scale < floor - SNAP)) return sheet;
  // Bars as good as whole dots: what is left is the rounding of the file's figures.
  if (Math.abs(change) < 1e-5) return sheet;
  const moved = { ...sheet, scale };
  if (change > 0 && !fits(moved, media)) return sheet;
  return { ...moved, evidence: [...sheet.evidence, `at ${(scale * 100).toFixed(1)} % the leading bars are ${dots} whole dots wide`] };
}

function redrawnOf(
  bars: SourceBars,
  page: SourcePage,
  sheet: Sheet,
  grid: Grid,
): { readonly plan: RedrawnCode; readonly evidence: string } | undefined {
  const toDots = sheet.scale * dotsPerPt(grid);
  const dots = bars.module * toDots;
  // Bars that the channel itself drew under the least that may be printed say that the label was shrunk: not for a press to mend.
  if (dots < leastModuleDots(grid)) return undefined;
  const around = barsAndPaper(page, bars, sheet.box, 2 * dotsPerPt(grid));
  if (!around) return undefined;
  const choices = [Math.floor(dots), Math.ceil(dots)]
    .filter((each) => each >= leastDots(grid) && each / dots >= REDRAW.least && each / dots <= REDRAW.most)
    .sort((a, b) => Math.abs(Math.log(a / dots)) - Math.abs(Math.log(b / dots)));
  for (const moduleDots of new Set(choices)) {
    const middle = middleOf(bars, around, moduleDots, toDots);
    if (middle === undefined) continue;
    const { code, run } = bars;
    const modules = wholeWidths(bars.modules, moduleDots);
    const plan: RedrawnCode = { box: around.box, run, modules, moduleDots, middle };
    const was = dots.toFixed(2);
    return {
      plan,
      evidence: `${/^[AI]/.test(code.symbology) ? 'an' : 'a'} ${code.symbology} code is drawn anew in its place, ${moduleDots} whole dots a module (the source's are ${was})`,
    };
  }
  return undefined;
}

/** Widths in modules that are whole dots each: a wide bar of ITF or Code 39 is rounded to dots once for all. */
const wholeWidths = (modules: readonly number[], moduleDots: number): number[] =>
  modules.map((each) => Math.round(each * moduleDots) / moduleDots);

/** Where the middle of the new bars lies (pt along the run): the old middle, or as near to it as quiet zones allow; undefined when they don't fit. */
function middleOf(
  { start, end, modules, module }: SourceBars,
  { before, after }: { readonly before: number; readonly after: number },
  moduleDots: number,
  toDots: number,
): number | undefined {
  const half = (sum(wholeWidths(modules, moduleDots)) * moduleDots) / toDots / 2;
  // Paper that the source's own quiet zone lacks is not asked for.
  const quiet = (paper: number): number => (Math.min(QUIET, paper / module) * moduleDots) / toDots;
  // Rounding to a whole dot may take half of one.
  const slack = 0.5 / toDots;
  const least = start - before + quiet(before) + half + slack;
  const most = end + after - quiet(after) - half - slack;
  const [middle, moved] = [(start + end) / 2, Math.min(most, Math.max(least, (start + end) / 2))];
  return least > most || Math.abs(moved - middle) > ASIDE ? undefined : moved;
}
