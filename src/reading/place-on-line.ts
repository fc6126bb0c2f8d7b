import type { Box } from '../geometry/box.js';
import type { Turn } from '../geometry/placement.js';

/** Where something written lies on its line, pt; all rise in reading order, whichever way the line is turned. */
export interface PlaceOnLine {
  /** Along the line. */
  readonly from: number;
  readonly to: number;
  /** Across the lines: the top of the writing, its foot, and its middle. */
  readonly top: number;
  readonly foot: number;
  readonly middle: number;
}

/** Writing on one line has its feet within this, pt. */
export const ON_LINE = 3;

/** @param turn how far the writing is turned clockwise */
export function placeOnLine({ x, y, width, height }: Box, turn: Turn): PlaceOnLine {
  switch (turn) {
    case 0:
      return { from: x, to: x + width, top: y, foot: y + height, middle: y + height / 2 };
    case 90:
      return { from: y, to: y + height, top: -x - width, foot: -x, middle: -x - width / 2 };
    case 180:
      return { from: -x - width, to: -x, top: -y - height, foot: -y, middle: -y - height / 2 };
    case 270:
      return { from: -y - height, to: -y, top: x, foot: x + width, middle: x + width / 2 };
  }
}
