import { nearest } from '../diagnostics/nearest.js';
import type { Findings } from './findings.js';
import { JOINED_FIELDS, ORDER_FIELDS, type OrderField, type OrderMap } from './order-map.js';
import { shown } from './plain-word.js';
import type { OrderTable } from './row.js';

/** Indexes of the columns of each field in a table. */
export type Columns = Readonly<Partial<Record<OrderField, readonly number[]>>>;

/** Names of columns in a remedy. */
const MOST_NAMED = 12;

/**
 * The columns that a map names in a table. What is missing is in the findings; undefined where orders have no number then: such a file is no order
 * file of this channel, and its other columns are not asked for.
 */
export function findColumns(table: OrderTable, map: OrderMap, findings: Findings): Columns | undefined {
  const columns: Partial<Record<OrderField, readonly number[]>> = {};
  const hasNumber = map.columns.order?.some((name) => table.column(name) !== undefined) ?? false;
  for (const field of hasNumber ? ORDER_FIELDS : (['order'] as const)) {
    const names = map.columns[field];
    if (!names) continue;
    const found = names.map((name) => table.column(name));
    const there = found.filter((index) => index !== undefined);
    if (there.length > 0) columns[field] = there;
    const missing = names.filter((_name, index) => found[index] === undefined);
    if (there.length === 0 || JOINED_FIELDS.includes(field))
      for (const name of missing) tellMissing(name, field, names.length, table, findings);
  }
  return columns.order ? columns : undefined;
}

function tellMissing(name: string, field: OrderField, alternatives: number, table: OrderTable, findings: Findings): void {
  const near = nearest(name, table.names);
  const named = table.names.filter((each) => each !== '').slice(0, MOST_NAMED);
  const more = table.names.length > named.length ? ', …' : '';
  const has = named.length === 0 ? 'The file names no columns' : `The file has ${named.map(shown).join(', ')}${more}`;
  const remedy =
    near === undefined
      ? `${has}: write the one for \`${field}\` below \`orders: columns:\` in the recipe${field === 'order' ? '' : ', or take the key out'}.`
      : `Write ${shown(near)} for \`${field}\` below \`orders: columns:\` in the recipe.`;
  const without = field === 'order' ? ', so no order can be read' : alternatives > 1 ? '' : `, so \`${field}\` stays empty`;
  findings.add(
    {
      code: 'orders/missing-column',
      severity: field === 'order' ? 'error' : 'warning',
      message: `the file has no column ${shown(name)}${without}`,
      remedy,
    },
    table.header,
    name,
  );
}
