import { bottom, intersection, near, right, union, type Box } from '../geometry/box.js';
import { mmToPt } from '../geometry/length.js';
import type { SourcePage } from '../reading/source.js';
import { LONG_SIDE, SHORT_SIDE } from './label-sizes.js';
import { pageDividers } from './page-dividers.js';
import { withoutSpecks } from './specks.js';

/** White gaps across which ink belongs together, one after the other, pt. */
const GAPS = [2, 3, 4, 5, 6.5, 8, 10, 13, 14.5, 16, 20].map(mmToPt);

/**
 * Every group of ink that is one at some width of white gap: from blocks of text up to the whole page. Rules that divide the
 * page from edge to edge, and borders around the whole page, belong to no group.
 */
export function inkGroups(page: SourcePage, blobs: readonly Box[]): readonly Box[] {
  const dividers = pageDividers(page);
  const content = withoutSpecks(blobs).filter(
    (blob) => !dividers.some((line) => covers(line, blob)) && !isPageBorder(blob, page) && !isLargerThanLabels(blob),
  );
  const groups: Box[] = [];
  let boxes = [...content];
  for (const gap of GAPS) {
    boxes = merge(boxes, gap, dividers);
    for (const box of boxes) if (!groups.some((known) => same(known, box))) groups.push(box);
  }
  return groups;
}

const covers = (line: Box, blob: Box): boolean =>
  intersection({ x: line.x - 3, y: line.y - 3, width: line.width + 6, height: line.height + 6 }, blob) !== undefined &&
  blob.x >= line.x - 4 &&
  right(blob) <= right(line) + 4 &&
  blob.y >= line.y - 4 &&
  bottom(blob) <= bottom(line) + 4;

const isPageBorder = (blob: Box, page: SourcePage): boolean =>
  Math.min(page.width, page.height) >= mmToPt(140) && blob.width > 0.85 * page.width && blob.height > 0.85 * page.height;

/** A grid of rules between the places of a sheet, a frame around all of them: what is around it in no group can be a label with it. */
const isLargerThanLabels = ({ width, height }: Box): boolean =>
  Math.max(width, height) > LONG_SIDE.most || Math.min(width, height) > SHORT_SIDE.most;

/** Boxes (pt) with no more than `gap` between them as one, again and again; never across a divider. */
export function merge(start: readonly Box[], gap: number, dividers: readonly Box[]): Box[] {
  const boxes = [...start];
  for (let changed = true; changed;) {
    changed = false;
    for (let i = 0; i < boxes.length; i++) {
      for (let j = i + 1; j < boxes.length; j++) {
        const [a, b] = [boxes[i], boxes[j]];
        if (!a || !b || !near(a, b, gap) || dividers.some((line) => divides(line, a, b))) continue;
        const both = union([a, b]);
        if (both) boxes[i] = both;
        boxes.splice(j, 1);
        changed = true;
        j = i;
      }
    }
  }
  return boxes;
}

function divides(line: Box, a: Box, b: Box): boolean {
  if (line.width > line.height) {
    const y = line.y + line.height / 2;
    return (bottom(a) <= y + 2 && b.y >= y - 2) || (bottom(b) <= y + 2 && a.y >= y - 2);
  }
  const x = line.x + line.width / 2;
  return (right(a) <= x + 2 && b.x >= x - 2) || (right(b) <= x + 2 && a.x >= x - 2);
}

const same = (a: Box, b: Box): boolean =>
  Math.abs(a.x - b.x) < 1 && Math.abs(a.y - b.y) < 1 && Math.abs(a.width - b.width) < 1 && Math.abs(a.height - b.height) < 1;
