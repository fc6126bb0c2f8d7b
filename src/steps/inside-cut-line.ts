import { contains, grow, intersection, union, type Box } from '../geometry/box.js';
import { HAIR } from '../locating/gather.js';
import { inkBlobs } from '../locating/ink-blobs.js';
import { framesOf } from '../reading/frames.js';
import type { SourcePage } from '../reading/source.js';

/** A located box and the frame it came from differ by rounding only, pt. */
const SAME = 3;
/** Dashes are thinner than this and nearer to the line than that, pt; no line of type is. */
const DASH = 3;

/** What a dashed cut line encloses, pt: the bounds of all ink inside it but its own dashes. Undefined where `box` is no cut line. */
export function insideCutLine(page: SourcePage, box: Box): Box | undefined {
  const isBox = (frame: Box): boolean => contains(grow(box, SAME), frame) && contains(grow(frame, SAME), box);
  if (!framesOf(page).some((frame) => frame.dashed && isBox(frame.box))) return undefined;
  const core = grow(box, -DASH - SAME);
  const ink = inkBlobs(page.ink()).filter(
    (blob) => contains(box, blob, SAME) && intersection(blob, core) !== undefined && !contains(blob, core),
  );
  const inside = union(ink);
  return inside && intersection(grow(inside, HAIR), box);
}
