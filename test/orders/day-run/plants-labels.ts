import {
  CHANNEL_NUMBERS,
  LONE,
  MANY,
  PAIRS,
  PICTURES,
  SHEETS,
  SINGLES,
  trackingOf,
  type Plant,
  type RunDay,
  type RunOrder,
} from './run-day.js';

const STATES = [
  ['Cancelled', 'orders/cancelled'],
  ['Refunded', 'orders/refunded'],
  ['Shipped', 'orders/already-shipped'],
  ['Local pickup', 'orders/pick-up'],
  ['Digital download', 'orders/digital'],
] as const;

/** Labels for orders that expect none; orders that expect none and have none. */
const STATE_PLANTS: readonly Plant[] = STATES.flatMap(([status, code], at): Plant[] => [
  (day) => {
    const order = day.pair(day.any([...CHANNEL_NUMBERS.slice(at), ...CHANNEL_NUMBERS]), 'held', `held ${code}`, { status });
    day.plant(`a label for an order: ${status}`, 'label', code, order);
  },
  (day) => void day.order(day.any(), 'not-expected', { status }),
]);

function countDisagrees(day: RunDay, what: string, code: Parameters<RunDay['plant']>[2], order: RunOrder, labels: number): void {
  for (let n = 0; n < labels; n += 1) day.label([order], day.content(order), `held ${code}`);
  day.plantAt(['label', 'loose'], what, code, order);
}

