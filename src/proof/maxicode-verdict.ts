import type { ProofPlan, Reason } from '../sheet/sheet.js';
import type { ProvedCode } from './judge-codes.js';
import { LEAST_QUIET_AROUND, MAXICODE_MOST, MAXICODE_SCALE, TOLERANCE } from './limits.js';
import type { MaxiCodeMeasure } from './measure-maxicode.js';
import * as reasons from './reasons.js';

/**
 * The first limit that a MaxiCode breaks on the printer's dots, as the reason for holding; undefined when it breaks none.
 * @param scale the label's: one that is shrunk under the code's least size is never printed, whatever a recipe allows
 */
export function brokenMaxiCodeLimit({ code, maxicode }: ProvedCode, { allow = [] }: ProofPlan, scale: number): Reason | undefined {
  if (!maxicode) return undefined;
  const isSourceWhole = maxicode.scale / scale >= MAXICODE_SCALE.value;
  if (scale < 1 && isSourceWhole && maxicode.scale < MAXICODE_SCALE.value) return reasons.maxiCodeShrunk(scale);
  if (!allow.includes('maxicode-size') && isSmall(maxicode)) return reasons.maxiCodeSmall(maxicode.widthMm);
  if (!allow.includes('quiet-zone') && isQuietShort(maxicode))
    return reasons.quietAround(code, maxicode.quiet, LEAST_QUIET_AROUND.MaxiCode.value);
  return undefined;
}

const isSmall = ({ scale }: MaxiCodeMeasure): boolean => scale < MAXICODE_SCALE.value * (1 - TOLERANCE);

/** Both the code and what stands beside it are rounded to dots. */
const isQuietShort = ({ quiet, moduleDots }: MaxiCodeMeasure): boolean =>
  quiet + 1 / moduleDots < LEAST_QUIET_AROUND.MaxiCode.value * (1 - TOLERANCE);

/** What people should know of a MaxiCode that is printed all the same, one sentence each. */
export function maxiCodeNotes({ maxicode }: ProvedCode): readonly string[] {
  if (!maxicode) return [];
  const { scale, quiet } = maxicode;
  const size = (scale * 100).toFixed(0);
  return [
    ...(isSmall(maxicode) ? [`a MaxiCode: ${size} % of its one size, at least 94 % by rule`] : []),
    ...(scale > MAXICODE_MOST.value * (1 + TOLERANCE) ? [`a MaxiCode: ${size} % of its one size, at most 106 % by rule`] : []),
    ...(isQuietShort(maxicode) ? [`a MaxiCode: ${quiet.toFixed(1)} modules of clear paper on one side, at least 1 by rule`] : []),
  ];
}
