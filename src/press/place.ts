import { applyToBox, applyToPoint, compose, placementMatrix, turnedSize, type Matrix } from '../geometry/placement.js';
import { bottom, centre, right, type Box } from '../geometry/box.js';
import { dotsPerPt, type Grid } from '../geometry/grid.js';
import { SIZE_TOLERANCE, type Media } from '../geometry/media.js';
import type { PrinterSetup } from '../geometry/printer.js';
import type { PictureUnder, Point } from '../reading/source.js';
import type { Sheet } from '../sheet/sheet.js';

/** Where a sheet lies on its output page. Plain data. */
export interface Placement {
  readonly sheetId: string;
  /** Page of the pressed document, from 1. */
  readonly page: number;
  /** Source page (pt, y down) → output page (pt, y down); undefined for text set anew, which has no place on the source. */
  readonly matrix: Matrix | undefined;
  /** What the sheet covers on the output page, pt from its top-left corner, y down. */
  readonly drawnBox: Box;
  /** Whether the source's pixels lie whole on the printer's dots. */
  readonly pixelForDot: boolean;
}

/** Producers round A4 to 595×842 pt (handbook section 1.1): without a margin, this much may hang over in all, pt. */
export const FIT_SLACK = SIZE_TOLERANCE;

/** What adding up lengths may leave, and less than a printer's dot, pt. */
const ROUNDING = 0.1;

/** A pixel counts as whole dots when the ratio is within this of a whole number, or of one over a whole number. */
const WHOLE = 1e-3;
/** A wanted scale is moved to whole dots when it is off by no more than this. */
const NEAR = 0.02;

/** The size of a sheet as drawn (pt): its box, turned and scaled. */
export function drawnSize(sheet: Pick<Sheet, 'box' | 'turn' | 'scale'>): { width: number; height: number } {
  return turnedSize(sheet.box.width * sheet.scale, sheet.box.height * sheet.scale, sheet.turn);
}

/** Whether a sheet's region, as turned and scaled, fits the media inside the sheet's margin. */
export function fits(sheet: Pick<Sheet, 'box' | 'turn' | 'scale' | 'margin'>, media: Media): boolean {
  const { width, height } = drawnSize(sheet);
  return fitsSize(width, height, sheet.margin, media);
}

/** Whether `width` × `height` (pt) fits the media inside a margin (pt). */
export function fitsSize(width: number, height: number, margin: number, media: Media): boolean {
  const slack = margin > 0 ? ROUNDING : FIT_SLACK;
  return width <= media.width - 2 * margin + slack && height <= media.height - 2 * margin + slack;
}

/**
 * The exact scale at which a pixel of a picture becomes k whole dots, or k pixels one dot (k = 1, 2, 3 …), if there is
 * one within 2 % of `wantedScale`; else undefined. A picture stretched by even 1.5 % loses bars, one copied dot for pixel
 * loses none.
 * @param pixelsPerPt pixels per pt of the source page
 */
export function pixelForDotScale(pixelsPerPt: number, grid: Grid, wantedScale: number): number | undefined {
  const dotsPerPixel = (wantedScale * dotsPerPt(grid)) / pixelsPerPt;
  const whole = nearestWhole(dotsPerPixel);
  const scale = (whole * pixelsPerPt) / dotsPerPt(grid);
  return Math.abs(scale / wantedScale - 1) <= NEAR ? scale : undefined;
}

/** The nearest of …, 1/3, 1/2, 1, 2, 3, … */
function nearestWhole(ratio: number): number {
  return ratio >= 1 ? Math.round(ratio) : 1 / Math.round(1 / ratio);
}

/** How far the printer is to be corrected: everything moves so many pt to the right and down. */
export type Offset = PrinterSetup['offset'];
const NO_OFFSET: Offset = { x: 0, y: 0 };

/**
 * Centres a sheet on the media, and moves it by the printer's offset. When its region shows one picture whose pixels come out as whole dots, or the sheet
 * names a point, the place moves by less than a dot so that pixel edges, or the point, lie on dot edges.
 * @param page output page, from 1
 * @param picture the picture that draws the sheet's region, if one does
 */
