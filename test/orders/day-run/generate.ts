import { Random } from '../day/random.js';
import { LABEL_PLANTS } from './plants-labels.js';
import { PAGE_PLANTS } from './plants-pages.js';
import { ROW_PLANTS } from './plants-rows.js';
import { TOGETHER_KINDS, TOGETHER_PLANTS } from './plants-together.js';
import { CHANNEL_NUMBERS, MANY, PAIRS, PICTURES, RunDay, SORTED_BY, SHEETS, SINGLES, trackingOf, type Plant } from './run-day.js';

export const PLANTS: readonly Plant[] = [...LABEL_PLANTS, ...TOGETHER_PLANTS, ...PAGE_PLANTS, ...ROW_PLANTS];

/** Good orders that are not plain. */
const KINDS: readonly Plant[] = [
  ...TOGETHER_KINDS,
  (day) => {
    const order = day.order(day.any([MANY, SINGLES]), 'packed', { parcels: 2 });
    for (let n = 0; n < 2; n += 1) day.label([order], day.content(order));
  },
  (day) => {
    const channel = day.any([SHEETS, PICTURES, MANY]);
    const order = day.order(channel, 'packed');
    const contents = [day.content(order), day.content(order)];
    const known = day.change(order, { tracking: contents.map((content) => trackingOf(channel, content)) });
    for (const content of contents) day.label([known], content);
  },
  (day) => {
    const order = day.order(SINGLES, 'packed');
    day.label([order], day.content(order, { order: 'none' }));
  },
];

/** A day with `count` orders: all faults, good orders of every kind, and plain ones. */
export function runDay(seed: number, count = 300): RunDay {
  const day = new RunDay(seed);
  for (const plant of [...PLANTS, ...KINDS, ...KINDS]) plant(day);
  // Pictures and the largest codes are dear to draw: fewer of them.
  const channels = [SHEETS, MANY, PAIRS, SHEETS, MANY, SINGLES, SHEETS, MANY, PICTURES];
  for (let n = 0; day.orders.length < count; n += 1) day.pair(channels[n % channels.length] ?? SHEETS, 'packed');
  return day;
}

/** A day of four to eight orders in two or three channels, sorted by something, with up to three faults and an order that is good and not plain. */
export function smallDay(seed: number): RunDay {
  const random = new Random(seed);
  const channels = random.shuffled(CHANNEL_NUMBERS).slice(0, 2 + random.below(2));
  const stackOrder = random.shuffled(SORTED_BY).slice(0, 1 + random.below(3));
  const day = new RunDay(random.below(1e9), { channels, stackOrder });
  const most = channels.length + 2 + random.below(4);
  // Each channel has a plain order.
  const room = (): number => most - channels.length - day.orders.length;
  const plantSome = (plants: readonly Plant[], count: number): void => {
    for (const plant of random
      .shuffled(plants)
      .filter((each) => fits(each, channels, room()))
      .slice(0, count)) {
      if (fits(plant, channels, room())) plant(day);
    }
  };
  plantSome(KINDS, random.below(2));
  plantSome(PLANTS, 1 + random.below(3));
  for (const channel of channels) day.pair(channel, 'packed');
  while (day.orders.length < most) day.pair(random.pick(channels), 'packed');
  return day;
}

/** Whether what a plant puts into a day stands in these channels, and is not more than so many orders. */
function fits(plant: Plant, channels: readonly number[], room: number): boolean {
  const trial = new RunDay(1, { channels });
  plant(trial);
  const touched = [...trial.orders, ...trial.labels].map(({ channel }) => channel);
  return trial.orders.length <= room && touched.every((channel) => channels.includes(channel));
}
