import type { GreyRaster } from '../reading/source.js';

/** Ink of one drawing is darker than this … */
const INK = 110;
/** … and is met by whatever is darker than this in the other: soft edges fall either way. */
const ANY_INK = 205;
/** Letters may be shifted so far, dots; nearest shifts are tried first. */
const MOST_SHIFT = 3;
const SHIFTS = Array.from({ length: (2 * MOST_SHIFT + 1) ** 2 }, (_, index): readonly [number, number] => [
  (index % (2 * MOST_SHIFT + 1)) - MOST_SHIFT,
  Math.floor(index / (2 * MOST_SHIFT + 1)) - MOST_SHIFT,
]).sort(([a, b], [c, d]) => Math.hypot(a, b) - Math.hypot(c, d));
/** From this side on (dots) a shape is large: … */
const LARGE = 44;
/** … an outline set in another cut of the same typeface is off by such a share of its smaller side, and never by more than so many dots. */
const OF_SIDE = 0.07;
const MOST_EXCUSED = 8;
/** Of a smaller shape so much must be unmatched: the foot that one typeface gives a numeral and another doesn't is less. */
const OTHER_SHAPE = 0.3;

/**
 * Tells of each dot of ink in `one` that has no match in `other`, a drawing of the same size; returns how many dots of ink `one` has.
 * @param tell gets the dot's column and row, from 0
 */
export function unmatchedInk(one: GreyRaster, other: GreyRaster, tell: (x: number, y: number) => void): number {
  const { width, data } = one;
  const met = thickened(other);
  const seen = new Uint8Array(data.length);
  let ink = 0;
  for (let index = 0; index < data.length; index++) {
    if ((data[index] as number) >= INK) continue;
    ink += 1;
    if (met[index] || seen[index]) continue;
    const shape = shapeAt(one, index, seen);
    for (const at of shape.side < LARGE ? leastUnmatched(shape, met, one) : farFromInk(shape, met, one)) {
      tell(at % width, Math.floor(at / width));
    }
  }
  return ink;
}

/** Where the ink of a drawing is, and a dot around it. */
function thickened({ width, data }: GreyRaster): Uint8Array {
  const across = new Uint8Array(data.length);
  for (let index = 0; index < data.length; index++) {
    if ((data[index] as number) >= ANY_INK) continue;
    const x = index % width;
    across[index] = 1;
    if (x > 0) across[index - 1] = 1;
    if (x < width - 1) across[index + 1] = 1;
  }
  const met = across.slice();
  for (let index = 0; index < data.length - width; index++) {
    if (across[index]) met[index + width] = 1;
    if (across[index + width]) met[index] = 1;
  }
  return met;
}

interface Shape {
  /** Indices of its dots. */
  readonly dots: readonly number[];
  /** The smaller side of the box around it, dots. */
  readonly side: number;
}

/** All ink that hangs together with a dot. */
function shapeAt({ width, height, data }: GreyRaster, start: number, seen: Uint8Array): Shape {
  const dots = [start];
  let [x0, y0, x1, y1] = [width, height, 0, 0];
  seen[start] = 1;
  const take = (index: number): void => {
    if (seen[index] || (data[index] as number) >= INK) return;
    seen[index] = 1;
    dots.push(index);
  };
  for (const at of dots) {
    const [x, y] = [at % width, Math.floor(at / width)];
    [x0, x1, y0, y1] = [Math.min(x0, x), Math.max(x1, x), Math.min(y0, y), Math.max(y1, y)];
    if (x > 0) take(at - 1);
    if (x < width - 1) take(at + 1);
    if (y > 0) take(at - width);
    if (y < height - 1) take(at + width);
  }
  return { dots, side: Math.min(x1 - x0, y1 - y0) + 1 };
}

/** A letter may stand a few dots aside: what of it stays unmatched when it is shifted to where it fits best. */
function leastUnmatched({ dots }: Shape, met: Uint8Array, { width, height }: GreyRaster): readonly number[] {
  let least = dots;
  for (const [dx, dy] of SHIFTS) {
    const left = dots.filter((at) => {
      const [x, y] = [(at % width) + dx, Math.floor(at / width) + dy];
      return x >= 0 && y >= 0 && x < width && y < height && !met[y * width + x];
    });
    if (left.length < least.length) least = left;
    if (least.length === 0) break;
  }
  return least.length < OTHER_SHAPE * dots.length ? [] : least;
}

/** What of a large shape is farther from any ink than the outlines of two cuts of one typeface are. */
function farFromInk({ dots, side }: Shape, met: Uint8Array, { width, height }: GreyRaster): readonly number[] {
  // Ink is thickened by one already.
  const reach = Math.min(MOST_EXCUSED, Math.round(OF_SIDE * side)) - 1;
  return dots.filter((at) => {
    if (met[at]) return false;
    const [x, y] = [at % width, Math.floor(at / width)];
    for (let v = Math.max(0, y - reach); v <= Math.min(height - 1, y + reach); v++) {
      for (let u = Math.max(0, x - reach); u <= Math.min(width - 1, x + reach); u++) if (met[v * width + u]) return false;
    }
    return true;
  });
}
