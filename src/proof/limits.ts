import type { Grid } from '../geometry/grid.js';
import { MM_PER_IN } from '../geometry/length.js';

/** A published or derived limit with where it comes from. A figure may refuse a label only as far as its source is trusted. */
export interface Limit {
  readonly value: number;
  readonly unit: 'mm' | 'dots';
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

/** What measuring may be off by: a module of exactly two dots must not be refused for a rounded edge. */
const MEASURED_SHORT = 0.04;

/** The narrowest module (dots of the grid) that may be printed, measuring error taken off. */
export function leastModuleDots(grid: Grid): number {
  const dots = Math.max(LEAST_DOTS.value, (LEAST_MODULE.value / MM_PER_IN) * grid.dpi);
  return dots * (1 - MEASURED_SHORT);
}
