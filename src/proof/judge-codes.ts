import { mean } from '../geometry/sum.js';
import { dotsPerPt, gridOf, twinOf, type Grid } from '../geometry/grid.js';
import { intersection } from '../geometry/box.js';
import { invert, type Matrix } from '../geometry/placement.js';
import { findFourState } from '../reading/four-state.js';
import type { Code, GreyRaster, SourcePage } from '../reading/source.js';
import { isLabel, type ProofPlan, type Reason, type Sheet } from '../sheet/sheet.js';
import { sourcePixelsPerPt } from './code-areas.js';
import { isEqual, moved, type CodesCompared } from './compare-codes.js';
import { contentFaults } from './code-content.js';
import { wideOf, type PlannedBars } from './bar-modules.js';
import { cutCodes } from './cut-codes.js';
import { fourStateWords, judgeFourState } from './four-state-size.js';
import { isLinear } from './linear.js';
import { leastModuleDots } from './limits.js';
import { brokenMatrixLimit, matrixNotes } from './matrix-verdict.js';
import { measureCode, type CodeMeasure } from './measure-code.js';
import { brokenMaxiCodeLimit, maxiCodeNotes } from './maxicode-verdict.js';
import { measureMaxiCode, type MaxiCodeMeasure } from './measure-maxicode.js';
import { measureMatrix, type MatrixMeasure } from './measure-matrix.js';
import { moduleWidth } from './module-width.js';
import { readAndCompare } from './read-back.js';
import { sourceBars } from './source-bars.js';
import * as reasons from './reasons.js';
import { judgeSchemes } from './scheme-verdict.js';
import { withTracking } from './tracking-proved.js';
import { hasUnreadMaxiCode, unreadRows } from './unread-rows.js';
import { brokenLimit } from './verdict.js';

/** A code read back from the output. */
export interface ProvedCode {
  /** As read on the output page, pt, y down. */
  readonly code: Code;
  /** Width of a module in dots of the grid; undefined for matrix codes. */
  readonly moduleDots: number | undefined;
  /** Of a row of bars: what was measured on the dots. */
  readonly measure?: CodeMeasure | undefined;
  /** Of a matrix or stacked code: what was measured on the dots. */
  readonly matrix?: MatrixMeasure | undefined;
  readonly maxicode?: MaxiCodeMeasure | undefined;
  /** Of a row of bars on a page that stays vector: its decodability on the grid that a driver may use instead; 0 where it can't be read there. */
  readonly onTwin?: number | undefined;
  /** Dots a module as planned, for a row of bars whose source tells; what the press drew anew is planned otherwise. */
  readonly plannedDots?: number | undefined;
  /** Whether the press drew it anew, and dots a module. */
  readonly redrawn?: number | undefined;
  /** How the bars are to come out, drawn anew or as the source has them; left out where that is not known. */
  readonly plannedBars?: PlannedBars | undefined;
}

/** What was found of a page: whether it may be printed, and the codes that came back equal. */
export interface Judged {
  readonly verdict: 'proved' | Reason;
  readonly codes: readonly ProvedCode[];
  /** What people should know of a label that is printed all the same, one sentence each; left out: nothing. */
  readonly notes?: readonly string[];
}

export const hold = (verdict: Reason, codes: readonly ProvedCode[] = []): Judged => ({ verdict, codes });

/** A drawn page as codes are read from it. */
export interface DrawnPage {
  /** With soft edges, which carry fractions of a dot. */
  readonly grey: GreyRaster;
  /** As it is burned. */
  readonly bits: GreyRaster;
  readonly grid: Grid;
  /** Draws the bars of a code of it in 1 bit on another grid; left out where the page goes out as dots, which no driver redraws. */
  readonly onGrid?: ((code: Code, grid: Grid) => GreyRaster) | undefined;
}

/** Half a dot either way (the default gain of a direct-thermal head, common practice, no source). */
export const DEFAULT_GAIN = 0.5;