/** Each puts one fault into the day: labels that are not as their orders say, files that are not as they should be. */
export const LABEL_PLANTS: readonly Plant[] = [
  ...STATE_PLANTS,
  ...CHANNEL_NUMBERS.map(
    (channel): Plant =>
      (day) =>
        day.plant('an order without a label', 'loose', 'orders/no-label', day.order(channel, 'no-label')),
  ),
  (day) => {
    const channel = day.any([SINGLES, SHEETS, MANY]);
    const nobody = day.order(channel, 'packed');
    day.orders.pop();
    day.label([], day.content(nobody), 'held orders/no-order', { channel });
    day.plantAt(['label', 'loose'], 'a label without an order', 'orders/no-order', undefined);
  },
  (day) => {
    const twice = day.pair(day.any([SHEETS, MANY, SINGLES, PAIRS]), 'packed', 'ready', {}, { spoiled: 'file-twice' });
    day.plant('a file twice', 'label', 'intake/duplicate', twice);
  },
  (day) => {
    const again = day.pair(day.any([SHEETS, MANY, SINGLES]), 'packed', 'ready', {}, { spoiled: 'drawn-again' });
    day.plant('a label in two files that differ', 'label', 'batch/duplicate', again);
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
    const channel = day.any([SINGLES, SHEETS]);
    const [a, b] = [day.order(channel, 'held'), day.order(channel, 'held')];
    day.label([a, b], day.content(a, { order: `${a.number} ${b.number}` }), 'held orders/two-orders');
    day.plant('two orders on a label', 'label', 'orders/two-orders', a);
  },
  (day) => {
    const channel = day.any([SHEETS, SINGLES, MANY]);
    const a = day.order(channel, 'held');
    const content = day.content(a);
    const known = day.change(a, { tracking: [trackingOf(channel, content)] });
    const b = day.order(channel, 'held');
    day.label([known, b], { ...content, order: b.number }, 'held orders/clues-differ');
    day.plant('tracking number and order number contradict', 'label', 'orders/clues-differ', known);
  },
  (day) => {
    const [a, b] = [day.order(SINGLES, 'held'), day.order(SINGLES, 'held')];
    day.label([a, b], day.content(a), 'held orders/clues-differ', { fileName: `order ${b.number}` });
    day.plant('file name and order number contradict', 'label', 'orders/clues-differ', a);
  },
  (day) => countDisagrees(day, 'two labels for one order', 'orders/two-labels', day.order(day.any([MANY, SINGLES, SHEETS]), 'held'), 2),
  (day) => {
    const order = day.order(day.any([SINGLES, MANY, SHEETS]), 'held', { parcels: 3 });
    countDisagrees(day, 'fewer labels than parcels', 'orders/fewer-labels', order, 2);
  },
  (day) => {
    const order = day.order(day.any([MANY, SINGLES, SHEETS]), 'held', { parcels: 2 });
    countDisagrees(day, 'more labels than parcels', 'orders/more-labels', order, 3);
  },
  (day) => {
    const channel = day.any([SHEETS, PICTURES, MANY]);
    const few = day.order(channel, 'held');
    const content = day.content(few);
    const tracking = [content, day.content(few)].map((each) => trackingOf(channel, each));
    day.label([day.change(few, { tracking })], content, 'held orders/fewer-labels');
    day.plantAt(['label', 'loose'], 'fewer labels than tracking numbers', 'orders/fewer-labels', few);
  },
  (day) => {
    const channel = day.any([SHEETS, SINGLES]);
    const order = day.order(channel, 'held');
    const to = ['Corwin Wrongaddressee', '7 Test Bend', 'Probeville XX 71199'];
    const content = day.content(order, { to, postcode: '71199' });
    day.label([day.change(order, { tracking: [trackingOf(channel, content)] })], content, 'held orders/address-differs');
    day.plant('another address on the label', 'label', 'orders/address-differs', order);
  },
  (day) =>
    day.plant(
      'a label from last month',
      'label',
      'orders/too-old',
      day.pair(SHEETS, 'held', 'held orders/too-old', {}, { spoiled: 'old' }),
    ),
  (day) => {
    const smeared = day.pair(SHEETS, 'held', 'held verify/nothing-to-prove', {}, { spoiled: 'smeared' });
    day.plant('a smeared code', 'label', 'verify/nothing-to-prove', smeared);
    day.plant('a smeared code', 'loose', 'orders/label-held', smeared);
  },
  (day) => {
    const cut = day.pair(day.any([SHEETS, SINGLES]), 'no-label', 'failed reading/cut-off', {}, { spoiled: 'cut-off' });
    day.plant('a file cut short', 'label', 'reading/cut-off', cut);
    day.plant('a file cut short', 'loose', 'orders/no-label', cut);
  },
  (day) => {
    // Its row can't be read, so that no order knows of its label.
    const stray = day.pair(SHEETS, 'absent', 'held orders/no-order', { ...LONE, cells: { extra: 'stray' } });
    day.plant('a row with a cell too much', 'row', 'orders/cell-count', stray);
    day.plantAt(['label', 'loose'], 'a row with a cell too much', 'orders/no-order', stray);
  },
  (day) => {
    const stray = day.order(SHEETS, 'held');
    const content = day.content(stray, { order: 'none' });
    const known = day.change(stray, { tracking: [trackingOf(SINGLES, content)] });
    day.label([known], content, 'held orders/other-channel', { channel: SINGLES });
    day.plant('a label in the folder of another channel', 'label', 'orders/other-channel', known);
  },
  (day) => {
    const channel = day.any([MANY, SHEETS, SINGLES]);
    const first = day.order(channel, 'held');
    const content = day.content(first, { order: 'none' });
    const tracking = [trackingOf(channel, content)];
    const second = day.order(channel, 'held', { tracking });
    day.label([day.change(first, { tracking }), second], content, 'held orders/shared-tracking');
    day.plant('one tracking number of two buyers', 'label', 'orders/shared-tracking', first);
  },
  (day) => {
    // Good: nothing but the name of its file says whose it is.
    const order = day.order(SINGLES, 'packed');
    day.label([order], day.content(order, { order: 'none', to: ['Parcel shop 12', '7 Example Street', 'Sampleton XX 00001'], postcode: '00001' }), 'ready', { fileName: `order ${order.number}` }); // prettier-ignore
  },
];
