import type { Box } from '../geometry/box.js';
import type { GreyRaster } from '../reading/source.js';

/** A rectangle in whole pixels of a raster, from its top left. */
export interface Pixels {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** A broken line: pixels that are black, then white, and how thick it is. */
export interface Pattern {
  readonly on: number;
  readonly off: number;
  readonly thick: number;
}

/** Side of a digit's square, pixels. */
const DOT = 3;
/** A digit's seven rows and one above and below. */
const ROWS = 9;
/** The digits 0 to 9 as 5 × 7 dots, rows from the top. */
const DIGITS: readonly string[] = [
  '01110 10001 10011 10101 11001 10001 01110',
  '00100 01100 00100 00100 00100 00100 01110',
  '01110 10001 00001 00110 01000 10000 11111',
  '01110 10001 00001 00110 00001 10001 01110',
  '00010 00110 01010 10010 11111 00010 00010',
  '11111 10000 11110 00001 00001 10001 01110',
  '01110 10000 11110 10001 10001 10001 01110',
  '11111 00001 00010 00100 01000 01000 01000',
  '01110 10001 10001 01110 10001 10001 01110',
  '01110 10001 10001 01111 00001 00001 01110',
];

/** A broken line along the inside of a rectangle, its gaps white so that it shows on black as well; changes the raster. */
export function lineAround(raster: GreyRaster, { x, y, width, height }: Pixels, { on, off, thick }: Pattern): void {
  const grey = (along: number): number => (along % (on + off) < on ? 0 : 255);
  for (let t = 0; t < thick; t++) {
    for (let i = 0; i < width; i++) {
      set(raster, x + i, y + t, grey(i));
      set(raster, x + i, y + height - 1 - t, grey(i));
    }
    for (let i = 0; i < height; i++) {
      set(raster, x + t, y + i, grey(i));
      set(raster, x + width - 1 - t, y + i, grey(i));
    }
  }
}

/** What a number takes, its ground included, in pixels; `dot` is the side of a digit's square. */
export const sizeOf = (mark: number, dot = DOT): { readonly width: number; readonly height: number } => ({
  width: (6 * String(mark).length + 1) * dot,
  height: ROWS * dot,
});

/** Where a mark's number may stand: outside its rectangle first, then in its corner; only what lies whole on the raster. */
export function placesBeside(raster: GreyRaster, { x, y, width, height }: Pixels, mark: number): readonly Pixels[] {
  const size = sizeOf(mark);
  const corners: readonly (readonly [number, number])[] = [
    [x, y - size.height],
    [x - size.width, y],
    [x + width - size.width, y - size.height],
    [x + width, y],
    [x, y + height],
    [x + width - size.width, y + height],
    [x, y],
  ];
  return corners
    .map(([left, top]) => ({ x: left, y: top, ...size }))
    .filter((each) => each.x >= 0 && each.y >= 0 && each.x + each.width <= raster.width && each.y + each.height <= raster.height);
}

/** A whole number in white on black, as large as `sizeOf` made `at`; changes the raster. */
export function stamp(raster: GreyRaster, at: Pixels, mark: number): void {
  const dot = at.height / ROWS;
  fill(raster, at, 0);
  Array.from(String(mark)).forEach((digit, index) => {
    (DIGITS[Number(digit)] ?? '').split(' ').forEach((row, y) => {
      Array.from(row).forEach((bit, x) => {
        if (bit === '1') fill(raster, { x: at.x + (6 * index + x + 1) * dot, y: at.y + (y + 1) * dot, width: dot, height: dot }, 255);
      });
    });
  });
}

function fill(raster: GreyRaster, { x, y, width, height }: Pixels, grey: number): void {
  for (let dy = 0; dy < height; dy++) for (let dx = 0; dx < width; dx++) set(raster, x + dx, y + dy, grey);
}

function set({ width, height, data }: GreyRaster, x: number, y: number, grey: number): void {
  if (x >= 0 && y >= 0 && x < width && y < height) data[y * width + x] = grey;
}

/** Where a box (pt on the raster's page) lies, in whole pixels on the raster. */
export function pixelsOf({ pixelsPerPt: k, origin, width, height }: GreyRaster, box: Box): Pixels {
  const x = Math.max(0, Math.round((box.x - origin.x) * k));
  const y = Math.max(0, Math.round((box.y - origin.y) * k));
  const right = Math.min(width, Math.round((box.x + box.width - origin.x) * k));
  const bottom = Math.min(height, Math.round((box.y + box.height - origin.y) * k));
  return { x, y, width: right - x, height: bottom - y };
}
