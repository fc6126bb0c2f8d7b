import { CsvError, parse, type Options } from 'csv-parse/sync';
import type { LineIndex } from './line-index.js';

/** One record: its cells, and its bytes in the text with the line break that ends it. */
export interface TableRecord {
  readonly cells: readonly string[];
  readonly start: number;
  readonly end: number;
  /** Set where its quotes are out of place: the cells are those of its line alone, the marks taken for what they look like. */
  readonly mended?: true;
}

/** A record longer than this (bytes) has lost a closing quote. */
const LONGEST_RECORD = 64 * 1024;

/** After so many records with wrong quotes, each line is a record in this file: looking for the ends of quotes would take too long. */
const MOST_MENDED = 500;

const OPTIONS = { relax_column_count: true, relax_quotes: true, record_delimiter: ['\r\n', '\n', '\r'] };

/** Thrown out of the parser to have it begin again behind a line. */
class BeginAgain extends Error {}

const parseAlone = (bytes: Buffer, options: Options): readonly string[] | undefined => {
  try {
    const [cells] = parse(bytes, options);
    return cells;
  } catch {
    return undefined;
  }
};

/** What an opening quote without its end, or an end without its opening, leaves at a cell. */
const withoutStray = (cell: string): string => cell.replace(/^\s*"/, '').replace(/"\s*$/, '');

/** The cells of a line whose quotes are out of place: with them, where no cell begins with one of those, else without any. */
function mendedCells(line: Buffer, delimiter: string): { readonly cells: readonly string[]; readonly mended: boolean } {
  const quoted = parseAlone(line, { ...OPTIONS, delimiter });
  if (quoted && !quoted.some(beginsWithQuote)) return { cells: quoted, mended: false };
  return { cells: (parseAlone(line, { ...OPTIONS, delimiter, quote: false }) ?? []).map(withoutStray), mended: true };
}

const beginsWithQuote = (cell: string): boolean => cell.startsWith('"');

/**
 * Whether a quote was closed by another cell's: the parser then hands on a cell that begins with a quote. A cell that is meant to begin with one
 * passes by the rules.
 */
const hasOpenQuote = (bytes: Buffer, { cells, start, end }: TableRecord, delimiter: string): boolean =>
  cells.some(beginsWithQuote) && !parseAlone(bytes.subarray(start, end), { ...OPTIONS, delimiter, relax_quotes: false });

/**
 * Whether a record that runs over several lines has swallowed others: it has not the cells that it should have, and one of its lines has
 * them by itself.
 */
function hasSwallowed(bytes: Buffer, { cells, start, end }: TableRecord, delimiter: string, width: number, lines: LineIndex): boolean {
  if (cells.length === width || lines.nextLine(start) >= end) return false;
  for (let at = start; at < end; at = lines.nextLine(at)) {
    if (mendedCells(bytes.subarray(at, lines.nextLine(at)), delimiter).cells.length === width) return true;
  }
  return false;
}

/**
 * The records of delimited text (RFC 4180; any line break, also mixed). A quote out of place costs its own line at most: reading goes on
 * with the next line. Empty lines give no record.
 * @param from the byte where the first record begins
 * @param width cells of a whole record, where that is known
 * @param most records wanted
 */
export function readRecords(
  bytes: Buffer,
  delimiter: string,
  lines: LineIndex,
  { from = 0, width, most = Infinity }: { readonly from?: number; readonly width?: number; readonly most?: number } = {},
): readonly TableRecord[] {
  const records: TableRecord[] = [];
  let start = from;
  const take = (record: TableRecord): void => {
    start = record.end;
    const isEmpty = record.cells.every((cell) => cell.trim() === '') && record.cells.length <= 1;
    if (!isEmpty) records.push(record);
  };
  const takeLine = (): void => {
    const end = lines.nextLine(start);
    const line = mendedCells(bytes.subarray(start, end), delimiter);
    take({ cells: line.cells, start, end, ...(line.mended ? { mended: true } : {}) });
  };
  const isWrong = (record: TableRecord): boolean =>
    hasOpenQuote(bytes, record, delimiter) || (width !== undefined && hasSwallowed(bytes, record, delimiter, width, lines));

  for (let again = 0; again < MOST_MENDED && start < bytes.length && records.length < most; again++) {
    const origin = start;
    try {
      parse(bytes.subarray(origin), {
        ...OPTIONS,
        max_record_size: LONGEST_RECORD,
        delimiter,
        on_record: (cells: string[], { bytes: read }: { readonly bytes: number }) => {
          const record = { cells, start, end: origin + read };
          if (isWrong(record)) throw new BeginAgain();
          take(record);
          if (records.length >= most) throw new BeginAgain();
          return null;
        },
      });
      return records;
    } catch (error) {
      if (!(error instanceof CsvError || error instanceof BeginAgain)) throw error;
      if (records.length < most) takeLine();
    }
  }
  while (start < bytes.length && records.length < most) takeLine();
  return records;
}

/** The byte where the cell of a record begins; `index` counts from 0. */
export function cellStart(bytes: Buffer, { start, end, mended }: TableRecord, index: number, delimiter: string): number {
  const text = bytes.toString('utf8', start, end);
  let at = 0;
  for (let cell = 0; cell < index && at < text.length; cell++) {
    if (text[at] === '"' && mended !== true) {
      at++;
      while (at < text.length && (text[at] !== '"' || text[at + 1] === '"')) at += text[at] === '"' ? 2 : 1;
    }
    const next = text.indexOf(delimiter, at);
    if (next < 0) return start + Buffer.byteLength(text.slice(0, at));
    at = next + 1;
  }
  return start + Buffer.byteLength(text.slice(0, at));
}
