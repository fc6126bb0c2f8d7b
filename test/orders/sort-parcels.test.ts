import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { compareNatural, naturalRanks } from '../../src/orders/natural.js';
import type { OrderItem } from '../../src/orders/order.js';
import { SORT_KEYS, sortParcels, type ParcelToSort, type SortKey } from '../../src/orders/sort-parcels.js';
import { item, order } from './make.js';

interface Named extends ParcelToSort {
  readonly name: string;
}

function parcel(
  name: string,
  {
    channel = 0,
    carrier = '',
    downloaded,
    ...rest
  }: Partial<ParcelToSort> & { readonly shipBy?: string; readonly items?: readonly OrderItem[] } = {},
): Named {
  const { shipBy, items } = rest;
  return { name, channel, carrier, downloaded, orders: rest.orders ?? [order(name, { shipBy, ...(items && { items }) })] };
}
const sorted = (keys: readonly SortKey[], ...parcels: readonly Named[]): string =>
  sortParcels(parcels, keys)
    .map(({ name }) => name)
    .join(' ');

describe('parcels are sorted', () => {
  it('by ship-by, the earliest of its orders, unknown last', () => {
    const two = parcel('two', { orders: [order('x', { shipBy: '2026-12-05' }), order('y', { shipBy: '2026-11-29' })] });
    expect(
      sorted(['ship-by'], parcel('none'), parcel('late', { shipBy: '2026-12-01' }), two, parcel('soon', { shipBy: '2026-11-28' })),
    ).toBe('soon two late none');
  });

  it('by SKU: those of one SKU, then those of several in the order given, then the unknown', () => {
    const sku = (name: string, ...skus: readonly string[]) => parcel(name, { items: skus.map((each) => item({ sku: each })) });
    expect(
      sorted(
        ['sku'],
        sku('none', ''),
        sku('many', 'B', 'A'),
        sku('b10', 'MUG-10'),
        sku('more', 'A', ''),
        sku('b2', 'MUG-2'),
        sku('same', 'MUG-2', 'MUG-2'),
        sku('empty'),
      ),
    ).toBe('b2 same b10 many more none empty');
  });

  it('by bin, the first of its items', () => {
    const bin = (name: string, ...bins: readonly string[]) => parcel(name, { items: bins.map((each) => item({ bin: each })) });
    expect(sorted(['bin'], bin('c', 'C1'), bin('a10', 'A10'), bin('none', ''), bin('two', 'Z9', 'A3', ''), bin('a2', 'a2'))).toBe(
      'a2 two a10 c none',
    );
  });

  it('by channel, carrier, order number and download', () => {
    expect(sorted(['channel'], parcel('b', { channel: 2 }), parcel('a', { channel: 0 }))).toBe('a b');
    expect(sorted(['carrier'], parcel('n'), parcel('t', { carrier: 'tidewick Express' }), parcel('q', { carrier: 'Quillhaul' }))).toBe(
      'q t n',
    );
    expect(sorted(['order-number'], parcel('A-10'), parcel('a-9'), parcel('', { orders: [] }), parcel('A-2'))).toBe('A-2 a-9 A-10 ');
    expect(sorted(['as-downloaded'], parcel('u'), parcel('b', { downloaded: 7 }), parcel('a', { downloaded: 0 }))).toBe('a b u');
  });

  it('by several keys in turn; case makes no difference between carriers', () => {
    const p = (name: string, carrier: string, shipBy: string) => parcel(name, { carrier, shipBy });
    expect(
      sorted(
        ['carrier', 'ship-by'],
        p('1', 'Quillhaul', '2026-12-02'),
        p('2', 'quillhaul', '2026-12-01'),
        p('3', 'Kestomar', '2026-12-09'),
      ),
    ).toBe('3 2 1');
  });
});

const anyParcel: fc.Arbitrary<Named> = fc
  .record({
    name: fc.constantFrom('A-1', 'A-2', 'A-10', 'b', ''),
    channel: fc.nat(2),
    carrier: fc.constantFrom('', 'Quillhaul', 'Kestomar'),
    downloaded: fc.option(fc.nat(5), { nil: undefined }),
    shipBy: fc.option(fc.constantFrom('2026-11-28', '2026-12-01'), { nil: undefined }),
    items: fc.array(fc.record({ sku: fc.constantFrom('', 'M-1', 'M-2'), bin: fc.constantFrom('', 'A1', 'A10', 'B') }), { maxLength: 3 }),
  })
  .map(({ name, channel, carrier, downloaded, shipBy, items }) => ({
    name,
    channel,
    carrier,
    downloaded,
    orders: [order(name, { shipBy, items: items.map(item) })],
  }));

describe('sorting', () => {
  const parcels = fc.array(anyParcel, { maxLength: 30 });
  const keys = fc.uniqueArray(fc.constantFrom(...SORT_KEYS), { maxLength: 4 });

  it('loses nothing, and sorting twice changes nothing more', () => {
    fc.assert(
      fc.property(parcels, keys, (given, by) => {
        const once = sortParcels(given, by);
        expect(new Set(once)).toEqual(new Set(given));
        expect(once).toHaveLength(given.length);
        expect(sortParcels(once, by)).toEqual(once);
      }),
    );
  });

  it('is stable: by a later key first and then by an earlier one is by both', () => {
    fc.assert(
      fc.property(parcels, fc.constantFrom(...SORT_KEYS), fc.constantFrom(...SORT_KEYS), (given, first, second) => {
        expect(sortParcels(sortParcels(given, [second]), [first])).toEqual(sortParcels(given, [first, second]));
      }),
    );
  });

  it('by no key leaves them as they are', () => {
    fc.assert(
      fc.property(parcels, (given) => {
        expect(sortParcels(given, [])).toEqual(given);
      }),
    );
  });
});

describe('natural order', () => {
  it('is an order: one way, the other way, and through a third', () => {
    const text = fc.oneof(fc.constantFrom('A-2', 'A-10', 'a-2', 'Ä1', '02', '2', '2.0', '1e3', '2026-11-28', 'ž', '見本'), fc.string());
    fc.assert(
      fc.property(text, text, (a, b) => {
        expect(Math.sign(compareNatural(a, b))).toBe(-Math.sign(compareNatural(b, a)) + 0);
      }),
    );
  });

  it('ranks texts as comparing does', () => {
    const ranks = naturalRanks(['A-10', 'A-9', 'a-9', 'B']);
    expect([...ranks].sort(([, a], [, b]) => a - b).map(([text]) => text)).toEqual(['A-9', 'a-9', 'A-10', 'B']);
    expect(ranks.get('A-9')).toBe(ranks.get('a-9'));
  });
});
