import { bottom, contains, right, union, type Box } from '../geometry/box.js';
import { INK_LEVEL } from '../reading/ink.js';
import type { GreyRaster } from '../reading/source.js';

/** Arms of corner marks are this long, pt (2 to 16 mm; common practice, no source). */
const ARM = { least: 6, most: 45 };
/** The four marks of one frame are drawn alike and in line, to so much, pt: two pixels. */
const ALIKE = 1.5;
/** Both arms of a mark have one length, to so much, pt. */
const EVEN = 3;
/** Shorter sides (pt, 1 in) are no label's. */
const SHORTEST_SIDE = 72;
/** An arm lies in so many pixels along its edge, and is drawn over this share of it. */
const EDGE_PIXELS = 3;
const DRAWN = 0.85;
/** Along the inner side of both arms is white, between these shares of a mark's box; deeper in may begin what is framed. */
const WHITE = { from: 0.2, to: 0.35 };

/** Frames of which only the four corners are drawn, two short lines each, as a guide to cut along: outer edges, pt. */
export function cornerFrames(ink: GreyRaster, blobs: readonly Box[]): readonly Box[] {
  const marks = blobs.filter(
    ({ width, height }) => Math.min(width, height) >= ARM.least && Math.max(width, height) <= ARM.most && Math.abs(width - height) <= EVEN,
  );
  if (marks.length < 4) return [];
  const [topLefts, topRights, lowLefts, lowRights] = CORNERS.map((corner) => marks.filter((mark) => isMark(ink, mark, corner)));
  const frames = (topLefts ?? []).flatMap((first) =>
    (topRights ?? []).flatMap((second) => {
      if (!isAlike(first, second) || Math.abs(first.y - second.y) > ALIKE || right(second) - first.x < SHORTEST_SIDE) return [];
      return (lowLefts ?? []).flatMap((third): readonly Box[] => {
        if (!isAlike(first, third) || Math.abs(first.x - third.x) > ALIKE || bottom(third) - first.y < SHORTEST_SIDE) return [];
        const last = { x: second.x, y: third.y, width: first.width, height: first.height };
        const fourth = (lowRights ?? []).find((mark) => isAlike(last, mark) && isAt(last, mark));
        const box = fourth && union([first, second, third, fourth]);
        return box ? [box] : [];
      });
    }),
  );
  return frames.filter(
    (frame) => !frames.some((other) => contains(frame, other, ALIKE) && !contains(other, frame, ALIKE) && haveCornerInCommon(frame, other)),
  );
}

/** Marks of several labels in a column or a row make a frame around all of them, too: it begins or ends where one of theirs does. */
const haveCornerInCommon = (a: Box, b: Box): boolean =>
  [a.x - b.x, right(a) - right(b)].some((off) => Math.abs(off) <= ALIKE) &&
  [a.y - b.y, bottom(a) - bottom(b)].some((off) => Math.abs(off) <= ALIKE);

interface Corner {
  /** Whether its level arm is the upper edge of the mark, and its upright one the left edge. */
  readonly upper: boolean;
  readonly left: boolean;
}
const CORNERS: readonly Corner[] = [
  { upper: true, left: true },
  { upper: true, left: false },
  { upper: false, left: true },
  { upper: false, left: false },
];

const isAlike = (a: Box, b: Box): boolean => Math.abs(a.width - b.width) <= ALIKE && Math.abs(a.height - b.height) <= ALIKE;
const isAt = (a: Box, b: Box): boolean => Math.abs(a.x - b.x) <= ALIKE && Math.abs(a.y - b.y) <= ALIKE;

/** Whether the ink in a box is two lines that meet in one of its corners, and nothing near them. */
function isMark({ data, width, pixelsPerPt: k, origin }: GreyRaster, mark: Box, { upper, left }: Corner): boolean {
  const [x0, y0] = [Math.round((mark.x - origin.x) * k), Math.round((mark.y - origin.y) * k)];
  const [columns, rows] = [Math.round(mark.width * k), Math.round(mark.height * k)];
  /** Counted from the corner. */
  const isDark = (along: number, across: number): boolean => {
    const [x, y] = [left ? x0 + along : x0 + columns - 1 - along, upper ? y0 + across : y0 + rows - 1 - across];
    return (data[y * width + x] as number) < INK_LEVEL;
  };
  const [from, to] = [Math.ceil(WHITE.from * Math.min(columns, rows)), Math.ceil(WHITE.to * Math.min(columns, rows))];
  for (let depth = from; depth < to; depth++) {
    for (let along = depth; along < columns; along++) if (isDark(along, depth)) return false;
    for (let across = depth; across < rows; across++) if (isDark(depth, across)) return false;
  }
  const drawn = (length: number, at: (place: number, edge: number) => boolean): boolean =>
    Array.from({ length: EDGE_PIXELS }, (_, edge) => edge).some((edge) => {
      let dark = 0;
      for (let place = 0; place < length; place++) if (at(place, edge)) dark += 1;
      return dark >= DRAWN * length;
    });
  return drawn(columns, isDark) && drawn(rows, (place, edge) => isDark(edge, place));
}
