import { contains } from '../geometry/box.js';
import type { Judged } from './candidate.js';
import { LEAST } from './choose.js';
import { NEXT_LINE } from './filled-out.js';
import { isKnownSize, isScaledSize } from './label-sizes.js';
import { WIDER } from './ruled-stacks.js';

/**
 * Ink inside a better answer is a part of it: inside rules from side to side, inside a picture of a label's size, and where no more than a line's white
 * lies between it and the rest. Rules inside a frame or a picture are its own.
 */
export function withoutParts(judged: readonly Judged[]): readonly Judged[] {
  const likely = judged.filter(({ score }) => score >= LEAST);
  const edged = likely.filter(({ edge }) => edge === 'frame' || edge === 'picture');
  const stacks = likely.filter(({ ruled, box }) => ruled && !edged.some((each) => contains(each.box, box, 2)));
  const pictures = likely.filter(({ edge, box }) => edge === 'picture' && (isKnownSize(box) || isScaledSize(box.width, box.height)));
  const isPart = (part: Judged): boolean =>
    stacks.some(({ box }) => contains(box, part.box, 2)) ||
    [...pictures, ...likely.filter((whole) => whole.edge === 'ink' && goesOnInLine(part, whole))].some(
      ({ box, codes }) => contains(box, part.box, 2) && codes.length === part.codes.length,
    );
  return judged.filter((each) => (each.ruled ? stacks.includes(each) : each.edge !== 'ink' || !isPart(each)));
}

/** Whether the white beside a part of a label is a line's, and there is clearly more beside the whole. */
const goesOnInLine = (part: Judged, whole: Judged): boolean =>
  whole !== part && (part.clear ?? Infinity) <= NEXT_LINE && (whole.clear ?? Infinity) >= WIDER * (part.clear ?? Infinity);
