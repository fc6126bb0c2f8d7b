import { bottom, centre, contains, right, type Box } from '../geometry/box.js';
import { mmToPt } from '../geometry/length.js';
import type { Phrase } from '../reading/word-lines.js';

/** A title is no higher, pt (8 mm), … */
const HIGH = mmToPt(8);
/** … has so much white below it from side to side of the page, pt (5 mm), … */
const BAND = mmToPt(5);
/** … and what begins within this below it (pt, 40 mm) is set by other edges than it, to this much, pt; all common practice, no source. */
const BELOW = mmToPt(40);
const ALIGNED = 4;
/** A title and a line below it. */
const MOST = 3;
/** Ink reaches this far (pt) beyond the box of its words, and the other way round. */
const AROUND = 3;

/**
 * The lines at the head of a page that nothing below them is set with: its title, and what is said about the page. Pt; from the top.
 * @param blocks of ink, each apart from the others by more than a line's white
 * @param isWriting whether a block has neither a code nor an address
 */
export function pageTitles(blocks: readonly Box[], phrases: readonly Phrase[], isWriting: (block: Box) => boolean): readonly Box[] {
  const sorted = [...blocks].sort((a, b) => a.y - b.y);
  const titles: Box[] = [];
  for (const [at, block] of sorted.slice(0, MOST).entries()) {
    const others = sorted.slice(at + 1);
    const isAlone = others.length > 0 && others.every(({ y }) => y - bottom(block) >= BAND);
    const isWritten = phrases.some(({ box }) => contains(block, box, AROUND));
    const near = others.filter(({ y, height }) => y - bottom(block) <= BELOW && height > 1);
    if (!isAlone || !isWritten || block.height > HIGH || !isWriting(block) || near.some((other) => isAligned(block, other))) break;
    titles.push(block);
  }
  return titles;
}

const isAligned = (a: Box, b: Box): boolean =>
  Math.abs(a.x - b.x) <= ALIGNED || Math.abs(right(a) - right(b)) <= ALIGNED || Math.abs(centre(a).x - centre(b).x) <= ALIGNED;
