import { sum } from '../../geometry/sum.js';
import type { SetLine } from '../type/paragraph.js';
import { stacked, type Block, type Mark } from './block.js';
import type { ListFace } from './face.js';
import type { List, ListColumn, ListRow, ListStyle, ListText } from './list.js';
import { styleOf, type Measures } from './measures.js';

/** A line of a cell, or a square of a line's height. pt */
interface Line {
  readonly line: SetLine | undefined;
  /** How far it reaches above and below its baseline. */
  readonly up: number;
  readonly down: number;
}

/** Left edges and widths of a table's columns, pt from its left. */
export interface Columns {
  readonly of: readonly ListColumn[];
  readonly x: readonly number[];
  readonly width: readonly number[];
}

const HAIR = 0.5;
const FIRM = 1.2;

/** Columns as wide as their texts ask, as far as they may; `rest` ones share the remainder evenly. */
export function columnsOf({ columns, sections }: List, m: Measures, face: ListFace): Columns {
  const room = m.width - (columns.length - 1) * m.gap;
  const texts = sections.flatMap(({ rows }) => rows);
  const fixed = columns.map(({ head, width }, at) => {
    if (width === 'rest') return 0;
    const most = width * room;
    let wide = wordsWidth(head, m, face);
    for (const { cells } of texts) for (const text of cells[at] ?? []) if (wide < most) wide = Math.max(wide, textWidth(text, m, face));
    return Math.min(most, wide);
  });
  const rests = columns.filter(({ width }) => width === 'rest').length;
  const share = (room - sum(fixed)) / Math.max(1, rests);
  const width = columns.map((column, at) => (column.width === 'rest' ? share : (fixed[at] ?? 0)));
  let edge = 0;
  const x = width.map((each) => {
    const left = edge;
    edge += each + m.gap;
    return left;
  });
  return { of: columns, x, width };
}

/** A head is broken between its words, never inside one. */
const wordsWidth = (head: string, m: Measures, face: ListFace): number =>
  head.split(' ').reduce((widest, word) => Math.max(widest, face.width(word, styleOf('small', m))), 0);

const textWidth = (text: ListText, m: Measures, face: ListFace): number =>
  'tick' in text ? m.size : face.width(text.text, styleOf(text.style, m)) + 0.01;

const asLine = (line: SetLine): Line => ({ line, up: line.up, down: line.down });

function linesOf(texts: readonly ListText[], width: number, m: Measures, face: ListFace): readonly Line[] {
  return texts.flatMap((each): readonly Line[] => {
    if ('tick' in each) return [{ line: undefined, up: SQUARE * m.size, down: 0.2 * m.size }];
    return face.lines(each.text, styleOf(each.style, m), width).map(asLine);
  });
}

/** Side of a square to tick off, of the size of type. */
const SQUARE = 0.85;

const ascentOf = (cells: readonly (readonly Line[])[]): number => cells.reduce((most, [first]) => Math.max(most, first?.up ?? 0), 0);

/** Lines of cells side by side: the first line of each on one baseline. */
function beside(cells: readonly (readonly Line[])[], columns: Columns): Block {
  const ascent = ascentOf(cells);
  let height = 0;
  const marks = cells.flatMap((lines, at): readonly Mark[] => {
    let top = ascent - (lines[0]?.up ?? 0);
    const [left, width] = [columns.x[at] ?? 0, columns.width[at] ?? 0];
    const drawn = lines.map(({ line, up, down }): Mark => {
      const baseline = top + up;
      top = baseline + down;
      if (line === undefined) return { kind: 'square', x: left, y: baseline - up, side: up };
      // A text that runs to the left begins at the right edge of its column.
      const spare = line.rtl || columns.of[at]?.align === 'right' ? width - line.width : 0;
      return { kind: 'text', line, x: left + Math.max(0, spare), baseline };
    });
    height = Math.max(height, top);
    return drawn;
  });
  return { height, marks };
}

const space = (height: number): Block => ({ height, marks: [] });
export const rule = (width: number, weight: number): Block => ({ height: weight, marks: [{ kind: 'rule', x: 0, width, y: 0, weight }] });

const across = (m: Measures): Columns => ({ of: [{ head: '', align: 'left', width: 'rest' }], x: [0], width: [m.width] });

/** Lines across the whole width. */
export const textBlock = (text: string, style: ListStyle, m: Measures, face: ListFace): Block =>
  beside([linesOf([{ text, style }], m.width, m, face)], across(m));

/** The same for what stands on each page, whatever its length: no more lines than this, cut before `end`. */
export const shortBlock = (text: string, end: string, style: ListStyle, m: Measures, face: ListFace, most = MOST_LINES): Block =>
  beside([face.linesAtMost(most, text, end, styleOf(style, m), m.width).map(asLine)], across(m));

/** More of what is told again on each page would leave no room for rows. */
const MOST_LINES = 3;

/** The head of the table, with a firm rule below. */
export function headBlock(columns: Columns, m: Measures, face: ListFace): Block {
  const cells = columns.of.map(({ head }, at) => linesOf([{ text: head, style: 'small' }], columns.width[at] ?? 0, m, face));
  return stacked([space(m.pad), beside(cells, columns), space(m.pad / 2), rule(m.width, FIRM)]);
}

/**
 * A row, with a hair rule below. A row that is higher than `most` (pt) by itself comes in several blocks: torn between lines, each later one with
 * the row's name above. No other row is ever torn.
 */
export function rowBlocks(row: ListRow, columns: Columns, most: number, m: Measures, face: ListFace): readonly Block[] {
  const cells = columns.of.map((_, at) => linesOf(row.cells[at] ?? [], columns.width[at] ?? 0, m, face));
  const finish = (above: readonly Block[], lines: readonly (readonly Line[])[]): Block =>
    stacked([space(m.pad), ...above, beside(lines, columns), space(m.pad), rule(m.width, HAIR)]);
  const whole = finish([], cells);
  if (whole.height <= most) return [whole];
  const again = shortBlock(row.name, ', continued', 'small', m, face);
  const room = (above: number): number => most - 2 * m.pad - HAIR - above;
  const blocks: Block[] = [];
  let left: readonly (readonly Line[])[] = cells;
  while (left.some((lines) => lines.length > 0)) {
    const above = blocks.length === 0 ? [] : [again];
    const ascent = ascentOf(left);
    const counts = left.map((lines) => fitting(lines, ascent, room(above[0]?.height ?? 0)));
    blocks.push(
      finish(
        above,
        left.map((lines, at) => lines.slice(0, counts[at])),
      ),
    );
    left = left.map((lines, at) => lines.slice(counts[at]));
  }
  return blocks;
}

/** How many lines fit a height below this ascent; one at least, for a page too low for a line would go on for ever. */
function fitting(lines: readonly Line[], ascent: number, height: number): number {
  let used = ascent - (lines[0]?.up ?? 0);
  const over = lines.findIndex(({ up, down }) => (used += up + down) > height);
  return over < 0 ? lines.length : Math.max(1, over);
}
