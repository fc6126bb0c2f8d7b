import type { Box } from '../../geometry/box.js';
import { dotsPerPt, type Grid } from '../../geometry/grid.js';
import type { Media } from '../../geometry/media.js';
import type { SlipContent, SlipLook } from '../../sheet/slip-content.js';
import { hanOf, set, slipBlocks, type Setting } from './blocks.js';
import { flow, type PlacedRow } from './flow.js';
import { linearCode, qrCode, type OrderCode } from './order-code.js';
import type { SetLine } from './paragraph.js';
import { row, strip, type Column } from './rows.js';
import { typesOf } from './type-sizes.js';

/** A line of type on its page: pt from the page's top left corner, y down. */
export interface PlacedLine {
  readonly line: SetLine;
  readonly x: number;
  readonly baseline: number;
}

/** What is drawn on one page. pt, y down. */
export interface LaidPage {
  readonly lines: readonly PlacedLine[];
  /** Black rectangles: strokes, bars, modules; on whole dots of the grid. */
  readonly marks: readonly Box[];
}

/** A slip with everything at its place, before it is a PDF. */
export interface LaidSlip {
  readonly pages: readonly LaidPage[];
  readonly warnings: readonly string[];
  readonly numberBox: Box;
  readonly codeBox?: Box;
  /** What the page is drawn at: 1 but for media that no slip fits. */
  readonly scale: number;
}

/** The least page that a slip is laid out on, pt: smaller media get one made smaller. */
const LEAST = { width: 200, height: 260 };

/** Room for the stack's number and the end of the tracking number, pt. */
const NUMBER = { width: 64, height: 30 };

/** White between the text and what stands at the foot, pt. */
const FOOT_GAP = 8;
const GUTTER = 8;

/** A code never takes more of a page's height than this. */
const MOST_OF_HEIGHT = 0.25;

/** Lays a slip out on pages of `media`. See `slipPages`. */
export async function layOutSlip(content: SlipContent, look: SlipLook, media: Media, grid: Grid): Promise<LaidSlip> {
  const warnings = new Set<string>();
  const warn = (text: string): void => void warnings.add(text);
  const scale = Math.min(1, media.width / LEAST.width, media.height / LEAST.height);
  const page = { width: media.width / scale, height: media.height / scale };
  if (scale < 1) warn(`The media is too small for a slip: it is drawn at ${Math.floor(scale * 100)} %, without a code.`);
  const margin = marginOf(look.margin, page);
  const width = page.width - 2 * margin;
  const setting: Setting = { types: typesOf(look), width, han: hanOf(content), warn };
  const room = { width: width - NUMBER.width - GUTTER, height: page.height * MOST_OF_HEIGHT };
  const code = scale < 1 ? undefined : await codeOf(content.orderNumber, look.code, grid, room, warn);
  const pageLabel = set('page 1 of 2', setting.types.small, NUMBER.width, setting).map(
    (line) => row([{ line, column: { x: 0, width: NUMBER.width }, side: 'right' }]).height,
  );
  const labelHeight = pageLabel[0] ?? 0;
  const perPt = dotsPerPt(grid);
  const footHeight = Math.max(NUMBER.height + labelHeight, code ? (code.height + code.quiet.y) / perPt : 0) + FOOT_GAP;
  const head = continuedHead(content, setting);
  const first = page.height - 2 * margin - footHeight;
  const flowed = flow(slipBlocks(content, look, setting), first, first - head.height);
  const numberBox: Box = { x: page.width - margin - NUMBER.width, y: page.height - margin - NUMBER.height, ...NUMBER };
  const placedCode = code ? placeCode(code, { x: margin, bottom: page.height - margin }, grid) : undefined;
  const pages = flowed.map((rows, at): LaidPage => {
    const top = margin + (at === 0 ? 0 : head.height);
    const parts = [
      ...(at === 0 ? [] : [placedOnPage({ row: head, y: 0 }, margin, margin)]),
      ...rows.map((each) => placedOnPage(each, margin, top)),
    ];
    const number = flowed.length > 1 ? pageNumber(`page ${at + 1} of ${flowed.length}`, numberBox, labelHeight, setting) : [];
    return {
      lines: [...parts.flatMap(({ lines }) => lines), ...number],
      marks: [...parts.flatMap(({ rules }) => rules).map((rule) => onDots(rule, perPt)), ...(placedCode?.marks ?? [])],
    };
  });
  return { pages, warnings: [...warnings], numberBox: scaled(numberBox, scale), ...(placedCode ? { codeBox: placedCode.box } : {}), scale };
}

