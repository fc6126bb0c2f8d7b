import type { Box } from './box.js';

/** A clockwise turn in degrees. */
export type Turn = 0 | 90 | 180 | 270;
export const TURNS: readonly Turn[] = [0, 90, 180, 270];

/** The turn that does `a`, then `b`. */
export const addTurns = (a: Turn, b: Turn): Turn => ((a + b) % 360) as Turn;
export const oppositeTurn = (turn: Turn): Turn => ((360 - turn) % 360) as Turn;

/**
 * An affine map (x, y) → (a·x + c·y + e, b·x + d·y + f), numbers in the order that PDF uses. Both sides are y-down, in pt,
 * unless a function says otherwise.
 */
export type Matrix = readonly [a: number, b: number, c: number, d: number, e: number, f: number];

/** The map that does `first`, then `second`. */
export function compose(first: Matrix, second: Matrix): Matrix {
  const [a1, b1, c1, d1, e1, f1] = first;
  const [a2, b2, c2, d2, e2, f2] = second;
  return [a1 * a2 + b1 * c2, a1 * b2 + b1 * d2, c1 * a2 + d1 * c2, c1 * b2 + d1 * d2, e1 * a2 + f1 * c2 + e2, e1 * b2 + f1 * d2 + f2];
}

/** Turns clockwise by any angle about a point: (`x`, `y`) stays where it is. */
export function rotationAbout(x: number, y: number, degrees: number): Matrix {
  const radians = (degrees * Math.PI) / 180;
  const [cos, sin] = [Math.cos(radians), Math.sin(radians)];
  return [cos, sin, -sin, cos, x - cos * x + sin * y, y - sin * x - cos * y];
}

/** The box around the image of `box` under any map. */
export function boundsOf([a, b, c, d, e, f]: Matrix, { x: x0, y: y0, width, height }: Box): Box {
  const [x1, y1] = [x0 + width, y0 + height];
  const x = Math.min(a * x0, a * x1) + Math.min(c * y0, c * y1) + e;
  const y = Math.min(b * x0, b * x1) + Math.min(d * y0, d * y1) + f;
  return {
    x,
    y,
    width: Math.max(a * x0, a * x1) + Math.max(c * y0, c * y1) + e - x,
    height: Math.max(b * x0, b * x1) + Math.max(d * y0, d * y1) + f - y,
  };
}

/** The inverse map. Throws for a map without one (a bug of the caller: placements always have one). */
export function invert([a, b, c, d, e, f]: Matrix): Matrix {
  const det = a * d - b * c;
  if (det === 0) throw new Error('placement: the matrix has no inverse');
  return [d / det, -b / det, -c / det, a / det, (c * f - d * e) / det, (b * e - a * f) / det];
}

export function applyToPoint([a, b, c, d, e, f]: Matrix, x: number, y: number): { x: number; y: number } {
  return { x: a * x + c * y + e, y: b * x + d * y + f };
}

/** The box around the image of `box` under a map that turns by quarters. */
export function applyToBox(matrix: Matrix, box: Box): Box {
  const p = applyToPoint(matrix, box.x, box.y);
  const q = applyToPoint(matrix, box.x + box.width, box.y + box.height);
  return { x: Math.min(p.x, q.x), y: Math.min(p.y, q.y), width: Math.abs(q.x - p.x), height: Math.abs(q.y - p.y) };
}

/** The size of a `width` × `height` box after a turn. */
export function turnedSize(width: number, height: number, turn: Turn): { width: number; height: number } {
  return turn % 180 === 0 ? { width, height } : { width: height, height: width };
}

/**
 * The one matrix of a sheet: takes `source` (pt on the visible source page), turns it clockwise by `turn`, scales it
 * uniformly by `scale`, and puts the top-left corner of the result at (`x`, `y`) pt on the output page.
 */
export function placementMatrix(source: Box, turn: Turn, scale: number, x: number, y: number): Matrix {
  const s = scale;
  const { x: bx, y: by, width: w, height: h } = source;
  switch (turn) {
    case 0:
      return [s, 0, 0, s, x - s * bx, y - s * by];
    case 90:
      return [0, s, -s, 0, x + s * (by + h), y - s * bx];
    case 180:
      return [-s, 0, 0, -s, x + s * (bx + w), y + s * (by + h)];
    case 270:
      return [0, -s, s, 0, x - s * by, y + s * (bx + w)];
  }
}
