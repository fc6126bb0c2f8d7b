/**
 * A rectangle in points (1/72 in, true size). Origin: the top-left corner of the visible page (after CropBox, /Rotate and
 * UserUnit), x to the right, y down. `width` and `height` are never negative.
 */
export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** The smallest box that holds two corners given in any order (pt). */
export function boxFromCorners(x0: number, y0: number, x1: number, y1: number): Box {
  return { x: Math.min(x0, x1), y: Math.min(y0, y1), width: Math.abs(x1 - x0), height: Math.abs(y1 - y0) };
}

export const right = (box: Box): number => box.x + box.width;
export const bottom = (box: Box): number => box.y + box.height;
export const area = (box: Box): number => box.width * box.height;
export const centre = (box: Box): { x: number; y: number } => ({ x: box.x + box.width / 2, y: box.y + box.height / 2 });

/** The smallest box around all of `boxes`; undefined for none. */
export function union(boxes: readonly Box[]): Box | undefined {
  if (boxes.length === 0) return undefined;
  let x0 = Infinity;
  let y0 = Infinity;
  let x1 = -Infinity;
  let y1 = -Infinity;
  for (const box of boxes) {
    x0 = Math.min(x0, box.x);
    y0 = Math.min(y0, box.y);
    x1 = Math.max(x1, right(box));
    y1 = Math.max(y1, bottom(box));
  }
  return { x: x0, y: y0, width: x1 - x0, height: y1 - y0 };
}

/** What two boxes share; undefined where they share no area. */
export function intersection(a: Box, b: Box): Box | undefined {
  const x0 = Math.max(a.x, b.x);
  const y0 = Math.max(a.y, b.y);
  const x1 = Math.min(right(a), right(b));
  const y1 = Math.min(bottom(a), bottom(b));
  return x1 > x0 && y1 > y0 ? { x: x0, y: y0, width: x1 - x0, height: y1 - y0 } : undefined;
}

/** Whether `inner` lies in `outer`, allowing it to stick out by `slack` pt on each side. */
export function contains(outer: Box, inner: Box, slack = 0): boolean {
  return (
    inner.x >= outer.x - slack &&
    inner.y >= outer.y - slack &&
    right(inner) <= right(outer) + slack &&
    bottom(inner) <= bottom(outer) + slack
  );
}

/** Whether two boxes are no more than `gap` pt apart either way; boxes that touch are near at 0. */
export function near(a: Box, b: Box, gap: number): boolean {
  return a.x <= right(b) + gap && b.x <= right(a) + gap && a.y <= bottom(b) + gap && b.y <= bottom(a) + gap;
}

/** The box grown by `by` pt on each side (shrunk when negative, never below zero size). */
export function grow(box: Box, by: number): Box {
  const width = Math.max(0, box.width + 2 * by);
  const height = Math.max(0, box.height + 2 * by);
  return { x: box.x + (box.width - width) / 2, y: box.y + (box.height - height) / 2, width, height };
}

/** Whether two boxes have sides of one length, to less than `within` pt, wherever they stand. */
export const sameSize = (a: Pick<Box, 'width' | 'height'>, b: Pick<Box, 'width' | 'height'>, within: number): boolean =>
  Math.abs(a.width - b.width) < within && Math.abs(a.height - b.height) < within;
