import { grow, intersection, type Box } from '../geometry/box.js';
import { encodePng } from '../reading/png.js';
import type { GreyRaster, SourcePage } from '../reading/source.js';
import { numberBox, outlineBox } from './draw-marks.js';

/** Fine enough to read an address on a letter page, small enough to open at once: 100 dpi. */
const PIXELS_PER_PT = 100 / 72;
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
    if (shown) outlineBox(raster, shown);
  };
  if (answers.length > 0) answers.forEach(outline);
  else if (box.width * box.height < 0.98 * page.width * page.height) outline(box);
  // Numbers last: no outline may run through one.
  answers.forEach((each, index) => {
    numberBox(raster, each, index + 1);
  });
  return encodePng(raster);
}
