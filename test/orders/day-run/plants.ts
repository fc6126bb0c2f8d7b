import { MANY, PAIRS, PICTURES, SHEETS, SINGLES, trackingOf, type RunDay, type RunOrder } from './run-day.js';

const STATES = [
  ['Cancelled', 'orders/cancelled'],
  ['Refunded', 'orders/refunded'],
  ['Shipped', 'orders/already-shipped'],
  ['Local pickup', 'orders/pick-up'],
  ['Digital download', 'orders/digital'],
] as const;

function held(day: RunDay, what: string, code: Parameters<RunDay['plant']>[2], order: RunOrder): void {
  day.plant(what, 'label', code, order);
}

const LONE = { sku: 'MUG-1', name: 'Stoneware mug', quantity: 1, bin: 'A1' };

/** Each puts the faults of one kind into the day. */
export const PLANTS: readonly ((day: RunDay) => void)[] = [
  (day) => {
    for (const channel of [SHEETS, MANY, PAIRS, PICTURES, SINGLES])
      day.plant('an order without a label', 'loose', 'orders/no-label', day.order(channel, 'no-label'));
  },
  (day) => {
    for (let n = 0; n < 3; n += 1) {
      const nobody = day.order(SINGLES, 'packed');
      day.orders.pop();
      day.label([], day.content(nobody), 'held orders/no-order');
      day.plant('a label without an order', 'label', 'orders/no-order', undefined);
      day.plant('a label without an order', 'loose', 'orders/no-order', undefined);
    }
  },
  (day) => {
    for (const [at, [status, code]] of STATES.entries()) {
      held(day, `a label for an order: ${status}`, code, day.pair(at % 5, 'held', `held ${code}`, { status }));
      day.order((at + 1) % 5, 'not-expected', { status });
    }
  },
  (day) => {
    const alike = day.pair(SHEETS, 'packed', 'ready', { files: [1, 2] });
    day.plant('an order in two files, alike', 'row', 'orders/duplicate-number', alike);
    const other = day.pair(SINGLES, 'held', 'held orders/same-number', { files: [1, 2], cells: { '2:Pieces': '9' } });
    day.plant('an order in two files, not alike', 'row', 'orders/duplicate-number', other);
    held(day, 'an order in two files, not alike', 'orders/same-number', other);
    day.plant('an order in two files, not alike', 'loose', 'orders/same-number', other);
  },
  (day) => {
    const twice = day.pair(SHEETS, 'packed', 'ready', {}, { spoiled: 'file-twice' });
    held(day, 'a file twice', 'intake/duplicate', twice);
  },
  (day) => {
    const order = day.order(SINGLES, 'held');
    const content = day.content(order);
    day.label([order], content, 'held batch/same-tracking-code', { spoiled: 'as-picture' });
    day.label([order], content, 'held batch/same-tracking-code');
    day.plant('a label as PDF and as PNG', 'label', 'batch/same-tracking-code', order);
    day.plant('a label as PDF and as PNG', 'loose', 'orders/label-held', order);
  },
  (day) => {
    // Of one row each, so that each is told once.
    const lone = { items: [LONE] };
    const damaged = day.pair(SINGLES, 'packed', 'ready', { ...lone, cells: { Tracking: '9.40011E+21' } });
    day.plant('a tracking number damaged by a spreadsheet', 'row', 'orders/damaged', damaged);
    const zeros = day.pair(MANY, 'packed', 'ready', { ...lone, cells: { Postcode: '2003' } });
    day.plant('a postcode without its zero', 'row', 'orders/lost-zeros', zeros);
    const date = day.pair(MANY, 'packed', 'ready', { ...lone, shipBy: '', cells: { 'Ship by': '03/04/2026' } });
    day.plant('a date that can be read in two ways', 'row', 'orders/ambiguous-date', date);
    const bad = day.pair(SINGLES, 'packed', 'ready', { ...lone, shipBy: '', cells: { 'Ship by': '2026-02-30' } });
    day.plant('a date that is none', 'row', 'orders/bad-date', bad);
    const state = day.pair(SHEETS, 'packed', 'ready', { ...lone, status: 'Wobbling' });
    day.plant('a status that nobody knows', 'row', 'orders/unknown-state', state);
    const pieces = day.pair(SINGLES, 'held', 'held orders/incomplete', { ...lone, cells: { Pieces: 'many' } });
    day.plant('a quantity that is none', 'row', 'orders/bad-number', pieces);
    held(day, 'a quantity that is none', 'orders/incomplete', pieces);
    const country = day.pair(SHEETS, 'packed', 'ready', { ...lone, cells: { Country: 'Wobbleland' } });
    day.plant('a country that nobody knows', 'row', 'orders/unknown-country', country);
  },
  (day) => {
    const [a, b] = [day.order(SINGLES, 'held'), day.order(SINGLES, 'held')];
    day.label([a, b], day.content(a, { order: `${a.number} ${b.number}` }), 'held orders/two-orders');
    held(day, 'two orders on a label', 'orders/two-orders', a);
    const c = day.order(SHEETS, 'held');
    const content = day.content(c);
    const known = day.change(c, { tracking: [trackingOf(SHEETS, content)] });
    const d = day.order(SHEETS, 'held');
    day.label([known, d], { ...content, order: d.number }, 'held orders/clues-differ');
    held(day, 'tracking number and order number contradict', 'orders/clues-differ', known);
  },
  (day) => {
    const order = day.order(MANY, 'held');
    for (let n = 0; n < 2; n += 1) day.label([order], day.content(order), 'held orders/two-labels');
    held(day, 'two labels for one order', 'orders/two-labels', order);
    day.plant('two labels for one order', 'loose', 'orders/two-labels', order);
    const few = day.order(SINGLES, 'held', { parcels: 3 });
    for (let n = 0; n < 2; n += 1) day.label([few], day.content(few), 'held orders/fewer-labels');
    held(day, 'fewer labels than parcels', 'orders/fewer-labels', few);
    day.plant('fewer labels than parcels', 'loose', 'orders/fewer-labels', few);
    const many = day.order(MANY, 'held', { parcels: 2 });
    for (let n = 0; n < 3; n += 1) day.label([many], day.content(many), 'held orders/more-labels');
    held(day, 'more labels than parcels', 'orders/more-labels', many);
    day.plant('more labels than parcels', 'loose', 'orders/more-labels', many);
  },
  (day) => {
    const order = day.order(SHEETS, 'held');
    const to = ['Corwin Wrongaddressee', '7 Test Bend', 'Probeville XX 71199'];
    const content = day.content(order, { to, postcode: '71199' });
    day.label([day.change(order, { tracking: [trackingOf(SHEETS, content)] })], content, 'held orders/address-differs');
    held(day, 'another address on the label', 'orders/address-differs', order);
    held(day, 'a label from last month', 'orders/too-old', day.pair(SHEETS, 'held', 'held orders/too-old', {}, { spoiled: 'old' }));
  },
  (day) => {
    const smeared = day.pair(SHEETS, 'held', 'held verify/nothing-to-prove', {}, { spoiled: 'smeared' });
    day.plant('a smeared code', 'label', 'verify/nothing-to-prove', smeared);
    day.plant('a smeared code', 'loose', 'orders/label-held', smeared);
    const cut = day.pair(SHEETS, 'no-label', 'failed reading/cut-off', {}, { spoiled: 'cut-off' });
    day.plant('a file cut short', 'label', 'reading/cut-off', cut);
    day.plant('a file cut short', 'loose', 'orders/no-label', cut);
  },
  (day) => {
    const mate = day.pair(SINGLES, 'packed', 'ready', { together: 'GLZ-99999' });
    day.plant('together with an order that is not there', 'loose', 'orders/no-such-mate', mate);
    // Its row can't be read, so that no order knows of its label.
    const stray = day.pair(SHEETS, 'absent', 'held orders/no-order', { items: [LONE], cells: { extra: 'stray' } });
    day.plant('a row with a cell too much', 'row', 'orders/cell-count', stray);
    held(day, 'a row with a cell too much', 'orders/no-order', stray);
    day.plant('a row with a cell too much', 'loose', 'orders/no-order', stray);
  },
];
