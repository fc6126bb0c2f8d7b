import { performance } from 'node:perf_hooks';
import type { LabelFacts } from '../../src/orders/label-facts.js';
import { looseEnds } from '../../src/orders/loose-ends.js';
import { matchOrders } from '../../src/orders/match.js';
import type { MatchOptions } from '../../src/orders/matching.js';
import type { Order } from '../../src/orders/order.js';
import { mismatches, orderPlaces, orderSums } from '../../src/orders/order-places.js';
import { SORT_KEYS, sortParcels } from '../../src/orders/sort-parcels.js';
import { generateDay } from '../orders/day/day.js';
import { WAYS, type Way } from '../orders/day/maker.js';
import { addressed, label, order } from '../orders/make.js';

/*
 * npx tsx test/bench/match.ts [orders]: matches and sorts a day, by default 10,000 orders; a day in which everybody lives in one postcode;
 * and one for each clue alone.
 */

const count = Number(process.argv[2] ?? '10000');
const line = (text: string): void => void process.stdout.write(`${text}\n`);

/** What is matched. */
interface Given {
  readonly orders: readonly Order[];
  readonly labels: readonly LabelFacts[];
  readonly options: MatchOptions;
}

function measure(name: string, { orders, labels, options }: Given): void {
  const cpu = process.cpuUsage();
  const start = performance.now();
  const matching = matchOrders(orders, labels, options);
  const matched = performance.now();
  const { user, system } = process.cpuUsage(cpu);
  const byId = new Map(orders.map((each) => [each.id, each]));
  const parcels = matching.parcels.map((parcel, downloaded) => {
    const own = parcel.orders.flatMap((id) => byId.get(id) ?? []);
    return { orders: own, channel: own[0]?.channel ?? 0, carrier: ['Quillhaul', 'Kestomar', ''][downloaded % 3] ?? '', downloaded };
  });
  const sortedBy = sortParcels(
    parcels,
    SORT_KEYS.filter((key) => key !== 'as-downloaded'),
  );
  const sorted = performance.now();
  const places = orderPlaces(orders, labels, matching);
  const ends = looseEnds(orders, labels, matching, places);
  const end = performance.now();
  const wrong = mismatches(orders, labels, matching, places);
  if (wrong.length > 0 || sortedBy.length !== parcels.length) throw new Error(wrong.join('\n'));
  const { byPlace } = orderSums(places, matching);
  line(
    `${name}: ${orders.length} orders, ${labels.length} labels: matched ${Math.round(matched - start)} ms (${Math.round((user + system) / 1000)} ms CPU), sorted by six keys ${Math.round(sorted - matched)} ms, ` +
      `loose ends ${Math.round(end - sorted)} ms; ${byPlace.packed} packed, ${byPlace.held} held, ${ends.length} loose ends`,
  );
}

/** Orders of which each has one label that says who it is for in one way only; all in one postcode. */
function oneWay(way: Way): Given {
  const numbers = Array.from({ length: count }, (_, at) => `KLN-${100_000 + at}`);
  const orders = numbers.map((number, at): Order =>
    order(number, {
      buyer: `${lettersOf(at % 100)} ${lettersOf(Math.floor(at / 100))}moor`,
      tracking: way === 'tracking' ? [`TDW${100_000_000 + at}`] : [],
    }),
  );
  const labels = orders.map((each, at) => {
    const tracking = `TDW${100_000_000 + at}`;
    const lines = way === 'order-number' ? [`Order ${each.number}`] : way === 'address' ? addressed(each) : [];
    return label(`l${at}`, { tracking, lines, ...(way === 'file-name' ? { fileName: `${each.number}.pdf` } : {}) });
  });
  return { orders, labels, options: generateDay(1, 10, 0).options };
}

/** A word of its own for each number below 625; any two differ in two letters or more. */
const lettersOf = (n: number): string =>
  Array.from(n.toString(5).padStart(4, '0'), (digit) => ['ba', 'ce', 'di', 'fo', 'gu'][Number(digit)] ?? '').join('');

const before = performance.now();
const day = generateDay(1, count);
line(`Node ${process.version}; ${count} orders made in ${Math.round(performance.now() - before)} ms`);
measure('a day like others', day);
for (const way of WAYS) measure(`by ${way} alone, one postcode`, oneWay(way));
line(
  `${Math.round(process.resourceUsage().maxRSS / 1024)} MB peak memory of the process, orders, labels and the loader of TypeScript included`,
);
