import { dotsPerPt, type Grid } from '../geometry/grid.js';
import type { Matrix } from '../geometry/placement.js';
import type { Code, GreyRaster, SourcePage } from '../reading/source.js';
import { isLabel, type Reason, type Sheet } from '../sheet/sheet.js';
import { isEqual, moved, type CodesCompared } from './compare-codes.js';
import { cutCodes } from './cut-codes.js';
import { leastModuleDots } from './limits.js';
import { moduleWidth } from './module-width.js';
import { readAndCompare } from './read-back.js';
import * as reasons from './reasons.js';
import { unreadRows } from './unread-rows.js';

/** A code read back from the output. */
export interface ProvedCode {
  /** As read on the output page, pt, y down. */
  readonly code: Code;
  /** Width of a module in dots of the grid; undefined for matrix codes. */
  readonly moduleDots: number | undefined;
}

/** What was found of a page: whether it may be printed, and the codes that came back equal. */
export interface Judged {
  readonly verdict: 'proved' | Reason;
  readonly codes: readonly ProvedCode[];
}

export const hold = (verdict: Reason, codes: readonly ProvedCode[] = []): Judged => ({ verdict, codes });

/**
 * Reads the codes of a sheet's region and of what was drawn of it, and compares them.
 * @param grey the output page with soft edges, which carry fractions of a dot
 * @param bits the same page as it is burned
 */
export async function judgeCodes(
  page: SourcePage,
  sheet: Sheet,
  matrix: Matrix,
  grey: GreyRaster,
  bits: GreyRaster,
  grid: Grid,
): Promise<Judged> {
  const pixelsPerPt = Math.max(2 * dotsPerPt(grid), 2 * sheet.scale * dotsPerPt(grid));
  const cut = await cutCodes(page, sheet.box, pixelsPerPt);
  if (cut.codes.length > 0) return hold(reasons.cut(cut.codes));
  if (cut.unread.length > 0 && isLabel(sheet)) return hold(reasons.cutBars);
  const compared = await readAndCompare(page, sheet, matrix, bits, pixelsPerPt);
  const required = isLabel(sheet);
  if (required && compared.same.length === 0 && isEqual(compared)) return hold(reasons.nothingToProve);
  const proved = compared.same.map(({ output }): ProvedCode => ({ code: output, moduleDots: moduleWidth(grey, output) }));
  const difference = reasons.codesDiffer(compared);
  const fine = required ? tooFine(compared, proved, matrix, grey, grid) : undefined;
  // Bars too fine are why a code is lost: the cause says more than the effect.
  if (fine && (difference === undefined || difference.code === 'verify/code-lost')) {
    return hold(reasons.tooFine(fine.code, fine.moduleDots, grid, sheet.scale), proved);
  }
  if (difference) return hold(difference, proved);
  const unread = required
    ? unreadRows(
        page,
        sheet.box,
        compared.same.map(({ source }) => source),
      )
    : [];
  return unread.length > 0 ? hold(reasons.unread, proved) : { verdict: 'proved', codes: proved };
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
