import type { Box } from '../../geometry/box.js';
import { dotsPerPt, type Grid } from '../../geometry/grid.js';
import type { Media } from '../../geometry/media.js';
import type { SlipContent, SlipLook } from '../../sheet/slip-content.js';
import { slipBlocks } from './blocks.js';
import type { Warn } from '../type/clean.js';
import { flow, type PlacedRow, type Row } from './flow.js';
import { footOf, type PlacedLine, type SlipPage } from './foot.js';
import { row, strip, type Column } from './rows.js';
import { hanOf, set, type Setting } from './setting.js';
import { typesOf } from './type-sizes.js';

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
  /** Of the media, as it is drawn; everything of `pages` is before `scale`. */
  readonly numberBox: Box;
  readonly codeBox?: Box;
  /** What the pages are drawn at: 1 but for media that no slip fits. */
  readonly scale: number;
}

/** The least page that a slip is laid out on, pt: smaller media get one made smaller. */
const LEAST = { width: 200, height: 260 };

/** Margins take no more of a page than this, on each side. */
const MOST_MARGIN = 0.125;

/** Lays a slip out on pages of `media`. See `slipPages`. */
export async function layOutSlip(content: SlipContent, look: SlipLook, media: Media, grid: Grid): Promise<LaidSlip> {
  const warnings = new Set<string>();
  const scale = Math.min(1, media.width / LEAST.width, media.height / LEAST.height);
  if (scale < 1) warnings.add(`The media is too small for a slip: it is drawn at ${Math.floor(scale * 100)} %, without a code.`);
  const page = pageOf(media, scale, look.margin);
  const warn: Warn = (text) => {
    warnings.add(text);
  };
  const setting: Setting = { types: typesOf(look, page.height, warn), width: page.width - 2 * page.margin, han: hanOf(content), warn };
  const foot = await footOf(content.orderNumber, scale < 1 ? 'none' : look.code, page, grid, setting);
  const head = continuedHead(content, setting);
  const room = page.height - 2 * page.margin - foot.height;
  const flowed = flow(slipBlocks(content, look, setting), room, room - head.height);
  const pages = flowed.map((rows, at): LaidPage => {
    const below = at === 0 ? 0 : head.height;
    const placed = [...(at === 0 ? [] : [{ row: head, y: 0 }]), ...rows.map((each) => ({ ...each, y: each.y + below }))];
    return {
      lines: [
        ...placed.flatMap((each) => linesOf(each, page.margin)),
        ...(flowed.length > 1 ? foot.pageNumber(at + 1, flowed.length) : []),
      ],
      marks: [...placed.flatMap((each) => strokesOf(each, page.margin, dotsPerPt(grid))), ...foot.marks],
    };
  });
  return {
    pages,
    warnings: [...warnings],
    numberBox: scaled(foot.numberBox, scale),
    ...(foot.codeBox ? { codeBox: foot.codeBox } : {}),
    scale,
  };
}

function pageOf(media: Media, scale: number, asked: number): SlipPage {
  const [width, height] = [media.width / scale, media.height / scale];
  const margin = Number.isFinite(asked) ? Math.max(0, Math.min(asked, MOST_MARGIN * width, MOST_MARGIN * height)) : 0;
  return { width, height, margin };
}

/** One line above the text of every page but the first. */
function continuedHead({ orderNumber }: SlipContent, setting: Setting): Row {
  const column: Column = { x: 0, width: setting.width };
  const text = orderNumber.trim() === '' ? 'continued' : `Order ${orderNumber}, continued`;
  const [line] = set(text, setting.types.strong, setting.width, setting);
  const words = line ? row([{ line, column, side: 'left' }]) : strip(0);
  return { ...words, height: words.height + 8, rules: [{ x: 0, y: words.height + 2, width: setting.width, height: 0.6 }] };
}

const linesOf = ({ row: { texts }, y }: PlacedRow, margin: number): readonly PlacedLine[] =>
  texts.map((text) => ({ line: text.line, x: margin + text.x, baseline: margin + y + text.baseline }));

/** Thinner than this, pt, each stroke prints as thick as the next; longer, its end meets what follows. */
const THIN = 4;

/** Strokes of whole dots, at least one. */
function strokesOf({ row: { rules }, y }: PlacedRow, margin: number, perPt: number): readonly Box[] {
  const onDots = (pt: number): number => Math.round(pt * perPt) / perPt;
  const reach = (from: number, pt: number): number =>
    pt < THIN ? Math.max(1, Math.round(pt * perPt)) / perPt : onDots(from + pt) - onDots(from);
  return rules.map((rule) => ({
    x: onDots(margin + rule.x),
    y: onDots(margin + y + rule.y),
    width: reach(margin + rule.x, rule.width),
    height: reach(margin + y + rule.y, rule.height),
  }));
}

const scaled = (box: Box, by: number): Box => ({ x: box.x * by, y: box.y * by, width: box.width * by, height: box.height * by });
