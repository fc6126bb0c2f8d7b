import { contains, type Box } from '../geometry/box.js';
import type { Judged } from './candidate.js';
import { LEAST } from './choose.js';
import { isWholeLabel } from './label-sizes.js';

/** A picture ends at most this far (pt) inside its page. */
const AT_EDGE = 1.5;

/**
 * A picture that is its whole page has no edge of its own: where a frame of a label's size stands in it, with all of its codes, the frame is the label, and what is beside it
 * on the page is its stub or its receipt.
 */
export function withoutWholePictures(judged: readonly Judged[], page: Pick<Box, 'width' | 'height'>): readonly Judged[] {
  const inside: Box = { x: AT_EDGE, y: AT_EDGE, width: page.width - 2 * AT_EDGE, height: page.height - 2 * AT_EDGE };
  const frames = judged.filter((each) => each.edge === 'frame' && each.score >= LEAST && isWholeLabel(each));
  return judged.filter(
    ({ edge, box, codes }) =>
      edge !== 'picture' ||
      !contains(box, inside) ||
      !frames.some((frame) => contains(box, frame.box) && frame.codes.length === codes.length),
  );
}
