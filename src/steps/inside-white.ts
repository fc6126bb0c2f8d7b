import { contains, grow, intersection, union, type Box } from '../geometry/box.js';
import { HAIR } from '../locating/gather.js';
import { inkBlobs } from '../locating/ink-blobs.js';
import type { SourcePage } from '../reading/source.js';

/** The bounds of all ink in a box, pt, with a hair of paper around it. Undefined where ink crosses the box's edge, or there is none. */
export function insideWhite(page: SourcePage, box: Box): Box | undefined {
  const ink = inkBlobs(page.ink()).filter((blob) => intersection(blob, box) !== undefined);
  const bounds = union(ink);
  return bounds && contains(box, bounds, HAIR) ? intersection(grow(bounds, HAIR), box) : undefined;
}
