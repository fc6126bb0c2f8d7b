import { WAYS, ORDER_CHANNELS, PRINTING, type DayMaker } from './maker.js';

/** Each puts one fault of its kind into the day. */
export const FAULTS: Readonly<Record<string, (day: DayMaker) => void>> = {
  'two orders on a label': (day) => {
    const [a, b] = pair(day);
    const label = day.label(a, 'order-number');
    const changed = replace(day, label.id, { lines: [...label.lines, `Order ${b.number}`] });
    day.fault('orders/two-orders', [changed], [a, b]);
  },
  'two orders of one buyer, a label with the address alone': (day) => {
    const channel = day.channel();
    const a = day.order(channel, 'held');
    const { buyer, address, postcode, country } = a;
    const b = day.order(channel, 'held', { buyer, address, postcode, country });
    day.fault('orders/two-orders', [day.label(a, 'address')], [a, b]);
  },
  'tracking number and order number contradict': (day) => {
    const channel = day.channel();
    const a = day.order(channel, 'held', { tracking: [day.tracking()] });
    const b = day.order(channel, 'held');
    day.fault('orders/clues-differ', [day.label(a, 'tracking', { lines: [`Order ${b.number}`] })], [a, b]);
  },
  'order number and file name contradict': (day) => {
    const [a, b] = pair(day);
    const fileName = `order ${b.number.replace(/[#/]/g, ' ').trim()}.pdf`;
    day.fault('orders/clues-differ', [day.label(a, 'order-number', { fileName })], [a, b]);
  },
  'one tracking number of two buyers': (day) => {
    const tracking = [day.tracking()];
    const channel = day.channel();
    const a = day.order(channel, 'held', { tracking });
    const b = day.order(channel, 'held', { tracking });
    day.fault('orders/shared-tracking', [day.label(a, 'tracking')], [a, b]);
  },
  'a label in the folder of another channel': (day) => {
    const order = day.order(day.channel(), 'held', { tracking: [day.tracking()] });
    const channel = (order.channel + 1) % ORDER_CHANNELS;
    day.fault('orders/other-channel', [day.label(order, 'tracking', { channel })], [order]);
  },
  'an order number twice, not alike': (day) => {
    const order = day.order(day.channel(), 'held', { differsAt: [{ file: 'more.csv', line: 7 }] });
    day.fault('orders/same-number', [day.label(order, day.random.pick(['order-number', 'address', 'file-name']))], [order]);
  },
  ...Object.fromEntries(
    (['cancelled', 'refunded', 'shipped', 'pick-up', 'digital'] as const).map((state) => [
      `a label for an order that is ${state}`,
      (day: DayMaker) => {
        const order = day.order(day.channel(), 'held', { state, tracking: [day.tracking()] });
        day.fault(
          state === 'shipped' ? 'orders/already-shipped' : `orders/${state}`,
          [day.label(order, day.random.pick(['tracking', 'order-number']))],
          [order],
        );
      },
    ]),
  ),
  'a label addressed to somebody whom no order knows': (day) => {
    const order = day.order(day.channel(), 'held', { tracking: [day.tracking()], postcode: '71100', country: 'DE' });
    const lines = day.lines({ ...order, postcode: '71199', address: ['7 Test Bend', 'Probeville'] }, true, {
      ...order,
      onLabel: 'Corwin Wrongaddressee',
    });
    day.fault('orders/address-differs', [day.label(order, 'tracking', { lines })], [order]);
  },
  'a label addressed to the buyer of another order': (day) => {
    const channel = day.channel();
    const order = day.order(channel, 'held', { tracking: [day.tracking()], buyer: 'Peregrin Rightbuyer' });
    const other = day.order(channel, 'packed', { tracking: [day.tracking()] });
    day.label(other, 'tracking');
    day.fault('orders/address-differs', [day.label(order, 'tracking', { lines: day.lines(other, false) })], [order]);
  },
  'a label from last month': (day) => {
    const order = day.order(day.channel(), 'held', { tracking: [day.tracking()] });
    const date = day.random.pick([
      'Ship date: 2026-10-20',
      'Mailed 20 October 2026',
      'Versanddatum 20. Oktober 2026',
      'SHIP DATE: 20OCT26',
      'Date 10/20/2026',
    ]);
    const lines = day.lines(order, false).filter((line) => !/^(?:ship )?(?:date|datum)/i.test(line));
    day.fault('orders/too-old', [day.label(order, 'tracking', { lines: [...lines, date] })], [order]);
  },
  'a tracking number on two labels': (day) => {
    const order = day.order(day.channel(), 'held', { tracking: [day.tracking()] });
    day.fault('orders/label-twice', [day.label(order, 'tracking'), day.label(order, 'tracking')], [order]);
  },
  'two labels for one parcel': (day) => {
    const order = day.order(day.channel(), 'held');
    day.fault(
      'orders/two-labels',
      [day.label(order, 'order-number'), day.label(order, day.random.pick(['order-number', 'address', 'file-name']))],
      [order],
    );
  },
  'fewer labels than parcels': (day) => {
    const order = day.order(day.channel(), 'held', { parcels: 3 });
    day.fault('orders/fewer-labels', [day.label(order, 'order-number'), day.label(order, 'order-number')], [order]);
  },
  'fewer labels than tracking numbers': (day) => {
    const order = day.order(day.channel(), 'held', { tracking: [day.tracking(), day.tracking()] });
    day.fault('orders/fewer-labels', [day.label(order, 'tracking')], [order]);
  },
  'more labels than parcels': (day) => {
    const order = day.order(day.channel(), 'held', { parcels: 2 });
    day.fault(
      'orders/more-labels',
      [1, 2, 3].map(() => day.label(order, 'order-number')),
      [order],
    );
  },
  'a label without an order': (day) => {
    day.fault('orders/no-order', [day.free(day.random.below(PRINTING))], []);
  },
  'an order without a label': (day) => {
    day.fault('orders/no-label', [], [day.order(day.channel(), 'no-label', { tracking: day.random.chance(0.5) ? [day.tracking()] : [] })]);
  },
  'an order number twice, not alike, and no label': (day) => {
    const order = day.order(day.channel(), 'no-label', { differsAt: [{ file: 'more.csv', line: 7 }] });
    day.fault('orders/no-label', [], [order]);
  },
  'together with an order that is not there': (day) => {
    const order = day.order(day.channel(), 'packed', { together: ['KLN-99999'] });
    day.label(order, day.random.pick(WAYS));
    day.fault('orders/no-such-mate', [], [order]);
  },
  'a return label for another order than its outbound label': (day) => {
    const channel = day.channel();
    const a = day.order(channel, 'packed', { tracking: [day.tracking()] });
    const b = day.order(channel, 'packed', { tracking: [day.tracking()] });
    const outbound = day.label(a, 'tracking').id;
    day.label(b, 'tracking');
    day.fault('orders/clues-differ', [day.free(channel, { isReturn: true, outbound, lines: [`Return of order ${b.number}`] })], [a, b]);
  },
  'a return label whose outbound label is held': (day) => {
    const order = day.order(day.channel(), 'held', { state: 'cancelled' });
    const label = day.label(order, 'order-number');
    day.fault('orders/cancelled', [label], [order]);
    day.fault('orders/held-with', [day.free(order.channel, { isReturn: true, outbound: label.id })], [order]);
  },
};

function pair(day: DayMaker): [ReturnType<DayMaker['order']>, ReturnType<DayMaker['order']>] {
  const channel = day.channel();
  return [day.order(channel, 'held'), day.order(channel, 'held')];
}

function replace(day: DayMaker, id: string, change: { readonly lines: readonly string[] }): DayMaker['labels'][number] {
  const at = day.labels.findIndex((label) => label.id === id);
  const label = day.labels[at];
  if (!label) throw new Error(`no label ${id}`);
  const changed = { ...label, ...change };
  day.labels[at] = changed;
  return changed;
}
