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
  const { width, height, data, pixelsPerPt: k, origin } = raster;
  const size = Math.max(1, Math.round(PART * k));
  if (!mayShowLine(raster, true) && !mayShowLine(raster, false)) return [];
  const [across, down] = [Math.floor(width / size), Math.floor(height / size)];
  const rows = new Uint32Array(height * across);
  const columns = new Uint32Array(width * down);
  for (let y = 0; y < height; y++) {
    const isWithin = y < down * size;
    const column = Math.floor(y / size) * width;
    for (let part = 0; part < across; part++) {
      let sum = 0;
      for (let x = part * size, end = x + size; x < end; x++) {
        const grey = data[y * width + x] as number;
        if (grey >= PAPER) continue;
        sum += 255 - grey;
        if (isWithin) columns[column + x] = (columns[column + x] as number) + 255 - grey;
      }
      rows[y * across + part] = sum;
    }
  }
  const level = found({ of: (at, part) => (rows[at * across + part] as number) / size, lines: height, parts: across });
  const upright = found({ of: (at, part) => (columns[part * width + at] as number) / size, lines: width, parts: down });
  return [
    ...level.map(({ at, from, to }) => {
      const box = { x: origin.x + (from * size) / k, y: origin.y + at / k, width: ((to - from) * size) / k, height: THICK / k };
      return { box, level: true, dashed: true };
    }),
    ...upright.map(({ at, from, to }) => {
      const box = { x: origin.x + at / k, y: origin.y + (from * size) / k, width: THICK / k, height: ((to - from) * size) / k };
      return { box, level: false, dashed: true };
    }),
  ];
}

/** Strips across the way of a line, this many pixels wide, that most of which must show it: a glance that spares most pages the look at every pixel. */
const STRIPS = { at: [0.12, 0.31, 0.5, 0.69, 0.88], wide: 14, least: 3 };

/** Whether a thin line may go from side to side, `level` or upright, by a few strips of the page. */
function mayShowLine({ width, height, data }: GreyRaster, level: boolean): boolean {
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
  return shown.some((strips, line) => Math.max(strips, shown[line + 1] ?? 0) >= STRIPS.least);
}

/** How dark, 0 to 255, each part of each row (or column) is in the mean. */
interface Parts {
  readonly of: (line: number, part: number) => number;
  readonly lines: number;
  readonly parts: number;
}

/** A line's first row, and the first part that shows it and that after the last. */
interface Found {
  readonly at: number;
  readonly from: number;
  readonly to: number;
}

function found(parts: Parts): readonly Found[] {
  const lines: Found[] = [];
  for (let at = BESIDE.far; at + THICK + BESIDE.far <= parts.lines; at++) {
    const line = lineAt(parts, at);
    if (!line) continue;
    lines.push(line);
    at += 2 * THICK;
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
