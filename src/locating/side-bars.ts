import { bottom, grow, intersection, right, union, type Box } from '../geometry/box.js';
import { mmToPt } from '../geometry/length.js';
import type { Phrase } from '../reading/word-lines.js';
import { HAIR } from './gather.js';

/** A bar along a side is so thick, pt (2 to 15 mm): thinner ones are lines to cut or fold along. */
const THICK = { least: mmToPt(2), most: mmToPt(15) };
/** It stands no farther off than parts of one label do, pt (6 mm; common practice, no source) … */
const NEAR = mmToPt(6);
/** … and begins and ends where the label does, to this much, pt (8 mm). */
const ENDS = mmToPt(8);

/**
 * A label without an edge and the solid bar that runs along its left or right side from end to end, as some carriers set it to mark a service: with nothing in it, or with writing along it.
 * A bar above or below with writing across it may be a title of the page.
 * @param box the label's ink, pt
 * @param blobs ink of the page without what divides it, pt
 */
export function withSideBars(box: Box, blobs: readonly Box[], phrases: readonly Phrase[]): Box {
  const bars = blobs.filter((blob) => isBarAlong(blob, box) && !isWrittenAcross(blob, phrases));
  return union([box, ...bars.map((bar) => grow(bar, HAIR))]) ?? box;
}

function isBarAlong(blob: Box, box: Box): boolean {
  if (blob.width < THICK.least || blob.width > THICK.most) return false;
  if (Math.abs(blob.y - box.y) > ENDS || Math.abs(bottom(blob) - bottom(box)) > ENDS) return false;
  const gap = Math.max(box.x - right(blob), blob.x - right(box));
  return gap >= 0 && gap <= NEAR;
}

const isWrittenAcross = (bar: Box, phrases: readonly Phrase[]): boolean =>
  phrases.some(({ box, turn }) => (turn === 0 || turn === 180) && intersection(box, bar) !== undefined);
