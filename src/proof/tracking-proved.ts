import type { Grid } from '../geometry/grid.js';
import type { ProofPlan, Reason } from '../sheet/sheet.js';
import { contentFaults } from './code-content.js';
import { codeUses } from './code-role.js';
import type { ProvedCode } from './judge-codes.js';
import { isLinear } from './linear.js';
import { list } from './reasons.js';
import { judgeSchemes } from './scheme-verdict.js';

/** A code read back, with the limit that it breaks. */
export interface Weighed extends ProvedCode {
  readonly breaks: Reason | undefined;
}

/**
 * A reason for holding that concerns a code beside the tracking code, with a word on that one where it is proved good: it breaks no limit, and no
 * number on the label is wrong in itself. It helps to decide whether the limit can be set aside.
 * @param broken one of `codes`
 */
export function withTracking(
  reason: Reason,
  broken: Weighed,
  codes: readonly Weighed[],
  scale: number,
  plan: ProofPlan,
  grid: Grid,
): Reason {
  const read = codes.map(({ code }) => code);
  const uses = codeUses(read);
  // A matrix code may repeat the number; the row of bars is what is scanned on the way.
  const tracking = codes.findIndex((each, index) => each !== broken && uses[index]?.role === 'tracking' && isLinear(each.code));
  const good = codes[tracking];
  if (!good || good.breaks || (isLinear(broken.code) && uses[codes.indexOf(broken)]?.role === 'tracking')) return reason;
  if (contentFaults(read).some(({ certain }) => certain) || judgeSchemes(codes, scale, plan, grid).reason) return reason;
  const what = uses[tracking]?.trust === 'published' ? 'the tracking code itself' : 'what is likely the tracking code';
  return { ...reason, message: `${reason.message}; ${what}, ${list([good.code])}, is proved good` };
}
