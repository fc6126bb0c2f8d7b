import { bottom, boxFromCorners, right, type Box } from '../geometry/box.js';
import type { RuledLine } from './ruled.js';

/** Sides shorter than this (pt, 1 in) are no frame's with gaps: rules of a table come so near by chance. */
const SHORTEST_SIDE = 72;
/** Lines of one side lie this near to one another across it, pt. */
const ABREAST = 3;
/** A line may end this far (pt) beyond a corner. */
const BEYOND = 4;
/** Share of each side that must be drawn, and the longest single gap in it. */
const DRAWN = 0.6;
const LONGEST_GAP = 0.25;
/** What is left open at a corner, for it is round or drawn with a gap: at most this share of its side, and pt (16 mm). */
const CORNER = { share: 0.15, most: 45 };
/** The eight ends of a frame's sides keep the same way from the corners, to this much (pt): somebody drew them so. */
const SYMMETRY = 8;
/** A line at right angles in a gap is the side of another frame when it goes this share of the way across. */
const INNER = 1 / 3;

/** All lines of a page at one place across their direction: the parts of one side, or of the sides of several frames in a row. */
interface Track {
  readonly first: number;
  readonly last: number;
  /** From the start; pt. */
  readonly parts: readonly Part[];
}

/** A line: from where to where along its direction, and between what across it. */
interface Part {
  readonly from: number;
  readonly to: number;
  readonly first: number;
  readonly last: number;
}

/**
 * Rectangles that are drawn by straight parts which don't all meet: rounded corners, open corners, gaps in a side. Their outer edges in pt. A
 * rectangle of which a side runs on beyond a corner is a part of something else.
 */
export function openFrames(lines: readonly RuledLine[]): readonly Box[] {
  const level = tracksOf(lines, true);
  const upright = tracksOf(lines, false);
  const frames: Box[] = [];
  upright.forEach((leftSide, index) => {
    for (const rightSide of upright.slice(index + 1)) {
      const [x0, x1] = [leftSide.first, rightSide.last];
      if (x1 - x0 < SHORTEST_SIDE) continue;
      const across = level.flatMap((track) => {
        const side = sideOf(track, x0, x1);
        return side ? [{ track, side }] : [];
      });
      across.forEach((top, at) => {
        for (const foot of across.slice(at + 1)) {
          const [y0, y1] = [top.side.first, foot.side.last];
          if (y1 - y0 < SHORTEST_SIDE) continue;
          const [a, b] = [sideOf(leftSide, y0, y1), sideOf(rightSide, y0, y1)];
          if (!a || !b || !isSymmetric([top.side, foot.side, a, b])) continue;
          const isOneFrame =
            !isParted(top.side, upright, [leftSide, rightSide], y0, y0 + (y1 - y0) * INNER) &&
            !isParted(foot.side, upright, [leftSide, rightSide], y1 - (y1 - y0) * INNER, y1) &&
            !isParted(a, level, [top.track, foot.track], x0, x0 + (x1 - x0) * INNER) &&
            !isParted(b, level, [top.track, foot.track], x1 - (x1 - x0) * INNER, x1);
          if (isOneFrame) frames.push(boxFromCorners(a.first, y0, b.last, y1));
        }
      });
    }
  });
  return frames;
}

function tracksOf(lines: readonly RuledLine[], level: boolean): readonly Track[] {
  const placed: Part[] = lines
    .filter((line) => line.level === level)
    .map(({ box }) =>
      level
        ? { first: box.y, last: bottom(box), from: box.x, to: right(box) }
        : { first: box.x, last: right(box), from: box.y, to: bottom(box) },
    )
    .sort((a, b) => a.first - b.first);
  const groups: Part[][] = [];
  for (const line of placed) {
    const group = groups.at(-1);
    if (group?.[0] && line.first - group[0].first <= ABREAST) group.push(line);
    else groups.push([line]);
  }
  return groups
    .map((group) => ({
      first: Math.min(...group.map(({ first }) => first)),
      last: Math.max(...group.map(({ last }) => last)),
      parts: group.sort((a, b) => a.from - b.from),
    }))
    .filter(({ parts }) => parts.reduce((sum, { from, to }) => sum + to - from, 0) >= DRAWN * SHORTEST_SIDE);
}

interface Side {
  /** Its outer edges across its direction, pt. */
  readonly first: number;
  readonly last: number;
  /** What is open at the start and at the end, pt. */
  readonly open: readonly [number, number];
  readonly gaps: readonly (readonly [from: number, to: number])[];
}

/** The side that a track draws between two corners; undefined where it draws too little of one, or runs on beyond a corner. */
function sideOf({ parts }: Track, start: number, end: number): Side | undefined {
  const corner = Math.min(CORNER.most, CORNER.share * (end - start));
  let drawn = 0;
  let at = start;
  let open: number | undefined;
  let [outerFirst, outerLast] = [Infinity, -Infinity];
  const gaps: [number, number][] = [];
  for (const { from, to, first, last } of parts) {
    if (to <= start + BEYOND || from >= end - BEYOND) continue;
    if (from < start - BEYOND || to > end + BEYOND) return undefined;
    if (open === undefined) {
      open = Math.max(0, from - start);
      if (open > corner) return undefined;
    } else if (from - at > BEYOND) {
      if (from - at > LONGEST_GAP * (end - start)) return undefined;
      gaps.push([at, from]);
    }
    drawn += Math.max(0, to - Math.max(at, from));
    at = Math.max(at, to);
    outerFirst = Math.min(outerFirst, first);
    outerLast = Math.max(outerLast, last);
  }
  if (open === undefined || end - at > corner || drawn < DRAWN * (end - start)) return undefined;
  return { first: outerFirst, last: outerLast, open: [open, Math.max(0, end - at)], gaps };
}

function isSymmetric(sides: readonly Side[]): boolean {
  const ends = sides.flatMap(({ open }) => open);
  return Math.max(...ends) - Math.min(...ends) <= SYMMETRY;
}

/**
 * Whether the side of another frame begins or ends in a gap: then there are two frames beside each other, not one with a gap. `start` to `end`: the way
 * from the side to the middle of the frame, or a part of it.
 */
function isParted({ gaps }: Side, others: readonly Track[], own: readonly Track[], start: number, end: number): boolean {
  return gaps.some(([from, to]) =>
    others.some(
      (track) =>
        !own.includes(track) &&
        track.last >= from - BEYOND &&
        track.first <= to + BEYOND &&
        drawnWithin(track, start, end) >= DRAWN * (end - start),
    ),
  );
}

function drawnWithin({ parts }: Track, start: number, end: number): number {
  let [sum, at] = [0, start];
  for (const { from, to } of parts) {
    sum += Math.max(0, Math.min(to, end) - Math.max(from, at));
    at = Math.max(at, Math.min(to, end));
  }
  return sum;
}
