import type { Box } from '../geometry/box.js';
import { formatSize, ptToMm } from '../geometry/length.js';
import type { Media } from '../geometry/media.js';
import { placementMatrix, turnedSize, type Matrix } from '../geometry/placement.js';
import type { Reason } from '../sheet/sheet.js';
import { sheetPositions } from './sheet-positions.js';

/** How pages lie on larger sheets. Lengths in pt. */
export interface ImposeLayout {
  readonly columns: number;
  readonly rows: number;
  /** Clockwise turn of each page in its position. */
  readonly turn: 0 | 90;
  /** First free position of the first sheet, from 1, along the rows from the top left. */
  readonly firstFree: number;
  /** From the left edge of a label to that of the next, and from top to top; left out: what margin and sheet leave. */
  readonly pitchAcross?: number | undefined;
  readonly pitchDown?: number | undefined;
  /** Where the first label's corner lies on the sheet; left out: labels lie in the middle of the sheet. */
  readonly marginLeft?: number | undefined;
  readonly marginTop?: number | undefined;
  /** What the printer of the sheets can't print at each edge; left out: it prints to the edge. */
  readonly printerMargin?: number | undefined;
  /** Whether each parcel begins in an odd position, its second page beside its first, whole on a sheet. */
  readonly pairs?: boolean | undefined;
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

/** One direction of a sheet: where its first page begins, and from there to the next, pt. */
interface Row {
  readonly start: number;
  readonly step: number;
}

/**
 * Positions for pages at true size. A direction without pitch and margin is divided evenly, each page in the middle of its share; else the first
 * page's corner is where the margin says, the others follow by the pitch. Refused when pages would lie over each other, over the sheet's edge or where
 * its printer can't print, and when the first free position is not on the sheet.
 * @param pages how many, or how many of each parcel, in the order of the stack
 */
export function imposeCells(
  pages: number | readonly number[],
  page: Media,
  sheet: Media,
  layout: ImposeLayout,
): readonly Cell[] | { readonly refused: Reason } {
  const boxes = positionBoxes(page, sheet, layout);
  if ('refused' in boxes) return boxes;
  const perSheet = boxes.length;
  const { firstFree, turn, pairs = false } = layout;
  if (firstFree > perSheet) return { refused: noSuchPosition(firstFree, perSheet) };
  const whole = { x: 0, y: 0, width: page.width, height: page.height };
  const parcels = typeof pages === 'number' ? Array.from({ length: pages }, () => 1) : pages;
  return sheetPositions(parcels, { perSheet, firstFree, pairs }).map((position) => {
    const box = boxes[position % perSheet] ?? whole;
    return { sheet: Math.floor(position / perSheet) + 1, matrix: placementMatrix(whole, turn, 1, box.x, box.y), box };
  });
}

/** What a page covers in each position of a sheet, along the rows from the top left; pt, y down. */
export function positionBoxes(page: Media, sheet: Media, layout: ImposeLayout): readonly Box[] | { readonly refused: Reason } {
  const { columns, rows } = layout;
  const size = turnedSize(page.width, page.height, layout.turn);
  const across = rowOf(columns, sheet.width, size.width, layout.marginLeft, layout.pitchAcross);
  const down = rowOf(rows, sheet.height, size.height, layout.marginTop, layout.pitchDown);
  const refused =
    whyNot(across, columns, size.width, sheet.width, 'across', { page, sheet, layout }) ??
    whyNot(down, rows, size.height, sheet.height, 'down', { page, sheet, layout });
  if (refused) return { refused };
  return Array.from({ length: columns * rows }, (_, position) => ({
    x: across.start + (position % columns) * across.step,
    y: down.start + Math.floor(position / columns) * down.step,
    ...size,
  }));
}

function rowOf(count: number, length: number, size: number, margin: number | undefined, pitch: number | undefined): Row {
  if (pitch !== undefined) return { start: margin ?? (length - (count - 1) * pitch - size) / 2, step: pitch };
  // The last label ends as far from its edge as the first begins from the other.
  if (margin !== undefined) return { start: margin, step: count > 1 ? (length - 2 * margin - size) / (count - 1) : 0 };
  return { start: (length / count - size) / 2, step: length / count };
}

const mm = (pt: number): string => `${ptToMm(pt).toFixed(1)} mm`;

interface Laid {
  readonly page: Media;
  readonly sheet: Media;
  readonly layout: ImposeLayout;
}

function whyNot({ start, step }: Row, count: number, size: number, length: number, way: 'across' | 'down', laid: Laid): Reason | undefined {
  const { layout } = laid;
  const keep = layout.printerMargin ?? 0;
  const [margin, pitch] = way === 'across' ? [layout.marginLeft, layout.pitchAcross] : [layout.marginTop, layout.pitchDown];
  const overlaps = count > 1 && step < size - ROUNDING;
  const end = start + (count - 1) * step + size;
  const outside = Math.max(keep - start, end - (length - keep));
  if (!overlaps && outside <= ROUNDING) return undefined;
  if (margin === undefined && pitch === undefined) return tooLarge(laid);
  const names = way === 'across' ? ['margin-left', 'pitch-across'] : ['margin-top', 'pitch-down'];
  const edge = way === 'across' ? 'left edge' : 'top edge';
  if (overlaps) {
    return {
      code: 'impose/too-large',
      message: `a page is ${mm(size)} ${way}, but the labels of the sheet lie ${mm(step)} apart: they would lie over each other`,
      remedy:
        pitch === undefined
          ? `use a smaller \`${names[0] ?? ''}\`, or fewer ${way === 'across' ? 'columns' : 'rows'}: the other margin is taken to be the same`
          : `measure the pitch from the ${edge} of one label to the ${edge} of the next, or turn the pages`,
    };
  }
  const what = keep > 0 ? `the printer's margin of ${mm(keep)}` : 'the edge of the sheet';
  return {
    code: 'impose/off-sheet',
    message: `${count === 1 ? 'a label' : `${count} labels`} ${way} reach ${mm(outside)} beyond ${what}`,
    remedy: `measure the margin and the pitch of your sheet again (\`${names.join('`, `')}\`), or use fewer ${way === 'across' ? 'columns' : 'rows'}`,
  };
}

function tooLarge({ page, sheet, layout: { columns, rows, turn, printerMargin = 0 } }: Laid): Reason {
  const lies = turn === 90 ? ' sideways' : '';
  const less = printerMargin > 0 ? `, less the ${mm(printerMargin)} that the printer can't print at each edge` : '';
  const cell = formatSize(sheet.width / columns, sheet.height / rows);
  return {
    code: 'impose/too-large',
    message: `a page of ${formatSize(page.width, page.height)}${lies} does not fit a position of ${cell} (${columns} across, ${rows} down on ${sheet.name})${less}`,
    remedy:
      printerMargin > 0
        ? 'use fewer columns or rows, turn the pages, use a larger sheet or a printer with smaller margins: pages are never shrunk'
        : 'use fewer columns or rows, turn the pages, or use a larger sheet: pages are never shrunk',
  };
}

/** @param positions on a sheet */
export const noSuchPosition = (firstFree: number, positions: number): Reason => ({
  code: 'impose/no-such-position',
  message: `the first free position is ${firstFree}, but a sheet has ${positions}`,
  remedy: `name a position from 1 to ${positions}`,
});
