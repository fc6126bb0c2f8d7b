import { area, contains, grow, intersection, type Box } from '../geometry/box.js';
import { mmToPt } from '../geometry/length.js';
import type { Judged } from './candidate.js';
import { LEAST } from './choose.js';

/** A cut line stands at most this far outside the frame of its label, pt (12 mm; common practice, no source). */
const CUT_LINE = mmToPt(12);
/** Share of the edged box that the looser one must cover to be the same answer. */
const MOSTLY = 0.8;

/**
 * Leaves away answers for which another one shows the edge: ink around a frame or a picture with the same codes, a picture
 * that has nothing but white paper around a frame, and a frame with nothing but white paper up to a cut line.
 */
export function withShownEdges(judged: readonly Judged[], blobs: readonly Box[]): readonly Judged[] {
  const edged = judged.filter(({ edge, score }) => (edge === 'frame' || edge === 'picture') && score >= LEAST);
  return judged.filter(
    (each) => !edged.some((other) => other !== each && other.codes.length === each.codes.length && showsEdgeOf(other, each, blobs)),
  );
}

function showsEdgeOf(edged: Judged, loose: Judged, blobs: readonly Box[]): boolean {
  if (loose.edge === 'ink') return area(intersection(edged.box, loose.box) ?? NOTHING) >= MOSTLY * area(edged.box);
  if (loose.edge === 'frame' && edged.edge === 'frame') {
    const around = grow(loose.box, CUT_LINE);
    return contains(edged.box, loose.box, -1) && contains(around, edged.box) && isWhiteBetween(edged.box, loose.box, blobs);
  }
  if (loose.edge !== 'picture' || edged.edge !== 'frame' || !contains(loose.box, edged.box, 1)) return false;
  return isWhiteBetween(loose.box, edged.box, blobs);
}

/** Whether all ink inside the outer box is inside the inner one, or is the outer one's own line. */
function isWhiteBetween(outer: Box, inner: Box, blobs: readonly Box[]): boolean {
  const core = grow(inner, 1.5);
  const isLine = (blob: Box): boolean => Math.min(blob.width, blob.height) < LINE || contains(blob, core);
  return blobs.every((blob) => !contains(outer, blob, 1) || contains(core, blob) || isLine(blob));
}

/** Dashes and rules are thinner than this, pt; no line of type is. */
const LINE = 3;

const NOTHING: Box = { x: 0, y: 0, width: 0, height: 0 };
