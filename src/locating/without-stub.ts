import { area, bottom, contains, grow, right, union, type Box } from '../geometry/box.js';
import type { Candidate } from './candidate.js';
import { HAIR } from './gather.js';
import { isWholeLabel } from './label-sizes.js';

/** A picture ends at most this far (pt) inside its page. */
const AT_EDGE = 1.5;
/** A stub is no longer than this share of its paper: half of a label with another below it is none (common practice, no source). */
const MOST = 0.4;
/** Ink of a label goes over this share of its paper or more. */
const FILLED = 0.7;

/**
 * A picture that is its whole page, as label paper is scanned or sent, ends where a line to tear along parts a stub from it: what holds all of the codes is the label, by its
 * ink, if its paper up to there is that of a whole one.
 */
export function withoutStub(
  picture: Candidate,
  page: Pick<Box, 'width' | 'height'>,
  dividers: readonly Box[],
  blobs: readonly Box[],
): Candidate {
  const { box, codes, edge } = picture;
  const inside: Box = { x: AT_EDGE, y: AT_EDGE, width: page.width - 2 * AT_EDGE, height: page.height - 2 * AT_EDGE };
  if (edge !== 'picture' || codes.length === 0 || !contains(box, inside)) return picture;
  for (const line of dividers) {
    for (const part of partsBeside(line, box)) {
      const own = blobs.filter((blob) => contains(part, blob));
      const ink = union(own);
      if (!ink || !codes.every((code) => contains(part, code.box))) continue;
      if (isWholeLabel({ edge, box: part }) && area(ink) >= FILLED * area(part)) return { ...picture, box: grow(ink, HAIR), edge: 'ink' };
    }
  }
  return picture;
}

/** The larger part of a box beside a line across it, none where the line is near its middle. */
function partsBeside(line: Box, box: Box): readonly Box[] {
  const level = line.width > line.height;
  if (level !== box.height > box.width) return [];
  const least = (1 - MOST) * (level ? box.height : box.width);
  const parts: readonly Box[] = level
    ? [
        { ...box, height: line.y - box.y },
        { ...box, y: bottom(line), height: bottom(box) - bottom(line) },
      ]
    : [
        { ...box, width: line.x - box.x },
        { ...box, x: right(line), width: right(box) - right(line) },
      ];
  return parts.filter(({ width, height }) => (level ? height : width) >= least);
}
