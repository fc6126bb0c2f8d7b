import { contains, grow, intersection, union, type Box } from '../geometry/box.js';
import { mmToPt } from '../geometry/length.js';
import { codeLikeAreas, type CodeLikeArea } from '../reading/code-like.js';
import { denseAreas } from '../reading/dense-areas.js';
import { INK_LEVEL } from '../reading/ink.js';
import type { Code, GreyRaster, SourcePage } from '../reading/source.js';
import { isMainRow, ROW_ABOUT } from './unread-rows.js';

/** Enough of the page around an area that a reader sees the whole code and its quiet zone. */
const QUIET_MM = 8;
/** A code may stick out of the box by this much (pt): a reader's corners are no finer. */
const EDGE = 1;

export interface Cut {
  /** Codes of the source page that the box's edge cuts through. */
  readonly codes: readonly Code[];
  /** Rows of bars across the edge in which no code can be read: what is cut there can't be known. */
  readonly unread: readonly Box[];
}

/**
 * What the box's edge cuts through. Only where something as dense as a code has ink beyond the edge is anything decoded, so
 * a label with clear surroundings costs nothing.
 */
export async function cutCodes(page: SourcePage, box: Box, pixelsPerPt: number): Promise<Cut> {
  const areas: readonly (Pick<CodeLikeArea, 'box'> & Partial<CodeLikeArea>)[] = [
    ...codeLikeAreas(page),
    ...denseAreas(page).map((each) => ({ box: each })),
  ];
  const codes = new Map<string, Code>();
  const unread: Box[] = [];
  for (const area of areas.filter((each) => crosses(each.box, box, page.ink()))) {
    const quiet = mmToPt(QUIET_MM);
    // A code of large modules may be found in several pieces.
    const pieces = areas.filter((each) => intersection(each.box, grow(area.box, quiet)) !== undefined);
    const around = union([area.box, ...pieces.map((each) => each.box)]) ?? area.box;
    const region = intersection(grow(around, quiet), { x: 0, y: 0, width: page.width, height: page.height });
    if (!region) continue;
    const found = await page.codes(region, pixelsPerPt);
    for (const code of found) {
      const isCut = intersection(code.box, box) !== undefined && !contains(box, code.box, EDGE);
      if (isCut) codes.set(`${code.identifier} ${code.bytes} ${Math.round(code.box.x)} ${Math.round(code.box.y)}`, code);
    }
    const goesOn = area.kind === 'linear' && isMainRow(area.box) && !contains(box, area.box, ROW_ABOUT);
    const comesIn = intersection(area.box, grow(box, -ROW_ABOUT)) !== undefined;
    if (goesOn && comesIn && !found.some((code) => intersection(code.box, area.box))) unread.push(area.box);
  }
  return { codes: [...codes.values()], unread };
}

/** Whether an area reaches into the box and has ink beyond its edge. */
function crosses(area: Box, box: Box, ink: GreyRaster): boolean {
  const inside = intersection(area, box);
  if (inside === undefined || contains(box, area)) return false;
  const { pixelsPerPt: k, origin, width, height, data } = ink;
  const column = (x: number): number => Math.min(width, Math.max(0, Math.round((x - origin.x) * k)));
  const row = (y: number): number => Math.min(height, Math.max(0, Math.round((y - origin.y) * k)));
  const isWithin = grow(box, EDGE);
  const beyondRow = (y: number): boolean => y < isWithin.y || y > isWithin.y + isWithin.height;
  const beyondColumn = (x: number): boolean => x < isWithin.x || x > isWithin.x + isWithin.width;
  for (let y = row(area.y); y < row(area.y + area.height); y++) {
    const isBeyond = beyondRow(origin.y + (y + 0.5) / k);
    for (let x = column(area.x); x < column(area.x + area.width); x++) {
      if ((data[y * width + x] as number) < INK_LEVEL && (isBeyond || beyondColumn(origin.x + (x + 0.5) / k))) return true;
    }
  }
  return false;
}
