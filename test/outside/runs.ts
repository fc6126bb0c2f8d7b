import type { Box } from '../../src/geometry/box.js';
import type { Dots } from './rasters.js';

/** A run of dots of one colour, in reading order along a scan line. */
export interface Run {
  readonly black: boolean;
  readonly dots: number;
}

/**
 * The runs across the bars of a linear code, from its first bar to its last, on the middle line of its box (pt, y down).
 * `along`: `x` for bars that stand upright (the row of bars runs along x), `y` for a ladder.
 */
export function runsAcross(page: Dots, box: Box, along: 'x' | 'y'): readonly Run[] {
  const k = page.dpi / 72;
  const line: number[] = [];
  const [from, length, across] =
    along === 'x' ? [box.x - 4, box.width + 8, box.y + box.height / 2] : [box.y - 4, box.height + 8, box.x + box.width / 2];
  for (let i = Math.floor(from * k); i < Math.ceil((from + length) * k); i++) {
    const [x, y] = along === 'x' ? [i, Math.round(across * k)] : [Math.round(across * k), i];
    if (x >= 0 && y >= 0 && x < page.width && y < page.height) line.push(page.data[y * page.width + x] ?? 255);
  }
  const runs: { black: boolean; dots: number }[] = [];
  for (const dot of line) {
    const last = runs.at(-1);
    if (last?.black === (dot === 0)) last.dots++;
    else runs.push({ black: dot === 0, dots: 1 });
  }
  if (runs[0]?.black === false) runs.shift();
  if (runs.at(-1)?.black === false) runs.pop();
  return runs;
}

export const totalDots = (runs: readonly Run[]): number => runs.reduce((sum, { dots }) => sum + dots, 0);

/** Runs of a code whose modules are `dots` wide, as modules; each run rounded to whole modules. */
export const modulesFromRuns = (runs: readonly Run[], dots: number): string =>
  runs.map((run) => (run.black ? '1' : '0').repeat(Math.round(run.dots / dots))).join('');
