import { dotsPerPt, gridOf, MOST_PIXELS, type GridName } from '../geometry/grid.js';
import { mediaNamed } from '../geometry/media.js';
import type { OptionConflict } from '../steps/step.js';
import { quote } from './words.js';

/** Why no page of this media can be proved in the dots of this grid: it would have more of them than a raster may. Undefined when it can. */
export function tooManyDots(media: string, grid: GridName): OptionConflict | undefined {
  const { width, height } = mediaNamed(media);
  const perPt = dotsPerPt(gridOf(grid));
  const dots = Math.ceil(width * perPt) * Math.ceil(height * perPt);
  if (dots <= MOST_PIXELS) return undefined;
  const millions = (count: number): string => `${Math.ceil(count / 1_000_000)} million dots`;
  return {
    message: `a page of ${quote(media)} has ${millions(dots)} at ${quote(grid)}, more than the ${millions(MOST_PIXELS)} that a page may have`,
    remedy: 'Write a coarser `grid` or a smaller `media`.',
  };
}
