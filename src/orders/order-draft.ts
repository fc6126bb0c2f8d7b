import type { Finding, Findings } from './findings.js';
import { hasLostZeros } from './damage.js';
import { fold } from './fold.js';
import type { Order, OrderItem, OrderState } from './order.js';
import type { OrderMap } from './order-map.js';
import { MOST, SINGLE_FIELDS, singleValue, wholeNumber, type SingleField } from './order-values.js';
import { shown } from './plain-word.js';
import { linesOf, oneLine, type RowFields } from './row-fields.js';
import type { Row } from './row.js';
import { mostFinal } from './state-words.js';

/** Several numbers in one cell: blanks belong to a number, these don't. */
const BETWEEN_NUMBERS = /[,;|\n\r]+/;

/** Who it goes to: rows that differ in this may be two orders of one number. */
const ADDRESSEE: ReadonlySet<SingleField> = new Set(['buyer', 'address', 'postcode', 'country']);

/** One order while its rows come in. */
export class OrderDraft {
  private readonly written = new Map<SingleField, string>();
  private readonly values = new Map<SingleField, string>();
  private readonly contradicted = new Set<SingleField>();
  private readonly items: OrderItem[] = [];
  private readonly tracking = new Set<string>();
  private readonly together = new Set<string>();
  private readonly notes = new Set<string>();
  /** How many rows were there before each. */
  private readonly rows = new Map<string, number>();
  rowCount = 0;
  /** Lines of rows that name another addressee. */
  private readonly differing = new Set<number>();
  private incomplete = false;
  private first: RowFields | undefined;

  constructor(
    readonly number: string,
    private readonly map: OrderMap,
    private readonly findings: Findings,
  ) {}

  get firstLine(): number {
    return this.first?.row.start.line ?? 1;
  }

  /** Whether a row like this is among its first `count`. */
  hadRow(row: Row, count: number): boolean {
    return (this.rows.get(row.whole) ?? count) < count;
  }

  lacksARow(): void {
    this.incomplete = true;
  }

  add(fields: RowFields): void {
    this.first ??= fields;
    if (!this.rows.has(fields.row.whole)) this.rows.set(fields.row.whole, this.rowCount);
    this.rowCount++;
    for (const field of SINGLE_FIELDS) if (fields.has(field)) this.addSingle(field, fields);
    for (const each of fields.all('tracking')) {
      for (const number of each.split(BETWEEN_NUMBERS)) {
        const text = number.replaceAll(/\s/g, '');
        if (text !== '') this.tracking.add(text);
      }
    }
    for (const each of fields.all('together')) {
      for (const number of each.split(BETWEEN_NUMBERS)) {
        const text = oneLine(number);
        if (text !== '' && text !== this.number) this.together.add(text);
      }
    }
    const notes = fields.all('notes').flatMap(linesOf).join('\n');
    if (notes !== '') this.notes.add(notes);
    this.addItem(fields);
  }

  private addSingle(field: SingleField, fields: RowFields): void {
    const written = fields.written(field);
    const before = this.written.get(field);
    if (written === '' || written === before) return;
    const value = singleValue(field, fields, this.map, this.findings);
    if (before === undefined) {
      this.written.set(field, written);
      this.values.set(field, value);
    } else if (value !== '' && this.values.get(field) === '') this.values.set(field, value);
    else if (value !== '' && !this.isKnown(field, value)) this.contradict(field, value, fields);
  }

  /** An addressee may be written in capitals or without accents. */
  private isKnown(field: SingleField, value: string): boolean {
    const known = this.values.get(field) ?? '';
    return value === known || (ADDRESSEE.has(field) && fold(value) === fold(known));
  }

