import { bottom, right, type Box } from '../geometry/box.js';
import { invert, applyToPoint, type Matrix } from '../geometry/placement.js';
import type { GreyRaster } from '../reading/source.js';

/** Side of the squares in which ink is weighed, pt: a line of writing more or less does not empty one. */
const SQUARE = 36;
/** A square with less ink than this share is as good as white. */
const FAINT = 0.03;
/** A square has kept its ink when the fainter of the two has at least this share of the other's: coarse rasters thicken hairlines. */
const KEPT = 0.35;
/** The page may have less than this share of all ink to be called blank. */
const BLANK = 0.02;

export type InkVerdict =
  | { readonly kind: 'alike' }
  | { readonly kind: 'blank' }
  /** `where`: the first square of the output page (pt, y down) that lost or gained its ink. */
  | { readonly kind: 'differs'; readonly where: Box; readonly squares: number };

/**
 * Weighs the ink of a sheet's region on the source against the ink of what was drawn, square by square on the output page.
 * Coarse on purpose: it finds art that went missing, not a changed letter.
 * @param source the source page in grey, at any resolution
 * @param output the whole output page in grey
 * @param drawn where the sheet lies on the output page, pt
 */
export function compareInk(source: GreyRaster, output: GreyRaster, matrix: Matrix, drawn: Box): InkVerdict {
  const before = weigh(source, matrix, drawn);
  const after = weigh(output, [1, 0, 0, 1, 0, 0], drawn);
  const total = (ink: readonly number[]): number => ink.reduce((sum, each) => sum + each, 0);
  if (total(before) > 0 && total(after) < BLANK * total(before)) return { kind: 'blank' };
  const different = before.flatMap((ink, index) => {
    const other = after[index] ?? 0;
    return Math.max(ink, other) > FAINT && Math.min(ink, other) < KEPT * Math.max(ink, other) ? [index] : [];
  });
  const [first] = different;
  if (first === undefined) return { kind: 'alike' };
  const across = columnsOf(drawn);
  const where = { x: drawn.x + (first % across) * SQUARE, y: drawn.y + Math.floor(first / across) * SQUARE, width: SQUARE, height: SQUARE };
  return { kind: 'differs', where, squares: different.length };
}

/** Whether anything at all is drawn: for pages that have no source to compare with. */
export function hasInk(output: GreyRaster): boolean {
  return output.data.some((value) => value < 128);
}

const columnsOf = (drawn: Box): number => Math.max(1, Math.round(drawn.width / SQUARE));
const rowsOf = (drawn: Box): number => Math.max(1, Math.round(drawn.height / SQUARE));

/** Share of ink in each square of the drawn box, row by row. Squares stretch a little so that a whole number fills the box. */
function weigh(raster: GreyRaster, toOutput: Matrix, drawn: Box): number[] {
  const across = columnsOf(drawn);
  const down = rowsOf(drawn);
  const ink = new Float64Array(across * down);
  const seen = new Uint32Array(across * down);
  const toRaster = invert(toOutput);
  const p = applyToPoint(toRaster, drawn.x, drawn.y);
  const q = applyToPoint(toRaster, right(drawn), bottom(drawn));
  const pixel = (pt: number, origin: number, most: number): number =>
    Math.min(most, Math.max(0, Math.round((pt - origin) * raster.pixelsPerPt)));
  const x0 = pixel(Math.min(p.x, q.x), raster.origin.x, raster.width);
  const x1 = pixel(Math.max(p.x, q.x), raster.origin.x, raster.width);
  const y0 = pixel(Math.min(p.y, q.y), raster.origin.y, raster.height);
  const y1 = pixel(Math.max(p.y, q.y), raster.origin.y, raster.height);
  const [a, b, c, d, e, f] = toOutput;
  for (let row = y0; row < y1; row++) {
    const y = raster.origin.y + (row + 0.5) / raster.pixelsPerPt;
    for (let column = x0; column < x1; column++) {
      const x = raster.origin.x + (column + 0.5) / raster.pixelsPerPt;
      const squareX = Math.floor(((a * x + c * y + e - drawn.x) / drawn.width) * across);
      const squareY = Math.floor(((b * x + d * y + f - drawn.y) / drawn.height) * down);
      const square = clamp(squareY, down) * across + clamp(squareX, across);
      ink[square] = (ink[square] ?? 0) + 255 - (raster.data[row * raster.width + column] ?? 255);
      seen[square] = (seen[square] ?? 0) + 1;
    }
  }
  return Array.from(ink, (sum, index) => sum / 255 / Math.max(1, seen[index] ?? 0));
}

const clamp = (index: number, count: number): number => (index < 0 ? 0 : index >= count ? count - 1 : index);
