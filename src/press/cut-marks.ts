import { bottom, intersection, right, type Box } from '../geometry/box.js';

/** From a page's corner to its mark, how long a mark is, how wide its line, and the shortest one that helps anybody, pt. */
const CLEAR = 3;
const LENGTH = 12;
const WEIGHT = 0.25;
const SHORTEST = 3;

/**
 * Thin lines that go on from the edges of pages, away from their corners, to cut along: as boxes, pt, y down. They end before any position and
 * where the printer's reach ends; where there is no room for one there is none.
 * @param pages what is cut out of this sheet
 * @param positions every position of the sheet, free ones too: another day's label may be printed there
 * @param reach what the printer of the sheet can print
 */
export function cutMarks(pages: readonly Box[], positions: readonly Box[], reach: Box): readonly Box[] {
  const marks = pages.flatMap((page) => corners(page).flatMap((corner) => besideCorner(corner)));
  const found = marks.flatMap((mark) => shortened(mark, positions, reach) ?? []);
  // Neighbours in a row ask for the same lines.
  return [...new Map(found.map((box) => [[box.x, box.y, box.width, box.height].map((each) => each.toFixed(3)).join(' '), box])).values()];
}

interface Corner {
  readonly x: number;
  readonly y: number;
  /** Away from the page. */
  readonly dx: -1 | 1;
  readonly dy: -1 | 1;
}

const corners = (page: Box): readonly Corner[] => [
  { x: page.x, y: page.y, dx: -1, dy: -1 },
  { x: right(page), y: page.y, dx: 1, dy: -1 },
  { x: page.x, y: bottom(page), dx: -1, dy: 1 },
  { x: right(page), y: bottom(page), dx: 1, dy: 1 },
];

interface Mark {
  readonly way: 'across' | 'down';
  /** Where it begins, near the corner, and which way it goes. */
  readonly from: number;
  readonly towards: -1 | 1;
  /** Where its line's middle lies in the other direction. */
  readonly line: number;
}

const besideCorner = ({ x, y, dx, dy }: Corner): readonly Mark[] => [
  { way: 'across', from: x + dx * CLEAR, towards: dx, line: y },
  { way: 'down', from: y + dy * CLEAR, towards: dy, line: x },
];

function boxOf({ way, from, towards, line }: Mark, length: number): Box {
  const start = Math.min(from, from + towards * length);
  return way === 'across'
    ? { x: start, y: line - WEIGHT / 2, width: length, height: WEIGHT }
    : { x: line - WEIGHT / 2, y: start, width: WEIGHT, height: length };
}

function shortened(mark: Mark, positions: readonly Box[], reach: Box): Box | undefined {
  const full = boxOf(mark, LENGTH);
  const inside = intersection(full, reach);
  if (!inside) return undefined;
  let length = reachOf(mark, inside);
  for (const position of positions) {
    const over = intersection(full, position);
    if (over) length = Math.min(length, distanceTo(mark, over) - CLEAR);
  }
  return length >= SHORTEST ? boxOf(mark, length) : undefined;
}

/** How far a mark goes inside the printer's reach; nothing when its line is cut along. */
function reachOf({ way, from, towards }: Mark, inside: Box): number {
  if ((way === 'across' ? inside.height : inside.width) < WEIGHT - 1e-9) return 0;
  const [low, high] = way === 'across' ? [inside.x, right(inside)] : [inside.y, bottom(inside)];
  const begins = towards > 0 ? low : high;
  return Math.abs(begins - from) > 1e-9 ? 0 : high - low;
}

function distanceTo({ way, from, towards }: Mark, box: Box): number {
  const [low, high] = way === 'across' ? [box.x, right(box)] : [box.y, bottom(box)];
  return towards > 0 ? low - from : from - high;
}
