import { bottom, intersection, right, type Box } from '../geometry/box.js';
import type { Grid } from '../geometry/grid.js';
import { PT_PER_IN } from '../geometry/length.js';
import { applyToBox, type Matrix } from '../geometry/placement.js';
import { freeBoxOnLabel } from '../press/free-number-box.js';
import type { PrintedDots } from '../press/printed-dots.js';
import { codeLikeAreas } from '../reading/code-like.js';
import { findFourState } from '../reading/four-state.js';
import type { GreyRaster, SourcePage } from '../reading/source.js';
import type { Sheet } from '../sheet/sheet.js';
import { codeAreas } from './code-areas.js';
import { LEAST_QUIET, LEAST_QUIET_AROUND, limitOf } from './limits.js';
import { judgeCodes, type DrawnPage, type ProvedCode } from './judge-codes.js';

/** Kept clear about what looks like a code and isn't read, and about a 4-state code, pt: its published quiet zones are smaller (handbook section 3.2). */
const ABOUT_UNREAD = 18;

/** A label as it was drawn and proved. */
export interface DrawnLabel {
  readonly page: SourcePage;
  readonly sheet: Sheet;
  readonly matrix: Matrix;
  readonly drawnBox: Box;
  readonly dots: PrintedDots;
  /** The codes that came back. */
  readonly codes: readonly ProvedCode[];
  readonly drawn: DrawnPage;
  /** What the printer can reach, pt. */
  readonly reach: Box;
}

/**
 * A rectangle on a proved label that may take a number: free paper, clear of every code with its quiet zone, read or not. The codes are proved once
 * more with that rectangle burned black from edge to edge, which is worse than any number in it. Undefined where there is no such place.
 * @param sizes pt; the first that has a place is taken
 */
export async function numberBoxOnLabel(
  label: DrawnLabel,
  sizes: readonly { readonly width: number; readonly height: number }[],
): Promise<Box | undefined> {
  const { page, sheet, matrix, dots, drawn } = label;
  const inside = intersection(label.drawnBox, label.reach);
  if (!inside) return undefined;
  const keepOut = [
    ...(await codeAreas(page, sheet, matrix, drawn.grid)),
    ...unreadAreas(page, sheet, matrix),
    ...quietZones(label.codes, drawn.grid),
  ];
  for (const size of sizes) {
    const box = freeBoxOnLabel(dots, inside, size, keepOut);
    if (!box) continue;
    const again = await judgeCodes(page, sheet, matrix, { ...drawn, grey: burned(drawn.grey, box), bits: burned(drawn.bits, box) });
    if (again.verdict === 'proved' && again.codes.length === label.codes.length) return box;
  }
  return undefined;
}

function unreadAreas(page: SourcePage, sheet: Sheet, matrix: Matrix): readonly Box[] {
  const found = [...codeLikeAreas(page), ...findFourState(page, sheet.box)].map(({ box }) => box);
  return found.filter((box) => intersection(box, sheet.box)).map((box) => wider(applyToBox(matrix, box), ABOUT_UNREAD));
}

const quietZones = (codes: readonly ProvedCode[], grid: Grid): readonly Box[] =>
  codes.map(({ code, moduleDots = 0, matrix }) => {
    const dots = matrix ? limitOf(LEAST_QUIET_AROUND, code) * matrix.moduleDots : LEAST_QUIET.value * moduleDots;
    return wider(code.box, (dots * PT_PER_IN) / grid.dpi);
  });

const wider = ({ x, y, width, height }: Box, by: number): Box => ({ x: x - by, y: y - by, width: width + 2 * by, height: height + 2 * by });

/** The same page with a rectangle black. */
function burned(raster: GreyRaster, box: Box): GreyRaster {
  const { width, height, pixelsPerPt } = raster;
  const data = raster.data.slice();
  const [x0, x1] = [Math.floor(box.x * pixelsPerPt), Math.min(width, Math.ceil(right(box) * pixelsPerPt))];
  for (let y = Math.floor(box.y * pixelsPerPt); y < Math.min(height, Math.ceil(bottom(box) * pixelsPerPt)); y++) {
    data.fill(0, y * width + x0, y * width + x1);
  }
  return { ...raster, data };
}
