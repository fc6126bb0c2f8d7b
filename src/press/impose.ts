import { formatSize } from '../geometry/length.js';
import type { Box } from '../geometry/box.js';
import type { Media } from '../geometry/media.js';
import { placementMatrix, turnedSize, type Matrix } from '../geometry/placement.js';
import type { Reason } from '../sheet/sheet.js';

/** How pages lie on larger sheets. */
export interface ImposeLayout {
  readonly columns: number;
  readonly rows: number;
  /** Clockwise turn of each page in its position. */
  readonly turn: 0 | 90;
  /** First free position of the first sheet, from 1, along the rows from the top left. */
  readonly firstFree: number;
}

/** Where one page lies. */
export interface Cell {
  /** Sheet, from 1. */
  readonly sheet: number;
  /** Page (pt, y down) → sheet (pt, y down); always true size. */
  readonly matrix: Matrix;
  /** What the page covers on the sheet, pt, y down. */
  readonly box: Box;
}

/** What adding up lengths may leave, pt. */
const ROUNDING = 0.01;

/**
 * Positions for `count` pages: the sheet divided evenly into columns and rows, each page at true size in the middle of its
 * position. Refused when a page is larger than a position, or the first free position is not on the sheet.
 */
export function imposeCells(
  count: number,
  page: Media,
  sheet: Media,
  layout: ImposeLayout,
): readonly Cell[] | { readonly refused: Reason } {
  const { columns, rows, turn, firstFree } = layout;
  const cell = { width: sheet.width / columns, height: sheet.height / rows };
  const size = turnedSize(page.width, page.height, turn);
  if (size.width > cell.width + ROUNDING || size.height > cell.height + ROUNDING) {
    const lies = turn === 90 ? ' sideways' : '';
    return {
      refused: {
        code: 'impose/too-large',
        message: `a page of ${formatSize(page.width, page.height)}${lies} does not fit a position of ${formatSize(cell.width, cell.height)} (${columns} across, ${rows} down on ${sheet.name})`,
        remedy: 'use fewer columns or rows, turn the pages, or use a larger sheet: pages are never shrunk',
      },
    };
  }
  if (firstFree > columns * rows) {
    return {
      refused: {
        code: 'impose/no-such-position',
        message: `the first free position is ${firstFree}, but a sheet has ${columns * rows}`,
        remedy: `name a position from 1 to ${columns * rows}`,
      },
    };
  }
  const whole = { x: 0, y: 0, width: page.width, height: page.height };
  return Array.from({ length: count }, (_, index) => {
    const position = firstFree - 1 + index;
    const onSheet = position % (columns * rows);
    const x = (onSheet % columns) * cell.width + (cell.width - size.width) / 2;
    const y = Math.floor(onSheet / columns) * cell.height + (cell.height - size.height) / 2;
    return {
      sheet: Math.floor(position / (columns * rows)) + 1,
      matrix: placementMatrix(whole, turn, 1, x, y),
      box: { x, y, ...size },
    };
  });
}
