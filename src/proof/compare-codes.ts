import { mmToPt } from '../geometry/length.js';
import { addTurns, applyToPoint, type Matrix, type Turn } from '../geometry/placement.js';
import type { Code, Point } from '../reading/source.js';
import { isLinear } from './linear.js';

/** A code read from the output may lie this far from where the source's code was put, mm. */
export const MOVED_MM = 2;

/** What became of the source's codes on the output. */
export interface CodesCompared {
  /** Same identifier, same bytes, same place, same turn. */
  readonly same: readonly { readonly source: Code; readonly output: Code }[];
  /** In the source, not on the output. */
  readonly lost: readonly Code[];
  /** Something else is read at the place of a source's code. */
  readonly changed: readonly { readonly source: Code; readonly output: Code }[];
  /** The same code, but in another place or turned otherwise. */
  readonly moved: readonly { readonly source: Code; readonly output: Code }[];
  /** On the output, not in the source. */
  readonly extra: readonly Code[];
}

/**
 * Compares the multisets of symbology identifier and bytes, and the place of each. Bytes, not text: text loses FNC1 and GS.
 * @param matrix source page → output page, pt, y down
 * @param turn the clockwise turn that `matrix` does
 */
export function compareCodes(source: readonly Code[], output: readonly Code[], matrix: Matrix, turn: Turn): CodesCompared {
  const free = new Set(output);
  const same: { source: Code; output: Code }[] = [];
  const missing: Code[] = [];
  for (const code of source) {
    const match = nearest(
      code,
      matrix,
      [...free].filter((each) => equal(code, each) && liesWhere(code, each, matrix, turn)),
    );
    if (match) {
      free.delete(match);
      same.push({ source: code, output: match });
    } else missing.push(code);
  }
  const lost: Code[] = [];
  const changed: { source: Code; output: Code }[] = [];
  const moved: { source: Code; output: Code }[] = [];
  for (const code of missing) {
    const elsewhere = [...free].find((each) => equal(code, each));
    const instead = elsewhere ?? [...free].find((each) => liesNear(code, each, matrix));
    if (instead) free.delete(instead);
    if (elsewhere) moved.push({ source: code, output: elsewhere });
    else if (instead) changed.push({ source: code, output: instead });
    else lost.push(code);
  }
  return { same, lost, changed, moved, extra: [...free] };
}

/** Where a code of the source lies on the output, pt; its turn and box are left as they were. */
export function moved(code: Code, matrix: Matrix): Code {
  const [a, b, c, d] = code.corners;
  const at = ({ x, y }: Point): Point => applyToPoint(matrix, x, y);
  return { ...code, corners: [at(a), at(b), at(c), at(d)] };
}

export const isEqual = ({ lost, changed, moved, extra }: CodesCompared): boolean =>
  lost.length + changed.length + moved.length + extra.length === 0;

const equal = (a: Code, b: Code): boolean => a.identifier === b.identifier && a.bytes === b.bytes;

function liesWhere(source: Code, output: Code, matrix: Matrix, turn: Turn): boolean {
  if (source.turn !== undefined && output.turn !== undefined && addTurns(source.turn, turn) !== output.turn) return false;
  return liesNear(source, output, matrix);
}

/**
 * Centres within 2 mm; along the bars of a linear code up to half their length more, because a reader reports the part of the
 * bars that it happened to scan; a PDF417 of which it saw one end on one side only, up to half of what that end is long.
 */
function liesNear(source: Code, output: Code, matrix: Matrix): boolean {
  const put = moved(source, matrix);
  const [p, q] = [middle(put), middle(output)];
  const [topLeft, topRight, , bottomLeft] = put.corners;
  const row = length(topLeft, topRight);
  const limit = mmToPt(MOVED_MM);
  if (!(isLinear(source) || source.symbology === 'PDF417') || row === 0) return length(p, q) <= limit;
  const u = { x: (topRight.x - topLeft.x) / row, y: (topRight.y - topLeft.y) / row };
  const alongRow = Math.abs((q.x - p.x) * u.x + (q.y - p.y) * u.y);
  const alongBars = Math.abs((q.y - p.y) * u.x - (q.x - p.x) * u.y);
  if (isLinear(source)) return alongRow <= limit && alongBars <= limit + length(topLeft, bottomLeft) / 2;
  const [drawnLeft, drawnRight] = output.corners;
  return alongBars <= limit && alongRow <= limit + Math.abs(length(drawnLeft, drawnRight) - row) / 2;
}

/** How far apart (pt) the centres lie on the output. */
function distance(source: Code, output: Code, matrix: Matrix): number {
  const { x, y } = middle(source);
  return length(applyToPoint(matrix, x, y), middle(output));
}

function nearest(source: Code, matrix: Matrix, codes: readonly Code[]): Code | undefined {
  return codes.toSorted((a, b) => distance(source, a, matrix) - distance(source, b, matrix))[0];
}

const length = (a: Point, b: Point): number => Math.hypot(b.x - a.x, b.y - a.y);

function middle({ corners }: Code): Point {
  const [a, b, c, d] = corners;
  return { x: (a.x + b.x + c.x + d.x) / 4, y: (a.y + b.y + c.y + d.y) / 4 };
}
