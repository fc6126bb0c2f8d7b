import type { Spot } from './findings.js';

/** One row of a table, or one item of an object in a list, as the file has it. */
export interface Row {
  /** What a column holds, by its index in the table: nothing, one value, or several where a list lies on a path of keys. */
  values(column: number): readonly string[];
  /** Where the value of a column stands. */
  spot(column: number): Spot;
  /** Where the row begins. */
  readonly start: Spot;
  /** The whole row, to tell whether two say the same. */
  readonly whole: string;
}

/** An order file, whatever its kind. Bad rows are in the findings already. */
export interface OrderTable {
  /** Index of a column by its name, as a map writes it; undefined where the file has none. */
  column(name: string): number | undefined;
  /** Names of all columns, as the file writes them: for messages. */
  readonly names: readonly string[];
  /** Where a missing column would be: at the header. */
  readonly header: Spot;
  readonly rows: readonly Row[];
  /** Whether the file has an object of its own for each order; else rows of one order stand below each other. */
  readonly objects: boolean;
  /** The cells of all rows that can't be used: an order whose number is among them lacks a row. */
  readonly badCells: ReadonlySet<string>;
}
