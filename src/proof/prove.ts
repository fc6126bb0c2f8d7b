import { createHash } from 'node:crypto';
import { bottom, right, type Box } from '../geometry/box.js';
import { dotsPerPt, type Grid } from '../geometry/grid.js';
import type { Media } from '../geometry/media.js';
import { freeNumberBox, numberBoxInMargin } from '../press/free-number-box.js';
import type { Placement } from '../press/place.js';
import { redrawnArea } from '../press/redraw.js';
import { burn } from '../press/burn.js';
import { printedDots, type PrintedDots } from '../press/printed-dots.js';
import { blackAndWhite } from '../reading/black-and-white.js';
import { openPdf } from '../reading/open-pdf.js';
import type { Code, GreyRaster, SourceDocument, SourcePage } from '../reading/source.js';
import { isLabel, type Reason, type Sheet } from '../sheet/sheet.js';
import { codeAreas } from './code-areas.js';
import { compareInk, hasInk } from './compare-ink.js';
import { hold, judgeCodes, type DrawnPage, type Judged, type ProvedCode } from './judge-codes.js';
import { dotsOutOfReach, inkBeyondPage } from './out-of-reach.js';
import { numberBoxOnLabel } from './number-on-label.js';
import { hasVanishingWords, smallWords } from './vanishing-words.js';
import * as reasons from './reasons.js';

export interface Proof {
  readonly sheetId: string;
  /** `proved`, or why the sheet is held. */
  readonly verdict: 'proved' | Reason;
  /** The codes that came back equal, with their modules. */
  readonly codes: readonly ProvedCode[];
  /** What people should know of a page that is printed all the same, one sentence each. */
  readonly notes?: readonly string[];
  /** SHA-256 of the page's dots, hex: two labels that print the same have the same. */
  readonly picture: string;
  /** A rectangle of the output page known to be free for a number of `numberSize`; undefined when there is none or none was asked for. */
  readonly numberBox: Box | undefined;
  /** Whether that rectangle lies on the label itself; left out: it doesn't. */
  readonly numberOnLabel?: boolean;
  /** The page as it is burned, when it goes out as dots. */
  readonly dots?: GreyRaster;
}

interface Size {
  readonly width: number;
  readonly height: number;
}

export interface ProofOptions {
  /** The largest number that may be stamped, pt: a free rectangle of this size is looked for. */
  readonly numberSize?: Size;
  /** A larger one, looked for first on slips, which say more beside their number. */
  readonly slipNumberSize?: Size | undefined;
  /** Another, looked for first on sheets that go to another printer than their labels. */
  readonly elsewhereNumberSize?: Size | undefined;
  /** Whether a number may stand on a label where there is no free rectangle beside it; left out: it may not. */
  readonly numberOnLabel?: boolean | undefined;
  /** A smaller one, for pages without a free rectangle of that size: a small number is better than none. */
  readonly leastNumberSize?: Size | undefined;
  /** What the printer can reach of the page, pt; left out: the whole of it. */
  readonly reach?: Box | undefined;
  /** Whether the page goes out as dots, which no driver draws again; left out: it stays vector. */
  readonly asDots?: boolean;
}

/**
 * Looks at what the press drew: each output page is rasterised once, in 1 bit on the printer's grid, and every code read back
 * from those dots is compared with the source's in identifier, bytes, place and turn. Anything that does not come back is a
 * reason to hold. One proof for each placement, in their order.
 * @param pressed the bytes that the press gave for these placements
 */
export async function proveDocument(
  source: SourceDocument,
  pressed: Uint8Array,
  sheets: readonly Sheet[],
  placements: readonly Placement[],
  media: Media,
  grid: Grid,
  options: ProofOptions = {},
): Promise<readonly Proof[]> {
  const output = await openPdf(pressed, { as: 'output' });
  if ('refused' in output) throw new Error(`proof: the press's own document does not open (${output.refused.code})`);
  const byId = new Map(sheets.map((sheet) => [sheet.id, sheet]));
  try {
    const proofs: Proof[] = [];
    const whole: Box = { x: 0, y: 0, width: media.width, height: media.height };
    for (const placement of placements) {
      const sheet = byId.get(placement.sheetId);
      if (!sheet) throw new Error(`proof: no sheet ${placement.sheetId}`);
      const page = output.page(placement.page);
      const grey = page.render(whole, dotsPerPt(grid));
      const words = options.asDots === true ? smallWords(source.page(sheet.page), sheet, placement.matrix) : [];
      const codes = options.asDots === true ? await codeAreas(source.page(sheet.page), sheet, placement.matrix, grid) : [];
      const dots = options.asDots === true ? printedDots(grey, burn(grey, codes, words)) : printedDots(grey);
      const onGrid = (code: Code, other: Grid): GreyRaster => barsOnGrid(page, code, other);
      const drawn: Drawn = {
        grey,
        dots,
        words,
        media,
        grid,
        reach: options.reach ?? whole,
        onGrid: options.asDots === true ? undefined : onGrid,
      };
      const found = await judge(source.page(sheet.page), sheet, placement, drawn);
      const numbered = await placeForNumber(source.page(sheet.page), sheet, placement, drawn, found, options);
      const picture = createHash('sha256').update(dots.raster.data).digest('hex');
      proofs.push({ sheetId: sheet.id, ...found, picture, ...numbered, ...(options.asDots === true ? { dots: dots.raster } : {}) });
    }
    return proofs;
  } finally {
    output.close();
  }
}

