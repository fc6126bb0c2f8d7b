import { bottom, right, type Box } from '../geometry/box.js';
import type { Media } from '../geometry/media.js';
import { applyToBox, invert, type Matrix } from '../geometry/placement.js';
import { FIT_SLACK } from '../press/place.js';
import { INK_LEVEL } from '../reading/ink.js';
import type { GreyRaster } from '../reading/source.js';

/** Fewer dots than this are specks of a scan. */
const SPECKS = 12;

/** How many dots of a page would be burned where the printer can't reach; a few specks count as none. */
export function dotsOutOfReach({ width, height, data, pixelsPerPt }: GreyRaster, reach: Box): number {
  const dot = (pt: number, round: (dots: number) => number): number => round(+(pt * pixelsPerPt).toFixed(3));
  const [x0, y0] = [dot(reach.x, Math.ceil), dot(reach.y, Math.ceil)];
  const [x1, y1] = [dot(right(reach), Math.floor), dot(bottom(reach), Math.floor)];
  if (x0 <= 0 && y0 <= 0 && x1 >= width && y1 >= height) return 0;
  let burned = 0;
  for (let y = 0, at = 0; y < height; y++) {
    const rowIn = y >= y0 && y < y1;
    for (let x = 0; x < width; x++, at++) if (data[at] === 0 && !(rowIn && x >= x0 && x < x1)) burned += 1;
  }
  return burned < SPECKS ? 0 : burned;
}

/**
 * Whether ink of the source comes to lie beyond the edge of the page, farther than a label that is a hair too large may hang over.
 * @param ink the source page, coarse and in grey
 * @param drawn where the sheet lies on the output page, pt
 */
export function inkBeyondPage(ink: GreyRaster, matrix: Matrix, drawn: Box, media: Media): boolean {
  const slack = FIT_SLACK / 2 + 0.1;
  const beyond: readonly Box[] = [
    { ...drawn, width: -slack - drawn.x },
    { ...drawn, height: -slack - drawn.y },
    { ...drawn, x: media.width + slack, width: right(drawn) - media.width - slack },
    { ...drawn, y: media.height + slack, height: bottom(drawn) - media.height - slack },
  ];
  return beyond.some((strip) => strip.width > 0 && strip.height > 0 && hasInkIn(ink, applyToBox(invert(matrix), strip)));
}

function hasInkIn({ width, height, data, pixelsPerPt, origin }: GreyRaster, box: Box): boolean {
  const pixel = (pt: number, from: number, most: number): number => Math.min(most, Math.max(0, Math.round((pt - from) * pixelsPerPt)));
  const [x0, x1] = [pixel(box.x, origin.x, width), pixel(right(box), origin.x, width)];
  for (let y = pixel(box.y, origin.y, height); y < pixel(bottom(box), origin.y, height); y++) {
    for (let x = x0; x < x1; x++) if ((data[y * width + x] as number) < INK_LEVEL) return true;
  }
  return false;
}
