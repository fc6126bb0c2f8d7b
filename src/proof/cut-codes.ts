import { area, contains, grow, intersection, type Box } from '../geometry/box.js';
import { mmToPt } from '../geometry/length.js';
import { codeLikeAreas } from '../reading/code-like.js';
import type { Code, SourcePage } from '../reading/source.js';

/** An area found by its texture is known to about 2 mm: less than this beyond the box's edge says nothing. */
const BEYOND_MM = 3;
/** Enough of the page around an area that a reader sees the whole code and its quiet zone. */
const QUIET_MM = 8;

/**
 * Codes of the source page that the box's edge cuts through. Only where the page's texture crosses the edge is anything
 * decoded, so a label with clear surroundings costs nothing.
 */
export async function cutCodes(page: SourcePage, box: Box, pixelsPerPt: number): Promise<readonly Code[]> {
  const crossing = codeLikeAreas(page).filter((each) => {
    const inside = intersection(each.box, box);
    if (inside === undefined || contains(box, each.box, mmToPt(BEYOND_MM))) return false;
    return area(inside) > 0.05 * area(each.box);
  });
  const cut = new Map<string, Code>();
  for (const { box: around } of crossing) {
    const region = intersection(grow(around, mmToPt(QUIET_MM)), { x: 0, y: 0, width: page.width, height: page.height });
    if (!region) continue;
    for (const code of await page.codes(region, pixelsPerPt)) {
      const crosses = intersection(code.box, box) !== undefined && !contains(box, code.box, 1);
      if (crosses) cut.set(`${code.identifier} ${code.bytes} ${Math.round(code.box.x)} ${Math.round(code.box.y)}`, code);
    }
  }
  return [...cut.values()];
}
