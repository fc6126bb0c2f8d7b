import { createHash } from 'node:crypto';
import { artOf, type DayFile } from './files.js';
import { MANY, PAIRS, PICTURES, SINGLES, trackingOf, type RunDay, type RunLabel, type RunOrder } from './run-day.js';

/** A parcel as it must lie in the stack. */
export interface Parcel {
  /** Digests of the codes on its label, sorted, as run.json tells them. */
  readonly codes: readonly string[];
  readonly orders: readonly RunOrder[];
  /** Empty where neither the order nor a code of its own says which part of a code it is. */
  readonly tracking: string;
}

/** The parcels in the order in which they are to be packed: by ship-by day (unknown last), then order number, then as the files lie. */
export function expectedParcels(files: readonly DayFile[]): readonly Parcel[] {
  const inOrder = files.toSorted((a, b) => channelOf(a) - channelOf(b) || (a.path < b.path ? -1 : 1));
  const ready = [...new Set(inOrder.flatMap(({ labels }) => labels))].filter(({ ends }) => ends === 'ready');
  const keyOf = ({ orders }: RunLabel): string => {
    const days = orders.flatMap(({ shipBy }) => (shipBy === '' ? [] : [shipBy])).sort();
    return `${days[0] ?? '9'} ${orders.map(({ number }) => number).sort()[0] ?? ''}`;
  };
  return ready
    .map((each, at) => ({ each, at, key: keyOf(each) }))
    .sort((a, b) => (a.key === b.key ? a.at - b.at : a.key < b.key ? -1 : 1))
    .map(({ each }) => ({ codes: codesOf(each), orders: each.orders, tracking: knownTracking(each) }));
}

function knownTracking({ channel, content, orders }: RunLabel): string {
  const number = trackingOf(channel, content);
  // Nothing stands in these labels' longest code but the number.
  if (channel === MANY || channel === SINGLES) return number;
  return orders.some(({ tracking }) => tracking.includes(number)) ? number : '';
}

const channelOf = ({ labels }: DayFile): number => labels[0]?.channel ?? 0;

/** Digests of what stands in the codes that were drawn. */
function codesOf(each: RunLabel): readonly string[] {
  const dots = each.channel === PICTURES ? 203 / 72 : undefined;
  return artOf(each)
    .codes(dots)
    .map(({ identifier, bytes }) => createHash('sha256').update(identifier).update(Buffer.from(bytes, 'hex')).digest('hex'))
    .sort();
}

/** How each label page ends, by file and page: `held orders/two-orders`. */
export function expectedEnds(files: readonly DayFile[]): readonly string[] {
  const seen = new Set<RunLabel>();
  return files
    .flatMap(({ path, labels }) =>
      labels.map((each, at) => {
        const page = each.ends.startsWith('failed') || seen.has(each) ? 0 : each.channel === PAIRS ? 2 * at + 1 : at + 1;
        const ends = seen.has(each) ? 'skipped intake/duplicate' : each.ends;
        seen.add(each);
        return `inbox/${path} ${page} ${ends}`;
      }),
    )
    .sort();
}

/** What is to be fetched: pieces by SKU, each order once. */
export function expectedPieces(day: RunDay, parcels: readonly Parcel[]): ReadonlyMap<string, number> {
  const packed = new Set(parcels.flatMap(({ orders }) => orders.map(({ number }) => number)));
  const pieces = new Map<string, number>();
  for (const { number, items } of day.orders) {
    if (!packed.has(number)) continue;
    for (const { sku, quantity } of items) pieces.set(sku, (pieces.get(sku) ?? 0) + quantity);
  }
  return pieces;
}
