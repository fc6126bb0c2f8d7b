import { bottom, contains, grow, intersection, right, union, type Box } from '../geometry/box.js';
import { mmToPt } from '../geometry/length.js';
import { codeLikeAreas, type CodeLikeArea } from './code-like.js';
import { LINEAR, readCodes } from './codes.js';
import { denseAreas, isWriting } from './dense-areas.js';
import { readMaxiCodes } from './maxicode.js';
import { INK_PIXELS_PER_PT, MOST_PIXELS, type Code, type SourcePage } from './source.js';

/** The last bars or modules may lie outside the cells that look like a code: so much more is read around them, pt. */
const AROUND = mmToPt(6);
/** Along a row of bars there may be several part-filled cells and the quiet zone. */
const ALONG_BARS = mmToPt(10);

/** Rows of bars are read along a line in each so many pt (0.18 mm): a bar is thirty times as high, and finer rows say the same again. */
const ROW_EVERY = mmToPt(0.18);

/** Rows lower than this (pt, 9 mm) that can't be read may as well be large type. */
const HIGH_BARS = mmToPt(9);

/** Finer than the pixels of most pictures of labels, pixels per pt (432 dpi). */
const SMOOTH = 6;

export interface PageCodesOptions {
  /** Read the whole region, with every means, instead of only what looks like a code. */
  readonly thorough?: boolean;
}

/**
 * Reads the codes in a region of a page where its texture says that there may be some.
 * Reading only there takes a fifth of the time.
 * @param at how finely an area is read: pixels per pt, or `own` for the pixels of the picture that draws it
 */
export async function readPageCodes(
  page: SourcePage,
  region: Box,
  at: (area: Box) => number | 'own',
  options: PageCodesOptions = {},
): Promise<readonly Code[]> {
  const maxiCodes = await readMaxiCodes(page, region, at);
  if (options.thorough === true)
    return [...(await readCodes(page.render(region, at(region)), { thorough: true })), ...maxiCodes].sort(byPlace);
  const rows = codeLikeAreas(page).filter((area) => area.kind === 'linear');
  const within = (boxes: readonly Box[]): Box[] => apart(boxes.flatMap((box) => intersection(grow(box, AROUND), region) ?? []));
  const found: Code[] = [];
  const unread: Box[] = [];
  const alone: { readonly run: 'level' | 'upright'; readonly bars: Box; readonly area: Box }[] = [];
  for (const run of ['level', 'upright'] as const) {
    const areas = rows.flatMap((row) => (row.run === run ? (intersection(alongBars(row), region) ?? []) : []));
    for (const area of apart(areas)) {
      const codes = await readCodes(page.render(area, at(area)), { symbologies: LINEAR, run, every: ROW_EVERY });
      addCodes(found, codes);
      // Stacked codes are rows of bars, too.
      if (codes.length === 0) {
        unread.push(intersection(grow(area, AROUND), region) ?? area);
        alone.push({ run, area, bars: union(rows.flatMap((row) => (row.run === run ? (intersection(row.box, area) ?? []) : []))) ?? area });
      }
    }
  }
  const others = apart([...unread, ...within(denseAreas(page).filter((area) => !isWriting(page, area)))]);
  for (const area of others) addCodes(found, await readCodes(page.render(area, at(area))));
  // A picture's pixels tell bars by greys, too, which are lost when each is ink or paper; drawn smoothly and finer they are widths.
  // A rule or a frame in the quiet zone keeps a reader from the bars beside it; by themselves they can be read. Only with a check character: others are
  // read out of parts of anything.
  for (const { run, bars, area } of alone) {
    const isRead = (): boolean => found.some((code) => intersection(code.box, bars) !== undefined);
    if (Math.min(bars.width, bars.height) < HIGH_BARS || isRead()) continue;
    const isPicture = at(area) === 'own' || page.skew !== 0;
    // … and coarsely, the noise of a scan is levelled out.
    for (const finely of isPicture ? [Math.min(SMOOTH, mostPixelsPerPt(area)), INK_PIXELS_PER_PT] : [])
      if (!isRead()) addCodes(found, await readCodes(page.render(area, finely), { symbologies: LINEAR, run, every: ROW_EVERY }));
    if (isRead()) continue;
    addCodes(found, await readCodes(page.render(bars, at(bars)), { symbologies: ['Code 128'], run, every: ROW_EVERY }));
  }
  addCodes(found, maxiCodes);
  return found.filter((code) => contains(region, code.box, 1)).sort(byPlace);
}

const byPlace = (a: Code, b: Code): number => a.box.y - b.box.y || a.box.x - b.box.x;

/** The finest resolution (pixels per pt) at which a raster of an area (pt) may be drawn. */
export const mostPixelsPerPt = ({ width, height }: Box): number => 0.999 * Math.sqrt(MOST_PIXELS / Math.max(1e-6, width * height));

/** Adds the codes that are not among those found: the same bytes in the same place are one code. */
export function addCodes(found: Code[], codes: readonly Code[]): void {
  for (const code of codes) {
    if (!found.some((known) => known.bytes === code.bytes && intersection(known.box, code.box))) found.push(code);
  }
}

function alongBars({ box, run }: CodeLikeArea): Box {
  return run === 'level'
    ? { ...box, x: box.x - ALONG_BARS, width: box.width + 2 * ALONG_BARS }
    : { ...box, y: box.y - ALONG_BARS, height: box.height + 2 * ALONG_BARS };
}

/** Boxes joined where they overlap, so that no code is read twice or cut. */
function apart(boxes: readonly Box[]): Box[] {
  const result = [...boxes];
  for (let i = 0; i < result.length; i++) {
    for (let j = i + 1; j < result.length; j++) {
      const [a, b] = [result[i], result[j]];
      if (!a || !b || a.x > right(b) || b.x > right(a) || a.y > bottom(b) || b.y > bottom(a)) continue;
      const both = union([a, b]);
      if (both) result[i] = both;
      result.splice(j, 1);
      j = i;
    }
  }
  return result;
}
