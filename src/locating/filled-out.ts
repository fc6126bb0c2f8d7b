import { area, bottom, contains, grow, intersection, right, union, type Box } from '../geometry/box.js';
import { mmToPt } from '../geometry/length.js';
import { linesOf } from '../reading/frames.js';
import type { RuledLine } from '../reading/ruled.js';
import type { SourcePage } from '../reading/source.js';
import { closedUnits } from './closed-units.js';
import { HAIR } from './gather.js';
import { merge } from './ink-groups.js';
import { pageDividers } from './page-dividers.js';
import type { Candidate } from './candidate.js';
import type { Said } from './kind-of-words.js';
import { fillsMostOf, fillsSize, isLabelSized, isSmallPaper } from './label-sizes.js';
import { LIST_LINE, STEPS } from './list-of-steps.js';
import { addressesOn, FROM_TO } from './address-block.js';
import { phrasesOf } from '../reading/word-lines.js';
import { CLEAR, NEXT_LINE, PARTED, WIDER, widestWhite, WITHIN } from './white.js';

/** Ink of one label lies no farther apart, pt (30 mm). */
const FARTHEST = mmToPt(30);

/** A rule along a side ends where the side does, to this much, pt. */
const ENDS = 2.5;

/** Fold and punch marks stand so near to the edge, are so thick and so long at most, pt (DIN 5008 draws them, from memory; 4, 0.7 and 10 mm). */
const FOLD_MARK = { edge: mmToPt(4), thick: 2, long: mmToPt(10) };

/** When ink fills a known size, and how near (pt) what comes after it is of it, too: a label drawn a little smaller must stand alone. */
interface Filling {
  readonly isMet: (width: number, height: number) => boolean;
  readonly next: number;
}
const FULL: Filling = { isMet: fillsSize, next: NEXT_LINE };
const MOSTLY: Filling = { isMet: fillsMostOf, next: FARTHEST };

/** What is on a page around a part of a label. */
export interface Beside {
  readonly page: SourcePage;
  readonly blobs: readonly Box[];
  /** What stands for itself: `closedUnits`. */
  readonly units: readonly Box[];
  /** What the words in a part of the page say that it is. */
  readonly said: (part: Box) => Said;
}

/**
 * A label without an edge may be found in part: a line at its foot stands apart from the rest. Where the ink in its own column, or in its own row, makes it
 * fill a known size on both sides, or nearly so with nothing else in reach, that is the label. Undefined where it fills one already, or nothing beside it does that.
 */
export function filledOut(part: Box, { page, blobs, units, said }: Beside): Box | undefined {
  if (fillsSize(part.width, part.height)) return undefined;
  const dividers = pageDividers(page);
  const free = freeInk(part, blobs, units, dividers);
  const crosses = (box: Box): boolean =>
    dividers.some((line) => intersection(widened(line), box) !== undefined && intersection(widened(line), part) === undefined);
  for (const fills of [FULL, MOSTLY]) {
    for (const alongY of [true, false]) {
      const inLine = free.filter((blob) => isInLine(part, blob, alongY));
      const filled = grownAlong(part, inLine, alongY, fills, crosses);
      if (filled && isItsOwn(part, filled, blobs, said)) return filled;
    }
  }
  return undefined;
}

/**
 * Ink around a part of a label that may be of the same label: neither inside it, nor a fold or cut line, nor in something that stands
 * for itself. Where a label has no edge, such ink within reach is a doubt.
 */
export function freeInk(part: Box, blobs: readonly Box[], units: readonly Box[], dividers: readonly Box[]): readonly Box[] {
  const others = units.filter((unit) => intersection(unit, part) === undefined);
  return blobs.filter(
    (blob) =>
      !contains(part, blob, 1) &&
      !dividers.some((line) => contains(line, blob, 4)) &&
      !others.some((unit) => contains(unit, blob, 1.5)) &&
      !contains(blob, part),
  );
}

/**
 * The ink with which a part may go on: it keeps to its width or its height within reach, is in no other label, stands for
 * itself nowhere, is in no block that makes it larger than any label, nor in one that says what it is or behind it, no fold or cut line parts the two, and no rules from side to side show that it ends there. Such a box has nothing that shows its edge there. Of one that fills a known size only the next line is within reach,
 * and a block with a rule or a banner from side to side. None goes on with half a frame.
 */
