import { bottom, contains, grow, right, union, type Box } from '../geometry/box.js';
import type { RuledLine } from '../reading/ruled.js';
import type { Phrase } from '../reading/word-lines.js';
import type { Candidate } from './candidate.js';
import { codesIn, HAIR } from './gather.js';
import { mostTurn } from './most-turn.js';

/** A line to cut along goes so far beyond all ink beside it at both ends, pt: a label's own rules end with its ink. */
const BEYOND = 3;

/**
 * Ink that a dashed line goes through from its top to its foot and beyond, as the parts on either side of that line, where each has a code; any other candidate as it is. Such a line needn't reach
 * the edges of the page. One along the lines of writing may be a label's own.
 * @param lines all ruled lines of the page, pt
 * @param blobs ink of the page without what divides it, pt
 */
export function cutApart(
  candidate: Candidate,
  lines: readonly RuledLine[],
  blobs: readonly Box[],
  phrases: readonly Phrase[],
): readonly Candidate[] {
  const { box, edge, codes } = candidate;
  const dashed = edge === 'ink' && codes.length > 1 ? lines.filter((line) => line.dashed && contains(box, line.box, HAIR)) : [];
  if (dashed.length === 0) return [candidate];
  const turn = mostTurn(phrases.filter((phrase) => contains(box, phrase.box, 2)));
  for (const { box: line, level } of dashed) {
    if (turn === undefined || level === (turn === 0 || turn === 180)) continue;
    const inside = blobs.filter((blob) => contains(box, blob, 1) && !contains(grow(line, BEYOND), blob));
    const [start, end] = level ? [(each: Box) => each.x, right] : [(each: Box) => each.y, bottom];
    if (!inside.every((blob) => start(blob) - start(line) >= BEYOND && end(line) - end(blob) >= BEYOND)) continue;
    const isBefore = (blob: Box): boolean => (level ? bottom(blob) <= line.y + HAIR : right(blob) <= line.x + HAIR);
    const parts = [inside.filter(isBefore), inside.filter((blob) => !isBefore(blob))].flatMap((side): readonly Candidate[] => {
      const ink = union(side);
      const own = ink ? codesIn(codes, ink) : [];
      return ink && own.length > 0 ? [{ box: grow(ink, HAIR), edge: 'ink', codes: own }] : [];
    });
    if (parts.length === 2) return parts.flatMap((part) => cutApart(part, lines, blobs, phrases));
  }
  return [candidate];
}
