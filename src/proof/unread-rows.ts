import { centre, contains, grow, intersection, type Box } from '../geometry/box.js';
import { mmToPt } from '../geometry/length.js';
import { findBullseyes } from '../reading/bullseye.js';
import { codeLikeAreas } from '../reading/code-like.js';
import type { Code, Point, SourcePage } from '../reading/source.js';

/** A row of bars is known by its texture to about 2 mm (pt). */
export const ROW_ABOUT = 6;
/** Shorter or lower areas may be heavy type as well as bars; no main code of a label is that small (common practice, no source). */
const LEAST = { long: mmToPt(25), high: mmToPt(6) };

/**
 * Rows of bars of the source, inside `box` (pt), of which no code was read: smeared or damaged in the source, or of a kind that is
 * not read. Other codes on the label say nothing of them.
 */
export function unreadRows(page: SourcePage, box: Box, read: readonly Code[]): readonly Box[] {
  return codeLikeAreas(page)
    .filter((area) => area.kind === 'linear' && contains(box, area.box, ROW_ABOUT))
    .map((area) => area.box)
    .filter(isMainRow)
    .filter((row) => !read.some((code) => isOf(code, row)));
}

/** Whether inside `box` (pt) the source shows the rings of a MaxiCode that was not read: smeared, damaged, or drawn far from its one size. */
export function hasUnreadMaxiCode(page: SourcePage, box: Box, read: readonly Code[]): boolean {
  const symbols = read.filter(({ symbology }) => symbology === 'MaxiCode');
  const holds = ({ box: { x, y, width, height } }: Code, at: Point): boolean =>
    at.x > x && at.x < x + width && at.y > y && at.y < y + height;
  return findBullseyes(page.ink(), box).some(({ centre: at }) => !symbols.some((code) => holds(code, at)));
}

/** Whether a row of bars is as large as a label's main code. */
export function isMainRow({ width, height }: Box): boolean {
  return Math.max(width, height) >= LEAST.long && Math.min(width, height) >= LEAST.high;
}

function isOf(code: Code, row: Box): boolean {
  const { x, y } = centre(row);
  const around = grow(code.box, ROW_ABOUT);
  const holdsCentre = x >= around.x && x <= around.x + around.width && y >= around.y && y <= around.y + around.height;
  return holdsCentre && intersection(code.box, row) !== undefined;
}
