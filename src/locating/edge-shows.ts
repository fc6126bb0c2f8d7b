import type { Box } from '../geometry/box.js';
import type { GreyRaster, SourcePage } from '../reading/source.js';

/** How far inside and outside of an edge its two sides are looked at, pt. */
const BESIDE = 2.5;
/** Grey steps by which the paper on both sides of an edge that can be seen differs at least. */
const STEP = 3;
/** An edge shows where it does on this share of its length. */
const MOST = 0.8;
/** Of a box's four edges so many must show; at the paper's own edge there is nothing to see. */
const EDGES = 3;

/** Whether one can see where a box (pt) ends on its page: its paper is lighter or darker than what is around it, as a white picture on a tinted page is. */
export function edgeShows(page: SourcePage, box: Box): boolean {
  const raster = page.ink();
  const [right, bottom] = [box.x + box.width, box.y + box.height];
  const level = (y: number, out: number): boolean => differs(raster, (share) => ({ x: box.x + share * box.width, y }), { x: 0, y: out });
  const upright = (x: number, out: number): boolean => differs(raster, (share) => ({ x, y: box.y + share * box.height }), { x: out, y: 0 });
  const shown = [level(box.y, -BESIDE), level(bottom, BESIDE), upright(box.x, -BESIDE), upright(right, BESIDE)];
  return shown.filter(Boolean).length >= EDGES;
}

/** Places along an edge that are looked at. */
const PLACES = 48;

function differs(raster: GreyRaster, at: (share: number) => { x: number; y: number }, out: { x: number; y: number }): boolean {
  let seen = 0;
  for (let place = 0; place < PLACES; place++) {
    const { x, y } = at((place + 0.5) / PLACES);
    const [inside, outside] = [greyAt(raster, x - out.x, y - out.y), greyAt(raster, x + out.x, y + out.y)];
    if (inside !== undefined && outside !== undefined && Math.abs(inside - outside) >= STEP) seen += 1;
  }
  return seen >= MOST * PLACES;
}

function greyAt({ data, width, height, pixelsPerPt, origin }: GreyRaster, x: number, y: number): number | undefined {
  const [column, row] = [Math.floor((x - origin.x) * pixelsPerPt), Math.floor((y - origin.y) * pixelsPerPt)];
  return column >= 0 && row >= 0 && column < width && row < height ? data[row * width + column] : undefined;
}
