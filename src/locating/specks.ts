import { near, type Box } from '../geometry/box.js';
import { mmToPt } from '../geometry/length.js';

/**
 * A grain of a scan, pt (0.5 mm), and how far (5 mm) it is from all ink that is none, or (2 mm) from any ink at all: the dots of type and of dotted lines are
 * nearer. A larger one (0.8 mm) is 5 mm from any ink at all.
 */
const SPECK = { side: mmToPt(0.5), large: mmToPt(0.8), lone: mmToPt(5), alone: mmToPt(2) };
const isLargeGrain = ({ width, height }: Box): boolean => Math.max(width, height) <= SPECK.large;
const isGrain = ({ width, height }: Box): boolean => Math.max(width, height) <= SPECK.side;

/** Ink without the grains of a scan. */
export function withoutSpecks(blobs: readonly Box[]): readonly Box[] {
  const isNear = (grain: Box, far: number): boolean => blobs.some((other) => other !== grain && near(other, grain, far));
  const isLone = (grain: Box): boolean => !blobs.some((other) => !isGrain(other) && near(other, grain, SPECK.lone));
  const specks = new Set(
    blobs.filter((blob) => (isGrain(blob) ? isLone(blob) || !isNear(blob, SPECK.alone) : isLargeGrain(blob) && !isNear(blob, SPECK.lone))),
  );
  return specks.size === 0 ? blobs : blobs.filter((blob) => !specks.has(blob));
}
