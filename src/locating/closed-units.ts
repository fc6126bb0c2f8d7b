import { area, contains, type Box } from '../geometry/box.js';
import { framesOf } from '../reading/frames.js';
import type { SourcePage } from '../reading/source.js';

/** Ink or a frame around something may end this much (pt) inside of it. */
const SLACK = 1.5;
/** A block is no thinner, pt (half an inch): a rule with the line of type that touches it is no block. */
const THINNEST = 36;

/**
 * What stands for itself on a page: frames, placed pictures and blocks of ink with something inside them; the outermost ones only. A coupon, a receipt or
 * an advert is drawn so, and no part of a label's own ink is, once the label fills a known size without it.
 */
export function closedUnits(page: SourcePage, blobs: readonly Box[]): readonly Box[] {
  const whole = page.width * page.height;
  const pictures = page.images().map(({ box }) => box);
  const blocks = blobs.filter(
    (blob) => Math.min(blob.width, blob.height) >= THINNEST && blobs.some((other) => other !== blob && contains(blob, other, -SLACK)),
  );
  const units = [...framesOf(page).map(({ box }) => box), ...pictures, ...blocks].filter((box) => area(box) < 0.9 * whole);
  return units.filter((unit) => !units.some((other) => other !== unit && contains(other, unit, SLACK) && area(other) > area(unit)));
}

/** Whether all ink in `outer` that is not in `inner` lies in units that stand for themselves; false when there is none. */
export function addsOnlyUnits(outer: Box, inner: Box, blobs: readonly Box[], units: readonly Box[]): boolean {
  const added = blobs.filter((blob) => contains(outer, blob, SLACK) && !contains(inner, blob, SLACK) && !contains(blob, inner, SLACK));
  const apart = units.filter((unit) => contains(outer, unit, SLACK) && !overlaps(unit, inner));
  return added.length > 0 && added.every((blob) => apart.some((unit) => contains(unit, blob, SLACK)));
}

const overlaps = (a: Box, b: Box): boolean =>
  a.x < b.x + b.width - SLACK && b.x < a.x + a.width - SLACK && a.y < b.y + b.height - SLACK && b.y < a.y + a.height - SLACK;
