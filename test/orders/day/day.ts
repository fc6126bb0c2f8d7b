import type { MatchOptions } from '../../../src/orders/matching.js';
import type { Order } from '../../../src/orders/order.js';
import type { Place } from '../../../src/orders/order-places.js';
import { FAULTS } from './faults.js';
import { DAY, DayMaker, OWN_ADDRESS, ORDER_CHANNELS, PRINTING, WAYS, WITHOUT_ORDERS, type DayLabel, type Fault } from './maker.js';

/** What good orders are like, plain ones more often than others. */
const KINDS = [
  ...Array.from({ length: 9 }, () => plain),
  noLabelExpected,
  severalParcels,
  severalNumbers,
  inOneParcel,
  sameTracking,
  withReturn,
];

/** One day of the invented studio: what is given, and what is to come of it. */
export interface Day {
  readonly orders: readonly Order[];
  readonly labels: readonly DayLabel[];
  readonly options: MatchOptions;
  readonly faults: readonly Fault[];
  /** Where each order is to end, by id. */
  readonly places: ReadonlyMap<string, Place>;
  /** Ids of the orders that a label is for, by its id; of one that is held for a fault it tells nothing. */
  readonly belongs: ReadonlyMap<string, readonly string[]>;
}

/** A day with `count` orders in five channels, the same for the same seed; `rounds` faults of each kind. Orders and labels are shuffled. */
export function generateDay(seed: number, count = 300, rounds = 2): Day {
  const day = new DayMaker(seed);
  for (let round = 0; round < rounds; round++) for (const plant of Object.values(FAULTS)) plant(day);
  for (let n = 0; n < 5; n++) day.free(WITHOUT_ORDERS);
  day.free(PRINTING);
  day.faults.push({ code: 'orders/no-order', labels: [], orders: [] });
  while (day.orders.length < count) (day.orders.length < count - 2 ? day.random.pick(KINDS) : plain)(day);
  return done(day);
}

/** A small day of `steps` orders of any kind, about a third of them with a fault of any kind. */
export function mixedDay(seed: number, steps: number): Day {
  const day = new DayMaker(seed);
  const faults = Object.values(FAULTS);
  for (let n = 0; n < steps; n++) day.random.pick(day.random.chance(0.35) ? faults : KINDS)(day);
  if (day.random.chance(0.5)) day.free(WITHOUT_ORDERS);
  return done(day);
}

function done(day: DayMaker): Day {
  return {
    orders: day.random.shuffled(day.orders),
    labels: day.random.shuffled(day.labels),
    options: {
      channels: Array.from({ length: ORDER_CHANNELS + 1 }, (_, channel) => ({
        hasOrders: channel !== WITHOUT_ORDERS,
        withoutOrder: channel === PRINTING ? ('print' as const) : ('hold' as const),
        maxAge: 14,
        fileName: undefined,
      })),
      today: DAY,
      ownAddress: OWN_ADDRESS,
    },
    faults: day.faults,
    places: day.places,
    belongs: day.belongs,
  };
}

function plain(day: DayMaker): void {
  const way = day.random.pick([...WAYS, 'tracking' as const, 'tracking' as const]);
  day.label(day.order(day.channel(), 'packed', { tracking: way === 'tracking' ? [day.tracking()] : [] }), way);
}

function noLabelExpected(day: DayMaker): void {
  day.order(day.channel(), 'not-expected', { state: day.random.pick(['cancelled', 'refunded', 'shipped', 'pick-up', 'digital']) });
}

function severalParcels(day: DayMaker): void {
  const order = day.order(day.channel(), 'packed', { parcels: 2 });
  for (const way of ['order-number', 'address'] as const) day.label(order, way);
}

function severalNumbers(day: DayMaker): void {
  const tracking = [day.tracking(), day.tracking()];
  const order = day.order(day.channel(), 'packed', { tracking });
  for (const number of tracking) day.label({ ...order, tracking: [number] }, 'tracking');
}

function inOneParcel(day: DayMaker): void {
  const a = day.order(day.channel(), 'packed');
  const b = day.order(a.channel, 'packed', { together: [a.number] });
  const { id } = day.label(day.random.pick([a, b]), day.random.pick(['order-number', 'address']));
  day.belongs.set(id, [a.id, b.id]);
}

function sameTracking(day: DayMaker): void {
  const a = day.order(day.channel(), 'packed', { tracking: [day.tracking()] });
  const { channel, tracking, buyer, address, postcode, country } = a;
  const b = day.order(channel, 'packed', { tracking, buyer, address, postcode, country });
  day.belongs.set(day.label(a, 'tracking').id, [a.id, b.id]);
}

function withReturn(day: DayMaker): void {
  const order = day.order(day.channel(), 'packed', { tracking: [day.tracking()] });
  const { id } = day.label(order, 'tracking');
  const byNumber = day.random.chance(0.5);
  const back = day.free(order.channel, {
    isReturn: true,
    ...(byNumber ? { lines: [`Return of order ${order.number}`] } : { outbound: id }),
  });
  day.belongs.set(back.id, [order.id]);
}