/** Where a page's number may stand: on free paper beside a label, or on the label where that is wanted. */
async function placeForNumber(
  page: SourcePage,
  sheet: Sheet,
  { matrix, drawnBox }: Placement,
  drawn: Drawn,
  { verdict, codes }: Judged,
  { numberSize, leastNumberSize, slipNumberSize, elsewhereNumberSize, numberOnLabel }: ProofOptions,
): Promise<Pick<Proof, 'numberBox' | 'numberOnLabel'>> {
  const { dots, grey, grid, reach, onGrid } = drawn;
  const isElsewhere = sheet.output !== undefined;
  const longest = isElsewhere ? elsewhereNumberSize : sheet.role === 'slip' ? slipNumberSize : undefined;
  const sizes = [longest, numberSize, leastNumberSize].filter((size) => size !== undefined);
  if (isElsewhere) return { numberBox: numberBoxInMargin(dots, reach, sizes) };
  for (const size of sizes) {
    const numberBox = freeNumberBox(dots, reach, size, isLabel(sheet) ? drawnBox : undefined);
    if (numberBox) return { numberBox };
  }
  if (numberOnLabel !== true || sheet.role !== 'label' || matrix === undefined || verdict !== 'proved') return { numberBox: undefined };
  const label = { page, sheet, matrix, drawnBox, dots, codes, drawn: { grey, bits: dots.raster, grid, onGrid }, reach };
  const numberBox = await numberBoxOnLabel(label, sizes);
  return numberBox ? { numberBox, numberOnLabel: true } : { numberBox };
}

/** Paper that measuring wants before and behind a row of bars, and on its other sides, pt. */
const BESIDE_CODE = { along: 32, across: 8 };

/** The bars of a code and some paper about them in 1 bit as another grid draws them, cut along that grid's own dots. */
function barsOnGrid(page: SourcePage, { box, turn }: Code, grid: Grid): GreyRaster {
  const perPt = dotsPerPt(grid);
  const [dx, dy] = turn === 0 || turn === 180 ? [BESIDE_CODE.along, BESIDE_CODE.across] : [BESIDE_CODE.across, BESIDE_CODE.along];
  const dot = (pt: number, most: number, round: (dots: number) => number): number => round(Math.min(most, Math.max(0, pt)) * perPt) / perPt;
  const [x, y] = [dot(box.x - dx, page.width, Math.floor), dot(box.y - dy, page.height, Math.floor)];
  const [x1, y1] = [dot(right(box) + dx, page.width, Math.floor), dot(bottom(box) + dy, page.height, Math.floor)];
  const part = page.render({ x, y, width: x1 - x, height: y1 - y }, perPt);
  return { ...part, data: blackAndWhite(part.data) };
}

/** A drawn page, and what it is printed on. */
interface Drawn {
  readonly grey: GreyRaster;
  readonly dots: PrintedDots;
  /** On a page of dots, where its small words lie. */
  readonly words: readonly Box[];
  readonly media: Media;
  readonly grid: Grid;
  readonly reach: Box;
  readonly onGrid: DrawnPage['onGrid'];
}

async function judge(page: SourcePage, sheet: Sheet, placement: Placement, drawn: Drawn): Promise<Judged> {
  const { matrix } = placement;
  const { grey, dots, media, grid } = drawn;
  const unreachable = dotsOutOfReach(dots.raster, drawn.reach);
  if (unreachable > 0) return hold(reasons.outOfReach(unreachable));
  // Text set anew has no place on the source: what it says is the step's, that it is there is all that can be seen here.
  if (matrix === undefined) return hasInk(dots) ? { verdict: 'proved', codes: [] } : hold(reasons.blank);
  const ink = compareInk(
    page.coarse(),
    dots,
    matrix,
    placement.drawnBox,
    (sheet.redrawn ?? []).map((code) => redrawnArea(code, matrix, grid)),
  );
  if (ink.kind === 'blank') return hold(reasons.blank);
  if (isLabel(sheet) && !hasInk(dots)) return hold(reasons.empty);
  if (hasVanishingWords(drawn.words, grey, dots.raster)) return hold(reasons.vanishes);
  if (inkBeyondPage(page.ink(), matrix, placement.drawnBox, media)) return hold(reasons.beyondPage);
  const codes =
    sheet.proof?.codes === 'none'
      ? { verdict: 'proved' as const, codes: [] }
      : await judgeCodes(page, sheet, matrix, { grey, bits: dots.raster, grid, onGrid: drawn.onGrid });
  if (codes.verdict === 'proved' && ink.kind === 'differs') return hold(reasons.inkDiffers(ink.squares), codes.codes);
  return codes;
}
