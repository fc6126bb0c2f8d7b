import { contains, sameSize, type Box } from '../geometry/box.js';
import { mmToPt } from '../geometry/length.js';
import type { CodeLikeArea } from '../reading/code-like.js';
import { distance, ONE_SIZE } from './judge.js';

/** Frames have room for an address and a code, pt (common practice, no source): smaller ones are fields of a label. Less than what is found by itself, so that two of those are not one, either. */
const LEAST = { short: mmToPt(38), long: mmToPt(60) };
/** Fields of one label share their rules; between two labels lies so much paper, pt (2 mm). */
const APART = mmToPt(2);

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
