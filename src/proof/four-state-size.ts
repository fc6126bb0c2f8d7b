import { MM_PER_IN } from '../geometry/length.js';
import type { FourStateRow } from '../reading/four-state.js';
import type { Limit } from './limits.js';

/** From the least to the most of one measure. */
export interface Range {
  readonly what: string;
  readonly least: number;
  readonly most: number;
  readonly unit: 'in' | 'bars per inch';
  readonly source: string;
  readonly trust: Limit['trust'];
}

const SPECIFICATION = 'USPS-B-3200 2.3.1 by way of zint (handbook section 3.2)';

/** Sizes of the 65-bar Intelligent Mail code. The ends of the pitch are from memory. */
export const FOUR_STATE_RANGES = {
  barWidth: { what: 'bar width', least: 0.015, most: 0.025, unit: 'in', source: SPECIFICATION, trust: 'secondary' },
  pitch: { what: 'pitch', least: 20, most: 24, unit: 'bars per inch', source: SPECIFICATION, trust: 'from memory' },
  full: { what: 'height of the full bars', least: 0.125, most: 0.165, unit: 'in', source: SPECIFICATION, trust: 'secondary' },
  half: {
    what: 'height of the ascenders and descenders',
    least: 0.082,
    most: 0.111,
    unit: 'in',
    source: SPECIFICATION,
    trust: 'secondary',
  },
  tracker: { what: 'height of the trackers', least: 0.039, most: 0.057, unit: 'in', source: SPECIFICATION, trust: 'secondary' },
} as const satisfies Record<string, Range>;

/** Bars of the code that these sizes are for; other 4-state codes have others, and are measured only. */
const BARS = 65;

/** A measure, what it is held against, and whether it is inside. */
export interface FourStateMeasure {
  readonly range: Range;
  /** In the range's unit, as it comes out on the paper. */
  readonly value: number;
  readonly isInside: boolean;
}

/**
 * A row of 4-state bars against the published sizes, as printed at `scale`; nothing for codes of another number of bars.
 * @param off what a length may be measured wrong by, pt: half a pixel of the source or half a dot of the print on each side
 */
export function judgeFourState(row: FourStateRow, scale: number, off: number): readonly FourStateMeasure[] {
  if (row.bars.length !== BARS) return [];
  const inches = (pt: number): number => (pt * scale) / 72;
  const judged = (range: Range, value: number, slack: number): FourStateMeasure => ({
    range,
    value,
    isInside: value >= range.least - slack && value <= range.most + slack,
  });
  const { barWidth, heights, barsPerInch } = row;
  const lengths: readonly (readonly [Range, number | undefined])[] = [
    [FOUR_STATE_RANGES.barWidth, barWidth],
    [FOUR_STATE_RANGES.full, heights.F],
    [FOUR_STATE_RANGES.half, heights.A],
    [FOUR_STATE_RANGES.half, heights.D],
    [FOUR_STATE_RANGES.tracker, heights.T],
  ];
  return [
    judged(FOUR_STATE_RANGES.pitch, barsPerInch / scale, 0.01 * barsPerInch),
    ...lengths.flatMap(([range, pt]) => (pt === undefined ? [] : [judged(range, inches(pt), inches(off))])),
  ];
}

/** "height of the full bars 2.71 mm, 3.18 to 4.19 mm by rule": for people. */
export function fourStateWords({ range, value }: FourStateMeasure): string {
  const shown = (inches: number): string => (range.unit === 'in' ? (inches * MM_PER_IN).toFixed(2) : inches.toFixed(1));
  const unit = range.unit === 'in' ? 'mm' : range.unit;
  return `${range.what} ${shown(value)} ${unit}, ${shown(range.least)} to ${shown(range.most)} ${unit} by rule`;
}
