import { area, bottom, intersection, right, type Box } from '../geometry/box.js';
import { mmToPt } from '../geometry/length.js';
import type { GreyRaster, SourcePage } from '../reading/source.js';

/** Lighter than this is paper, and darker than that its tint or a pale field: no ink by itself (`INK_LEVEL`), but somebody drew it. */
const PAPER = 248;
/** A pale field reaches out over so much of a side at least, without a gap, pt (2.5 mm) … */
const ALONG = mmToPt(2.5);
/** … farther than what is drawn softly at any edge, pt … */
const SOFT = 1.5;
/** … and no farther than this, pt (8 mm): beyond it begins something else. */
const FARTHEST = mmToPt(8);
/** A page of which pictures cover more than this share may be a scan: its paper is pale all over. */
const PICTURED = 0.3;

/**
 * A box of ink with the pale fields that reach out of it: a grey band across a label is no ink, but is cut off if the box ends at the words on it. Pt. Sides beyond which a
 * pale field goes on are left where they are.
 */
export function withPaleEdges(box: Box, page: SourcePage): Box {
  const whole: Box = { x: 0, y: 0, width: page.width, height: page.height };
  const pictured = page.images().reduce((sum, image) => sum + area(intersection(image.box, whole) ?? NOTHING), 0);
  if (pictured > PICTURED * area(whole)) return box;
  const raster = page.ink();
  const reach = (level: boolean, start: number, way: 1 | -1): number => {
    const span = level ? [box.x, right(box)] : [box.y, bottom(box)];
    const step = way / raster.pixelsPerPt;
    for (let at = start + step / 2; Math.abs(at - start) <= FARTHEST; at += step)
      if (!isPale(raster, level, at, span as [number, number])) return Math.abs(at - start) < SOFT ? start : at - step / 2;
    return start;
  };
  const [x, y] = [reach(false, box.x, -1), reach(true, box.y, -1)];
  return { x, y, width: reach(false, right(box), 1) - x, height: reach(true, bottom(box), 1) - y };
}

const NOTHING: Box = { x: 0, y: 0, width: 0, height: 0 };

/** Whether one stretch of a row (or a column) of pixels is darker than paper for long enough. */
function isPale(
  { data, width, height, pixelsPerPt: k, origin }: GreyRaster,
  level: boolean,
  at: number,
  [from, to]: [number, number],
): boolean {
  const line = Math.floor((at - (level ? origin.y : origin.x)) * k);
  const first = Math.max(0, Math.floor((from - (level ? origin.x : origin.y)) * k));
  const last = Math.min(level ? width : height, Math.ceil((to - (level ? origin.x : origin.y)) * k));
  if (line < 0 || line >= (level ? height : width)) return false;
  let run = 0;
  for (let pixel = first; pixel < last; pixel++) {
    run = (data[level ? line * width + pixel : pixel * width + line] as number) < PAPER ? run + 1 : 0;
    if (run >= ALONG * k) return true;
  }
  return false;
}
