import { area, contains, intersection, type Box } from '../geometry/box.js';
import { mmToPt } from '../geometry/length.js';
import type { Judged } from './candidate.js';
import { isWholeLabel } from './label-sizes.js';
import { CLEAR } from './white.js';

/** A score below this is no label. */
export const LEAST = 0.62;
/** The best must beat the best different answer for the same place by this. */
const MARGIN = 0.04;
/** Two boxes with every edge this near (pt, 2 mm) are the same answer. */
const SAME = mmToPt(2);

/** A chosen answer and how far it is ahead. */
export type Chosen<T extends Judged = Judged> = T & {
  /** The best other answer for the same place; undefined when there is none. */
  readonly next: Judged | undefined;
};

export interface Choice<T extends Judged = Judged> {
  /** The labels, in reading order: from the top, then from the left. */
  readonly labels: readonly Chosen<T>[];
  /** Answers too near to a chosen one to be told apart; when there are any, the page is doubtful. */
  readonly rivals: readonly T[];
}

/** Chooses the best answers that don't overlap, and names the rivals that come too near. */
export function choose<T extends Judged>(judged: readonly T[]): Choice<T> {
  const sorted = [...judged].sort((a, b) => b.score - a.score || area(b.box) - area(a.box) || a.box.y - b.box.y || a.box.x - b.box.x);
  const labels: T[] = [];
  const rivals: T[] = [];
  for (const each of sorted) {
    if (each.score < LEAST) break;
    const over = labels.filter((label) => intersection(label.box, each.box) !== undefined);
    if (over.length === 0) labels.push(each);
    else if (over.some((label) => isRival(each, label))) rivals.push(each);
  }
  const nextOf = (label: T): T | undefined =>
    sorted.find((each) => each !== label && intersection(label.box, each.box) && !sameBox(label.box, each.box));
  return { labels: labels.sort(readingOrder).map((label) => ({ ...label, next: nextOf(label) })), rivals };
}

/**
 * Whether an answer comes too near to a chosen one. Nothing on a page of the media's size does; but whether something is one label or several alike is always for a
 * person to say.
 */
function isRival(each: Judged, label: Judged): boolean {
  if ((each.alike ?? 0) !== (label.alike ?? 0)) return true;
  if (isFarFromRest(each, label)) return true;
  return label.edge !== 'page' && label.score - each.score < MARGIN && !sameBox(label.box, each.box);
}

/** Whether an answer is all that has codes in a chosen one of mere ink and of no known size, and stands farther from the rest of it than the parts of one label do. */
const isFarFromRest = (each: Judged, label: Judged): boolean =>
  label.edge === 'ink' &&
  each.edge === 'ink' &&
  !label.ruled &&
  !isWholeLabel(label) &&
  label.codes.length === each.codes.length &&
  contains(label.box, each.box, 1) &&
  !sameBox(label.box, each.box) &&
  (each.clear ?? 0) > CLEAR;

/** Whether two boxes are the same answer. */
export const sameBox = (a: Box, b: Box): boolean =>
  Math.abs(a.x - b.x) < SAME &&
  Math.abs(a.y - b.y) < SAME &&
  Math.abs(a.x + a.width - b.x - b.width) < SAME &&
  Math.abs(a.y + a.height - b.y - b.height) < SAME;

/** Rows first: boxes whose middles lie within each other's height are one row. */
function readingOrder(a: Judged, b: Judged): number {
  const sameRow = Math.abs(a.box.y + a.box.height / 2 - b.box.y - b.box.height / 2) < Math.min(a.box.height, b.box.height) / 2;
  return sameRow ? a.box.x - b.box.x : a.box.y - b.box.y;
}