/** Reads the codes of a sheet's region and of what was drawn of it, compares them, and measures them on the dots. */
export async function judgeCodes(page: SourcePage, sheet: Sheet, matrix: Matrix, drawn: DrawnPage): Promise<Judged> {
  const { grey, bits, grid } = drawn;
  const pixelsPerPt = sourcePixelsPerPt(sheet, grid);
  const cut = await cutCodes(page, sheet.box, pixelsPerPt);
  if (cut.codes.length > 0) return hold(reasons.cut(cut.codes));
  if (cut.unread.length > 0 && isLabel(sheet)) return hold(reasons.cutBars);
  const compared = await readAndCompare(page, sheet, matrix, bits, pixelsPerPt);
  const required = isLabel(sheet);
  if (required && compared.same.length === 0 && isEqual(compared)) return hold(reasons.nothingToProve);
  const plan: ProofPlan = sheet.proof ?? { codes: 'required' };
  const proved = compared.same.map(({ source, output }) =>
    measured(output, sheet, matrix, drawn, plan.gain ?? DEFAULT_GAIN, plannedBars(page, source, sheet, grid)),
  );
  const difference = reasons.codesDiffer(compared, sheet);
  const fine = required ? tooFine(compared, proved, matrix, grey, grid) : undefined;
  // Bars too fine are why a code is lost: the cause says more than the effect.
  if (fine && (difference === undefined || difference.code === 'verify/code-lost') && !allows(plan, 'module-width')) {
    return hold(reasons.tooFine(fine.code, fine.moduleDots, grid, sheet), proved);
  }
  if (difference) return hold(difference, proved);
  if (!required) return { verdict: 'proved', codes: proved };
  const weighed = proved.map((each) => ({
    ...each,
    breaks:
      brokenLimit(each, plan, grid, sheet) ?? brokenMatrixLimit(each, plan, grid, sheet) ?? brokenMaxiCodeLimit(each, plan, sheet.scale),
  }));
  const broken = weighed.find(({ breaks }) => breaks !== undefined);
  if (broken?.breaks?.code === 'verify/quiet-zone')
    return hold(withTracking(broken.breaks, broken, weighed, sheet.scale, plan, grid), proved);
  if (broken?.breaks) return hold(broken.breaks, proved);
  const faults = contentFaults(compared.same.map(({ source }) => source));
  const wrong = faults.find(({ certain }) => certain);
  if (wrong && !allows(plan, 'check-digit')) return hold(wrong, proved);
  const schemes = judgeSchemes(proved, sheet.scale, plan, grid);
  if (schemes.reason) return hold(schemes.reason, proved);
  const read = compared.same.map(({ source }) => source);
  if (unreadRows(page, sheet.box, read).length > 0) return hold(reasons.unread, proved);
  const isMaxiCodeUnread = hasUnreadMaxiCode(page, sheet.box, read);
  if (isMaxiCodeUnread && !allows(plan, 'maxicode-unread')) return hold(reasons.unreadMaxiCode, proved);
  const notes = [
    ...faults.map(({ message }) => message),
    ...schemes.notes,
    ...proved.flatMap((each) => [...matrixNotes(each, grid), ...maxiCodeNotes(each)]),
    ...fourStateNotes(page, sheet, grid),
    ...(isMaxiCodeUnread ? ['a MaxiCode: its rings were seen, it was not read'] : []),
  ];
  return { verdict: 'proved', codes: proved, notes };
}

/** How bars are to come out: the source's at the sheet's scale. Undefined where the source's bars are too rough to tell. */
function plannedBars(page: SourcePage, source: Code, sheet: Sheet, grid: Grid): PlannedBars | undefined {
  const bars = sourceBars(page, source, sheet.box, 2 * dotsPerPt(grid));
  return bars && { moduleDots: bars.module * sheet.scale * dotsPerPt(grid), wide: wideOf(bars.modules, source.symbology) };
}

/** Postal 4-state codes are not read; how far they are from the published sizes can be told. */
function fourStateNotes(page: SourcePage, sheet: Sheet, grid: Grid): readonly string[] {
  const off = 0.5 / dotsPerPt(grid);
  return findFourState(page, sheet.box).flatMap((row) =>
    judgeFourState(row, sheet.scale, off)
      .filter(({ isInside }) => !isInside)
      .map((measure) => `a 4-state code: ${fourStateWords(measure)}`),
  );
}

const allows = ({ allow = [] }: ProofPlan, limit: string): boolean => allow.includes(limit);

function measured(
  code: Code,
  sheet: Sheet,
  matrix: Matrix,
  { grey, bits, grid, onGrid }: DrawnPage,
  gain: number,
  asSource: PlannedBars | undefined,
): ProvedCode {
  if (code.symbology === 'MaxiCode') return { code, moduleDots: undefined, maxicode: measureMaxiCode(bits, code, grid) };
  if (!isLinear(code)) return { code, moduleDots: undefined, matrix: measureMatrix(bits, code, grid, gain) };
  const twin = gridOf(twinOf(grid.name));
  const there = moved(code, invert(matrix)).corners;
  const redrawn = sheet.redrawn?.find(({ box }) => {
    const middle = { x: mean(there.map(({ x }) => x)), y: mean(there.map(({ y }) => y)) };
    return intersection(box, { x: middle.x - 1, y: middle.y - 1, width: 2, height: 2 }) !== undefined;
  });
  const planned = redrawn ? { moduleDots: redrawn.moduleDots, wide: wideOf(redrawn.modules, code.symbology) } : asSource;
  const measure = measureCode(bits, code, grid, gain, planned);
  const onTwin = measure && onGrid && (measureCode(onGrid(code, twin), code, twin, 0)?.decodability.mean ?? 0);
  const moduleDots = measure?.moduleDots ?? moduleWidth(grey, code);
  const plannedDots = asSource?.moduleDots;
  return { code, moduleDots, measure, onTwin, plannedDots, plannedBars: planned, ...(redrawn ? { redrawn: redrawn.moduleDots } : {}) };
}

/** The finest code under the least module, if any; lost ones are measured where the source's code was put. */
function tooFine(
  compared: CodesCompared,
  proved: readonly ProvedCode[],
  matrix: Matrix,
  grey: GreyRaster,
  grid: Grid,
): { readonly code: Code; readonly moduleDots: number } | undefined {
  const lost = compared.lost.map((code): ProvedCode => ({ code, moduleDots: moduleWidth(grey, moved(code, matrix)) }));
  const measured = [...proved, ...lost].flatMap(({ code, moduleDots }) => (moduleDots === undefined ? [] : [{ code, moduleDots }]));
  return measured.filter((each) => each.moduleDots < leastModuleDots(grid)).sort((a, b) => a.moduleDots - b.moduleDots)[0];
}
