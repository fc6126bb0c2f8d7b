import { area, bottom, contains, intersection, right, type Box } from '../geometry/box.js';
import type { Candidate, Judged } from './candidate.js';
import { LEAST } from './choose.js';
import { fillsMostOf, isWholeLabel } from './label-sizes.js';
import { CLEAR, NEXT_LINE, WIDER, WITHIN } from './white.js';

/** Whether a part of a page says that it is something else than a label, or is written across the rules of one. */
export type IsOther = (part: Box, rules?: Candidate['ruled']) => boolean;

/** Ink reaches into a picture by this much (pt), when it is more than touched. */
const THROUGH = 4;
/** What is added to a part of a label is less than this share of the whole. */
const LEAST_PART = 0.7;

/**
 * Ink inside a better answer is a part of it: inside rules from side to side, inside a picture of a label's size, with a matrix code alone beside the bars, and where less white lies between
 * it and the rest than around the whole. Rules inside a frame or a picture are its own. Ink that goes on beyond rules with what says that it is something else,
 * or is written across them, is more than the label; so is what reaches beyond the sides of rules that close it above and below, or far beyond those of others.
 * @param isOther whether a part of the page is no label by its words
 * @param cells all ink of each part that lines divide the page into: an answer that is one is whole where it is the likelier
 */
export function withoutParts(judged: readonly Judged[], isOther: IsOther, cells: readonly Box[] = []): readonly Judged[] {
  const likely = judged.filter(({ score }) => score >= LEAST);
  const isBesideBars = (part: Judged): boolean =>
    isBarless(part) && likely.some((whole) => !isBarless(whole) && contains(whole.box, part.box, 2));
  const edged = likely.filter(({ edge }) => edge === 'frame' || edge === 'picture');
  const stacks = likely.filter((each) => each.ruled && !isBesideBars(each) && !edged.some(({ box }) => contains(box, each.box, 2)));
  const pictures = likely.filter((each) => each.edge === 'picture' && isWholeLabel(each));
  const isPart = (part: Judged): boolean =>
    stacks.some(({ box }) => contains(box, part.box, 2)) ||
    [...pictures, ...likely.filter((whole) => whole.edge === 'ink' && goesOnInLine(part, whole, isOther))].some(
      ({ box, codes }) => contains(box, part.box, 2) && codes.length === part.codes.length,
    );
  const isCell = (whole: Judged): boolean =>
    whole.edge === 'ink' && cells.some((cell) => contains(whole.box, cell, WITHIN) && contains(cell, whole.box, WITHIN));
  const wholeCells = likely.filter((each) => isCell(each) && !isOther(each.box));
  const isPartOfCell = (part: Judged): boolean =>
    wholeCells.some(
      (whole) =>
        whole !== part &&
        contains(whole.box, part.box, 2) &&
        whole.codes.length >= part.codes.length &&
        (whole.score > part.score ? !part.ruled || leavesOutCodes(part, whole) : isNearlyFull(whole.box) && !isNearlyFull(part.box)) &&
        addedInLine(part.box, whole.box).length > 0,
    );
  const isPartOfStack = (part: Judged): boolean => stacks.some((whole) => goesOnInLine(part, whole, isOther));
  const goesBeyondStack = (whole: Judged): boolean =>
    stacks.some(
      (stack) =>
        contains(whole.box, stack.box, 2) &&
        ((isWiderThan(stack, whole) && (stack.closed === true || (stack.clear ?? 0) > CLEAR)) ||
          addedInLine(stack.box, whole.box).some((strip) => isOther(strip, stack.ruled))),
    );
  return judged.filter((each) =>
    each.ruled
      ? stacks.includes(each) && !isPartOfStack(each) && !isPartOfCell(each)
      : each.edge !== 'ink' ||
        !(
          isBesideBars(each) ||
          isPart(each) ||
          isPartOfCell(each) ||
          goesBeyondStack(each) ||
          pictures.some((picture) => cutsThrough(each.box, picture.box))
        ),
  );
}

/** Whether rules that close nothing run beside codes of the whole. */
const leavesOutCodes = (part: Judged, whole: Judged): boolean => part.closed !== true && whole.codes.length > part.codes.length;

const isNearlyFull = ({ width, height }: Box): boolean => fillsMostOf(width, height);

/** Whether an answer has matrix codes alone. */
const isBarless = ({ codes }: Judged): boolean => codes.every(({ kind }) => kind === 'matrix');

/** Whether a box ends inside another, whose edge is a fact. */
function cutsThrough(box: Box, picture: Box): boolean {
  const both = intersection(box, picture);
  return both !== undefined && Math.min(both.width, both.height) > THROUGH && !contains(box, picture, 2) && !contains(picture, box, 2);
}

/** Whether a whole reaches beyond the sides that rules show, over more white than parts lines of type. */
function isWiderThan({ box, ruled, clear }: Judged, whole: Judged): boolean {
  const isWider = ruled === 'level' ? whole.box.width > box.width + 2 * WITHIN : whole.box.height > box.height + 2 * WITHIN;
  return isWider && (clear ?? Infinity) > NEXT_LINE;
}

/** Whether there is clearly more white beside the whole than beside a part of it: a line's, or a little more in line with it where the whole is the likelier size. */
function goesOnInLine(part: Judged, whole: Judged, isOther: IsOther): boolean {
  const white = part.clear ?? Infinity;
  if (whole === part || !contains(whole.box, part.box, 2) || (whole.clear ?? Infinity) < WIDER * white) return false;
  if (white <= NEXT_LINE) return true;
  const added = addedInLine(part.box, whole.box);
  return (
    white <= CLEAR &&
    whole.score >= part.score &&
    area(part.box) >= LEAST_PART * area(whole.box) &&
    added.length > 0 &&
    !added.some((strip) => isOther(strip))
  );
}

/** What a whole has beyond a part of the same width or height; nothing where it has neither. */
function addedInLine(part: Box, whole: Box): readonly Box[] {
  const strips: readonly Box[] =
    Math.abs(part.width - whole.width) <= WITHIN
      ? [
          { ...whole, height: part.y - whole.y },
          { ...whole, y: bottom(part), height: bottom(whole) - bottom(part) },
        ]
      : Math.abs(part.height - whole.height) <= WITHIN
        ? [
            { ...whole, width: part.x - whole.x },
            { ...whole, x: right(part), width: right(whole) - right(part) },
          ]
        : [];
  return strips.filter(({ width, height }) => width > 0 && height > 0);
}
