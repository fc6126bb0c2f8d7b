import type { RuledLine } from './ruled.js';
import type { GreyRaster } from './source.js';

/** Parts that a row or a column is looked at in, each some dashes long (pt). */
const PART = 20;
/** Lighter than this it is paper. */
const PAPER = 247;
/** A line is darker than what is beside it by this much, grey, mean of a part's pixels … */
const DARKER = 2.5;
/** … in this share of the parts; words may stand in the others. */
const SHOWN = 0.8;
/** Rows or columns that a thin line may touch, and how far off it the paper is looked at. */
const THICK = 2;
const BESIDE = { near: 3, far: 5 };
/** Paper's noise and nothing else, grey, mean of a part. */
const QUIET = 8;

/**
 * Thin lines, dashed, dotted or pale, that go across a whole page through white: too light on a coarse raster (about 108 dpi) to be ink,
 * as a scan or a printer's hairline has them. One with anything close above and below along a fifth of it is none.
 */
export function paleLines(raster: GreyRaster): readonly RuledLine[] {
  const { pixelsPerPt: k, origin } = raster;
  const size = Math.max(1, Math.round(PART * k));
  return [
    ...found(raster, true, size).map(({ at, from, to }) => {
      const box = { x: origin.x + (from * size) / k, y: origin.y + at / k, width: ((to - from) * size) / k, height: THICK / k };
      return { box, level: true, dashed: true };
    }),
    ...found(raster, false, size).map(({ at, from, to }) => {
      const box = { x: origin.x + at / k, y: origin.y + (from * size) / k, width: THICK / k, height: ((to - from) * size) / k };
      return { box, level: false, dashed: true };
    }),
  ];
}

/** Strips across the way of a line, this many pixels wide, that most of which must show it: a glance that spares most pages the look at every pixel. */
const STRIPS = { at: [0.12, 0.31, 0.5, 0.69, 0.88], wide: 14, least: 3 };

/** The rows (`level`) or columns where a thin line may go from side to side, by a few strips of the page. */
function likelyLines({ width, height, data }: GreyRaster, level: boolean): readonly number[] {
  const [length, lines, step, stride] = level ? [width, height, 1, width] : [height, width, width, 1];
  const shown = new Uint8Array(lines);
  const darkness = new Uint32Array(lines);
  for (const at of STRIPS.at) {
    const from = Math.max(0, Math.round(at * length - STRIPS.wide / 2));
    const to = Math.min(length, from + STRIPS.wide);
    for (let line = 0; line < lines; line++) {
      let sum = 0;
      for (let pixel = from; pixel < to; pixel++) sum += 255 - (data[line * stride + pixel * step] as number);
      darkness[line] = sum;
    }
    const quiet = QUIET * (to - from);
    for (let line = BESIDE.far; line + BESIDE.far < lines; line++) {
      const isShown = (darkness[line] as number) >= DARKER * (to - from);
      if (isShown && (darkness[line - BESIDE.far] as number) <= quiet && (darkness[line + BESIDE.far] as number) <= quiet)
        shown[line] = (shown[line] as number) + 1;
    }
  }
  const likely: number[] = [];
  for (let line = BESIDE.far; line + THICK + BESIDE.far <= lines; line++)
    if (Math.max(shown[line] as number, shown[line + 1] as number) >= STRIPS.least) likely.push(line);
  return likely;
}

/** How dark, 0 to 255, each part of each row (or column) is in the mean. */
interface Parts {
  readonly of: (line: number, part: number) => number;
  readonly parts: number;
}

function partsOf({ width, height, data }: GreyRaster, level: boolean, size: number): Parts {
  const [length, step, stride] = level ? [width, 1, width] : [height, width, 1];
  const parts = Math.floor(length / size);
  const rows = new Map<number, Float64Array>();
  const row = (line: number): Float64Array => {
    const sums = new Float64Array(parts);
    for (let part = 0; part < parts; part++) {
      let sum = 0;
      for (let pixel = part * size, end = pixel + size; pixel < end; pixel++) {
        const grey = data[line * stride + pixel * step] as number;
        if (grey < PAPER) sum += 255 - grey;
      }
      sums[part] = sum / size;
    }
    rows.set(line, sums);
    return sums;
  };
  return { of: (line, part) => (rows.get(line) ?? row(line))[part] as number, parts };
}

/** A line's first row, and the first part that shows it and that after the last. */
interface Found {
  readonly at: number;
  readonly from: number;
  readonly to: number;
}

function found(raster: GreyRaster, level: boolean, size: number): readonly Found[] {
  const parts = partsOf(raster, level, size);
  const lines: Found[] = [];
  let next = 0;
  for (const at of likelyLines(raster, level)) {
    const line = at < next ? undefined : lineAt(parts, at);
    if (!line) continue;
    lines.push(line);
    next = at + 2 * THICK + 1;
  }
  return lines;
}

function lineAt({ of, parts }: Parts, at: number): Found | undefined {
  let missing = Math.floor((1 - SHOWN) * parts);
  let [from, to] = [-1, 0];
  for (let part = 0; part < parts; part++) {
    const here = of(at, part) + of(at + 1, part);
    const isThin = [BESIDE.near, BESIDE.far].every((off) => isPaper(here, of(at - off, part)) && isPaper(here, of(at + 1 + off, part)));
    if (here >= 2 * DARKER && isThin) {
      if (from < 0) from = part;
      to = part + 1;
    } else if (missing-- === 0) return undefined;
  }
  return from < 0 ? undefined : { at, from, to };
}

const isPaper = (line: number, beside: number): boolean => beside <= QUIET && line - 2 * beside >= DARKER;
