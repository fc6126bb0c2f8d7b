import { PAGE_PLANTS } from './plants-pages.js';
import { ROW_PLANTS } from './plants-rows.js';
import { PLANTS } from './plants.js';
import { MANY, PAIRS, PICTURES, RunDay, SHEETS, SINGLES, trackingOf } from './run-day.js';

/** A day with `count` orders: the faults once each, parcels and bundles of several kinds, and plain orders. */
export function runDay(seed: number, count = 300): RunDay {
  const day = new RunDay(seed);
  for (const plant of [...PLANTS, ...PAGE_PLANTS, ...ROW_PLANTS]) plant(day);
  for (let n = 0; n < 3; n += 1) {
    inSeveralParcels(day);
    severalInOneParcel(day);
    byAddressAlone(day);
  }
  // Pictures and the largest codes are dear to draw: fewer of them.
  const channels = [SHEETS, MANY, PAIRS, SHEETS, MANY, SINGLES, SHEETS, MANY, PICTURES];
  for (let n = 0; day.orders.length < count; n += 1) day.pair(channels[n % channels.length] ?? SHEETS, 'packed');
  return day;
}

function inSeveralParcels(day: RunDay): void {
  const order = day.order(MANY, 'packed', { parcels: 2 });
  for (let n = 0; n < 2; n += 1) day.label([order], day.content(order));
  const other = day.order(SHEETS, 'packed');
  const contents = [day.content(other), day.content(other)];
  const known = day.change(other, { tracking: contents.map((content) => trackingOf(SHEETS, content)) });
  for (const content of contents) day.label([known], content);
}

function severalInOneParcel(day: RunDay): void {
  const a = day.order(SINGLES, 'packed');
  const { buyer, street, town, postcode } = a;
  const b = day.order(SINGLES, 'packed', { together: a.number, buyer, street, town, postcode });
  day.label([a, b], day.content(a));
}

function byAddressAlone(day: RunDay): void {
  const order = day.order(SINGLES, 'packed');
  day.label([order], day.content(order, { order: 'none' }));
}

/** A small day: a few faults of a few kinds, a few good orders, one of them in several parcels or with another one in one. */
export function smallDay(seed: number): RunDay {
  const day = new RunDay(seed);
  const { random } = day;
  for (const plant of random.shuffled([...PLANTS, ...PAGE_PLANTS, ...ROW_PLANTS]).slice(0, 3)) plant(day);
  random.pick([inSeveralParcels, severalInOneParcel, byAddressAlone])(day);
  for (let n = 0; n < 5; n += 1) day.pair(random.pick([SHEETS, MANY, PAIRS, SINGLES]), 'packed');
  return day;
}
