import { openSource } from '../../../src/batch/open-source.js';
import { grow, type Box } from '../../../src/geometry/box.js';
import { gridOf } from '../../../src/geometry/grid.js';
import { mmToPt } from '../../../src/geometry/length.js';
import type { Media } from '../../../src/geometry/media.js';
import { applyToPoint, invert, type Matrix } from '../../../src/geometry/placement.js';
import { pressDocument } from '../../../src/press/press-document.js';
import type { GreyRaster, SourceDocument } from '../../../src/reading/source.js';
import type { Sheet } from '../../../src/sheet/sheet.js';

/** Pixels per pt at which source and output are compared: 0.24 mm a pixel, and where that tells them apart 0.07 mm, for a hairline is dark on one raster and pale on the other. */
const PER_PT = [1.5, 5] as const;
/** How far off ink may lie, in mm: as far as an edge may. */
const NEAR_MM = 1;
/** Darker than this is ink that must be there; what answers for it may be as light as `FAINT`. */
const INK = 128;
const FAINT = 200;

/**
 * Presses one sheet and holds its page against the source inside the label's true box: how much of the label's ink the page
 * lacks, and how much of the page's ink is none of the label's, in pixels. Of the answer only where the press put it is asked, not the box.
 */
export async function drawnLabel(
  document: SourceDocument,
  sheet: Sheet,
  truth: Box,
  media: Media,
): Promise<{ readonly missing: number; readonly foreign: number }> {
  const { bytes, placements } = await pressDocument(document, [sheet], media, gridOf('203dpi'));
  const matrix = placements[0]?.matrix;
  if (bytes === undefined || matrix === undefined) throw new Error('nothing drawn');
  const output = await openSource(bytes);
  if ('refused' in output) throw new Error(output.refused.message);
  try {
    const { width, height } = output.page(1);
    const at = (perPt: number): { readonly missing: number; readonly foreign: number } => {
      const drawn = output.page(1).render({ x: 0, y: 0, width, height }, perPt);
      // A line at the very edge of a picture is lost where the raster ends with it.
      const label = document.page(sheet.page).render(grow(truth, 1), perPt);
      return { missing: unanswered(label, drawn, matrix), foreign: unanswered(drawn, label, invert(matrix)) };
    };
    const [coarse, fine] = PER_PT;
    const first = at(coarse);
    return first.missing + first.foreign === 0 ? first : at(fine);
  } finally {
    output.close();
  }
}

/** How many pixels of ink have nothing dark within a millimetre of the place in `other` to which `matrix` takes them. */
function unanswered(ink: GreyRaster, other: GreyRaster, matrix: Matrix): number {
  let count = 0;
  for (let i = 0; i < ink.data.length; i++) {
    if ((ink.data[i] ?? 255) >= INK) continue;
    const [column, row] = [(i % ink.width) + 0.5, Math.floor(i / ink.width) + 0.5];
    const there = applyToPoint(matrix, ink.origin.x + column / ink.pixelsPerPt, ink.origin.y + row / ink.pixelsPerPt);
    const x = Math.floor((there.x - other.origin.x) * other.pixelsPerPt);
    const y = Math.floor((there.y - other.origin.y) * other.pixelsPerPt);
    if (!isDarkNear(other, x, y)) count += 1;
  }
  return count;
}

function isDarkNear({ data, width, height, pixelsPerPt }: GreyRaster, x: number, y: number): boolean {
  const isDark = (column: number, row: number): boolean =>
    column >= 0 && row >= 0 && column < width && row < height && (data[row * width + column] ?? 255) < FAINT;
  if (isDark(x, y)) return true;
  const near = Math.ceil(mmToPt(NEAR_MM) * pixelsPerPt);
  for (let row = y - near; row <= y + near; row++)
    for (let column = x - near; column <= x + near; column++) if (isDark(column, row)) return true;
  return false;
}
