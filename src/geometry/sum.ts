/** The sum of values; 0 of none. */
export function sum(values: ArrayLike<number>): number {
  let all = 0;
  for (let index = 0; index < values.length; index++) all += values[index] as number;
  return all;
}

/** The arithmetic mean of values; NaN of none. */
export const mean = (values: ArrayLike<number>): number => sum(values) / values.length;
