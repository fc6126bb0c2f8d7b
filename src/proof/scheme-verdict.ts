import { MM_PER_IN, ptToMm } from '../geometry/length.js';
import type { Grid } from '../geometry/grid.js';
import { sum } from '../geometry/sum.js';
import type { ProofPlan, Reason } from '../sheet/sheet.js';
import { codeUses, type CodeUse } from './code-role.js';
import type { ProvedCode } from './judge-codes.js';
import { TOLERANCE, type Limit } from './limits.js';
import { textOf } from '../reading/code-text.js';
import { knownNumber } from './number-schemes.js';
import * as reasons from './scheme-reasons.js';
import type { Broken } from './scheme-reasons.js';
import { SCHEME_LIMITS, schemeOf, type SchemeLimits } from './scheme-limits.js';

/** What the limits of the codes' own standards say of one label. */
export interface SchemeVerdict {
  /** The first breach that holds the label; undefined: none does. */
  readonly reason: Reason | undefined;
  /** What breaks a limit and is printed all the same, one sentence each. */
  readonly notes: readonly string[];
}

/** A limit of a code's own standard that it breaks. */
interface Breach {
  /** In `verify: { allow }`. */
  readonly name: 'module-range' | 'bar-height';
  /** Why to hold the label; undefined for what is only told. */
  readonly reason: Reason | undefined;
  readonly note: string;
}

/**
 * Judges modules and bar heights of a label's linear codes against what is published for the numbers that they carry. Of two codes with
 * one number the better one counts: a carrier needs to read one of them.
 * @param scale the label's, against its source; what the source breaks itself is told as the source's
 */
export function judgeSchemes(
  proved: readonly ProvedCode[],
  scale: number,
  { allow = [] }: Pick<ProofPlan, 'allow'>,
  grid: Grid,
): SchemeVerdict {
  const uses = codeUses(proved.map(({ code }) => code));
  const judged = proved.flatMap((each, index) => {
    const breaches = breachesOf(each, uses[index], scale, grid);
    return breaches === undefined ? [] : [{ breaches, number: knownNumber(each.code)?.number ?? textOf(each.code) }];
  });
  const isGood = new Set(judged.filter(({ breaches }) => breaches.every(({ reason }) => reason === undefined)).map(({ number }) => number));
  const grave = judged
    .filter(({ number }) => !isGood.has(number))
    .flatMap(({ breaches }) => breaches)
    .filter(({ reason, name }) => reason !== undefined && !allow.includes(name));
  return { reason: grave[0]?.reason, notes: judged.flatMap(({ breaches }) => breaches.map(({ note }) => note)) };
}

/** @returns undefined for a code that is not judged */
function breachesOf(proved: ProvedCode, use: CodeUse | undefined, scale: number, grid: Grid): readonly Breach[] | undefined {
  const { code, measure, plannedDots } = proved;
  const scheme = schemeOf(code);
  if (scheme === undefined || !measure) return undefined;
  const row: SchemeLimits = SCHEME_LIMITS[scheme];
  if (row.judged !== 'number' && use?.role !== 'tracking') return undefined;
  const isGrave = ({ trust }: Limit): boolean => row.judged !== 'nobody-sure' && (trust === 'primary' || trust === 'secondary');
  const what = row.judged === 'number' ? row.what : undefined;
  const mm = measure.moduleMm;
  const planned = plannedDots === undefined ? mm : (plannedDots / grid.dpi) * MM_PER_IN;
  const breaches: Breach[] = [];
  if (isUnder(mm, row.least)) {
    const broken: Broken = { code, what, mm, limit: row.least, scale, isSources: isUnder(planned / scale, row.least) };
    breaches.push({
      name: 'module-range',
      reason: isGrave(row.least) ? reasons.narrow(broken) : undefined,
      note: reasons.narrowNote(broken),
    });
  } else if (row.most && row.judged === 'number' && mm > row.most.value * (1 + TOLERANCE)) {
    breaches.push({
      name: 'module-range',
      reason: undefined,
      note: reasons.wideNote({ code, what, mm, limit: row.most, scale, isSources: true }),
    });
  }
  const high = barHeight(proved, measure.barHeightMm);
  // Both ends of the bars are rounded to dots.
  const most = high + MM_PER_IN / grid.dpi;
  const limit = heightLimits(row, mm * sum(measure.modules)).find((each) => isUnder(most, each));
  if (limit) {
    const broken: Broken = { code, what, mm: high, limit, scale, isSources: isUnder(most / scale, limit) };
    breaches.push({
      name: 'bar-height',
      reason: limit.isAdvice !== true && isGrave(limit) ? reasons.low(broken) : undefined,
      note: reasons.lowNote(broken),
    });
  }
  return breaches;
}

const isUnder = (value: number, { value: least }: Limit): boolean => value < least * (1 - TOLERANCE);

/** What a row asks of the height, mm, the gravest first. */
function heightLimits({ height, heightShare }: SchemeLimits, length: number): readonly (Limit & { readonly isAdvice?: true })[] {
  const shared = heightShare && { ...heightShare, value: heightShare.value * length, unit: 'mm' as const };
  return [...(height ? [height] : []), ...(shared ? [shared] : [])];
}

/** A speck may end the measured bars early: what a reader saw of them counts, too. mm. */
function barHeight({ code: { corners } }: ProvedCode, measured: number): number {
  const [topLeft, , , bottomLeft] = corners;
  return Math.max(measured, ptToMm(Math.hypot(bottomLeft.x - topLeft.x, bottomLeft.y - topLeft.y)));
}
