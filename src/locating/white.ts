import { bottom, right, type Box } from '../geometry/box.js';
import { mmToPt } from '../geometry/length.js';

/** Lines of type of one block stand no farther apart, pt (3 mm): what is so near to ink that fills a size is of it, too. */
export const NEXT_LINE = mmToPt(3);
/** Between the parts of a label with sender and receiver less white than this is usual, pt (8 mm; common practice, no source). */
export const PARTED = mmToPt(8);
/** Wider white between a label's own parts is rare, pt (15 mm; common practice, no source). */
export const CLEAR = mmToPt(15);
/** The white where a label ends is this many times as wide as any that may be inside. */
export const WIDER = 1.3;
/** What is of a label keeps to its width, or its height, to this much (pt). */
export const WITHIN = 4;

/** The widest white between some ink, from top to bottom (`alongY`) or from left to right, pt; 0 where there is none. */
export function widestWhite(ink: readonly Box[], alongY: boolean): number {
  let [most, end] = [0, Infinity];
  const start = (blob: Box): number => (alongY ? blob.y : blob.x);
  for (const blob of [...ink].sort((a, b) => start(a) - start(b))) {
    most = Math.max(most, start(blob) - end);
    const own = alongY ? bottom(blob) : right(blob);
    end = end === Infinity ? own : Math.max(end, own);
  }
  return most;
}
