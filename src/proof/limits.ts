import type { Grid } from '../geometry/grid.js';
import { MM_PER_IN } from '../geometry/length.js';
import type { Symbology } from '../reading/source.js';

/** A published or derived limit with where it comes from. A figure may refuse a label only as far as its source is trusted. */
export interface Limit {
  readonly value: number;
  readonly unit: 'mm' | 'dots' | 'modules' | 'share';
  readonly source: string;
  /** `secondary`: seen in a text that cites the standard. `computed`: arithmetic of this project. */
  readonly trust: 'primary' | 'secondary' | 'computed' | 'from memory';
}

/** The narrowest bar or space of a linear code on a transport label. */
export const LEAST_MODULE = {
  value: 0.25,
  unit: 'mm',
  source: 'ISO 15394:2017 Annex A: X-dimension at least 0.25 mm (handbook section 2.2)',
  trust: 'secondary',
} as const satisfies Limit;

/** Fewer dots than this, and one dot of rounding is half a bar. */
export const LEAST_DOTS = {
  value: 2,
  unit: 'dots',
  source: 'dot pitch table, 2 dots at 8 dots/mm are 0.25 mm (handbook section 5.4)',
  trust: 'computed',
} as const satisfies Limit;

/** Decodability of the printed dots as they are: grade 3, one better than the least of a transport label, because paper and heat are still to come. */
export const LEAST_DECODABILITY = {
  value: 0.5,
  unit: 'share',
  source: 'ISO/IEC 15416 grade 3 (handbook section 5.1)',
  trust: 'secondary',
} as const satisfies Limit;

/** The same when every bar prints wider or narrower by the stated gain: grade 2, 1.5 being the least of a transport label (handbook section 5.3). */
export const LEAST_DECODABILITY_AT_GAIN = {
  value: 0.37,
  unit: 'share',
  source: 'ISO/IEC 15416 grade 2 (handbook section 5.1)',
  trust: 'secondary',
} as const satisfies Limit;

/** On the grid of the printer's head, when the driver's differs from it by a thousandth: such a label must still be read. */
export const LEAST_DECODABILITY_ON_TWIN = {
  value: 0.25,
  unit: 'share',
  source: 'ISO/IEC 15416 grade 1, the last that decodes (handbook section 5.1)',
  trust: 'secondary',
} as const satisfies Limit;

/** Clear paper at each end of a linear code. */
export const LEAST_QUIET = {
  value: 10,
  unit: 'modules',
  source: 'ISO/IEC 15417 4.4.2, also for ITF and Code 39 (handbook sections 2.1 and 4.4)',
  trust: 'secondary',
} as const satisfies Limit;

/** Clear paper on every side of a matrix or stacked code; Aztec needs none. */
export const LEAST_QUIET_AROUND = {
  QR: { value: 4, unit: 'modules', source: 'ISO/IEC 18004:2015 (handbook section 4.4)', trust: 'secondary' },
  'Data Matrix': { value: 1, unit: 'modules', source: 'ISO/IEC 16022:2006 7.1 (handbook section 4.4)', trust: 'secondary' },
  PDF417: { value: 2, unit: 'modules', source: 'ISO/IEC 15438:2015 (handbook section 4.4)', trust: 'secondary' },
  Aztec: { value: 0, unit: 'modules', source: 'ISO/IEC 24778 (handbook section 4.4)', trust: 'secondary' },
  MaxiCode: { value: 1, unit: 'modules', source: 'ISO/IEC 16023:2000 (handbook section 4.4)', trust: 'secondary' },
} as const satisfies Partial<Record<Symbology, Limit>>;

/** What a table wants of a code, by its symbology; 0 where it says nothing. */
export const limitOf = (table: Partial<Record<Symbology, Limit>>, { symbology }: { readonly symbology: Symbology }): number =>
  table[symbology]?.value ?? 0;

/** The narrowest module of a stacked or matrix code on a transport label, where one is published. */
export const LEAST_MATRIX_MODULE = {
  PDF417: { value: 0.254, unit: 'mm', source: 'ISO 15394: PDF417, X 0.254 to 0.432 mm (handbook section 4.4)', trust: 'secondary' },
  QR: { value: 0.33, unit: 'mm', source: 'ISO 15394: QR, module 0.33 to 0.42 mm (handbook section 4.4)', trust: 'secondary' },
} as const satisfies Partial<Record<Symbology, Limit>>;

/** Height of a PDF417's rows. */
export const LEAST_ROW = {
  value: 3,
  unit: 'modules',
  source: 'ISO/IEC 15438:2015 (handbook section 4.4)',
  trust: 'secondary',
} as const satisfies Limit;

/** No bar or space may be wider or narrower by as much as this than the plan has it. */
export const FARTHEST_OFF = {
  value: 1,
  unit: 'dots',
  source: 'one dot, the least that a printer can be wrong by',
  trust: 'computed',
} as const satisfies Limit;

/** The drawn size against the planned one. */
export const SIZE_OFF = { value: 0.003, unit: 'share', source: 'a tenth of a module in 33', trust: 'computed' } as const satisfies Limit;

/** Width of a module of a MaxiCode, and of its one size without clear paper, mm: 28.14 less a module on each side (ISO/IEC 16023, handbook section 4.4, secondary). */
export const MAXICODE_MODULE = 0.88;
export const MAXICODE_WIDTH = 28.14 - 2 * MAXICODE_MODULE;

/** Scale of a MaxiCode: 26.48 to 29.79 mm wide with its clear paper, 28.14 being its one size. */
export const MAXICODE_SCALE = {
  value: 0.94,
  unit: 'share',
  source: 'ISO/IEC 16023 (handbook section 4.4)',
  trust: 'secondary',
} as const satisfies Limit;
export const MAXICODE_MOST = { ...MAXICODE_SCALE, value: 1.058 } as const satisfies Limit;

/** Published limits are compared with this tolerance. */
export const TOLERANCE = 0.02;

/** What measuring may be off by: a module of exactly two dots must not be refused for a rounded edge. */
const MEASURED_SHORT = 0.04;

/** The narrowest module (dots of the grid) that may be printed, measuring error taken off. */
export function leastModuleDots(grid: Grid): number {
  return leastDots(LEAST_MODULE.value, grid);
}

/** The same of a matrix or stacked code; `least` is what a standard wants of it, mm. */
export const leastDots = (least: number, grid: Grid): number =>
  Math.max(LEAST_DOTS.value, (least / MM_PER_IN) * grid.dpi) * (1 - MEASURED_SHORT);
