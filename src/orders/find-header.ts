import { readRecords, type TableRecord } from './delimited.js';
import type { LineIndex } from './line-index.js';
import { DELIMITERS } from './order-map.js';
import { columnKey } from './plain-word.js';

/** A title, the shop's name and a date range may stand above the header, no more. */
const MOST_ABOVE = 30;

export interface Header {
  readonly delimiter: string;
  readonly record: TableRecord;
  /** How many of the names looked for it has. */
  readonly found: number;
}

/** Some spreadsheets state the delimiter in a line of its own above the header: `sep=;`. */
function statedLine(bytes: Buffer): { readonly delimiter: string; readonly length: number } | undefined {
  const match = /^"?sep=(.)"?(?:\r\n|\n|\r)/.exec(bytes.toString('utf8', 0, 12));
  return match?.[1] === undefined ? undefined : { delimiter: match[1], length: Buffer.byteLength(match[0]) };
}

/** The header among the first records: the first of those that have most of the names. */
function headerBy(delimiter: string, records: readonly TableRecord[], wanted: ReadonlySet<string>): Header | undefined {
  let best: Header | undefined;
  for (const record of records) {
    const found = new Set(record.cells.map(columnKey).filter((key) => wanted.has(key))).size;
    if (!best || found > best.found) best = { delimiter, record, found };
  }
  return best;
}

/** How many cells most of the records have, and how many of the records: what a table has in common. */
function evenness(records: readonly TableRecord[]): { readonly width: number; readonly share: number } {
  const counts = new Map<number, number>();
  for (const { cells } of records) counts.set(cells.length, (counts.get(cells.length) ?? 0) + 1);
  const [width = 0, count = 0] = [...counts].sort((a, b) => b[1] - a[1])[0] ?? [];
  return { width, share: records.length === 0 ? 0 : count / records.length };
}

/** Without a name to go by: the delimiter that cuts the first records into the most cells, all the same number; the header is the first as wide. */
function headerByShape(delimiters: readonly string[], heads: readonly (readonly TableRecord[])[]): Header | undefined {
  let best: { readonly header: Header; readonly score: number } | undefined;
  for (const [index, delimiter] of delimiters.entries()) {
    const records = heads[index] ?? [];
    const { width, share } = evenness(records);
    const record = records.find(({ cells }) => cells.length === width);
    const score = width <= 1 ? 0 : share * share * Math.min(width, 12);
    if (record && (!best || score > best.score)) best = { header: { delimiter, record, found: 0 }, score };
  }
  return best?.header;
}

/**
 * Finds the header and the delimiter by the names that are looked for, and without any of them by the shape of the table. Undefined only for
 * a text without records.
 * @param stated the delimiter, where it is known
 */
export function findHeader(bytes: Buffer, lines: LineIndex, names: readonly string[], stated: string | undefined): Header | undefined {
  const own = statedLine(bytes);
  const from = own?.length ?? 0;
  const delimiter = stated ?? own?.delimiter;
  const delimiters = delimiter === undefined ? DELIMITERS : [delimiter];
  const heads = delimiters.map((each) => readRecords(bytes, each, lines, { from, most: MOST_ABOVE + 1 }));
  const wanted = new Set(names.map(columnKey));
  let best: Header | undefined;
  for (const [index, each] of delimiters.entries()) {
    const header = headerBy(each, heads[index] ?? [], wanted);
    if (header && header.found > (best?.found ?? 0)) best = header;
  }
  return best ?? headerByShape(delimiters, heads);
}
