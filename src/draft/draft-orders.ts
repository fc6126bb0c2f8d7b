import { recipeFromText } from '../config/recipe-from-text.js';
import type { Diagnostic } from '../diagnostics/diagnostic.js';
import { hasErrors } from '../diagnostics/collect.js';
import { decodeText } from '../orders/decode-text.js';
import { delimitedTable } from '../orders/delimited-table.js';
import { Findings } from '../orders/findings.js';
import { jsonObjects, tellNoList } from '../orders/json-list.js';
import { jsonTable } from '../orders/json-table.js';
import type { OrderMap } from '../orders/order-map.js';
import { isJson, readOrders, type OrdersRead } from '../orders/read-orders.js';
import type { OrderTable } from '../orders/row.js';
import { readDate } from '../orders/dates.js';
import { chooseColumns, type Chosen, type SampleColumn } from './choose-columns.js';
import { dateOrderOf } from './date-order.js';
import { NAMES_OF_FIELDS } from './header-words.js';
import { ordersBlock, type Proposal } from './orders-block.js';
import { unknownStates } from './value-looks.js';

export interface OrdersDrafted {
  /** The `orders:` lines for a recipe; undefined where none can be proposed. They name columns, never what is in them but words of a status and dates. */
  readonly text: string | undefined;
  /** What the file itself has wrong, and why there is no text. */
  readonly diagnostics: readonly Diagnostic[];
}

/** Rows that are looked at to tell what a column holds. */
const MOST_ROWS = 500;

interface Opened {
  readonly table: OrderTable;
  readonly list: string;
}

/** The table with every column that it has, whatever its kind. */
function opened(text: string, findings: Findings): Opened | undefined {
  if (!isJson(text)) {
    const table = delimitedTable(text, [...NAMES_OF_FIELDS.values()].flat(), undefined, findings);
    return table && { table, list: '' };
  }
  // What is broken is told by the second reading.
  const { lists } = jsonObjects(text, '', new Findings(findings.file));
  const [list] = lists;
  if (list === undefined) {
    tellNoList('', [], findings);
    return undefined;
  }
  const names = jsonTable(text, list, [], new Set(), new Findings(findings.file))?.names ?? [];
  const table = jsonTable(text, list, names, new Set(), findings);
  return table && { table, list };
}

/** What a file without a header has in its first row. */
const isValue = (cell: string): boolean =>
  /^\S+@\S+\.\S+$/.test(cell) || /^\d{3,}$/.test(cell) || readDate(cell, undefined).kind === 'date';

function columnsOf(table: OrderTable): readonly SampleColumn[] {
  const sample = table.rows.slice(0, MOST_ROWS);
  const named = [...new Set(table.names)].filter((name) => name !== '' && !/\p{C}/u.test(name));
  return named.flatMap((name) => {
    const index = table.column(name);
    return index === undefined ? [] : [{ name, values: sample.map((row) => row.values(index).join('\n')) }];
  });
}

/**
 * Proposes how an order file is read, from the names of its columns and the looks of their values, and reads the file by it: what that gives
 * is told in its comment.
 * @param name of the file, as messages show it
 */
export function draftOrders(bytes: Uint8Array, name: string): OrdersDrafted {
  const findings = new Findings(name);
  const none = (): OrdersDrafted => ({ text: undefined, diagnostics: findings.list() });
  const text = decodeText(Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength), undefined, findings);
  const found = text === undefined ? undefined : opened(text, findings);
  if (!found) return none();
  const { table, list } = found;
  if (table.names.some(isValue)) {
    const message = 'no draft: the first row holds values, not the names of columns';
    findings.add({ code: 'draft/no-header', severity: 'error', message, remedy: 'Export the orders with a header row.' }, table.header);
    return none();
  }
  const columns = columnsOf(table);
  const chosen = chooseColumns(columns, table.objects);
  if (!chosen.has('order')) {
    const message = 'no draft: no column looks like the number of the order';
    const remedy =
      'Name a file of orders; if it is one, write `orders: { columns: { order: NAME OF THE COLUMN } }` into the recipe by hand.';
    findings.add({ code: 'draft/no-order-column', severity: 'error', message, remedy }, table.header);
    return none();
  }
  const proposal = proposalFor(name, list, columns, chosen);
  const read = readWith(ordersBlock(proposal, []), bytes, name);
  return { text: ordersBlock(proposal, [summaryOf(read)]), diagnostics: read.diagnostics };
}

function proposalFor(file: string, list: string, columns: readonly SampleColumn[], chosen: ReadonlyMap<string, Chosen>): Proposal {
  const valuesOf = (field: string): readonly string[] =>
    columns.filter(({ name }) => chosen.get(field)?.columns.includes(name)).flatMap(({ values }) => values);
  const used = new Set([...chosen.values()].flatMap((each) => each.columns));
  return {
    file,
    list,
    columns: chosen as Proposal['columns'],
    dateOrder: dateOrderOf([...valuesOf('ordered-on'), ...valuesOf('ship-by')]),
    unknownStates: [...new Set([...unknownStates(valuesOf('state')), ...unknownStates(valuesOf('fulfilment'))])],
    unused: columns.map(({ name }) => name).filter((name) => !used.has(name)),
  };
}

/** Steps that make a recipe of the lines, so that they are checked as they will be. */
const STEPS = 'about: Drafted.\nsteps: [split-pages, locate-label, verify]\n';

function readWith(block: string, bytes: Uint8Array, name: string): OrdersRead {
  const map: OrderMap | undefined = recipeFromText(`${STEPS}${block}`, 'drafted.yaml').value?.orders;
  if (!map) throw new Error('the drafted lines are no valid recipe');
  return readOrders(bytes, name, map, 0);
}

const counted = (count: number, one: string): string => `${count} ${one}${count === 1 ? '' : 's'}`;

function summaryOf({ orders, diagnostics }: OrdersRead): string {
  const items = orders.reduce((sum, order) => sum + order.items.length, 0);
  const trouble = diagnostics.filter(({ severity }) => severity !== 'note').length;
  const said =
    trouble === 0
      ? 'nothing to complain of'
      : `${counted(trouble, 'remark')}, ${hasErrors(diagnostics) ? 'with errors among them' : 'no errors'}`;
  return `Read with it: ${counted(orders.length, 'order')}, ${counted(items, 'item')}, ${said}.`;
}
