import type { Box } from '../../geometry/box.js';
import { dotsPerPt, type Grid } from '../../geometry/grid.js';
import type { SlipLook } from '../../sheet/slip-content.js';
import { linearCode, qrCode, type OrderCode } from './order-code.js';
import type { SetLine } from '../type/paragraph.js';
import { GUTTER, set, type Setting } from './setting.js';

/** A line of type on its page: pt from the page's top left corner, y down. */
export interface PlacedLine {
  readonly line: SetLine;
  readonly x: number;
  readonly baseline: number;
}

/** The page that a slip is laid out on, pt. */
export interface SlipPage {
  readonly width: number;
  readonly height: number;
  readonly margin: number;
}

/** What stands at the foot of every page: the code at the left, room for the stack's number at the right, the page's number above it. */
export interface Foot {
  /** What it takes of the text area, pt. */
  readonly height: number;
  readonly numberBox: Box;
  /** The code's bars or modules, pt, and its box with the clear space. */
  readonly marks: readonly Box[];
  readonly codeBox?: Box;
  pageNumber(number: number, of: number): readonly PlacedLine[];
}

/** Room for the stack's number and the end of the tracking number, pt. */
const NUMBER = { width: 64, height: 30 };

/** White between the text and what stands at the foot, pt. */
const ABOVE = 8;

/** A code never takes more of a page's height than this. */
const MOST_OF_HEIGHT = 0.25;

/** @param kind `none` also where the page is drawn smaller, off the dots */
export async function footOf(orderNumber: string, kind: SlipLook['code'], page: SlipPage, grid: Grid, setting: Setting): Promise<Foot> {
  const { width, height, margin } = page;
  const room = { width: width - 2 * margin - NUMBER.width - GUTTER, height: height * MOST_OF_HEIGHT };
  const code = await codeOf(orderNumber, kind, grid, room, setting);
  const placed = code && placeCode(code, page, grid);
  const bottom = height - margin;
  const numberBox: Box = { x: width - margin - NUMBER.width, y: bottom - NUMBER.height, ...NUMBER };
  const label = (number: number, of: number): SetLine | undefined =>
    set(`page ${number} of ${of}`, setting.types.small, width - 2 * margin, setting)[0];
  const longest = label(99, 99);
  const codeTop = placed ? placed.box.y : bottom;
  // Beside the code where it is no wider than the number below it, else above both.
  const labelBottom = longest && longest.width > NUMBER.width ? Math.min(codeTop, numberBox.y) : numberBox.y;
  const labelTop = labelBottom - (longest ? longest.up + longest.down : 0);
  return {
    height: bottom - Math.min(codeTop, labelTop) + ABOVE,
    numberBox,
    marks: placed?.marks ?? [],
    ...(placed ? { codeBox: placed.box } : {}),
    pageNumber: (number, of) => {
      const line = label(number, of);
      return line ? [{ line, x: width - margin - line.width, baseline: labelTop + line.up }] : [];
    },
  };
}

async function codeOf(
  text: string,
  kind: SlipLook['code'],
  grid: Grid,
  room: { readonly width: number; readonly height: number },
  { warn }: Setting,
): Promise<OrderCode | undefined> {
  if (kind === 'none' || text.trim() === '') return undefined;
  const code = (kind === 'code128' ? linearCode(text, grid, room) : undefined) ?? (await qrCode(text, grid, room));
  if (!code) warn('The order number is too long for a code on this page: the slip has none.');
  return code;
}

/** The code at the foot, its first bar at the margin where that is clear space enough. */
function placeCode(code: OrderCode, { height, margin }: SlipPage, grid: Grid): { marks: readonly Box[]; box: Box } {
  const perPt = dotsPerPt(grid);
  const x = Math.max(Math.ceil(margin * perPt), code.quiet.x);
  const y = Math.min(Math.floor((height - margin) * perPt), Math.floor(height * perPt) - code.quiet.y) - code.height;
  const toPt = (box: Box): Box => ({ x: box.x / perPt, y: box.y / perPt, width: box.width / perPt, height: box.height / perPt });
  const box = { x: x - code.quiet.x, y: y - code.quiet.y, width: code.width + 2 * code.quiet.x, height: code.height + 2 * code.quiet.y };
  return { marks: code.marks.map((mark) => toPt({ ...mark, x: mark.x + x, y: mark.y + y })), box: toPt(box) };
}
