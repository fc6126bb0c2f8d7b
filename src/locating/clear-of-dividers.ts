import { bottom, right, type Box } from '../geometry/box.js';
import { INK_LEVEL } from '../reading/ink.js';
import type { GreyRaster } from '../reading/source.js';
import { HAIR } from './gather.js';

/** Words that stand in a line to cut are no higher than twice this, pt. */
const HALF_SIGN = 12;
/** White beside a line of type on the coarse raster, pixels. */
const WHITE_ROWS = 2;

/**
 * A box of ink without the line to cut or fold along that it reaches across by a little: words that stand in the line touch the label's own ink. Its new edge
 * is the first ink beyond the white behind those words; where there is no such white near by the box is left as it is. Pt.
 */
export function clearOfDividers(box: Box, dividers: readonly Box[], raster: GreyRaster): Box {
  let { x, y } = box;
  let [x1, y1] = [right(box), bottom(box)];
  const inked = (level: boolean, at: number): boolean => hasInk(raster, level, at, level ? [x, x1] : [y, y1]);
  for (const line of dividers) {
    const level = line.width > line.height;
    const [first, last] = level ? [line.y, bottom(line)] : [line.x, right(line)];
    const spans = level ? line.x <= x + 1 && right(line) >= x1 - 1 : line.y <= y + 1 && bottom(line) >= y1 - 1;
    if (!spans) continue;
    const [start, end] = level ? [y, y1] : [x, x1];
    if (last > start && last - start <= HALF_SIGN) {
      const edge = inkBehind((at) => inked(level, at), last, 1, raster.pixelsPerPt);
      if (level) y = edge ?? y;
      else x = edge ?? x;
    } else if (first < end && end - first <= HALF_SIGN) {
      const edge = inkBehind((at) => inked(level, at), first, -1, raster.pixelsPerPt);
      if (level) y1 = edge ?? y1;
      else x1 = edge ?? x1;
    }
  }
  return { x, y, width: x1 - x, height: y1 - y };
}

/** The first ink behind white, from a line on one way, pt; undefined where there is no white within a sign's height. */
function inkBehind(isInked: (at: number) => boolean, line: number, way: 1 | -1, pixelsPerPt: number): number | undefined {
  const step = way / pixelsPerPt;
  const most = 2 * HALF_SIGN * pixelsPerPt;
  let white = 0;
  for (let row = 1; row <= most; row++) {
    const at = line + row * step;
    if (!isInked(at)) white += 1;
    else if (white >= WHITE_ROWS) return at - way * HAIR;
    else white = 0;
  }
  return undefined;
}

function hasInk(
  { data, width, height, pixelsPerPt: k, origin }: GreyRaster,
  level: boolean,
  at: number,
  [from, to]: readonly [number, number],
): boolean {
  const across = Math.floor((at - (level ? origin.y : origin.x)) * k);
  if (across < 0 || across >= (level ? height : width)) return false;
  const start = Math.max(0, Math.floor((from - (level ? origin.x : origin.y)) * k));
  const end = Math.min(level ? width : height, Math.ceil((to - (level ? origin.x : origin.y)) * k));
  for (let i = start; i < end; i++) if ((data[level ? across * width + i : i * width + across] as number) < INK_LEVEL) return true;
  return false;
}
