import { sum } from '../geometry/sum.js';
import type { Grid } from '../geometry/grid.js';
import type { ProofPlan, Reason } from '../sheet/sheet.js';
import type { ProvedCode } from './judge-codes.js';
import {
  FARTHEST_OFF,
  LEAST_DECODABILITY,
  LEAST_DECODABILITY_AT_GAIN,
  LEAST_DECODABILITY_ON_TWIN,
  LEAST_QUIET,
  SIZE_OFF,
  TOLERANCE,
} from './limits.js';
import { plannedModules } from './bar-modules.js';
import { isLinear } from './linear.js';
import * as reasons from './reasons.js';

/** The limits that a recipe may set aside for a channel: those whose source is no primary text. */
export const OVERRULED = [
  'module-width',
  'module-range',
  'bar-height',
  'row-height',
  'decodability',
  'quiet-zone',
  'maxicode-size',
  'maxicode-unread',
  'check-digit',
] as const;

/** The first limit that a code of a label breaks on the printer's dots, as the reason for holding; undefined when it breaks none. */
export function brokenLimit(
  { code, measure, onTwin, redrawn, plannedBars }: ProvedCode,
  { gain, allow = [] }: ProofPlan,
  grid: Grid,
  drawn: reasons.BarsDrawn,
): Reason | undefined {
  if (!measure)
    return isLinear(code) && code.turn !== undefined && !allow.includes('decodability') ? reasons.unmeasured(code, drawn) : undefined;
  const { decodability, quiet, farthestOff, moduleDots } = measure;
  // A code drawn anew is on whole dots or the press is wrong, whatever a recipe allows.
  if (redrawn !== undefined && Math.abs(moduleDots - redrawn) > 1e-6) return reasons.notWholeDots(code, moduleDots, redrawn);
  if (plannedBars) {
    const length = moduleDots * sum(measure.modules);
    const size = length / (plannedBars.moduleDots * sum(plannedModules(measure.modules, plannedBars)));
    // The ends of the bars are whole dots.
    if (Math.abs(size - 1) > SIZE_OFF.value + 1 / length) return reasons.otherSize(code, size);
  }
  if (!allow.includes('decodability')) {
    if (farthestOff >= FARTHEST_OFF.value * (1 - TOLERANCE)) return reasons.uneven(code, farthestOff, moduleDots, drawn);
    if (decodability.mean < LEAST_DECODABILITY.value)
      return reasons.badlyDecodable(code, decodability.mean, LEAST_DECODABILITY.value, moduleDots, drawn);
    if (decodability.atGain < LEAST_DECODABILITY_AT_GAIN.value)
      return reasons.atGain(code, decodability.atGain, gain, LEAST_DECODABILITY_AT_GAIN.value);
    if (onTwin !== undefined && onTwin < LEAST_DECODABILITY_ON_TWIN.value) return reasons.onTwin(code, onTwin, grid);
  }
  const least = Math.min(quiet.before, quiet.after);
  if (!allow.includes('quiet-zone') && least < LEAST_QUIET.value * (1 - TOLERANCE))
    return reasons.quietZone(code, least, LEAST_QUIET.value);
  return undefined;
}
