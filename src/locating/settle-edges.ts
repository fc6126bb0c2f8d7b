import { area, contains, grow, intersection, type Box } from '../geometry/box.js';
import type { Judged } from './candidate.js';

/** An answer with a real edge must be this good to stand for looser ones. */
const GOOD = 0.62;
/** Share of the edged box that the looser one must cover to be the same answer. */
const MOSTLY = 0.8;

/**
 * Leaves away answers for which another one shows the edge: ink around a frame or a picture with the same codes, and a picture
 * that has nothing but white paper around a frame.
 */
export function withShownEdges(judged: readonly Judged[], blobs: readonly Box[]): readonly Judged[] {
  const edged = judged.filter(({ edge, score }) => (edge === 'frame' || edge === 'picture') && score >= GOOD);
  return judged.filter(
    (each) => !edged.some((other) => other !== each && other.codes.length === each.codes.length && showsEdgeOf(other, each, blobs)),
  );
}

function showsEdgeOf(edged: Judged, loose: Judged, blobs: readonly Box[]): boolean {
  if (loose.edge === 'ink') return area(intersection(edged.box, loose.box) ?? NOTHING) >= MOSTLY * area(edged.box);
  if (loose.edge !== 'picture' || edged.edge !== 'frame' || !contains(loose.box, edged.box, 1)) return false;
  const frame = grow(edged.box, 1.5);
  return blobs.every((blob) => !contains(loose.box, blob, 1) || contains(frame, blob));
}

const NOTHING: Box = { x: 0, y: 0, width: 0, height: 0 };
