import type { Box } from '../geometry/box.js';
import type { GreyRaster } from '../reading/source.js';

const LINE = 3;
/** Side of a digit's square in pixels: large enough to be seen on a page fitted to the screen. */
const DOT = 4;
/** The digits 1 to 9 as 5 × 7 dots, a row a number of 5 bits. */
const DIGITS: readonly (readonly number[])[] = [
  [0b00100, 0b01100, 0b00100, 0b00100, 0b00100, 0b00100, 0b01110],
  [0b01110, 0b10001, 0b00001, 0b00110, 0b01000, 0b10000, 0b11111],
  [0b11110, 0b00001, 0b00001, 0b01110, 0b00001, 0b00001, 0b11110],
  [0b00010, 0b00110, 0b01010, 0b10010, 0b11111, 0b00010, 0b00010],
  [0b11111, 0b10000, 0b11110, 0b00001, 0b00001, 0b10001, 0b01110],
  [0b00110, 0b01000, 0b10000, 0b11110, 0b10001, 0b10001, 0b01110],
  [0b11111, 0b00001, 0b00010, 0b00100, 0b01000, 0b01000, 0b01000],
  [0b01110, 0b10001, 0b10001, 0b01110, 0b10001, 0b10001, 0b01110],
  [0b01110, 0b10001, 0b10001, 0b01111, 0b00001, 0b00010, 0b01100],
];

/** A dashed outline, so that it can't be taken for a line of the page. `box` is pt on the raster's page; changes the raster. */
export function outlineBox(raster: GreyRaster, box: Box): void {
  const { x0, y0, x1, y1 } = pixelsOf(raster, box);
  for (let thick = 0; thick < LINE; thick++) {
    for (let x = x0; x <= x1; x++) {
      dash(raster, x, y0 + thick);
      dash(raster, x, y1 - thick);
    }
    for (let y = y0; y <= y1; y++) {
      dash(raster, x0 + thick, y);
      dash(raster, x1 - thick, y);
    }
  }
}

/** A digit (1 to 9) in white on black in a corner of `box`, each digit in the next corner, as boxes often share one; changes the raster. */
export function numberBox(raster: GreyRaster, box: Box, digit: number): void {
  const { x0, y0, x1, y1 } = pixelsOf(raster, box);
  const rows = DIGITS[digit - 1] ?? [];
  const corner = (digit - 1) % 4;
  const left = corner === 0 || corner === 3 ? x0 + LINE : x1 - LINE - 7 * DOT;
  const top = corner < 2 ? y0 + LINE : y1 - LINE - 9 * DOT;
  for (let y = -1; y <= rows.length; y++) {
    for (let x = -1; x <= 5; x++) {
      const white = ((rows[y] ?? 0) >> (4 - x)) & (x >= 0 && x < 5 ? 1 : 0);
      fill(raster, left + (x + 1) * DOT, top + (y + 1) * DOT, white === 1 ? 255 : 0);
    }
  }
}

function pixelsOf({ width, height, pixelsPerPt: k, origin }: GreyRaster, box: Box): Record<'x0' | 'y0' | 'x1' | 'y1', number> {
  return {
    x0: Math.round((box.x - origin.x) * k),
    y0: Math.round((box.y - origin.y) * k),
    x1: Math.min(width - 1, Math.round((box.x + box.width - origin.x) * k)),
    y1: Math.min(height - 1, Math.round((box.y + box.height - origin.y) * k)),
  };
}

const dash = (raster: GreyRaster, x: number, y: number): void => {
  dot(raster, x, y, (x + y) % 16 < 10 ? 0 : 255);
};

function fill(raster: GreyRaster, x: number, y: number, grey: number): void {
  for (let dy = 0; dy < DOT; dy++) for (let dx = 0; dx < DOT; dx++) dot(raster, x + dx, y + dy, grey);
}

function dot({ width, height, data }: GreyRaster, x: number, y: number, grey: number): void {
  if (x >= 0 && y >= 0 && x < width && y < height) data[y * width + x] = grey;
}