export function goesOnWith(
  { box: part, ruled }: Pick<Candidate, 'box' | 'ruled'>,
  { page, blobs, said }: Omit<Beside, 'units'>,
  others: readonly Box[],
): readonly Box[] {
  const isFilled = fillsMostOf(part.width, part.height);
  const reach = isFilled ? NEXT_LINE : FARTHEST;
  const dividers = pageDividers(page);
  const isParted = (blob: Box): boolean =>
    dividers.some((line) => {
      const between = union([part, blob]) ?? part;
      return intersection(widened(line), between) !== undefined && intersection(widened(line), part) === undefined;
    });
  const ways = ruled ? [ruled === 'level'] : [true, false];
  if ([true, false].every((alongY) => isAlongSide(part, linesOf(page), alongY))) return [];
  const free = freeInk(part, blobs, [...closedUnits(page, blobs), ...others], dividers).filter((blob) => !isFoldMark(blob, page));
  const inside = blobs.filter((blob) => contains(part, blob, 1));
  /** Where rules show two sides of a label, or it has sender and receiver, what stands beyond clearly more white than is anywhere inside it is none of it. */
  const parted = ruled ? CLEAR : addressesOn(part, phrasesOf(page.words())) >= FROM_TO ? PARTED : Infinity;
  const farthest = (alongY: boolean): number => Math.max(parted, WIDER * widestWhite(inside, alongY));
  const isNear = (box: Box, within: number): boolean =>
    ways.some((alongY) => isInLine(part, box, alongY) && apart(part, box, alongY) <= Math.min(within, farthest(alongY)));
  const filling = isFilled ? [] : ways.flatMap((alongY) => fillingInk(part, free, alongY, isParted));
  const near = free.filter((blob) => isNear(blob, reach) || filling.includes(blob));
  const banners = free.filter((blob) => ways.some((alongY) => isInLine(part, blob, alongY) && isFromSideToSide(part, blob, alongY)));
  if (near.length + banners.length === 0) return [];
  const blocks = merge(free, NEXT_LINE, dividers);
  const crossed = blocks.filter((block) => isNear(block, CLEAR) && banners.some((blob) => contains(block, blob)));
  const likely = free.filter((blob) => (near.includes(blob) || crossed.some((block) => contains(block, blob))) && !isParted(blob));
  const own = blocks.filter((block) => {
    const both = union([part, block]) ?? part;
    return isLabelSized(both) || (isSmallPaper(both) && isNear(block, CLEAR));
  });
  const lists = merge(free, LIST_LINE, dividers).filter((list) => said(list).names.some(({ words }) => words === STEPS));
  const named = blocks.filter((block) => said(block).names.length > 0);
  const isBehind = (blob: Box): boolean => named.some((block) => intersection(union([part, blob]) ?? part, block) !== undefined);
  /** Lines of text that begin far beside the part's column, over more white than is inside a label, are the page's. */
  const isPages = (block: Box): boolean =>
    ways.every((alongY) => apart(part, block, alongY) > CLEAR || !isInLine(part, block, alongY)) &&
    ways.some((alongY) => apart(part, block, alongY) > CLEAR && standsOut(part, block, alongY));
  return likely.filter(
    (blob) =>
      own.some((block) => contains(block, blob) && !isPages(block)) && !isBehind(blob) && !lists.some((list) => contains(list, blob)),
  );
}

/** The part with the nearest ink beside it, one after the other, until both together fill a known size. */
function grownAlong(
  part: Box,
  beside: readonly Box[],
  alongY: boolean,
  { isMet, next }: Filling,
  crosses: (box: Box) => boolean,
): Box | undefined {
  let box = part;
  let filled: Box | undefined;
  for (const blob of [...beside].sort((a, b) => apart(part, a, alongY) - apart(part, b, alongY))) {
    if (apart(box, blob, alongY) > (filled ? next : FARTHEST)) break;
    const grown = union([box, grow(blob, HAIR)]) ?? box;
    if (crosses(grown)) break;
    // Nearly a whole label, and the next ink far from it: which of both it is nobody can tell.
    if (apart(box, blob, alongY) > CLEAR && fillsMostOf(box.width, box.height)) return undefined;
    box = grown;
    if (isMet(box.width, box.height)) filled = box;
    else if (filled) return undefined;
  }
  return filled;
}

