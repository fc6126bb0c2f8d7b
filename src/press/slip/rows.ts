import type { Box } from '../../geometry/box.js';
import type { Row, RowText } from './flow.js';
import type { SetLine } from '../type/paragraph.js';

/** A column of the text area, pt. */
export interface Column {
  readonly x: number;
  readonly width: number;
}

export type Side = 'left' | 'right';

/** One line in its column. */
export interface Cell {
  readonly line: SetLine;
  readonly column: Column;
  readonly side: Side;
}

/** A row of cells on one baseline. */
export function row(cells: readonly Cell[], rules: (height: number) => readonly Box[] = () => []): Row {
  const up = cells.reduce((most, { line }) => Math.max(most, line.up), 0);
  const down = cells.reduce((most, { line }) => Math.max(most, line.down), 0);
  return { height: up + down, texts: cells.map((cell) => placed(cell, up)), rules: rules(up + down) };
}

const placed = ({ line, column, side }: Cell, baseline: number): RowText => ({
  line,
  x: side === 'left' ? column.x : column.x + column.width - line.width,
  baseline,
});

/** White, with or without strokes. */
export const strip = (height: number, rules: readonly Box[] = []): Row => ({ height, texts: [], rules });

/** Where text of its own direction begins. */
export const sideOf = (line: SetLine): Side => (line.rtl ? 'right' : 'left');

/** Lines below each other in their column. */
export interface Stack {
  readonly lines: readonly SetLine[];
  readonly column: Column;
  readonly side: Side;
}

/** Whether the first lines stand on one baseline, or begin at the same height. */
export type Level = 'baseline' | 'top';

/**
 * Stacks beside each other, their first lines level, each with its own distances below. A row goes as far as a page may be cut without cutting a line
 * of any; long stacks are brought level again now and then, so that there is always such a place.
 */
export function sideBySide(stacks: readonly Stack[], level: Level = 'baseline'): readonly Row[] {
  const rows: Row[] = [];
  let rest = stacks;
  while (rest.some(({ lines }) => lines.length > 0)) {
    const taken = rest.map(({ lines }) => linesWithin(lines, LEVEL));
    rows.push(
      ...rowsOf(
        rest.map((stack, at) => ({ ...stack, lines: stack.lines.slice(0, taken[at]) })),
        level,
      ),
    );
    rest = rest.map((stack, at) => ({ ...stack, lines: stack.lines.slice(taken[at]) }));
  }
  return rows;
}

/** Height after which stacks are brought level, pt. */
const LEVEL = 40;

/** How many lines stay within a height, at least one. */
function linesWithin(lines: readonly SetLine[], height: number): number {
  let sum = 0;
  const over = lines.findIndex(({ up, down }) => (sum += up + down) > height);
  return over === -1 ? lines.length : Math.max(1, over);
}

function rowsOf(stacks: readonly Stack[], level: Level): readonly Row[] {
  const firstUp = level === 'top' ? undefined : stacks.reduce((most, { lines }) => Math.max(most, lines[0]?.up ?? 0), 0);
  const spans = stacks.flatMap((stack) => spansOf(stack, firstUp)).sort((a, b) => a.top - b.top);
  const rows: { top: number; bottom: number; spans: Span[] }[] = [];
  for (const span of spans) {
    const open = rows.at(-1);
    if (!open || span.top >= open.bottom - ROUNDING) rows.push({ top: open?.bottom ?? 0, bottom: span.bottom, spans: [span] });
    else {
      open.spans.push(span);
      open.bottom = Math.max(open.bottom, span.bottom);
    }
  }
  return rows.map(({ top, bottom, spans: inside }) => ({
    height: bottom - top,
    texts: inside.map(({ text }) => ({ ...text, baseline: text.baseline - top })),
    rules: [],
  }));
}

/** What adding up heights may leave, pt. */
const ROUNDING = 1e-6;

interface Span {
  readonly top: number;
  readonly bottom: number;
  readonly text: RowText;
}

function spansOf({ lines, column, side }: Stack, firstUp: number | undefined): readonly Span[] {
  let top = firstUp === undefined ? 0 : firstUp - (lines[0]?.up ?? 0);
  return lines.map((line) => {
    const span = { top, bottom: top + line.up + line.down, text: placed({ line, column, side }, top + line.up) };
    top = span.bottom;
    return span;
  });
}
