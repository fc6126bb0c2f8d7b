import { decodeText } from './decode-text.js';
import { delimitedTable } from './delimited-table.js';
import type { Diagnostic } from '../diagnostics/diagnostic.js';
import { findColumns, type Columns } from './find-columns.js';
import { Findings } from './findings.js';
import { jsonTable } from './json-table.js';
import { tellShortNumbers } from './short-numbers.js';
import type { Order } from './order.js';
import { OrderDraft } from './order-draft.js';
import { ITEM_FIELDS, ORDER_FIELDS, type OrderMap } from './order-map.js';
import { shown } from './plain-word.js';
import { oneLine, RowFields } from './row-fields.js';
import type { OrderTable, Row } from './row.js';

export interface OrdersRead {
  /** In the order in which they begin in the file. */
  readonly orders: readonly Order[];
  /** By line and column. */
  readonly diagnostics: readonly Diagnostic[];
}

/** Whether a text is JSON rather than a table: by what it begins with. */
export const isJson = (text: string): boolean => /^\s*[[{]/.test(text);

/** The table in a text, whatever its kind; undefined where there is none. */
export function tableOf(text: string, map: OrderMap, findings: Findings): OrderTable | undefined {
  const names = [...new Set(ORDER_FIELDS.flatMap((field) => map.columns[field] ?? []))];
  if (!isJson(text)) return delimitedTable(text, names, map.delimiter, findings);
  return jsonTable(text, map.list, names, new Set(ITEM_FIELDS.flatMap((field) => map.columns[field] ?? [])), findings);
}

/**
 * Reads an order file: CSV or TSV with one row for each order or each item, or a JSON list. What is wrong with a row or value is a diagnostic
 * with line and column, and costs that row or value only. Never throws for what a file holds.
 * @param file name as messages show it
 * @param channel index in the pipeline, from 0
 */
export function readOrders(bytes: Uint8Array, file: string, map: OrderMap, channel: number): OrdersRead {
  const findings = new Findings(file);
  const text = decodeText(Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength), map.encoding, findings);
  const table = text === undefined ? undefined : tableOf(text, map, findings);
  const columns = table && findColumns(table, map, findings);
  const drafts = table && columns ? joinRows(table, columns, map, findings) : [];
  if (table && columns) tellShortNumbers(table, columns, findings);
  if (table && columns && table.rows.length === 0 && findings.list().length === 0) tellNoRows(table, findings);
  const orders = drafts.map((draft) => draft.finish(channel));
  return { orders, diagnostics: findings.list() };
}

/** One draft for each order number, in the order of their first rows. */
function joinRows(table: OrderTable, columns: Columns, map: OrderMap, findings: Findings): readonly OrderDraft[] {
  const drafts = new Map<string, OrderDraft>();
  const apart = new Set<OrderDraft>();
  // `before`: how many rows the order had when those that are read now began, which stand together.
  let last: { readonly draft: OrderDraft; readonly row: Row; readonly before: number } | undefined;
  const goesOn = (draft: OrderDraft, row: Row): boolean => draft === last?.draft && !(table.objects && row.start !== last.row.start);
  for (const row of table.rows) {
    const fields = new RowFields(row, columns, findings);
    const number = oneLine(fields.first('order'));
    if (number === '') {
      tellNoNumber(fields, findings);
      last = undefined;
      continue;
    }
    let draft = drafts.get(number);
    const before = draft && last && goesOn(draft, row) ? last.before : (draft?.rowCount ?? 0);
    if (!draft) {
      draft = new OrderDraft(number, map, findings);
      drafts.set(number, draft);
    }
    if (before > 0 && !apart.has(draft)) tellApart(draft, fields, findings);
    if (before > 0) apart.add(draft);
    // The same export twice in one file: its items are not there twice.
    if (!draft.hadRow(row, before)) draft.add(fields);
    last = { draft, row, before };
  }
  for (const draft of drafts.values()) if (table.badCells.has(draft.number)) draft.lacksARow();
  return [...drafts.values()];
}

function tellNoRows({ header }: OrderTable, findings: Findings): void {
  const remedy = 'Nothing, if the channel has no orders today; otherwise export them again.';
  findings.add({ code: 'orders/no-rows', severity: 'note', message: 'the file holds no orders', remedy }, header);
}

function tellNoNumber(fields: RowFields, findings: Findings): void {
  // A damaged number is told already.
  if (fields.written('order') !== '') return;
  const message = 'the row has no order number; it is left out';
  const remedy = 'Write the number of the order into each row, or take the row out if it is a sum or a remark.';
  findings.add({ code: 'orders/no-number', severity: 'error', message, remedy }, fields.row.start);
}

function tellApart(draft: OrderDraft, fields: RowFields, findings: Findings): void {
  findings.add(
    {
      code: 'orders/duplicate-number',
      severity: 'warning',
      message: `order ${shown(draft.number)} stands here and in line ${draft.firstLine}; rows that are the same count once, other items are put together`,
      remedy: 'Check that the file does not hold two exports, or two orders with one number.',
    },
    fields.spot('order'),
    'order',
  );
}
