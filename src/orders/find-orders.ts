import type { Reason } from '../sheet/sheet.js';
import { cluesDiffer, otherChannel, sharedTracking, twoOrders } from './conflicts.js';
import { namedByFile } from './file-name.js';
import type { ChannelRules, Clue, Evidence } from './matching.js';
import type { Order } from './order.js';
import type { OrderIndex } from './order-index.js';
import type { ReadLabel } from './read-label.js';
import { knowsTracking } from './tracking.js';

/** Which orders a label is for, as far as its own clues say. Orders and bundles are indexes. */
export type Finding =
  | ({
      readonly kind: 'found';
      readonly bundle: number;
      /** The bundle's orders that go in this parcel. */
      readonly orders: readonly number[];
      /** The tracking number that decided. */
      readonly tracking: string | undefined;
    } & Evidence)
  | { readonly kind: 'conflict'; readonly orders: readonly number[]; readonly reason: Reason }
  | { readonly kind: 'none' };

/** Orders that one clue names, and the bundles that they are in. */
interface Named {
  readonly by: Clue;
  readonly orders: readonly number[];
  readonly bundles: readonly number[];
}

/**
 * Looks for the orders of a label. The strongest clue that names any order decides: tracking number, order number on the label or in a
 * code, file name, postcode with name. A clue is specific when it names one bundle (one order, or orders stated to go together); a file's
 * name only when the file holds no more labels than that bundle has parcels.
 *
 * Held, not guessed: the deciding clue names several bundles; a weaker one (not the address) is specific as well and names another bundle; the
 * tracking number is known to orders that don't go together, or to an order of another channel. A weaker clue that names several is
 * no contradiction, and the address is compared with the order afterwards.
 *
 * By address only when one order of the channel fits; one whose tracking numbers are known never fits a label that carries another.
 * @param labelsInFile outbound labels that the label's file holds
 */
export function findOrders(index: OrderIndex, label: ReadLabel, rules: ChannelRules, labelsInFile: number): Finding {
  const { channel, codes, fileName } = label.facts;
  const ordersOf = (indexes: readonly number[]): readonly Order[] => indexes.flatMap((each) => index.orders[each] ?? []);
  const named = (by: Clue, orders: Iterable<number>): Named => {
    const sorted = [...new Set(orders)].sort((a, b) => a - b);
    return { by, orders: sorted, bundles: [...new Set(sorted.flatMap((order) => index.bundleOf.get(order) ?? []))] };
  };
  const conflict = (orders: readonly number[], reason: Reason): Finding => ({ kind: 'conflict', orders, reason });

  const keys = index.tracking.within(codes);
  const tracking = named(
    'tracking',
    keys.flatMap((key) => index.tracking.get(key)),
  );
  if (tracking.bundles.length > 1) {
    const shared = keys.find((key) => named('tracking', index.tracking.get(key)).bundles.length > 1);
    const orders = ordersOf(tracking.orders);
    return conflict(tracking.orders, shared === undefined ? twoOrders('tracking', orders) : sharedTracking(shared, orders));
  }
  if (tracking.orders.some((order) => index.orders[order]?.channel !== channel))
    return conflict(tracking.orders, otherChannel(ordersOf(tracking.orders)));

  const numbers = index.numbers.get(channel);
  const number = named('order-number', numbers ? [...numbers.inLines(label.lines), ...numbers.inCodes(codes)] : []);
  const file = named('file-name', numbers ? namedByFile(numbers, fileName, rules.fileName) : []);
  const isSpecific = ({ by, bundles }: Named): boolean =>
    bundles.length === 1 && (by !== 'file-name' || labelsInFile <= (index.bundles[bundles[0] ?? -1]?.parcels ?? 0));

  const clues = [tracking, number, file].filter(({ bundles }) => bundles.length > 0);
  const first = clues[0] ?? named('address', byAddress(index, label));
  const [bundle] = first.bundles;
  if (bundle === undefined) return { kind: 'none' };
  if (first.bundles.length > 1) return conflict(first.orders, twoOrders(first.by, ordersOf(first.orders)));
  const other = clues.find((clue) => isSpecific(clue) && clue.bundles[0] !== bundle);
  if (other && isSpecific(first)) {
    const orders = [...new Set([...first.orders, ...other.orders])];
    return conflict(orders, cluesDiffer(first.by, ordersOf(first.orders), other.by, ordersOf(other.orders)));
  }
  const also = clues.slice(1).flatMap(({ by, bundles }) => (bundles.length === 1 && bundles[0] === bundle ? [by] : []));
  return { kind: 'found', bundle, orders: inThisParcel(index, bundle, first), by: first.by, also, tracking: keys[0] };
}

function byAddress(index: OrderIndex, label: ReadLabel): readonly number[] {
  const fitting = index.addresses.get(label.facts.channel)?.onLabel(label) ?? [];
  const carriesTracking = label.facts.codes.some(({ tracking }) => tracking !== undefined);
  return carriesTracking ? fitting.filter((order) => !knowsTracking(index.orders[order])) : fitting;
}

/** By tracking number those orders that know it, and those of the bundle that know none; by another clue all. */
function inThisParcel(index: OrderIndex, bundle: number, { by, orders }: Named): readonly number[] {
  const all = index.bundles[bundle]?.orders ?? [];
  if (by !== 'tracking' || all.length === 1) return all;
  return all.filter((order) => orders.includes(order) || !knowsTracking(index.orders[order]));
}
