import { boxFromCorners, grow, intersection } from '../geometry/box.js';
import { mmToPt } from '../geometry/length.js';
import { invert, type Matrix } from '../geometry/placement.js';
import { LINEAR, readCodes } from '../reading/codes.js';
import { finderOf, readMaxiCode } from '../reading/maxicode.js';
import { addCodes } from '../reading/page-codes.js';
import type { Code, GreyRaster, SourcePage, Symbology } from '../reading/source.js';
import { isLabel, type Sheet } from '../sheet/sheet.js';
import { compareCodes, isEqual, moved, type CodesCompared } from './compare-codes.js';

/**
 * Reads both sides, and once more thoroughly when they disagree or show nothing. The source was read only where it looks like
 * a code; the output is read all over, so a code that the first look missed turns up as one too many and the second look
 * settles it.
 */
export async function readAndCompare(
  page: SourcePage,
  sheet: Sheet,
  matrix: Matrix,
  bits: GreyRaster,
  pixelsPerPt: number,
): Promise<CodesCompared> {
  const expected = await page.codes(sheet.box, pixelsPerPt);
  const drawn = await readOutput(bits, expected, sheet, matrix);
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

/** Reads the output all over: rows of bars both ways, matrix codes as they lie; what the source has lying on its side is looked for in all turns. */
async function readOutput(bits: GreyRaster, expected: readonly Code[], sheet: Sheet, matrix: Matrix): Promise<readonly Code[]> {
  const onItsSide = ({ symbology, turn }: Code): boolean =>
    !LINEAR.includes(symbology) && (turn === undefined || (turn + sheet.turn) % 180 !== 0);
  const others = [...new Set([...SMALL, ...expected.map((code) => code.symbology).filter((each) => isReadOnAPage(each))])];
  const found = [...(await readCodes(bits, { symbologies: LINEAR }))];
  addCodes(found, await readCodes(bits, { symbologies: others.filter((each) => !LINEAR.includes(each)), run: 'level' }));
  const turned = [
    ...new Set(
      expected
        .filter(onItsSide)
        .map((code) => code.symbology)
        .filter(isReadOnAPage),
    ),
  ];
  if (turned.length > 0) addCodes(found, await readCodes(bits, { symbologies: turned }));
  for (const code of expected.filter(({ symbology }) => symbology === 'MaxiCode')) {
    const read = await readMaxiCode(bits, finderOf(moved(code, matrix)));
    if (read) addCodes(found, [read]);
  }
  return found;
}

/** MaxiCode is read only alone, where it is known to be. */
const isReadOnAPage = (symbology: Symbology): boolean => symbology !== 'MaxiCode';

/** What may, beside rows of bars, be small enough to be overlooked in the source; larger symbologies are looked for where the source has them. */
const SMALL: readonly Symbology[] = ['Data Matrix', 'QR'];
