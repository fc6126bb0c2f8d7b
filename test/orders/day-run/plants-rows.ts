import { RAW } from './exports.js';
import { LONE, MANY, PAIRS, SHEETS, SINGLES, TABLES, type Plant, type RunDay, type RunOrder } from './run-day.js';

/** A good label whose order has a row in which something is wrong. */
const badRow =
  (what: string, code: Parameters<RunDay['plant']>[2], channels: readonly number[], given: Partial<RunOrder>): Plant =>
  (day) =>
    day.plant(what, 'row', code, day.pair(day.any(channels), 'packed', 'ready', { ...LONE, ...given }));

/** Order numbers that stand twice, and rows that are hard to read. */
export const ROW_PLANTS: readonly Plant[] = [
  badRow('a tracking number damaged by a spreadsheet', 'orders/damaged', [SINGLES, MANY], { cells: { Tracking: '9.40011E+21' } }),
  badRow('a postcode damaged by a spreadsheet', 'orders/damaged', TABLES, { cells: { Postcode: '2.0003E+09' } }),
  badRow('a postcode without its zero', 'orders/lost-zeros', TABLES, { cells: { Postcode: '2003' } }),
  badRow('a date that can be read in two ways', 'orders/ambiguous-date', [MANY, SHEETS, SINGLES], { shipBy: '', cells: { 'Ship by': '03/04/2026' } }), // prettier-ignore
  badRow('a date with two digits of a year', 'orders/ambiguous-date', [MANY, SHEETS, SINGLES], { shipBy: '', cells: { 'Ship by': '28.11.26' } }), // prettier-ignore
  badRow('a date that is none', 'orders/bad-date', TABLES, { shipBy: '', cells: { 'Ship by': '2026-02-30' } }),
  badRow('a date that a spreadsheet has counted', 'orders/damaged', TABLES, { shipBy: '', cells: { 'Ship by': '46354' } }),
  badRow('a status that nobody knows', 'orders/unknown-state', TABLES, { status: 'Wobbling' }),
  badRow('a country that nobody knows', 'orders/unknown-country', TABLES, { cells: { Country: 'Wobbleland' } }),
  badRow('a number of parcels that is none', 'orders/bad-number', TABLES, { cells: { Parcels: 'some' } }),
  badRow('letters that were read in another encoding', 'orders/mojibake', TABLES, { cells: { Street: '7 Ã‰xample Straße' } }),
  // Good: the recipe says in which order days are written.
  (day) => void day.pair(PAIRS, 'packed', 'ready', { shipBy: '2026-11-28', cells: { 'Ship by': '28.11.26' } }),
  (day) => {
    const pieces = day.pair(day.any(TABLES), 'held', 'held orders/incomplete', { ...LONE, cells: { Pieces: 'many' } });
    day.plant('a quantity that is none', 'row', 'orders/bad-number', pieces);
    day.plant('a quantity that is none', 'label', 'orders/incomplete', pieces);
  },
  (day) => {
    const open = day.pair(SINGLES, 'packed', 'ready', { cells: { Item: `${RAW}"Stoneware mug` } });
    open.items.forEach(() => day.plant('a quote that nothing closes', 'row', 'orders/quotes', open));
  },
  (day) => {
    day.order(day.any(TABLES), 'absent', { ...LONE, cells: { Order: '' } });
    day.plant('a row without an order number', 'row', 'orders/no-number', undefined);
  },
  (day) => {
    const alike = day.pair(day.any([SHEETS, PAIRS, SINGLES]), 'packed', 'ready', { files: [1, 2] });
    day.plant('an order in two files, alike', 'row', 'orders/duplicate-number', alike);
  },
  (day) => {
    const other = day.pair(day.any([SINGLES, SHEETS, MANY]), 'held', 'held orders/same-number', {
      files: [1, 2],
      cells: { '2:Pieces': '9' },
    });
    day.plant('an order in two files, not alike', 'row', 'orders/duplicate-number', other);
    day.plantAt(['label', 'loose'], 'an order in two files, not alike', 'orders/same-number', other);
  },
  (day) => {
    const same = day.pair(day.any([SHEETS, MANY]), 'packed', 'ready', { ...LONE, again: {} });
    day.plant('an order twice in one file, alike', 'row', 'orders/duplicate-number', same);
  },
  (day) => {
    const more = { sku: 'BOWL-3', name: 'Ramen bowl', quantity: 2, bin: 'B3' };
    const order = day.pair(day.any([MANY, SHEETS, SINGLES]), 'packed', 'ready', { ...LONE, more });
    day.plant('an order twice in one file, with another item', 'row', 'orders/duplicate-number', order);
  },
  (day) => {
    const again = { Buyer: 'Corwin Otherbuyer', Postcode: '71199' };
    const other = day.pair(day.any([MANY, SHEETS]), 'held', 'held orders/same-number', { ...LONE, again });
    const what = 'an order number of two buyers in one file';
    day.plant(what, 'row', 'orders/duplicate-number', other);
    Object.keys(again).forEach(() => day.plant(what, 'row', 'orders/contradiction', other));
    day.plantAt(['label', 'loose'], what, 'orders/same-number', other);
  },
  (day) => {
    const order = day.pair(day.any([PAIRS, SHEETS]), 'packed', 'ready', { files: [1, 2] });
    day.change(order, { cells: { '2:Order': order.number.toLowerCase() } });
    day.plant('an order in two files, its number in small letters', 'row', 'orders/duplicate-number', order);
  },
  (day) => {
    const states = day.order(day.any([SHEETS, MANY, SINGLES]), 'no-label', {
      files: [1, 2],
      status: 'Shipped',
      cells: { '2:Status': 'Paid' },
    });
    const what = 'an order that one file says is shipped, another not';
    day.plant(what, 'row', 'orders/duplicate-number', states);
    day.plant(what, 'loose', 'orders/same-number', states);
    day.plant(what, 'loose', 'orders/no-label', states);
  },
];