const marginOf = (margin: number, page: { width: number; height: number }): number =>
  Number.isFinite(margin) ? Math.max(0, Math.min(margin, page.width / 8, page.height / 8)) : 0;

async function codeOf(
  text: string,
  kind: SlipLook['code'],
  grid: Grid,
  room: { width: number; height: number },
  warn: (text: string) => void,
): Promise<OrderCode | undefined> {
  if (kind === 'none' || text.trim() === '') return undefined;
  const code = (kind === 'code128' ? linearCode(text, grid, room) : undefined) ?? (await qrCode(text, grid, room));
  if (!code) warn('The order number is too long for a code on this page: the slip has none.');
  return code;
}

/** The code at the foot, its first bar at the margin where that is clear space enough. */
function placeCode(code: OrderCode, at: { x: number; bottom: number }, grid: Grid): { marks: readonly Box[]; box: Box } {
  const perPt = dotsPerPt(grid);
  const x = Math.max(Math.ceil(at.x * perPt), code.quiet.x);
  const y = Math.floor(at.bottom * perPt) - code.height;
  const marks = code.marks.map((mark) => ({
    x: (mark.x + x) / perPt,
    y: (mark.y + y) / perPt,
    width: mark.width / perPt,
    height: mark.height / perPt,
  }));
  const box = {
    x: (x - code.quiet.x) / perPt,
    y: (y - code.quiet.y) / perPt,
    width: (code.width + 2 * code.quiet.x) / perPt,
    height: (code.height + 2 * code.quiet.y) / perPt,
  };
  return { marks, box };
}

/** One line above the text of every page but the first. */
function continuedHead({ orderNumber }: SlipContent, setting: Setting) {
  const column: Column = { x: 0, width: setting.width };
  const [line] = set(
    orderNumber.trim() === '' ? 'continued' : `Order ${orderNumber}, continued`,
    setting.types.strong,
    setting.width,
    setting,
  );
  const words = line ? row([{ line, column, side: 'left' }]) : strip(0);
  return { ...words, height: words.height + 8, rules: [{ x: 0, y: words.height + 2, width: setting.width, height: 0.6 }] };
}

function pageNumber(text: string, numberBox: Box, height: number, setting: Setting): readonly PlacedLine[] {
  return set(text, setting.types.small, numberBox.width, setting)
    .slice(0, 1)
    .map((line) => ({ line, x: numberBox.x + numberBox.width - line.width, baseline: numberBox.y - height + line.up }));
}

function placedOnPage(
  { row: { texts, rules }, y }: PlacedRow,
  x: number,
  top: number,
): { lines: readonly PlacedLine[]; rules: readonly Box[] } {
  return {
    lines: texts.map((text) => ({ line: text.line, x: x + text.x, baseline: top + y + text.baseline })),
    rules: rules.map((rule) => ({ ...rule, x: x + rule.x, y: top + y + rule.y })),
  };
}

/** A stroke of whole dots, at least one. */
function onDots(rule: Box, perPt: number): Box {
  const snap = (pt: number): number => Math.round(pt * perPt) / perPt;
  const thick = (pt: number): number => Math.max(1, Math.round(pt * perPt)) / perPt;
  return { x: snap(rule.x), y: snap(rule.y), width: thick(rule.width), height: thick(rule.height) };
}

const scaled = (box: Box, by: number): Box => ({ x: box.x * by, y: box.y * by, width: box.width * by, height: box.height * by });
