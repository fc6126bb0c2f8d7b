import type { Grid } from '../geometry/grid.js';
import type { Code } from '../reading/source.js';
import type { ProofPlan, Reason, Sheet } from '../sheet/sheet.js';
import type { ProvedCode } from './judge-codes.js';
import { leastDots, LEAST_MATRIX_MODULE, LEAST_QUIET_AROUND, LEAST_ROW, limitOf, TOLERANCE } from './limits.js';
import type { MatrixMeasure } from './measure-matrix.js';
import { knownNumber } from './number-schemes.js';
import * as reasons from './reasons.js';

/**
 * Whether a carrier's machine reads a code: PDF417, and whatever carries a number of a published scheme. The least module of a QR code is a rule of transport labels, not of
 * QR itself: a link may be finer, which phones read, and is told. Clear paper and height of rows are each code's own standard, whatever it carries.
 */
const isForTransport = (code: Code): boolean => code.symbology === 'PDF417' || knownNumber(code) !== undefined;

/** The first limit that a matrix or stacked code of a label breaks on the printer's dots, as the reason for holding; undefined when it breaks none. */
export function brokenMatrixLimit(
  { code, matrix }: ProvedCode,
  { allow = [] }: ProofPlan,
  grid: Grid,
  sheet: Pick<Sheet, 'scale'>,
): Reason | undefined {
  if (!matrix) return undefined;
  const least = isForTransport(code) ? limitOf(LEAST_MATRIX_MODULE, code) : 0;
  if (!allow.includes('module-width') && matrix.leastModuleDots < leastDots(least, grid))
    return reasons.modulesTooFine(code, matrix.leastModuleDots, grid, least, sheet);
  if (!allow.includes('row-height') && areRowsLow(matrix)) return reasons.rowsTooLow(code, matrix.rowHeight ?? 0, LEAST_ROW.value);
  if (!allow.includes('quiet-zone') && isQuietShort(code, matrix))
    return reasons.quietAround(code, matrix.quiet, limitOf(LEAST_QUIET_AROUND, code));
  return undefined;
}

/** Both the code and what stands beside it are rounded to dots. */
const isQuietShort = (code: Code, { quiet, moduleDots }: MatrixMeasure): boolean =>
  quiet + 1 / moduleDots < limitOf(LEAST_QUIET_AROUND, code) * (1 - TOLERANCE);

const areRowsLow = ({ rowHeight, moduleDots }: MatrixMeasure): boolean =>
  rowHeight !== undefined && (rowHeight + 1 / moduleDots) * (1 + TOLERANCE) < LEAST_ROW.value;

/** What people should know of a matrix or stacked code that is printed all the same, one sentence each. */
export function matrixNotes({ code, matrix }: ProvedCode, grid: Grid): readonly string[] {
  if (!matrix) return [];
  const { moduleDots } = matrix;
  const least = limitOf(LEAST_MATRIX_MODULE, code);
  return [
    ...(moduleDots < leastDots(least, grid)
      ? [`a ${code.symbology} code: modules of ${matrix.moduleMm.toFixed(2)} mm, at least ${least} mm by rule on transport labels`]
      : []),
    ...(isQuietShort(code, matrix)
      ? [
          `a ${code.symbology} code: ${matrix.quiet.toFixed(1)} modules of clear paper on one side, at least ${limitOf(LEAST_QUIET_AROUND, code)} by rule`,
        ]
      : []),
    ...(areRowsLow(matrix)
      ? [`a PDF417 code: rows ${(matrix.rowHeight ?? 0).toFixed(1)} modules high, at least ${LEAST_ROW.value} by rule`]
      : []),
  ];
}
