import { Drawing } from './drawing.js';
import type { LayoutPage, Region } from './layout.js';
import type { OnPage, QuarterTurn } from './pdf.js';
import { turnPixels, type Pixels } from './raster.js';

/**
 * A page as one picture, as a scanner or a "print to picture" gives it: every region's pixels set on whole pixels of the page.
 * `snapped` is the page with its regions where they came to lie.
 */
export function wholePage(
  page: LayoutPage,
  pictures: ReadonlyMap<Region, Pixels>,
  dpi: number,
  bilevel: boolean,
  drawn: QuarterTurn,
): { content: OnPage; snapped: LayoutPage } {
  const perPt = dpi / 72;
  const width = Math.ceil(page.width * perPt - 1e-6);
  const height = Math.ceil(page.height * perPt - 1e-6);
  const data = new Uint8Array(width * height).fill(255);
  const regions = page.regions.map((region) => {
    const own = pictures.get(region);
    if (!own) throw new Error('a region without pixels');
    const pixels = turnPixels(own, region.turn);
    const left = Math.round(region.x * perPt);
    const top = Math.round(region.y * perPt);
    for (let y = 0; y < pixels.height; y++) {
      for (let x = 0; x < pixels.width; x++) {
        if (left + x >= width || top + y >= height) continue;
        const at = (top + y) * width + left + x;
        data[at] = Math.min(data[at] ?? 255, pixels.data[y * pixels.width + x] ?? 255);
      }
    }
    return { ...region, x: left / perPt, y: top / perPt };
  });
  const pixels: Pixels = { width, height, dpi, bilevel, data };
  const content: OnPage = {
    drawing: new Drawing(page.width, page.height),
    x: 0,
    y: 0,
    turn: 0,
    scale: 1,
    pixels,
    pixelTurn: drawn,
    withMark: true,
  };
  return { content, snapped: { ...page, regions } };
}
