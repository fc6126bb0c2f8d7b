import type { Columns } from './find-columns.js';
import type { Findings } from './findings.js';
import { unwrapped } from './damage.js';
import type { Row, OrderTable } from './row.js';

/** Shorter numbers than this (digits) vary in length by themselves. */
const SHORTEST = 8;

/** So many numbers of one length are a pattern. */
const PATTERN = 3;

/**
 * Names tracking numbers that are one digit short of all others of their column: a spreadsheet drops a 0 in front. It is only named: the
 * number stays as it is, and matches no label that says more. A check digit can't tell, as a 0 in front adds nothing to its sum.
 */
export function tellShortNumbers(table: OrderTable, columns: Columns, findings: Findings): void {
  for (const column of columns.tracking ?? []) {
    const byLength = new Map<number, Row[]>();
    let others = 0;
    for (const row of table.rows) {
      for (const value of row.values(column)) {
        const text = unwrapped(value).replaceAll(/\s/g, '');
        if (text === '') continue;
        if (!/^\d+$/.test(text)) others++;
        else {
          const same = byLength.get(text.length) ?? [];
          same.push(row);
          byLength.set(text.length, same);
        }
      }
    }
    const [usual, short, ...more] = [...byLength].sort((a, b) => b[0] - a[0]);
    if (!usual || !short || more.length > 0 || others > 0) continue;
    const [[length, whole], [shorter, rows]] = [usual, short];
    if (shorter !== length - 1 || shorter < SHORTEST || whole.length < Math.max(PATTERN, 2 * rows.length)) continue;
    for (const row of rows) {
      const message = `the tracking number has ${shorter} digits, the ${whole.length} others of this column have ${length}: perhaps a 0 in front is lost`;
      const remedy = 'Export the orders again and use that file without opening and saving it in a spreadsheet.';
      findings.add({ code: 'orders/lost-zeros', severity: 'note', message, remedy }, row.spot(column), 'tracking');
    }
  }
}
