import { contains, sameSize, type Box } from '../geometry/box.js';
import { mmToPt } from '../geometry/length.js';
import type { CodeLikeArea } from '../reading/code-like.js';
import { distance } from './judge.js';

/** A label has room for an address and a code, pt (common practice, no source): smaller frames are fields of one. */
const LEAST = { short: mmToPt(38), long: mmToPt(60) };
/** Fields of one label share their rules; between two labels lies so much paper, pt (2 mm). */
const APART = mmToPt(2);
/** Labels of one sheet are of one size to this much, pt (1 mm). */
const ONE_SIZE = mmToPt(1);

/** Whether two frames of one size lie in a box with paper between them, each large enough for a label and with a code in it: then it is no label but several. */
export function holdsSeveral(box: Box, frames: readonly Box[], codes: readonly CodeLikeArea[]): boolean {
  const likely = frames.filter(
    (frame) =>
      Math.min(frame.width, frame.height) >= LEAST.short &&
      Math.max(frame.width, frame.height) >= LEAST.long &&
      contains(box, frame, 2) &&
      codes.some((code) => contains(frame, code.box, 6)),
  );
  return likely.some((a, at) => likely.slice(at + 1).some((b) => distance(a, b) >= APART && sameSize(a, b, ONE_SIZE)));
}
