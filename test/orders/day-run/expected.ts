import { createHash } from 'node:crypto';
import { artOf, CARRIER_OF, type DayFile } from './files.js';
import { MANY, PAIRS, PICTURES, SINGLES, trackingOf, type RunDay, type RunLabel, type RunOrder, type SortedBy } from './run-day.js';

/** A parcel as it must lie in the stack. */
export interface Parcel {
  /** Digests of the codes on each of its labels, sorted, as run.json tells them. */
  readonly codes: readonly (readonly string[])[];
  readonly orders: readonly RunOrder[];
  /** Empty where neither the order nor a code of its own says which part of a code it is. */
  readonly tracking: string;
  /** What its pages are, in their order. */
  readonly pages: readonly ('label' | 'return-label' | 'slip' | 'customs-form')[];
}

/**
 * The parcels in the order in which they are to be packed: as the day sorts them, then as the files lie. A return label goes with the parcel of its
 * order, behind all else; where that has none, alone.
 */
export function expectedParcels(files: readonly DayFile[], stackOrder: readonly SortedBy[]): readonly Parcel[] {
  const inOrder = files.toSorted((a, b) => channelOf(a) - channelOf(b) || (a.path < b.path ? -1 : 1));
  const ready = [...new Set(inOrder.flatMap(({ labels }) => labels))].filter(({ ends }) => ends === 'ready');
  const outbound = ready.filter(({ kind }) => kind !== 'return');
  const returnsOf = ({ orders }: RunLabel): readonly RunLabel[] =>
    ready.filter(({ kind, orders: own }) => kind === 'return' && own.some(({ number }) => orders.some((order) => order.number === number)));
  const alone = ready.filter((each) => each.kind === 'return' && !outbound.some((other) => returnsOf(other).includes(each)));
  return [...outbound, ...alone]
    .map((each, at) => ({ each, at: inOrder.findIndex(({ labels }) => labels.includes(each)) * 1000 + at, key: sortKey(each, stackOrder) }))
    .sort((a, b) => (a.key === b.key ? a.at - b.at : a.key < b.key ? -1 : 1))
    .map(({ each }): Parcel => {
      if (each.kind === 'return') return { codes: [codesOf(each)], orders: [], tracking: '', pages: ['return-label'] };
      const returns = returnsOf(each);
      const form = each.kind === 'with-form' ? (['customs-form'] as const) : [];
      return {
        codes: [each, ...returns].map(codesOf),
        orders: each.orders,
        tracking: knownTracking(each),
        pages: ['label', 'slip', ...form, ...returns.map(() => 'return-label' as const)],
      };
    });
}

/** Behind everything that is known. */
const UNKNOWN = '~';

/** A text that sorts as the parcel is to lie: numbers in names by their value, what isn't known last; a return label alone knows no order. */
function sortKey({ kind, channel, orders }: RunLabel, stackOrder: readonly SortedBy[]): string {
  const own = kind === 'return' ? [] : orders;
  const items = own.flatMap((order) => (order.more ? [...order.items, order.more] : order.items));
  const skus = [...new Set(items.map(({ sku }) => sku))];
  const first = (texts: readonly string[]): string =>
    texts.map((text) => text.toLowerCase().replaceAll(/\d+/g, (digits) => digits.padStart(9, '0'))).sort()[0] ?? UNKNOWN;
  const keys: Readonly<Record<SortedBy, () => string>> = {
    'ship-by': () => first(own.flatMap(({ shipBy }) => (shipBy === '' ? [] : [shipBy]))),
    sku: () => (skus.length > 1 ? '}' : first(skus)),
    bin: () => first(items.map(({ bin }) => bin)),
    channel: () => String(channel),
    carrier: () => first([CARRIER_OF[channel] ?? '']),
    'order-number': () => first(own.map(({ number }) => number)),
  };
  return stackOrder.map((key) => keys[key]()).join('\n');
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

/** How each page with a label or a form ends, by file and page: `held orders/two-orders`. */
export function expectedEnds(files: readonly DayFile[]): readonly string[] {
  const seen = new Set<RunLabel>();
  return files
    .flatMap(({ path, labels }) =>
      labels.flatMap((each, at) => {
        const again = seen.has(each);
        seen.add(each);
        if (again)
          return each.spoiled === 'file-twice' ? [`inbox/${path} 0 skipped intake/duplicate`] : [`inbox/${path} 1 skipped batch/duplicate`];
        const page = each.ends.startsWith('failed') ? 0 : each.channel === PAIRS ? 2 * at + 1 : at + 1;
        const form = each.ends === 'ready' ? 'ready' : 'held batch/parcel-held';
        return [`inbox/${path} ${page} ${each.ends}`, ...(each.kind === 'with-form' ? [`inbox/${path} ${page + 1} ${form}`] : [])];
      }),
    )
    .sort();
}

/** What is to be fetched: pieces by SKU, each order once. */
export function expectedPieces(day: RunDay, parcels: readonly Parcel[]): ReadonlyMap<string, number> {
  const packed = new Set(parcels.flatMap(({ orders }) => orders.map(({ number }) => number)));
  const pieces = new Map<string, number>();
  for (const { number, items, more } of day.orders) {
    if (!packed.has(number)) continue;
    for (const { sku, quantity } of more ? [...items, more] : items) pieces.set(sku, (pieces.get(sku) ?? 0) + quantity);
  }
  return pieces;
}