export function place(
  sheet: Sheet,
  page: number,
  media: Media,
  grid: Grid,
  picture: PictureUnder | undefined,
  offset: Offset = NO_OFFSET,
): Placement {
  const { width, height } = drawnSize(sheet);
  const x = (media.width - width) / 2 + offset.x;
  const y = (media.height - height) / 2 + offset.y;
  const centred = placementMatrix(sheet.box, sheet.turn, sheet.scale, x, y);
  const drawn = applyToBox(centred, sheet.box);
  const room = roomOf(sheet.margin, media, offset);
  const wholeDots = picture !== undefined && arePixelsWholeDots(sheet.scale, grid, picture);
  // The picture's own corner stands for all its pixel edges: they are whole dots apart.
  const edge = wholeDots ? picture.origin : sheet.onDots;
  // A picture goes onto whole dots come what may; a label that fills the page is not pushed over its edge for its bars' sake.
  const shift = edge && shiftToDots(centred, drawn, edge, room, grid, wholeDots);
  if (shift === undefined) return { sheetId: sheet.id, page, matrix: centred, drawnBox: drawn, pixelForDot: false };
  const [a, b, c, d, e, f] = centred;
  const snapped: Matrix = [a, b, c, d, e + shift.x, f + shift.y];
  const drawnBox = applyToBox(snapped, sheet.box);
  const matrix = wholeDots ? drawnIn(snapped, drawnBox, grid) : snapped;
  return { sheetId: sheet.id, page, matrix, drawnBox, pixelForDot: wholeDots };
}

/**
 * Rasterisers that paint every dot a picture touches (PDFium's do) round its edges outward, so an edge that arithmetic puts a
 * hair outside its dot costs a whole dot and stretches the picture. Drawn in by a hundredth of a dot, it never is.
 */
function drawnIn(matrix: Matrix, drawn: Box, grid: Grid): Matrix {
  const { x, y } = centre(drawn);
  const factor = 1 - 0.02 / (Math.min(drawn.width, drawn.height) * dotsPerPt(grid));
  return compose(matrix, [factor, 0, 0, factor, x * (1 - factor), y * (1 - factor)]);
}

/** Whether each pixel of a picture becomes a whole number of dots, or a whole number of pixels one dot. */
export function arePixelsWholeDots(scale: number, grid: Grid, picture: PictureUnder): boolean {
  const ratio = (scale * dotsPerPt(grid)) / picture.pixelsPerPt;
  return Math.abs(ratio / nearestWhole(ratio) - 1) <= WHOLE;
}

/** How far all moves (pt, less than a dot) so that a point of the source lies on an edge between dots, both ways. */
function shiftToDots(matrix: Matrix, drawn: Box, edge: Point, room: Box, grid: Grid, always: boolean): Point {
  const perPt = dotsPerPt(grid);
  const at = applyToPoint(matrix, edge.x, edge.y);
  return {
    x: nearestShift(at.x, perPt, room.x - drawn.x, right(room) - right(drawn), always),
    y: nearestShift(at.y, perPt, room.y - drawn.y, bottom(room) - bottom(drawn), always),
  };
}

/** Where a sheet may lie: the media inside its margin, as the printer will put it. */
function roomOf(margin: number, media: Media, offset: Offset): Box {
  return { x: margin + offset.x, y: margin + offset.y, width: media.width - 2 * margin, height: media.height - 2 * margin };
}

/** The smallest shift (pt) that puts `at` on a dot edge and lies between `least` and `most`; where none does, none, or with `always` the smallest of all. */
function nearestShift(at: number, perPt: number, least: number, most: number, always: boolean): number {
  const dots = at * perPt;
  const shifts = [Math.round(dots), Math.floor(dots), Math.ceil(dots)].map((edge) => (edge - dots) / perPt);
  return shifts.find((shift) => shift >= least - 0.01 && shift <= most + 0.01) ?? (always ? shifts[0] : 0) ?? 0;
}
