import type { Box } from '../../geometry/box.js';
import type { SetLine } from '../type/paragraph.js';

/** A line of type at its place, pt from the left edge of the text; `baseline` from the row's top, y down. */
export interface RowText {
  readonly line: SetLine;
  readonly x: number;
  readonly baseline: number;
}

/** A strip of the page that no page break cuts. pt. */
export interface Row {
  readonly height: number;
  readonly texts: readonly RowText[];
  /** Black strokes, from the row's top left corner. */
  readonly rules: readonly Box[];
  /** Only parts what stands above from what stands below: left out below a head and at the top of a page. */
  readonly between?: boolean;
}

/** Rows that belong together. */
export interface Block {
  readonly rows: readonly Row[];
  /** White above, but not at the top of a page. */
  readonly gap: number;
  /** Drawn above the rows of every page that has any, once for neighbours that share it. */
  readonly head?: Row;
  /** On one page where a page is high enough. */
  readonly whole: boolean;
}

/** A row at its place: pt from the top of the text area of its page. */
export interface PlacedRow {
  readonly row: Row;
  readonly y: number;
}

/**
 * Lays blocks out on as many pages as they take, at least one.
 * @param first height of the text area on the first page, pt; `rest` on every other. A row that is higher than either is placed alone, and sticks out
 */
export function flow(blocks: readonly Block[], first: number, rest: number): readonly (readonly PlacedRow[])[] {
  const pages: PlacedRow[][] = [[]];
  let y = 0;
  let head: Row | undefined;
  const page = (): PlacedRow[] => pages.at(-1) ?? [];
  const room = (): number => (pages.length === 1 ? first : rest);
  const empty = (): boolean => page().length === 0;
  const turn = (): void => {
    pages.push([]);
    y = 0;
    head = undefined;
  };
  const put = (row: Row): void => {
    page().push({ row, y });
    y += row.height;
  };
  for (const block of blocks) {
    const headHeight = (): number => (block.head && head !== block.head ? block.head.height : 0);
    const total = block.rows.reduce((sum, { height }) => sum + height, 0);
    const gap = empty() ? 0 : block.gap;
    const [opening] = block.rows;
    if (!opening) continue;
    const least = block.whole && total + (block.head?.height ?? 0) <= rest ? total : opening.height;
    if (!empty() && y + gap + headHeight() + least > room() + ROUNDING) turn();
    else y += gap;
    for (const row of block.rows) {
      if (row.between && (empty() || page().at(-1)?.row === block.head)) continue;
      if (!empty() && y + headHeight() + row.height > room() + ROUNDING) turn();
      if (block.head && head !== block.head) put(block.head);
      head = block.head;
      put(row);
    }
  }
  return pages;
}

/** What adding up heights may leave, pt. */
const ROUNDING = 1e-6;
