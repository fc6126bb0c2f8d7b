import { createHash } from 'node:crypto';
import { dotsPerPt, type Grid } from '../geometry/grid.js';
import { boxFromCorners, grow, intersection, type Box } from '../geometry/box.js';
import { mmToPt } from '../geometry/length.js';
import type { Media } from '../geometry/media.js';
import { invert, type Matrix } from '../geometry/placement.js';
import { freeNumberBox } from '../press/free-number-box.js';
import type { Placement } from '../press/place.js';
import { printedDots, type PrintedDots } from '../press/printed-dots.js';
import { LINEAR, readCodes } from '../reading/codes.js';
import { openPdf } from '../reading/open-pdf.js';
import { addCodes } from '../reading/page-codes.js';
import type { Code, GreyRaster, SourceDocument, SourcePage, Symbology } from '../reading/source.js';
import { isLabel, type Reason, type Sheet } from '../sheet/sheet.js';
import { compareCodes, isEqual, moved, type CodesCompared } from './compare-codes.js';
import { compareInk, hasInk } from './compare-ink.js';
import { cutCodes } from './cut-codes.js';
import { leastModuleDots } from './limits.js';
import { moduleWidth } from './module-width.js';
import * as reasons from './reasons.js';
import { unreadRows } from './unread-rows.js';

/** A code read back from the output. */
export interface ProvedCode {
  /** As read on the output page, pt, y down. */
  readonly code: Code;
  /** Width of a module in dots of the grid; undefined for matrix codes. */
  readonly moduleDots: number | undefined;
}

export interface Proof {
  readonly sheetId: string;
  /** `proved`, or why the sheet is held. */
  readonly verdict: 'proved' | Reason;
  /** The codes that came back equal, with their modules. */
  readonly codes: readonly ProvedCode[];
  /** SHA-256 of the page's dots, hex: two labels that print the same have the same. */
  readonly picture: string;
  /** A rectangle of the output page known to be free for a number of `numberSize`; undefined when there is none or none was asked for. */
  readonly numberBox: Box | undefined;
}

interface Size {
  readonly width: number;
  readonly height: number;
}

export interface ProofOptions {
  /** The largest number that may be stamped, pt: a free rectangle of this size is looked for. */
  readonly numberSize?: Size;
  /** A smaller one, for pages without a free rectangle of that size: a small number is better than none. */
  readonly leastNumberSize?: Size | undefined;
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
    for (const placement of placements) {
      const sheet = byId.get(placement.sheetId);
      if (!sheet) throw new Error(`proof: no sheet ${placement.sheetId}`);
      const grey = output.page(placement.page).render({ x: 0, y: 0, width: media.width, height: media.height }, dotsPerPt(grid));
      const dots = printedDots(grey);
      const found = await judge(source.page(sheet.page), sheet, placement, grey, dots, grid);
      const keepOut = isLabel(sheet) ? placement.drawnBox : undefined;
      const free = (size: Size | undefined): Box | undefined => size && freeNumberBox(dots, media, size, keepOut);
      const numberBox = free(options.numberSize) ?? free(options.leastNumberSize);
      const picture = createHash('sha256').update(dots.raster.data).digest('hex');
      proofs.push({ sheetId: sheet.id, ...found, picture, numberBox });
    }
    return proofs;
  } finally {
    output.close();
  }
}

type Judged = Pick<Proof, 'verdict' | 'codes'>;
const hold = (verdict: Reason, codes: readonly ProvedCode[] = []): Judged => ({ verdict, codes });

async function judge(
  page: SourcePage,
  sheet: Sheet,
  placement: Placement,
  grey: GreyRaster,
  dots: PrintedDots,
  grid: Grid,
): Promise<Judged> {
  const { matrix } = placement;
  // Text set anew has no place on the source: what it says is the step's, that it is there is all that can be seen here.
  if (matrix === undefined) return hasInk(dots) ? { verdict: 'proved', codes: [] } : hold(reasons.blank);
  const ink = compareInk(page.ink(), dots, matrix, placement.drawnBox);
  if (ink.kind === 'blank') return hold(reasons.blank);
  if (isLabel(sheet) && !hasInk(dots)) return hold(reasons.empty);
  const codes =
    sheet.proof?.codes === 'none'
      ? { verdict: 'proved' as const, codes: [] }
      : await judgeCodes(page, sheet, matrix, grey, dots.raster, grid);
  if (codes.verdict === 'proved' && ink.kind === 'differs') return hold(reasons.inkDiffers(ink.squares), codes.codes);
  return codes;
}

