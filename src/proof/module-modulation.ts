import { MM_PER_IN } from '../geometry/length.js';
import type { Grid } from '../geometry/grid.js';
import type { GreyRaster } from '../reading/source.js';
import type { MatrixGrid } from './matrix-grid.js';
import { APERTURE } from './profile.js';

/** The spot is never wider than this share of a module (ISO/IEC 15415, from memory). */
const SPOT_SHARE = 0.8;
/** Places at which a spot looks, a dot: half dots of gain on each side are told apart. */
const SAMPLES = 4;

/** Where a round spot of a diameter in dots looks, about its middle. */
function spotOf(diameter: number): readonly (readonly [dx: number, dy: number])[] {
  const reach = Math.ceil((diameter / 2) * SAMPLES);
  const places: [number, number][] = [];
  for (let v = -reach; v < reach; v++) {
    for (let u = -reach; u < reach; u++) {
      const [dx, dy] = [(u + 0.5) / SAMPLES, (v + 0.5) / SAMPLES];
      if (Math.hypot(dx, dy) <= diameter / 2) places.push([dx, dy]);
    }
  }
  return places;
}

/**
 * The least clearly printed module, 0 to 1: of all modules the least 2·|reflectance − ½| as a round spot in the middle sees it, contrast taken as full (ISO/IEC
 * 15415, handbook section 5.2). Without gain, and with it off and on, the lesser; with gain, 0 for a module that looks like the other colour.
 * @param gain change of an element's whole width in dots, up to 2: half of it on each side
 */
export function moduleModulation(
  { data, width, height }: GreyRaster,
  { x, y }: MatrixGrid,
  grid: Grid,
  gain: number,
): readonly [plain: number, atGain: number] {
  const spot = spotOf(Math.min((APERTURE / MM_PER_IN) * grid.dpi, SPOT_SHARE * Math.min(x.module, y.module)));
  const isInk = (u: number, v: number): boolean => {
    const [column, row] = [Math.floor(u), Math.floor(v)];
    return column >= 0 && row >= 0 && column < width && row < height && (data[row * width + column] as number) < 128;
  };
  const side = Math.min(1, gain / 2);
  const reach = Math.max(...spot.map(([du]) => du)) + side - 1e-9;
  const isUniform = (u: number, v: number): boolean => {
    const first = isInk(u, v);
    for (let b = Math.floor(v - reach); b <= Math.floor(v + reach); b++) {
      for (let a = Math.floor(u - reach); a <= Math.floor(u + reach); a++) if (isInk(a, b) !== first) return false;
    }
    return true;
  };
  let [plain, atGain] = [1, 1];
  for (let row = 0; row < y.count; row++) {
    for (let column = 0; column < x.count; column++) {
      const [u, v] = [x.start + (column + 0.5) * x.module, y.start + (row + 0.5) * y.module];
      // Most modules are all one colour as far as a spot sees: nothing to add up.
      if (isUniform(u, v)) continue;
      let [ink, more, less] = [0, 0, 0];
      for (const [du, dv] of spot) {
        if (isInk(u + du, v + dv)) ink += 1;
        if (side === 0) continue;
        // Ink that grows comes to a place when any lies within half the gain of it, ink that shrinks stays where all of that is ink.
        const [left, right] = [Math.floor(u + du - side), Math.floor(u + du + side - 1e-9)];
        const [top, bottom] = [Math.floor(v + dv - side), Math.floor(v + dv + side - 1e-9)];
        let [any, all] = [false, true];
        for (let b = top; b <= bottom; b++) {
          for (let a = left; a <= right; a++) {
            if (isInk(a, b)) any = true;
            else all = false;
          }
        }
        if (any) more += 1;
        if (all) less += 1;
      }
      const seen = (places: number): number => (2 * places) / spot.length - 1;
      plain = Math.min(plain, Math.abs(seen(ink)));
      const own = 2 * ink > spot.length ? 1 : -1;
      if (side > 0) atGain = Math.min(atGain, own * seen(more), own * seen(less));
    }
  }
  return [plain, side === 0 ? plain : Math.max(0, Math.min(plain, atGain))];
}
