import { contains, union, type Box } from '../geometry/box.js';
import { placeOnLine, type PlaceOnLine } from '../reading/place-on-line.js';
import type { Phrase } from '../reading/word-lines.js';

/** Rows of a table of items: how many of each, then what it is. */
export interface ItemRows {
  readonly count: number;
  /** Around all of their writing, pt. */
  readonly box: Box;
}

/** "2", "2 x", "x 2": how many of an item; no list of items has a thousand of one. */
const QUANTITY = /^(?:[x×]\s?)?\d{1,3}(?:\s?[x×])?$/i;
/** "54.75", "1 200,00 €", "CHF 12.-": what an item costs or weighs. */
const AMOUNT = /^[\p{Sc}\p{L}]{0,3}\s?\d[\d\s.,'’]*(?:[.,]\d{2}|[.,]-)\s?[\p{Sc}\p{L}]{0,3}$/u;
/** Cells of one column begin or end within this much of each other, pt. */
const COLUMN = 2.5;
/** Cells of one row stand on one line to this share of their type. */
const ROW = 0.4;
/** Rows of one table follow each other within this many times their type. */
const NEXT_ROW = 6;
const LEAST_ROWS = 2;

/**
 * The table of items in some writing, by its shape and in any language: rows that begin with a small number, the numbers in one column, the names of the
 * items in another. A numbered list is none: its numbers count up from one, and nothing has a price or a quantity.
 */
export function itemRows(phrases: readonly Phrase[]): ItemRows | undefined {
  const tables = ([0, 90, 180, 270] as const).flatMap((turn) => tablesOf(phrases.filter((phrase) => phrase.turn === turn)));
  return tables.sort((a, b) => b.count - a.count)[0];
}

interface Cell extends PlaceOnLine {
  readonly text: string;
  readonly box: Box;
  readonly size: number;
}

interface Row {
  readonly quantity: Cell;
  readonly item: Cell;
  readonly others: readonly Cell[];
}

function tablesOf(phrases: readonly Phrase[]): readonly ItemRows[] {
  const cells = phrases.map(cellOf).sort((a, b) => a.middle - b.middle || a.from - b.from);
  const rows = cells.flatMap((quantity): readonly Row[] => {
    if (!QUANTITY.test(quantity.text)) return [];
    const [item, ...others] = cells
      .filter((cell) => cell.from >= quantity.to && Math.abs(cell.middle - quantity.middle) < ROW * Math.min(cell.size, quantity.size))
      .sort((a, b) => a.from - b.from);
    return item && /\p{L}{2}/u.test(item.text) ? [{ quantity, item, others }] : [];
  });
  const tables: Row[][] = [];
  for (const row of rows) {
    const table = tables.find((open) => open.every((other) => isOfTable(row, other)) && isNext(open.at(-1), row));
    if (table) table.push(row);
    else tables.push([row]);
  }
  return tables.flatMap((table): readonly ItemRows[] => {
    const box = union(table.flatMap(({ quantity, item, others }) => [quantity, item, ...others].map((cell) => cell.box)));
    return box && table.length >= LEAST_ROWS && !isNumbered(table) ? [{ count: table.length, box }] : [];
  });
}

const isOfTable = (a: Row, b: Row): boolean =>
  Math.abs(a.item.from - b.item.from) < COLUMN &&
  (Math.abs(a.quantity.from - b.quantity.from) < COLUMN || Math.abs(a.quantity.to - b.quantity.to) < COLUMN);

const isNext = (above: Row | undefined, row: Row): boolean =>
  above !== undefined && row.quantity.middle - above.quantity.middle < NEXT_ROW * row.quantity.size;

const isNumbered = (table: readonly Row[]): boolean =>
  table.every(({ quantity }, index) => Number.parseInt(quantity.text, 10) === index + 1) &&
  !table.every(({ others }) => others.some(({ text }) => AMOUNT.test(text) || QUANTITY.test(text)));

function cellOf({ text, box, turn, fontSize }: Phrase): Cell {
  return { text, box, size: fontSize, ...placeOnLine(box, turn) };
}

/** Whether rows of items stand in a box. */
export const hasItems = (box: Box, phrases: readonly Phrase[]): boolean =>
  itemRows(phrases.filter((phrase) => contains(box, phrase.box, 2))) !== undefined;

/** "2 x Bowl, tenmoku" in one piece. */
const IN_A_LINE = /^(?:\d{1,3}\s?[x×]|[x×]\s?\d{1,3})\s+\p{L}{2}/iu;

/** Whether lines of items stand in a box that are no table: two are a list. */
export const listsItems = (box: Box, phrases: readonly Phrase[]): boolean =>
  phrases.filter((phrase) => contains(box, phrase.box, 2) && IN_A_LINE.test(phrase.text)).length >= 2;
