import { DAMAGE_WORDS, damageOf, isMojibake, unwrapped } from './damage.js';
import type { Columns } from './find-columns.js';
import type { Findings, Spot } from './findings.js';
import type { OrderField } from './order-map.js';
import type { Row } from './row.js';

/** Fields that a spreadsheet takes for numbers. */
const NUMBERS: readonly OrderField[] = ['order', 'postcode', 'sku', 'tracking', 'together'];

const WORDS: readonly OrderField[] = ['buyer', 'address', 'country', 'description', 'variant', 'gift-message', 'notes', 'state'];

/** Control characters and marks that only steer the direction of type; tabs and line breaks are looked at apart. */
const INVISIBLE = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u009f\u200b\u200e\u200f\u202a-\u202e\u2066-\u2069\ufeff]/g;

/** Line breaks of other programs: a soft one in a cell, the end of a page, of a line and of a paragraph. */
const OTHER_BREAKS = /[\u000b\u000c\u0085\u2028\u2029]/g;

/** One line of it. */
export const oneLine = (text: string): string => text.replaceAll(/\s+/g, ' ').trim();

/** Its lines, none of them empty. */
export const linesOf = (text: string): readonly string[] =>
  text
    .split(/\r\n|\r|\n/)
    .map(oneLine)
    .filter((line) => line !== '');

/** The fields of one row, cleaned of what spreadsheets wrap them in; what a spreadsheet has damaged is told and left out. */
export class RowFields {
  constructor(
    readonly row: Row,
    private readonly columns: Columns,
    private readonly findings: Findings,
  ) {}

  has(field: OrderField): boolean {
    return this.columns[field] !== undefined;
  }

  /** The field as it is written, all of its columns, damage and all: to tell quickly whether two rows say the same. */
  written(field: OrderField): string {
    const columns = this.columns[field] ?? [];
    const [only] = columns;
    if (columns.length === 1 && only !== undefined) {
      const values = this.row.values(only);
      return values.length === 1 ? (values[0] ?? '').trim() : values.join('\n').trim();
    }
    return columns
      .flatMap((column) => this.row.values(column))
      .join('\n')
      .trim();
  }

  /** Where the field stands; of several columns the first that holds something. */
  spot(field: OrderField): Spot {
    const columns = this.columns[field] ?? [];
    const column = columns.find((each) => this.row.values(each).some((text) => text.trim() !== '')) ?? columns[0];
    return column === undefined ? this.row.start : this.row.spot(column);
  }

  /** Everything that the field's columns hold, without what is empty or damaged. */
  all(field: OrderField): readonly string[] {
    const values: string[] = [];
    for (const column of this.columns[field] ?? []) {
      for (const cell of this.row.values(column)) {
        const text = this.cleaned(field, column, cell);
        if (text !== '') values.push(text);
      }
    }
    return values;
  }

  /** The first of them; empty for none. */
  first(field: OrderField): string {
    return this.all(field)[0] ?? '';
  }

  private cleaned(field: OrderField, column: number, cell: string): string {
    if (cell === '') return '';
    const text = unwrapped(cell.replaceAll(OTHER_BREAKS, '\n').replaceAll(INVISIBLE, ''));
    const damage = damageOf(text);
    if (damage && (NUMBERS.includes(field) || damage === 'hashes' || damage === 'error')) {
      this.findings.add(
        {
          code: 'orders/damaged',
          severity: field === 'order' ? 'error' : 'warning',
          message: `${DAMAGE_WORDS[damage]}; ${field === 'order' ? 'the row' : `\`${field}\``} is left out`,
          remedy: 'Export the orders again and use that file without opening and saving it in a spreadsheet.',
        },
        this.row.spot(column),
        field,
      );
      return '';
    }
    if (WORDS.includes(field) && isMojibake(cell)) {
      this.findings.add(
        {
          code: 'orders/mojibake',
          severity: 'warning',
          message: `letters with accents in \`${field}\` have been turned into two or three others each, as in \`Ã©\` for \`é\``,
          remedy: 'Export the orders again as UTF-8; a program has read them in another encoding before they were saved.',
        },
        this.row.spot(column),
        field,
      );
    }
    return text;
  }
}
