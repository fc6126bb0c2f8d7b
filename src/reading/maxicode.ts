import { intersection, type Box } from '../geometry/box.js';
import { mmToPt } from '../geometry/length.js';
import { TURNS, type Turn } from '../geometry/placement.js';
import { findBullseyes, type Bullseye } from './bullseye.js';
import { readCodes } from './codes.js';
import { cutOut, pixelsOf } from './cut-out.js';
import type { Code, GreyRaster, Point, SourcePage } from './source.js';

/** Size without quiet zone, pt: 28.14 × 26.91 mm less a module of 0.88 mm on each side (ISO/IEC 16023, handbook section 4.4, secondary). */
const SYMBOL = { width: mmToPt(26.38), height: mmToPt(25.15) };
/** The finder stands half a module before the symbol's middle, around the fifteenth of its thirty columns (as zint draws it; secondary). */
const OFF_MIDDLE = mmToPt(0.44);
/** A reader wants the symbol alone: so much paper around it, pt. */
const QUIET = mmToPt(0.7);
/** The finder's middle is known to a pixel of the coarse ink: so much around the symbol is kept where all beyond is taken away, pt. */
const KEPT = mmToPt(0.12);

/** What must be drawn to read the symbol around a finder, whichever way up it stands. */
function around({ centre, scale }: Bullseye): Box {
  const side = SYMBOL.width * Math.max(1, scale) + 4 * QUIET;
  return { x: centre.x - side / 2, y: centre.y - side / 2, width: side, height: side };
}

/**
 * Reads the MaxiCode around a finder. The library reads it only alone and upright, so it is cut out and tried in all four turns; where something
 * stands too close for that, with all beyond the symbol's own size taken away.
 * @param raster that shows it, at 200 dpi or more
 */
export async function readMaxiCode(raster: GreyRaster, bullseye: Bullseye): Promise<Code | undefined> {
  return (await readAs(raster, bullseye, (piece) => piece)) ?? readAs(raster, bullseye, whitened);
}

async function readAs(raster: GreyRaster, { centre, scale: seen }: Bullseye, clear: typeof whitened): Promise<Code | undefined> {
  // The finder's size is known to a pixel or two only; most symbols have the one size of the standard.
  for (const scale of new Set([seen, 1])) {
    for (const turn of TURNS) {
      const middle = beside(centre, turn, scale * OFF_MIDDLE);
      const kept = grownTo(middle, turn, scale, KEPT);
      const piece = clear(cutOut(raster, grownTo(middle, turn, scale, QUIET)), kept);
      const [read] = await readCodes(turnedBack(piece, turn), { symbologies: ['MaxiCode'], run: 'level' });
      if (!read) continue;
      const box = inkBounds(clear(cutOut(raster, grownTo(middle, turn, scale, 2 * QUIET)), kept)) ?? grownTo(middle, turn, scale, 0);
      return { ...read, box, corners: cornersOf(box, turn), turn };
    }
  }
  return undefined;
}

/** A point moved by so much in the reading direction of a symbol that is turned clockwise by `turn`. */
function beside({ x, y }: Point, turn: Turn, by: number): Point {
  const sign = turn === 0 || turn === 90 ? 1 : -1;
  return turn % 180 === 0 ? { x: x + sign * by, y } : { x, y: y + sign * by };
}

/** The finder of a MaxiCode that was read, as it would be found. */
export function finderOf(code: Code): Bullseye {
  const scale = maxiCodeScale(code);
  const [topLeft, topRight, bottomRight, bottomLeft] = code.corners;
  const long = Math.max(1e-6, Math.hypot(topRight.x - topLeft.x, topRight.y - topLeft.y));
  const back = (scale * OFF_MIDDLE) / long;
  const middle = (pick: (point: Point) => number): number =>
    (pick(topLeft) + pick(topRight) + pick(bottomRight) + pick(bottomLeft)) / 4 - back * (pick(topRight) - pick(topLeft));
  return { centre: { x: middle(({ x }) => x), y: middle(({ y }) => y) }, scale };
}

