import { bottom, centre, contains, grow, right, union, type Box } from '../geometry/box.js';
import { mmToPt } from '../geometry/length.js';
import type { Phrase } from '../reading/word-lines.js';
import { namesLabel } from './speaks-to-reader.js';

/** A title with the line below it is no higher, pt (16 mm), … */
const HIGH = mmToPt(16);
/** … has so much white below it from side to side of the page, pt (5 mm), … */
const BAND = mmToPt(5);
/** … and what begins within this below it (pt, 40 mm) is set by other edges than it, to this much, pt; all common practice, no source. */
const BELOW = mmToPt(40);
const ALIGNED = 4;
/** The title, and what is said about the page. */
const MOST = 2;
/** What is no wider is a line to fold or cut along, pt. */
const RULE = 2;
/** A title stands no farther above a hint, pt (8 mm; common practice, no source). */
export const HINT = mmToPt(8);
/** Ink reaches this far (pt) beyond the box of its words, and the other way round. */
export const AROUND = 3;

/**
 * The lines at the head of a page, one below the other, that nothing below them is set with, or that say what is on it: its title, and what is said about the page. Pt; from the top.
 * @param blocks of ink, each apart from the others by more than a line's white
 * @param isWriting whether a block has neither a code nor an address
 * @param hints those among the blocks that speak to the reader: what stands close above one is its title
 */
export function pageTitles(
  blocks: readonly Box[],
  phrases: readonly Phrase[],
  isWriting: (block: Box) => boolean,
  hints: readonly Box[] = [],
): readonly Box[] {
  let left = blocks.filter((block) => !hints.includes(block)).sort((a, b) => a.y - b.y);
  const titles: Box[] = [];
  for (let part = 0; part < MOST; part++) {
    const pieces = headOf(left);
    const head = inLines(pieces, phrases);
    const whole = union(head);
    left = left.filter((block) => !pieces.includes(block));
    if (!whole || left.length === 0 || whole.height > HIGH || !head.every((block) => isWritten(block, phrases) && isWriting(block))) break;
    if (head.some((a) => head.some((b) => a !== b && bottom(a) > b.y && bottom(b) > a.y))) break;
    const near = left.filter(({ y, height }) => y - bottom(whole) <= BELOW && height > 1);
    const all = union(near);
    const isSet = all !== undefined && (isAligned(whole, all) || near.some((other) => head.some((block) => isSetWith(block, other, all))));
    const isOverHint = hints.some(({ y }) => y >= bottom(whole) && y - bottom(whole) <= HINT);
    if (isSet && !isOverHint && !head.some((block) => namesPage(block, phrases))) break;
    titles.push(...head);
  }
  return titles;
}

/** The blocks from the top of the page to the first white across it, whatever line runs down the page there. */
function headOf(blocks: readonly Box[]): readonly Box[] {
  const sorted = blocks.filter(({ width }) => width > RULE);
  let end = sorted[0] ? bottom(sorted[0]) : 0;
  const next = sorted.findIndex((block) => {
    const isBeyond = block.y - end >= BAND;
    end = Math.max(end, bottom(block));
    return isBeyond;
  });
  return next < 0 ? sorted : sorted.slice(0, next);
}

/** Blocks with those as one that one line of type goes over: a blank in it may be as wide as those between blocks. */
function inLines(blocks: readonly Box[], phrases: readonly Phrase[]): readonly Box[] {
  return blocks.reduce<readonly Box[]>((joined, block) => {
    const line = phrases.find(({ box }) => contains(grow(box, AROUND), block));
    const mate = line && joined.find((other) => contains(grow(line.box, AROUND), other));
    const both = mate && union([mate, block]);
    return both ? joined.map((other) => (other === mate ? both : other)) : [...joined, block];
  }, []);
}

/** Whether a block is nothing but type: a banner with a name in it is a label's. */
function isWritten(block: Box, phrases: readonly Phrase[]): boolean {
  const words = union(phrases.flatMap(({ box }) => (contains(block, box, AROUND) ? [box] : [])));
  return words !== undefined && contains(words, block, AROUND);
}

/** Whether two lines begin or end at one place, or both are centred in all that is set below the first. */
const isSetWith = (line: Box, other: Box, all: Box): boolean => hasSameEnd(line, other) || (isCentred(line, all) && isCentred(other, all));

const isAligned = (a: Box, b: Box): boolean => hasSameEnd(a, b) || isCentred(a, b);
const hasSameEnd = (a: Box, b: Box): boolean => Math.abs(a.x - b.x) <= ALIGNED || Math.abs(right(a) - right(b)) <= ALIGNED;
const isCentred = (a: Box, b: Box): boolean => Math.abs(centre(a).x - centre(b).x) <= ALIGNED;

/** Whether a block says what is on the page. */
const namesPage = (block: Box, phrases: readonly Phrase[]): boolean =>
  phrases.some(({ text, box }) => contains(block, box, AROUND) && namesLabel(text));
