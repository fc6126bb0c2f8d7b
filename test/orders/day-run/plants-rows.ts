import { RAW } from './exports.js';
import { MANY, PAIRS, SHEETS, SINGLES, type RunDay } from './run-day.js';

/** Order numbers that stand twice, and rows that are hard to read. */
export const ROW_PLANTS: readonly ((day: RunDay) => void)[] = [
  (day) => {
    const same = day.pair(SHEETS, 'packed', 'ready', { again: {} });
    day.plant('an order twice in one file, alike', 'row', 'orders/duplicate-number', same);
    const more = day.pair(MANY, 'packed', 'ready', { more: { sku: 'BOWL-3', name: 'Ramen bowl', quantity: 2, bin: 'B3' } });
    day.plant('an order twice in one file, with another item', 'row', 'orders/duplicate-number', more);
    const other = day.pair(MANY, 'held', 'held orders/same-number', { again: { Buyer: 'Corwin Otherbuyer', Postcode: '71199' } });
    day.plant('an order number of two buyers in one file', 'row', 'orders/duplicate-number', other);
    day.plant('an order number of two buyers in one file', 'row', 'orders/contradiction', other);
    day.plant('an order number of two buyers in one file', 'row', 'orders/contradiction', other);
    day.plant('an order number of two buyers in one file', 'label', 'orders/same-number', other);
    day.plant('an order number of two buyers in one file', 'loose', 'orders/same-number', other);
  },
  (day) => {
    const order = day.pair(PAIRS, 'packed', 'ready', { files: [1, 2] });
    day.change(order, { cells: { '2:Order': order.number.toLowerCase() } });
    day.plant('an order in two files, its number in small letters', 'row', 'orders/duplicate-number', order);
    const states = day.order(SHEETS, 'no-label', { files: [1, 2], status: 'Shipped', cells: { '2:Status': 'Paid' } });
    day.plant('an order that one file says is shipped, another not', 'row', 'orders/duplicate-number', states);
    day.plant('an order that one file says is shipped, another not', 'loose', 'orders/same-number', states);
    day.plant('an order that one file says is shipped, another not', 'loose', 'orders/no-label', states);
  },
  (day) => {
    const open = day.pair(SINGLES, 'packed', 'ready', { cells: { Item: `${RAW}"Stoneware mug` } });
    day.plant('a quote that nothing closes', 'row', 'orders/quotes', open);
    open.items.slice(1).forEach(() => day.plant('a quote that nothing closes', 'row', 'orders/quotes', open));
    const postcode = day.pair(SHEETS, 'packed', 'ready', { items: [{ sku: 'MUG-1', name: 'Stoneware mug', quantity: 1, bin: 'A1' }], cells: { Postcode: '2.0003E+09' } }); // prettier-ignore
    day.plant('a postcode damaged by a spreadsheet', 'row', 'orders/damaged', postcode);
    const short = day.pair(MANY, 'packed', 'ready', { shipBy: '', cells: { 'Ship by': '28.11.26' } });
    day.plant('a date with two digits of a year', 'row', 'orders/ambiguous-date', short);
    // The same where the recipe says in which order days are written.
    day.pair(PAIRS, 'packed', 'ready', { shipBy: '2026-11-28', cells: { 'Ship by': '28.11.26' } });
    day.order(MANY, 'absent', { cells: { Order: '' } });
    day.plant('a row without an order number', 'row', 'orders/no-number', undefined);
  },
  (day) => {
    const a = day.order(SINGLES, 'held', { status: 'Cancelled' });
    const { buyer, street, town, postcode } = a;
    const b = day.order(SINGLES, 'held', { together: a.number, buyer, street, town, postcode });
    day.label([a, b], day.content(b), 'held orders/cancelled');
    day.plant('a label of two orders in one parcel, one of them cancelled', 'label', 'orders/cancelled', a);
    const few = day.order(SHEETS, 'held');
    const content = day.content(few);
    day.label([day.change(few, { tracking: [`92${content.serial}`, '9200000000000000000017'] })], content, 'held orders/fewer-labels');
    day.plant('fewer labels than tracking numbers', 'label', 'orders/fewer-labels', few);
    day.plant('fewer labels than tracking numbers', 'loose', 'orders/fewer-labels', few);
  },
];
