import { sum } from '../geometry/sum.js';
import { MM_PER_IN } from '../geometry/length.js';
import type { GreyRaster } from '../reading/source.js';
import type { Grid } from '../geometry/grid.js';

/** Diameter of the measuring spot, mm: aperture 10 of the transport label grade 1.5/10/660 (ISO 15394, handbook section 5.1 and 5.3, secondary). */
export const APERTURE = 0.254;

/** Weights of the dots that a round spot covers, about its middle. */
function spotOf(grid: Grid): { readonly reach: number; readonly weights: readonly number[] } {
  const radius = ((APERTURE / MM_PER_IN) * grid.dpi) / 2;
  const reach = Math.ceil(radius - 0.5);
  const weights: number[] = [];
  const fine = 8;
  for (let y = -reach; y <= reach; y++) {
    for (let x = -reach; x <= reach; x++) {
      let covered = 0;
      for (let v = 0; v < fine; v++) {
        for (let u = 0; u < fine; u++) if (Math.hypot(x + (u + 0.5) / fine - 0.5, y + (v + 0.5) / fine - 0.5) <= radius) covered += 1;
      }
      weights.push(covered / (fine * fine));
    }
  }
  const whole = sum(weights);
  return { reach, weights: weights.map((each) => each / whole) };
}

const spots = new Map<string, ReturnType<typeof spotOf>>();

function spotFor(grid: Grid): ReturnType<typeof spotOf> {
  const spot = spots.get(grid.name) ?? spotOf(grid);
  spots.set(grid.name, spot);
  return spot;
}

/** How many rows beside its own a profile looks at, each way. */
export const spotReach = (grid: Grid): number => spotFor(grid).reach;

/** What a verifier's spot would see of ideal dots along a row: 1 for paper, 0 for ink; one value a dot. Paper and heat are not simulated. */
export function profileAlong({ data, width, height }: GreyRaster, row: number, from: number, to: number, grid: Grid): Float64Array {
  const { reach, weights } = spotFor(grid);
  const profile = new Float64Array(to - from);
  for (let x = from; x < to; x++) {
    let seen = 0;
    for (let v = -reach, at = 0; v <= reach; v++) {
      const y = Math.min(height - 1, Math.max(0, row + v));
      for (let u = -reach; u <= reach; u++, at++) {
        const column = x + u;
        const paper = column < 0 || column >= width || (data[y * width + column] as number) >= 128;
        if (paper) seen += weights[at] as number;
      }
    }
    profile[x - from] = seen;
  }
  return profile;
}

/**
 * Modulation and defects of a profile (ISO/IEC 15416, handbook section 5.1): the smallest contrast across an edge, and the largest unevenness inside a bar or
 * a space, both against the symbol's contrast.
 * @param edges where bars begin and end, in dots from the profile's first
 */
export function unevenness(profile: Float64Array, edges: readonly number[]): { readonly modulation: number; readonly defects: number } {
  let [low, high] = [1, 0];
  for (const value of profile) [low, high] = [Math.min(low, value), Math.max(high, value)];
  const contrast = high - low;
  if (contrast <= 0) return { modulation: 0, defects: 1 };
  const extremes: number[] = [];
  let worst = 0;
  const bounds = [0, ...edges, profile.length];
  for (let index = 0; index + 1 < bounds.length; index++) {
    const part = profile.subarray(
      Math.round(bounds[index] ?? 0),
      Math.max(Math.round(bounds[index] ?? 0) + 1, Math.round(bounds[index + 1] ?? 0)),
    );
    const bar = index % 2 === 1;
    // A bar's profile falls to one valley, a space's rises to one peak; what comes back in between is a speck or a void.
    extremes.push(bar ? Math.min(...part) : Math.max(...part));
    worst = Math.max(worst, comesBack(part, bar));
  }
  const steps = extremes.slice(1).map((each, index) => Math.abs(each - (extremes[index] ?? each)));
  return { modulation: Math.min(...steps) / contrast, defects: worst / contrast };
}

/** The highest bump between two lower places of a bar, above the lower of them; of a space, the deepest dip likewise. */
function comesBack(part: Float64Array, bar: boolean): number {
  const sign = bar ? 1 : -1;
  const { length } = part;
  // Of most bars and spaces the profile only falls and rises again: no bump, nothing to remember.
  let turned = false;
  let bump = false;
  for (let index = 1; index < length; index++) {
    const step = sign * ((part[index] as number) - (part[index - 1] as number));
    if (step > 0) turned = true;
    else if (step < 0 && turned) bump = true;
  }
  if (!bump) return 0;
  const behind = Float64Array.from(part, (value) => sign * value);
  for (let index = length - 2; index >= 0; index--) behind[index] = Math.min(behind[index + 1] as number, behind[index] as number);
  let [worst, left] = [0, Infinity];
  for (let index = 0; index < length; index++) {
    const value = sign * (part[index] as number);
    left = Math.min(left, value);
    const right = behind[index] as number;
    if (value > Math.max(left, right) + 1e-9) worst = Math.max(worst, value - Math.min(left, right));
  }
  return worst;
}
