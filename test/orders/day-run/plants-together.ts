import { MANY, SHEETS, SINGLES, trackingOf, type Plant, type RunDay, type RunOrder } from './run-day.js';

/** Orders of one buyer that go in one parcel, each but the first naming the one before. */
function together(day: RunDay, channel: number, place: RunOrder['place'], given: readonly Partial<RunOrder>[]): readonly RunOrder[] {
  const [first, ...more] = given;
  const orders = [day.order(channel, place, first)];
  for (const each of more) {
    const { number, buyer, street, town, postcode } = orders.at(-1) ?? day.order(channel, place);
    orders.push(day.order(channel, place, { together: number, buyer, street, town, postcode, ...each }));
  }
  return orders;
}

const BY_NUMBER = [SINGLES, MANY, SHEETS];

/** Good ones: several orders in one parcel, in every way that an export may say so. */
export const TOGETHER_KINDS: readonly Plant[] = [
  (day) => {
    const orders = together(day, day.any(BY_NUMBER), 'packed', [{}, {}]);
    day.label(orders, day.content(day.random.pick(orders)));
  },
  (day) => {
    const orders = together(day, day.any(BY_NUMBER), 'packed', [{}, {}, {}]);
    day.label(orders, day.content(day.random.pick(orders)));
  },
  (day) => {
    // To one of two addresses.
    const orders = together(day, day.any(BY_NUMBER), 'packed', [
      {},
      { buyer: 'Corwin Otherbuyer', street: '7 Test Bend', postcode: '71199' },
    ]);
    day.label(orders, day.content(day.random.pick(orders)));
  },
  (day) => {
    // In two parcels, as one of them says.
    const orders = together(day, day.any(BY_NUMBER), 'packed', [{}, { parcels: 2 }]);
    for (const order of orders) day.label(orders, day.content(order));
  },
  (day) => {
    // Nothing but the same tracking number, buyer and address says it.
    const channel = day.any([SHEETS, SINGLES, MANY]);
    const [a, b] = together(day, channel, 'packed', [{}, { together: '' }]);
    if (!a || !b) return;
    const content = day.content(a);
    const tracking = [trackingOf(channel, content)];
    day.label([day.change(a, { tracking }), day.change(b, { tracking })], content);
  },
  (day) => {
    const channel = day.any([SINGLES, SHEETS]);
    const orders = together(day, channel, 'packed', [{}, {}]);
    const [a, b] = orders;
    if (a && b) day.label(orders, day.content(a, { order: `${a.number} ${b.number}` }));
  },
];

const oneOfThem =
  (status: string, code: 'orders/cancelled' | 'orders/digital' | 'orders/pick-up'): Plant =>
  (day) => {
    const [a, b] = together(day, day.any(BY_NUMBER), 'held', day.random.shuffled([{ status }, {}]));
    if (!a || !b) return;
    day.label([a, b], day.content(day.random.pick([a, b])), `held ${code}`);
    day.plant(`a label of two orders in one parcel, one of them: ${status}`, 'label', code, a.status === status ? a : b);
  };

/** Each puts one fault of orders that go together into the day. */
export const TOGETHER_PLANTS: readonly Plant[] = [
  oneOfThem('Cancelled', 'orders/cancelled'),
  oneOfThem('Digital download', 'orders/digital'),
  oneOfThem('Local pickup', 'orders/pick-up'),
  (day) => {
    const mate = day.pair(day.any([SINGLES, SHEETS, MANY]), 'packed', 'ready', { together: 'GLZ-99999' });
    day.plant('together with an order that is not there', 'loose', 'orders/no-such-mate', mate);
  },
  (day) => {
    const [a, b] = together(day, day.any(BY_NUMBER), 'held', [{}, {}]);
    if (!a || !b) return;
    for (const order of [a, b]) day.label([a, b], day.content(order), 'held orders/two-labels');
    day.plantAt(['label', 'loose'], 'a label each for two orders that go in one parcel', 'orders/two-labels', a);
  },
  (day) => {
    const orders = together(day, day.any(BY_NUMBER), 'no-label', [{}, {}]);
    for (const order of orders) day.plant('two orders that go in one parcel, without a label', 'loose', 'orders/no-label', order);
  },
];
