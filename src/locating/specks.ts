import { near, type Box } from '../geometry/box.js';
import { mmToPt } from '../geometry/length.js';

/**
 * A grain of a scan, pt (0.5 mm), and how far (5 mm) it is from all ink that is none, or (2 mm) from any ink at all: the dots of type and of dotted lines are
 * nearer.
 */
const SPECK = { side: mmToPt(0.5), lone: mmToPt(5), alone: mmToPt(2) };
const isGrain = ({ width, height }: Box): boolean => Math.max(width, height) <= SPECK.side;

/** Ink without the grains of a scan. */
export function withoutSpecks(blobs: readonly Box[]): readonly Box[] {
  const grains = blobs.filter(isGrain);
  const specks = new Set(
    grains.filter(
      (grain) =>
        !blobs.some((other) => !isGrain(other) && near(other, grain, SPECK.lone)) ||
        !blobs.some((other) => other !== grain && near(other, grain, SPECK.alone)),
    ),
  );
  return specks.size === 0 ? blobs : blobs.filter((blob) => !specks.has(blob));
}
