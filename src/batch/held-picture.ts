import { grow, intersection, type Box } from '../geometry/box.js';
import { encodePng } from '../reading/png.js';
import type { GreyRaster, SourcePage } from '../reading/source.js';
import { lineAround, pixelsOf, sizeOf, stamp, type Pattern, type Pixels } from './marks.js';

/** Fine enough to read an address on a letter page, small enough to open at once: 100 dpi. */
const PIXELS_PER_PT = 100 / 72;
/** Broken, so that it can't be taken for a line of the page. */
const OUTLINE: Pattern = { on: 10, off: 6, thick: 3 };
/** Side of a digit's square, pixels: large enough to be seen on a page fitted to the screen. */
const DOT = 4;
/** An outline stands so far outside its box, pixels. */
const OUTSIDE = 3;
/** A page that is held for its monstrous size is shown coarser, pixels on a side. */
const MOST_ON_A_SIDE = 5_000;

/**
 * The page of a held item as PNG. With `answers` each is outlined and numbered from 1; otherwise the item's box is outlined where it is
 * not the whole page.
 */
export async function heldPicture(page: SourcePage, box: Box, answers: readonly Box[] = []): Promise<Uint8Array> {
  const whole = { x: 0, y: 0, width: page.width, height: page.height };
  const pixelsPerPt = Math.min(PIXELS_PER_PT, MOST_ON_A_SIDE / Math.max(page.width, page.height));
  const drawn = page.render(whole, pixelsPerPt);
  const raster: GreyRaster = { ...drawn, data: drawn.data.slice() };
  const outline = (each: Box): void => {
    const shown = intersection(grow(each, OUTSIDE / pixelsPerPt), whole);
    if (shown) lineAround(raster, pixelsOf(raster, shown), OUTLINE);
  };
  if (answers.length > 0) answers.forEach(outline);
  else if (box.width * box.height < 0.98 * page.width * page.height) outline(box);
  // Numbers last: no outline may run through one.
  answers.forEach((each, index) => {
    stamp(raster, inCorner(pixelsOf(raster, each), index + 1), index + 1);
  });
  return encodePng(raster);
}

/** Each number in the next corner of its box, as boxes often share one. */
function inCorner({ x, y, width, height }: Pixels, mark: number): Pixels {
  const size = sizeOf(mark, DOT);
  const corner = (mark - 1) % 4;
  const left = corner === 0 || corner === 3;
  return {
    x: left ? x + OUTSIDE : x + width - OUTSIDE - size.width,
    y: corner < 2 ? y + OUTSIDE : y + height - OUTSIDE - size.height,
    ...size,
  };
}