async function judgeCodes(page: SourcePage, sheet: Sheet, matrix: Matrix, grey: GreyRaster, bits: GreyRaster, grid: Grid): Promise<Judged> {
  const pixelsPerPt = Math.max(2 * dotsPerPt(grid), 2 * sheet.scale * dotsPerPt(grid));
  const cut = await cutCodes(page, sheet.box, pixelsPerPt);
  if (cut.codes.length > 0) return hold(reasons.cut(cut.codes));
  if (cut.unread.length > 0 && isLabel(sheet)) return hold(reasons.cutBars);
  const compared = await readAndCompare(page, sheet, matrix, bits, pixelsPerPt);
  const required = isLabel(sheet);
  if (required && compared.same.length === 0 && isEqual(compared)) return hold(reasons.nothingToProve);
  const proved = compared.same.map(({ output }): ProvedCode => ({ code: output, moduleDots: moduleWidth(grey, output) }));
  const difference = reasons.codesDiffer(compared);
  const fine = required ? tooFine(compared, proved, matrix, grey, grid) : undefined;
  // Bars too fine are why a code is lost: the cause says more than the effect.
  if (fine && (difference === undefined || difference.code === 'verify/code-lost')) {
    return hold(reasons.tooFine(fine.code, fine.moduleDots, grid, sheet.scale), proved);
  }
  if (difference) return hold(difference, proved);
  const unread = required
    ? unreadRows(
        page,
        sheet.box,
        compared.same.map(({ source }) => source),
      )
    : [];
  return unread.length > 0 ? hold(reasons.unread, proved) : { verdict: 'proved', codes: proved };
}

/** The finest code under the least module, if any; lost ones are measured where the source's code was put. */
function tooFine(
  compared: CodesCompared,
  proved: readonly ProvedCode[],
  matrix: Matrix,
  grey: GreyRaster,
  grid: Grid,
): { readonly code: Code; readonly moduleDots: number } | undefined {
  const lost = compared.lost.map((code): ProvedCode => ({ code, moduleDots: moduleWidth(grey, moved(code, matrix)) }));
  const measured = [...proved, ...lost].flatMap(({ code, moduleDots }) => (moduleDots === undefined ? [] : [{ code, moduleDots }]));
  return measured.filter((each) => each.moduleDots < leastModuleDots(grid)).sort((a, b) => a.moduleDots - b.moduleDots)[0];
}

/**
 * Reads both sides, and once more thoroughly when they disagree or show nothing. The source was read only where it looks like
 * a code; the output is read all over, so a code that the first look missed turns up as one too many and the second look
 * settles it.
 */
async function readAndCompare(
  page: SourcePage,
  sheet: Sheet,
  matrix: Matrix,
  bits: GreyRaster,
  pixelsPerPt: number,
): Promise<CodesCompared> {
  const expected = await page.codes(sheet.box, pixelsPerPt);
  const drawn = await readOutput(bits, expected, sheet);
  const quick = compareCodes(expected, drawn, matrix, sheet.turn);
  if (isEqual(quick) && (expected.length > 0 || !isLabel(sheet))) return quick;
  // Each look may miss what the other sees: what either saw is there.
  const [wanted, found] = [[...expected], [...drawn]];
  addCodes(wanted, await page.codes(sheet.box, pixelsPerPt, { thorough: true }));
  addCodes(found, await readCodes(bits, { thorough: true }));
  const compared = compareCodes(wanted, found, matrix, sheet.turn);
  if (compared.extra.length === 0) return compared;
  for (const extra of compared.extra) addCodes(wanted, await readWhere(page, sheet, extra, matrix, pixelsPerPt));
  return compareCodes(wanted, found, matrix, sheet.turn);
}

/** A row of bars close beside another one is read only by itself: a code that the output has is looked for at its very place in the source. */
async function readWhere(page: SourcePage, sheet: Sheet, extra: Code, matrix: Matrix, pixelsPerPt: number): Promise<readonly Code[]> {
  const { corners } = moved(extra, invert(matrix));
  const [xs, ys] = [corners.map(({ x }) => x), corners.map(({ y }) => y)];
  const there = grow(boxFromCorners(Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)), AROUND);
  const region = intersection(there, sheet.box);
  if (!region) return [];
  const raster = page.render(region, pixelsPerPt);
  const symbologies = [extra.symbology];
  return [...(await readCodes(raster, { symbologies, run: 'level' })), ...(await readCodes(raster, { symbologies, run: 'upright' }))];
}

/** Quiet zones, pt (4 mm). */
const AROUND = mmToPt(4);

/** Reads the output all over: rows of bars the way they run, matrix codes as they lie; what the source has lying on its side is looked for in all turns. */
async function readOutput(bits: GreyRaster, expected: readonly Code[], sheet: Sheet): Promise<readonly Code[]> {
  const onItsSide = ({ symbology, turn }: Code): boolean =>
    !LINEAR.includes(symbology) && (turn === undefined || (turn + sheet.turn) % 180 !== 0);
  const level = [...new Set([...LINEAR, ...SMALL, ...expected.map((code) => code.symbology)])];
  const found = [...(await readCodes(bits, { symbologies: level, run: 'level' }))];
  addCodes(found, await readCodes(bits, { symbologies: LINEAR, run: 'upright' }));
  const turned = [...new Set(expected.filter(onItsSide).map((code) => code.symbology))];
  if (turned.length > 0) addCodes(found, await readCodes(bits, { symbologies: turned }));
  return found;
}

/** What may, beside rows of bars, be small enough to be overlooked in the source; larger symbologies are looked for where the source has them. */
const SMALL: readonly Symbology[] = ['Data Matrix', 'QR'];
