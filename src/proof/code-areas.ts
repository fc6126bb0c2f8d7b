import { grow, type Box } from '../geometry/box.js';
import { dotsPerPt, type Grid } from '../geometry/grid.js';
import { applyToBox, type Matrix } from '../geometry/placement.js';
import type { SourcePage } from '../reading/source.js';
import type { Sheet } from '../sheet/sheet.js';

/** Clear space about a code that no screen may get into, pt: a quarter of an inch, ten modules of 25 mil (common practice, no source). */
const CLEAR = 18;

/** How finely a sheet's codes are looked for in its source: what is drawn must not be finer. */
export const sourcePixelsPerPt = ({ scale }: Sheet, grid: Grid): number => 2 * Math.max(1, scale) * dotsPerPt(grid);

/** Where the codes of a sheet's region lie on the output page, with the clear space about them, pt. */
export async function codeAreas(page: SourcePage, sheet: Sheet, matrix: Matrix | undefined, grid: Grid): Promise<readonly Box[]> {
  if (matrix === undefined || sheet.proof?.codes === 'none') return [];
  const codes = await page.codes(sheet.box, sourcePixelsPerPt(sheet, grid));
  return codes.map(({ box }) => grow(applyToBox(matrix, box), CLEAR));
}