/** The ink in line with a part that makes it fill a known size, or nearly so. */
function fillingInk(part: Box, free: readonly Box[], alongY: boolean, crosses: (box: Box) => boolean): readonly Box[] {
  const inLine = free.filter((blob) => isInLine(part, blob, alongY));
  const filled = grownAlong(part, inLine, alongY, MOSTLY, crosses);
  return filled ? inLine.filter((blob) => contains(filled, blob, 1)) : [];
}

/** Whether a block goes beyond a part's column, or its row, by more than this share of the part. */
function standsOut(part: Box, block: Box, alongY: boolean): boolean {
  const [start, end, from, to] = alongY ? [part.x, right(part), block.x, right(block)] : [part.y, bottom(part), block.y, bottom(block)];
  return Math.max(start - from, to - end) > BESIDE * (end - start);
}
const BESIDE = 0.25;

/** Whether a blob keeps to the width of a part of a label, or to its height. */
function isInLine(part: Box, blob: Box, alongY: boolean): boolean {
  return alongY
    ? blob.x >= part.x - WITHIN && right(blob) <= right(part) + WITHIN
    : blob.y >= part.y - WITHIN && bottom(blob) <= bottom(part) + WITHIN;
}

/** Whether a rule runs along one whole side of a box. Two of them, at right angles, show where all four sides are: half a frame. */
function isAlongSide(part: Box, lines: readonly RuledLine[], alongY: boolean): boolean {
  return lines.some(({ level, dashed, box }) => {
    if (level === alongY || dashed || !contains(part, box, ENDS)) return false;
    return alongY
      ? box.height >= part.height - 2 * ENDS && (box.x <= part.x + ENDS || right(box) >= right(part) - ENDS)
      : box.width >= part.width - 2 * ENDS && (box.y <= part.y + ENDS || bottom(box) >= bottom(part) - ENDS);
  });
}

/** Whether a blob is a short line at the edge of the paper, where it is to be folded or punched. */
function isFoldMark({ x, y, width, height }: Box, page: Pick<SourcePage, 'width' | 'height'>): boolean {
  const isAtEdge = Math.min(x, y, page.width - x - width, page.height - y - height) <= FOLD_MARK.edge;
  return isAtEdge && Math.min(width, height) <= FOLD_MARK.thick && Math.max(width, height) <= FOLD_MARK.long;
}

/** Whether a blob, such as a rule or a banner, begins and ends where a part of a label does. */
function isFromSideToSide(part: Box, blob: Box, alongY: boolean): boolean {
  return alongY ? blob.width >= part.width - 2 * WITHIN : blob.height >= part.height - 2 * WITHIN;
}

const apart = (a: Box, b: Box, alongY: boolean): number =>
  alongY ? Math.max(b.y - bottom(a), a.y - bottom(b)) : Math.max(b.x - right(a), a.x - right(b));

const widened = (line: Box): Box => ({ x: line.x - 1, y: line.y - 1, width: line.width + 2, height: line.height + 2 });

/** Whether what is added calls itself nothing else, and no other ink crosses the new edge. */
function isItsOwn(old: Box, whole: Box, blobs: readonly Box[], said: (part: Box) => Said): boolean {
  const added: readonly Box[] = [
    { ...whole, height: Math.max(0, old.y - whole.y) },
    { ...whole, y: bottom(old), height: Math.max(0, bottom(whole) - bottom(old)) },
    { ...whole, width: Math.max(0, old.x - whole.x) },
    { ...whole, x: right(old), width: Math.max(0, right(whole) - right(old)) },
  ];
  if (added.some((part) => area(part) > 0 && said(part).names.length > 0)) return false;
  return !blobs.some((blob) => !contains(whole, blob, 1) && !contains(blob, whole) && intersection(blob, whole) !== undefined);
}
