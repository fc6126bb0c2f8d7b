import { intersection, union, type Box } from '../geometry/box.js';
import { dotsPerPt, type Grid } from '../geometry/grid.js';
import { applyToBox, type Matrix } from '../geometry/placement.js';
import { codeLikeAreas } from '../reading/code-like.js';
import { LINEAR } from '../reading/codes.js';
import type { Code, SourcePage } from '../reading/source.js';
import type { Sheet } from '../sheet/sheet.js';

/** Clear space that no screen may get into, pt: beside a row of bars a quarter of an inch, ten modules of 25 mil; about others four modules of 28 mil (computed). */
const BESIDE_BARS = 18;
const ABOUT = 8;
/** Above and below a row of bars there may be writing. */
const ABOVE_BARS = 2;

/** How finely a sheet's codes are looked for in its source: what is drawn must not be finer. */
export const sourcePixelsPerPt = ({ scale }: Sheet, grid: Grid): number => 2 * Math.max(1, scale) * dotsPerPt(grid);

/** Where the codes of a sheet's region lie on the output page, with the clear space about them, pt. */
export async function codeAreas(page: SourcePage, sheet: Sheet, matrix: Matrix | undefined, grid: Grid): Promise<readonly Box[]> {
  if (matrix === undefined || sheet.proof?.codes === 'none') return [];
  const codes = await page.codes(sheet.box, sourcePixelsPerPt(sheet, grid));
  return codes.map((code) => applyToBox(matrix, withClearSpace(code, page)));
}

function withClearSpace({ symbology, box, turn }: Code, page: SourcePage): Box {
  if (!LINEAR.includes(symbology)) return wider(box, ABOUT, ABOUT);
  // Where a row of bars was read tells its ends well, but not how high it stands.
  const whole = union([box, ...codeLikeAreas(page).flatMap((area) => (intersection(area.box, box) ? [area.box] : []))]) ?? box;
  if (turn === undefined) return wider(whole, BESIDE_BARS, BESIDE_BARS);
  return turn % 180 === 0 ? wider(whole, BESIDE_BARS, ABOVE_BARS) : wider(whole, ABOVE_BARS, BESIDE_BARS);
}

const wider = ({ x, y, width, height }: Box, dx: number, dy: number): Box => ({
  x: x - dx,
  y: y - dy,
  width: width + 2 * dx,
  height: height + 2 * dy,
});
