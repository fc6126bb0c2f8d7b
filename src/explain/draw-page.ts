import { grow, intersection } from '../geometry/box.js';
import { encodePng } from '../reading/png.js';
import type { GreyRaster, SourcePage } from '../reading/source.js';
import type { OnPage } from './explained.js';
import { lineAround, pixelsOf, placesBeside, stamp, type Pattern, type Pixels } from '../batch/marks.js';

/** Fine enough to read an address on a letter page, small enough to open at once: 100 dpi. */
const PIXELS_PER_PT = 100 / 72;
/** A page of a monstrous size is shown coarser, pixels on a side. */
const MOST_ON_A_SIDE = 5_000;
/** An outline stands so far outside its box, pixels: no bar may be drawn over. */
const OUTSIDE = 5;

/** Told apart by their rhythm, so that a black and white printer shows them as well. */
const LABEL: Pattern = { on: 24, off: 8, thick: 4 };
const CANDIDATE: Pattern = { on: 10, off: 8, thick: 3 };
const CODE: Pattern = { on: 3, off: 4, thick: 2 };

/** The page as PNG: labels in long dashes, doubtful answers in short ones, codes dotted, each with its mark. */
export async function drawPage(page: SourcePage, { labels, candidates, codes }: OnPage): Promise<Uint8Array> {
  const whole = { x: 0, y: 0, width: page.width, height: page.height };
  const drawn = page.render(whole, Math.min(PIXELS_PER_PT, MOST_ON_A_SIDE / Math.max(page.width, page.height)));
  const raster: GreyRaster = { ...drawn, data: drawn.data.slice() };
  const marked = [
    ...labels.map(({ mark, box }) => ({ mark, box, pattern: LABEL })),
    ...candidates.map(({ mark, box }) => ({ mark, box, pattern: CANDIDATE })),
    ...codes.map(({ mark, box }) => ({ mark, box, pattern: CODE })),
  ].flatMap((each) => {
    const shown = intersection(grow(each.box, OUTSIDE / raster.pixelsPerPt), whole);
    return shown ? [{ ...each, at: pixelsOf(raster, shown) }] : [];
  });
  for (const { at, pattern } of marked) lineAround(raster, at, pattern);
  // Numbers last: no outline may run through one.
  const taken: Pixels[] = [];
  for (const { mark, at } of marked) {
    const places = placesBeside(raster, at, mark);
    const place = places.find((each) => !taken.some((other) => overlap(each, other))) ?? places[0];
    if (!place) continue;
    stamp(raster, place, mark);
    taken.push(place);
  }
  return encodePng(raster);
}

const overlap = (a: Pixels, b: Pixels): boolean => intersection(a, b) !== undefined;
