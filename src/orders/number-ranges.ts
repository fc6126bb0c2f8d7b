/** `3, 7, 12–15`: numbers from 1 in any order, each told once; three or more in a row as a range. */
export function numberRanges(numbers: readonly number[]): string {
  const runs: { first: number; last: number }[] = [];
  for (const number of [...new Set(numbers)].sort((a, b) => a - b)) {
    const run = runs.at(-1);
    if (run?.last === number - 1) run.last = number;
    else runs.push({ first: number, last: number });
  }
  return runs.map(({ first, last }) => (first === last ? `${first}` : `${first}${last - first > 1 ? '–' : ', '}${last}`)).join(', ');
}
