import { area, bottom, contains, intersection, right, union, type Box } from '../geometry/box.js';
import { mmToPt } from '../geometry/length.js';
import type { SourcePage } from '../reading/source.js';
import type { Judged } from './candidate.js';
import { pageDividers } from './ink-groups.js';
import type { Said } from './kind-of-words.js';
import { fillsSize } from './label-sizes.js';

/** Ink of one label lies no farther apart, pt (30 mm). */
const FARTHEST = mmToPt(30);
/** Ink beside a label is of it only when it keeps to its width, to this much (pt). */
const WITHIN = 4;

/**
 * A label without an edge may be found in part: a line at its foot stands apart from the rest. Where the ink in its own column, or in its own row, makes it
 * fill a known size on both sides, that is the label. Undefined where it fills one already, has an edge of its own, or nothing beside it does that.
 * @param said what the words in a part of the page say that it is
 */
export function filledOut(
  label: Judged,
  labels: readonly Judged[],
  blobs: readonly Box[],
  page: SourcePage,
  said: (part: Box) => Said,
): Box | undefined {
  if (label.edge !== 'ink' || fillsSize(label.box.width, label.box.height)) return undefined;
  const dividers = pageDividers(page);
  const free = blobs.filter(
    (blob) => labels.every((each) => !contains(each.box, blob, 1)) && !dividers.some((line) => contains(line, blob, 4)),
  );
  const isInColumn = ({ x, width }: Box): boolean => x >= label.box.x - WITHIN && x + width <= right(label.box) + WITHIN;
  const isInRow = ({ y, height }: Box): boolean => y >= label.box.y - WITHIN && y + height <= bottom(label.box) + WITHIN;
  for (const [isBeside, alongY] of [
    [isInColumn, true],
    [isInRow, false],
  ] as const) {
    const beside = free.filter(isBeside).sort((a, b) => apart(label.box, a, alongY) - apart(label.box, b, alongY));
    let box = label.box;
    let filled: Box | undefined;
    for (const blob of beside) {
      if (apart(box, blob, alongY) > FARTHEST) break;
      const grown = union([box, blob]) ?? box;
      if (dividers.some((line) => intersection(widened(line), grown) !== undefined && intersection(widened(line), label.box) === undefined))
        break;
      box = grown;
      if (fillsSize(box.width, box.height)) filled = box;
      else if (filled) break;
    }
    if (filled && isItsOwn(label.box, filled, labels, blobs, said)) return filled;
  }
  return undefined;
}

const apart = (a: Box, b: Box, alongY: boolean): number =>
  alongY ? Math.max(b.y - bottom(a), a.y - bottom(b)) : Math.max(b.x - right(a), a.x - right(b));

const widened = (line: Box): Box => ({ x: line.x - 1, y: line.y - 1, width: line.width + 2, height: line.height + 2 });

/** Whether what is added calls itself nothing else, and no other ink crosses the new edge. */
function isItsOwn(old: Box, whole: Box, labels: readonly Judged[], blobs: readonly Box[], said: (part: Box) => Said): boolean {
  const added: readonly Box[] = [
    { ...whole, height: Math.max(0, old.y - whole.y) },
    { ...whole, y: bottom(old), height: Math.max(0, bottom(whole) - bottom(old)) },
    { ...whole, width: Math.max(0, old.x - whole.x) },
    { ...whole, x: right(old), width: Math.max(0, right(whole) - right(old)) },
  ];
  if (added.some((part) => area(part) > 0 && said(part).names.length > 0)) return false;
  if (labels.some(({ box }) => box !== old && intersection(box, whole) !== undefined)) return false;
  return !blobs.some((blob) => !contains(whole, blob, 1) && intersection(blob, whole) !== undefined);
}