  private contradict(field: SingleField, value: string, fields: RowFields): void {
    const isFirst = !this.contradicted.has(field);
    this.contradicted.add(field);
    const isState = field === 'state' || field === 'fulfilment';
    if (ADDRESSEE.has(field)) this.differing.add(fields.row.start.line);
    if (isState) this.values.set(field, 'to-ship');
    else if (field === 'gift') this.values.set(field, 'yes');
    else if (field === 'parcels') this.values.set(field, String(Math.max(Number(value), Number(this.values.get(field)))));
    if (!isFirst) return;
    const none = ADDRESSEE.has(field) ? 'none of them counts, and a label for it is held' : 'none of them counts';
    const counts = isState ? 'it counts as to be shipped' : field === 'gift' ? 'it counts as a gift' : none;
    this.findings.add(
      {
        code: 'orders/contradiction',
        severity: 'warning',
        message: `the rows of order ${shown(this.number)} say different things in \`${field}\` (the first is in line ${this.firstLine}); ${
          field === 'parcels' ? 'the largest number counts' : counts
        }`,
        remedy: 'Look the order up in the channel and correct the file, or export it again.',
      },
      fields.spot(field),
      field,
    );
  }

  private addItem(fields: RowFields): void {
    const text = (field: 'sku' | 'description' | 'bin' | 'price'): string => oneLine(fields.first(field));
    const [sku, description] = [text('sku'), text('description')];
    const variant = fields.all('variant').map(oneLine).join(', ');
    const count = fields.first('quantity');
    const names = sku !== '' || description !== '' || variant !== '';
    if (!names && count === '') return;
    const quantity = count === '' && !fields.has('quantity') ? 1 : wholeNumber(count);
    if (quantity === 0) {
      this.tellQuantity('note', 'an item has the quantity 0; it is left out', 'Nothing, if it was taken out of the order.', fields);
    } else if (quantity === undefined) {
      this.incomplete = true;
      const what = count === '' ? 'an item has no quantity' : `${shown(count)} is no whole number from 1 to ${MOST}`;
      const message = `${what}; the item is left out, and order ${shown(this.number)} counts as incomplete`;
      this.tellQuantity('error', message, 'Correct the quantity in the file, or check that the column is the right one.', fields);
    } else this.items.push({ sku, description, variant, quantity, bin: text('bin'), price: text('price') });
  }

  private tellQuantity(severity: Finding['severity'], message: string, remedy: string, fields: RowFields): void {
    this.findings.add({ code: 'orders/bad-number', severity, message, remedy }, fields.spot('quantity'), 'quantity');
  }

  /** The order that came of it. */
  finish(channel: number): Order {
    const isDropped = (field: SingleField): boolean =>
      this.contradicted.has(field) && !['state', 'fulfilment', 'gift', 'parcels'].includes(field);
    const value = (field: SingleField): string => (isDropped(field) ? '' : (this.values.get(field) ?? ''));
    const country = value('country');
    const date = (field: SingleField): string | undefined => (value(field) === '' ? undefined : value(field));
    const states = [value('state'), value('fulfilment')].filter((each) => each !== '') as OrderState[];
    const giftMessage = value('gift-message');
    const { file } = this.findings;
    const partly = this.contradicted.has('state') || this.contradicted.has('fulfilment');
    return {
      id: `${channel}:${this.number}`,
      channel,
      number: this.number,
      state: partly ? 'to-ship' : mostFinal(states),
      orderedOn: date('ordered-on'),
      shipBy: date('ship-by'),
      buyer: value('buyer'),
      address: linesOf(value('address')),
      postcode: this.postcode(value('postcode'), country),
      country,
      items: this.items,
      giftMessage,
      gift: value('gift') === 'yes' || giftMessage !== '',
      notes: [...this.notes].join('\n'),
      tracking: [...this.tracking],
      parcels: Number(value('parcels')) || 1,
      together: [...this.together],
      ...(this.incomplete || partly ? { incomplete: true as const } : {}),
      ...(this.differing.size > 0 ? { differsAt: [...this.differing].map((line) => ({ file, line })) } : {}),
      place: { file, line: this.firstLine },
    };
  }

  private postcode(text: string, country: string): string {
    if (!hasLostZeros(text, country)) return text;
    const spot = this.first?.spot('postcode') ?? { line: this.firstLine, col: 1 };
    const message = `the postcode has too few digits for ${country}: a spreadsheet has dropped a 0 in front; it is left out`;
    const remedy = 'Export the orders again and use that file without opening and saving it in a spreadsheet.';
    this.findings.add({ code: 'orders/lost-zeros', severity: 'warning', message, remedy }, spot, 'postcode');
    return '';
  }
}
