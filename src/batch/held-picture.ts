import { grow, intersection, type Box } from '../geometry/box.js';
import { encodePng } from '../reading/png.js';
import type { GreyRaster, SourcePage } from '../reading/source.js';

/** Fine enough to read an address on a letter page, small enough to open at once: 100 dpi. */
const PIXELS_PER_PT = 100 / 72;
const LINE = 3;
/** A page that is held for its monstrous size is shown coarser, pixels on a side. */
const MOST_ON_A_SIDE = 5_000;

/** The page of a held item as PNG, with the item's box drawn around it where it is not the whole page. */
export async function heldPicture(page: SourcePage, box: Box): Promise<Uint8Array> {
  const whole = { x: 0, y: 0, width: page.width, height: page.height };
  const pixelsPerPt = Math.min(PIXELS_PER_PT, MOST_ON_A_SIDE / Math.max(page.width, page.height));
  const drawn = page.render(whole, pixelsPerPt);
  const raster: GreyRaster = { ...drawn, data: drawn.data.slice() };
  const outline = intersection(grow(box, LINE / pixelsPerPt), whole);
  if (outline && outline.width * outline.height < 0.98 * page.width * page.height) outlineBox(raster, outline);
  return encodePng(raster);
}

/** A dashed outline, so that it can't be taken for a line of the page. */
function outlineBox({ width, height, data, pixelsPerPt: k }: GreyRaster, box: Box): void {
  const x0 = Math.round(box.x * k);
  const y0 = Math.round(box.y * k);
  const x1 = Math.min(width - 1, Math.round((box.x + box.width) * k));
  const y1 = Math.min(height - 1, Math.round((box.y + box.height) * k));
  const dot = (x: number, y: number): void => {
    if (x >= 0 && y >= 0 && x < width && y < height) data[y * width + x] = (x + y) % 16 < 10 ? 0 : 255;
  };
  for (let thick = 0; thick < LINE; thick++) {
    for (let x = x0; x <= x1; x++) {
      dot(x, y0 + thick);
      dot(x, y1 - thick);
    }
    for (let y = y0; y <= y1; y++) {
      dot(x0 + thick, y);
      dot(x1 - thick, y);
    }
  }
}