/** A raster with all beyond `box` (pt) made paper. */
function whitened(raster: GreyRaster, box: Box): GreyRaster {
  const { x0, y0, x1, y1 } = pixelsOf(raster, box);
  const data = new Uint8Array(raster.data.length).fill(255);
  for (let y = y0; y < y1; y++) data.set(raster.data.subarray(y * raster.width + x0, y * raster.width + x1), y * raster.width + x0);
  return { ...raster, data };
}

/** How large a MaxiCode was drawn, against the one size of the standard. */
export function maxiCodeScale({ corners: [topLeft, topRight] }: Code): number {
  return Math.hypot(topRight.x - topLeft.x, topRight.y - topLeft.y) / SYMBOL.width;
}

/** Every MaxiCode in `region` (pt) of a page, whose coarse ink shows the finders; `at`: as finely as each is to be read, pixels per pt or `own`. */
export async function readMaxiCodes(page: SourcePage, region: Box, at: (area: Box) => number | 'own'): Promise<readonly Code[]> {
  const found: Code[] = [];
  for (const bullseye of findBullseyes(page.ink(), region)) {
    const area = intersection(around(bullseye), region);
    const code = area && (await readMaxiCode(page.render(area, at(area)), bullseye));
    if (code) found.push(code);
  }
  return found;
}

/** A symbol's box with so much paper around it. */
function grownTo({ x, y }: Point, turn: Turn, scale: number, paper: number): Box {
  const [across, down] = turn % 180 === 90 ? [SYMBOL.height, SYMBOL.width] : [SYMBOL.width, SYMBOL.height];
  const [width, height] = [across * scale + 2 * paper, down * scale + 2 * paper];
  return { x: x - width / 2, y: y - height / 2, width, height };
}

/** What is dark in a raster, pt; undefined when nothing is, or when ink reaches its edge and belongs to something else. */
function inkBounds({ width, height, data, pixelsPerPt, origin }: GreyRaster): Box | undefined {
  let [x0, y0, x1, y1] = [width, height, -1, -1];
  for (let y = 0, at = 0; y < height; y++) {
    for (let x = 0; x < width; x++, at++) {
      if ((data[at] as number) >= 128) continue;
      [x0, y0, x1, y1] = [Math.min(x0, x), Math.min(y0, y), Math.max(x1, x), Math.max(y1, y)];
    }
  }
  if (x1 < 0 || x0 === 0 || y0 === 0 || x1 === width - 1 || y1 === height - 1) return undefined;
  return {
    x: origin.x + x0 / pixelsPerPt,
    y: origin.y + y0 / pixelsPerPt,
    width: (x1 + 1 - x0) / pixelsPerPt,
    height: (y1 + 1 - y0) / pixelsPerPt,
  };
}

/** The corners of a box in the reading order of a symbol that is turned clockwise by `turn`. */
function cornersOf({ x, y, width, height }: Box, turn: Turn): Code['corners'] {
  const [a, b, c, d]: readonly Point[] = [
    { x, y },
    { x: x + width, y },
    { x: x + width, y: y + height },
    { x, y: y + height },
  ];
  if (!a || !b || !c || !d) throw new Error('maxicode: a box has four corners');
  switch (turn) {
    case 0:
      return [a, b, c, d];
    case 90:
      return [b, c, d, a];
    case 180:
      return [c, d, a, b];
    case 270:
      return [d, a, b, c];
  }
}

/** A picture that is turned clockwise by `turn`, brought upright; it no longer lies on the page. */
function turnedBack(raster: GreyRaster, turn: Turn): GreyRaster {
  const { width, height, data } = raster;
  if (turn === 0) return raster;
  const sideways = turn % 180 === 90;
  const out = { ...raster, width: sideways ? height : width, height: sideways ? width : height, data: new Uint8Array(data.length) };
  for (let y = 0, from = 0; y < height; y++) {
    for (let x = 0; x < width; x++, from++) {
      const [column, row] = turn === 90 ? [y, width - 1 - x] : turn === 180 ? [width - 1 - x, height - 1 - y] : [height - 1 - y, x];
      out.data[row * out.width + column] = data[from] as number;
    }
  }
  return out;
}
