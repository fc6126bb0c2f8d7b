import type { PathCommand } from '@cantoo/fontkit';
import type { Cluster } from './face.js';

interface Point {
  readonly x: number;
  readonly y: number;
  readonly onCurve: boolean;
}

/** Closed curves of lines and quadratic arcs, in font units, y up. */
export type Contours = readonly (readonly Point[])[];

/** A glyph as the `glyf` table holds it, and its ink in font units, y up. */
export interface Outline {
  readonly bytes: Uint8Array;
  readonly x0: number;
  readonly y0: number;
  readonly x1: number;
  readonly y1: number;
  readonly points: number;
  readonly contours: number;
}

/** A glyph without ink. */
export const EMPTY: Outline = { bytes: new Uint8Array(0), x0: 0, y0: 0, x1: 0, y1: 0, points: 0, contours: 0 };

/**
 * A font's path as contours.
 * @throws for a cubic curve, which `glyf` can't hold: the faces in use have none
 */
export function contoursOf(commands: readonly PathCommand[]): Contours {
  const contours: Point[][] = [];
  for (const { command, args } of commands) {
    const point = (index: number, onCurve: boolean): Point => ({
      x: Math.round(args[index] ?? 0),
      y: Math.round(args[index + 1] ?? 0),
      onCurve,
    });
    if (command === 'bezierCurveTo') throw new Error('outline: a cubic curve in a TrueType face');
    if (command === 'moveTo') contours.push([point(0, true)]);
    else if (command === 'lineTo') contours.at(-1)?.push(point(0, true));
    else if (command === 'quadraticCurveTo') contours.at(-1)?.push(point(0, false), point(2, true));
  }
  for (const contour of contours) {
    const [first, end] = [contour[0], contour.at(-1)];
    // A contour closes by itself; the path says its first point again.
    if (contour.length > 1 && first && end?.onCurve && end.x === first.x && end.y === first.y) contour.pop();
  }
  return contours.filter((contour) => contour.length > 2);
}

const outlines = new WeakMap<Cluster, Outline>();

/** A cluster as one glyph: its parts drawn over each other. */
export function outlineOf(cluster: Cluster): Outline {
  const known = outlines.get(cluster);
  if (known) return known;
  const contours = cluster.parts.flatMap(({ id, x, y }) =>
    cluster.face
      .contours(id)
      .map((contour) => (x === 0 && y === 0 ? contour : contour.map((point) => ({ ...point, x: point.x + x, y: point.y + y })))),
  );
  const made = encode(contours);
  outlines.set(cluster, made);
  return made;
}

const ON_CURVE = 1;

/** `glyf`, a simple glyph without instructions, every coordinate two bytes wide (OpenType 1.9). Instructions would round to the grid of a screen. */
function encode(contours: Contours): Outline {
  const points = contours.flat();
  if (points.length === 0) return EMPTY;
  const [x0, y0, x1, y1] = boundsOf(points);
  const size = 10 + 2 * contours.length + 2 + points.length * 5;
  const bytes = new Uint8Array(size + (size % 2));
  const view = new DataView(bytes.buffer);
  [contours.length, x0, y0, x1, y1].forEach((value, at) => {
    view.setInt16(2 * at, value);
  });
  let at = 10;
  let last = -1;
  for (const contour of contours) {
    last += contour.length;
    view.setUint16(at, last);
    at += 2;
  }
  at += 2;
  for (const { onCurve } of points) bytes[at++] = onCurve ? ON_CURVE : 0;
  for (const axis of ['x', 'y'] as const) {
    let before = 0;
    for (const point of points) {
      view.setInt16(at, point[axis] - before);
      before = point[axis];
      at += 2;
    }
  }
  return { bytes, x0, y0, x1, y1, points: points.length, contours: contours.length };
}

function boundsOf(points: readonly Point[]): readonly [number, number, number, number] {
  let [x0, y0, x1, y1] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const { x, y } of points) {
    x0 = Math.min(x0, x);
    y0 = Math.min(y0, y);
    x1 = Math.max(x1, x);
    y1 = Math.max(y1, y);
  }
  return [x0, y0, x1, y1];
}
