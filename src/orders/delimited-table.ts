import { cellStart, readRecords, type TableRecord } from './delimited.js';
import { findHeader } from './find-header.js';
import { START, type Findings, type Spot } from './findings.js';
import { LineIndex } from './line-index.js';
import { columnKey, shown } from './plain-word.js';
import type { OrderTable, Row } from './row.js';

class DelimitedRow implements Row {
  constructor(
    private readonly record: TableRecord,
    private readonly around: { readonly bytes: Buffer; readonly lines: LineIndex; readonly delimiter: string },
  ) {}

  values(column: number): readonly string[] {
    const cell = this.record.cells[column];
    return cell === undefined ? [] : [cell];
  }

  spot(column: number): Spot {
    const { bytes, lines, delimiter } = this.around;
    return lines.spot(cellStart(bytes, this.record, column, delimiter));
  }

  get start(): Spot {
    return { line: this.around.lines.line(this.record.start), col: 1 };
  }

  get whole(): string {
    return this.record.cells.join('\u0000');
  }
}

/** Cells without the empty ones behind the last column, which some programs write. */
function trimmed(cells: readonly string[], width: number): readonly string[] {
  let length = cells.length;
  while (length > width && (cells[length - 1] ?? '').trim() === '') length--;
  return length === cells.length ? cells : cells.slice(0, length);
}

/**
 * A table of delimited text (CSV, TSV). Undefined for one without a header.
 * @param names of the columns that are looked for; they tell header and delimiter
 */
export function delimitedTable(
  text: string,
  names: readonly string[],
  stated: string | undefined,
  findings: Findings,
): OrderTable | undefined {
  const bytes = Buffer.from(text);
  const lines = new LineIndex(bytes);
  const header = findHeader(bytes, lines, names, stated);
  if (!header) {
    const remedy = 'Export the orders again, or take the file away.';
    findings.add({ code: 'orders/empty', severity: 'error', message: 'the file has no row with anything in it', remedy }, START);
    return undefined;
  }
  const { delimiter, record } = header;
  const columns = trimmed(record.cells, 1);
  const around = { bytes, lines, delimiter };
  const spotOf = (each: TableRecord, index: number): Spot => lines.spot(cellStart(bytes, each, index, delimiter));

  const byName = new Map<string, number>();
  const twice = new Map<string, number>();
  for (const [index, name] of columns.entries()) {
    const key = columnKey(name);
    if (!byName.has(key)) byName.set(key, index);
    else if (key !== '' && !twice.has(key)) twice.set(key, index);
  }

  const rows: Row[] = [];
  const badCells = new Set<string>();
  for (const each of readRecords(bytes, delimiter, lines, { from: record.end, width: columns.length })) {
    const cells = trimmed(each.cells, columns.length);
    if (cells.every((cell) => cell.trim() === '')) continue;
    if (cells.length === columns.length) {
      if (each.mended) tellQuotes(spotOf(each, 0), true);
      rows.push(new DelimitedRow(cells === each.cells ? each : { ...each, cells }, around));
      continue;
    }
    for (const cell of cells) badCells.add(cell.trim());
    if (each.mended) tellQuotes(spotOf(each, 0), false);
    else tellCount(spotOf(each, Math.min(cells.length, columns.length) - (cells.length < columns.length ? 1 : 0)), cells.length);
  }
  return {
    column: (name) => {
      const key = columnKey(name);
      const second = twice.get(key);
      if (second !== undefined) {
        const message = `two columns are named ${shown(name)}; the first counts`;
        const remedy = 'Export the orders without the second one, or give it a name of its own.';
        findings.add({ code: 'orders/duplicate-column', severity: 'warning', message, remedy }, spotOf(record, second), key);
      }
      return byName.get(key);
    },
    names: columns.map((name) => name.trim()),
    header: { line: lines.line(record.start), col: 1 },
    rows,
    objects: false,
    badCells,
  };

  function tellQuotes(spot: Spot, read: boolean): void {
    const what = 'a quotation mark in this row has no other one, or stands inside a cell';
    findings.add(
      {
        code: 'orders/quotes',
        severity: read ? 'warning' : 'error',
        message: read ? `${what}; the row is read as if it had none` : `${what}, so its cells can't be told; the row is left out`,
        remedy: 'Write a quotation mark inside a cell twice, and one at each end of the cell; or export the orders again.',
      },
      spot,
    );
  }

  function tellCount(spot: Spot, count: number): void {
    const message = `the row has ${count} ${count === 1 ? 'cell' : 'cells'}, the header has ${columns.length}; the row is left out`;
    const remedy =
      count < columns.length
        ? 'Export the orders again; put a text that holds a line break between quotation marks.'
        : 'Put a text that holds the delimiter between quotation marks.';
    findings.add({ code: 'orders/cell-count', severity: 'error', message, remedy }, spot);
  }
}
