import { unwrapped } from '../orders/damage.js';
import { readDate } from '../orders/dates.js';
import type { DateOrder } from '../orders/order-map.js';

/**
 * What the dates of a file say about day and month. `needless`: no date can be read in two ways. `told`: some can be read in one way only, all
 * of them in the same. `unknown`: nothing tells. `mixed`: they contradict each other.
 */
export type DateOrderTold =
  | { readonly kind: 'needless' }
  | { readonly kind: 'told'; readonly order: DateOrder; readonly example: string }
  | { readonly kind: 'unknown'; readonly example: string }
  | { readonly kind: 'mixed' };

const FIGURES = ['day-month-year', 'month-day-year', 'year-month-day'] as const satisfies readonly DateOrder[];

export function dateOrderOf(values: readonly string[]): DateOrderTold {
  const dates = [...new Set(values.map(unwrapped))];
  const unclear = dates.find((text) => readDate(text, undefined).kind === 'ambiguous');
  if (unclear === undefined) return { kind: 'needless' };
  const inFigures = dates.filter((text) => /^\d{1,2}\D\s?\d{1,2}\D/.test(text));
  const reads = (order: DateOrder, text: string): boolean => readDate(text, order).kind === 'date';
  const fitting = FIGURES.filter((order) => inFigures.every((text) => reads(order, text)));
  const [order] = fitting;
  if (order === undefined) return { kind: 'mixed' };
  if (fitting.length > 1) return { kind: 'unknown', example: unclear };
  const example = inFigures.find((text) => FIGURES.filter((each) => reads(each, text)).length === 1);
  return { kind: 'told', order, example: example ?? unclear };
}
