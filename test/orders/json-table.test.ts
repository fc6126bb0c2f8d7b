import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { orderMap } from '../../src/orders/order-map.js';
import type { OrdersRead } from '../../src/orders/read-orders.js';
import { mapFor, only, read, told } from './reading.js';

const MAP = orderMap({
  order: ['no'],
  buyer: ['to.name'],
  postcode: ['to.zip'],
  sku: ['goods.code'],
  quantity: ['goods.count'],
  tracking: ['parcels.tracking'],
  gift: ['gift'],
});
const AT = { ...MAP, list: 'data.orders' };

const ORDER = {
  no: 1001,
  to: { name: 'Ada Example', zip: '01101' },
  goods: [
    { code: 'M-1', count: 2 },
    { code: 'P-2', count: 1 },
  ],
  parcels: [{ tracking: '9400111206206406260787' }, { tracking: '9400111206206406260794' }],
  gift: true,
};

describe('a list of orders in JSON', () => {
  it('gives orders with items and every value of a list', () => {
    const result = read(JSON.stringify([ORDER], null, 2), MAP);
    expect(result.diagnostics).toEqual([]);
    expect(only(result)).toMatchObject({
      number: '1001',
      buyer: 'Ada Example',
      postcode: '01101',
      gift: true,
      tracking: ['9400111206206406260787', '9400111206206406260794'],
      items: [
        { sku: 'M-1', quantity: 2 },
        { sku: 'P-2', quantity: 1 },
      ],
      place: { file: 'orders.csv', line: 2 },
    });
  });

  it('may stand at a path of keys', () => {
    expect(only(read(JSON.stringify({ data: { orders: [ORDER] } }), AT)).number).toBe('1001');
    expect(told(read('{"data":{"orders":[]}}', AT))).toEqual(['1:1 orders/no-rows']);
    expect(read('[]', MAP).orders).toEqual([]);
  });

  it('that is elsewhere is told with the path to write', () => {
    const result = read(JSON.stringify({ data: { orders: [ORDER] } }), MAP);
    expect(result.orders).toEqual([]);
    expect(result.diagnostics).toMatchObject([{ code: 'orders/list', remedy: expect.stringContaining('`list: data.orders`') as string }]);
    expect(read(JSON.stringify([ORDER]), AT).diagnostics).toMatchObject([
      { code: 'orders/list', remedy: expect.stringContaining('Take `list` out') as string },
    ]);
  });

  it('has numbers of any length as they are written', () => {
    const text = '[{"no": 940011120620640626078712345, "parcels": [{"tracking": 9400111206206406260787}]}]';
    expect(only(read(text, { ...MAP, columns: { order: ['no'], tracking: ['parcels.tracking'] } }))).toMatchObject({
      number: '940011120620640626078712345',
      tracking: ['9400111206206406260787'],
    });
  });

  it('may have dots in keys, and items that are texts alone', () => {
    const map = orderMap({ order: ['a.no'], sku: ['goods'] });
    expect(only(read('[{"a.no": "1", "goods": ["M-1", "P-2"]}]', map)).items.map(({ sku }) => sku)).toEqual(['M-1', 'P-2']);
  });

  it('names line and column of a value', () => {
    const result = read('[\n  {"no": 1},\n  {"no": 2,\n   "goods": [{"code": "M", "count": "x"}]}\n]', {
      ...MAP,
      columns: { order: ['no'], sku: ['goods.code'], quantity: ['goods.count'] },
    });
    expect(told(result)).toEqual(['4:37 orders/bad-number']);
    expect(result.orders.map(({ incomplete }) => incomplete)).toEqual([undefined, true]);
  });

  it('loses the object with a mistake in it, not the others', () => {
    const map = orderMap({ order: ['no'] });
    const result = read('[{"no": 1}, {"no" 2}, {"no": 3},]', map);
    expect(result.orders.map(({ number }) => number)).toEqual(['1', '3']);
    expect(told(result)[0]).toBe('1:19 orders/json');
  });

  it('that was cut off gives what is whole', () => {
    const whole = JSON.stringify([ORDER, { ...ORDER, no: 1002 }, { ...ORDER, no: 1003 }]);
    const { orders } = read(whole, MAP);
    expect(orders.map(({ number }) => number)).toEqual(['1001', '1002', '1003']);
    for (let end = 2; end < whole.length; end++) {
      const cut = read(whole.slice(0, end), MAP);
      expect(cut.orders).toEqual(orders.slice(0, cut.orders.length));
      expect(cut.orders.length).toBe(whole.slice(0, end).split('true}').length - 1);
      expect(cut.diagnostics.map(({ code }) => code)).toContain('orders/json');
    }
  });

  it('tells two objects with one number, also next to each other', () => {
    const map = orderMap({ order: ['no'], sku: ['goods.code'] });
    const order = (code: string): object => ({ no: 1, goods: [{ code }] });
    const result = read(JSON.stringify([order('a'), order('a'), order('b')]), map);
    expect(told(result)).toEqual(['1:40 orders/duplicate-number']);
    expect(only(result).items.map(({ sku }) => sku)).toEqual(['a', 'b']);
    expect(told(read('[{"no": 1}, {"no": 1}]', orderMap({ order: ['no'] })))).toEqual(['1:20 orders/duplicate-number']);
  });

  it('may have one object for each item, those of one order below each other as in a table', () => {
    const map = orderMap({ order: ['no'], buyer: ['to.name'], sku: ['code'], quantity: ['count'] });
    const line = (no: number, code: string): object => ({ no, to: { name: `Buyer ${no}` }, code, count: 1 });
    const result = read(JSON.stringify([line(1, 'a'), line(1, 'b'), line(1, 'b'), line(2, 'a')]), map);
    expect(result.diagnostics).toEqual([]);
    expect(result.orders.map(({ number, items }) => [number, items.map(({ sku }) => sku)])).toEqual([
      ['1', ['a', 'b', 'b']],
      ['2', ['a']],
    ]);
    // As in a table: an order that comes again further down is told.
    const again = read(JSON.stringify([line(1, 'a'), line(2, 'a'), line(1, 'b')], null, 1), map);
    expect(again.diagnostics.map(({ code }) => code)).toEqual(['orders/duplicate-number']);
    expect(again.orders.map(({ items }) => items.length)).toEqual([2, 1]);
  });

  it('says the same of a day as the table of it does', () => {
    const map = mapFor(['Order', 'Name', 'Item no.', 'Pieces']);
    const lines = fc.array(
      fc.record({ no: fc.integer({ min: 1, max: 6 }), sku: fc.constantFrom('M-1', 'P-2', 'Q-3'), pieces: fc.integer({ min: 1, max: 9 }) }),
      { minLength: 1, maxLength: 12 },
    );
    fc.assert(
      fc.property(lines, (given) => {
        const rows = given.map(({ no, sku, pieces }) => ({
          Order: `A-${no}`,
          Name: `Buyer ${no}`,
          'Item no.': sku,
          Pieces: String(pieces),
        }));
        const table = ['Order,Name,Item no.,Pieces', ...rows.map((row) => Object.values(row).join(','))].join('\n');
        const said = ({ orders, diagnostics }: OrdersRead): unknown => [
          orders.map((order) => ({ ...order, place: undefined })),
          diagnostics.map(({ code }) => code),
        ];
        expect(said(read(JSON.stringify(rows), map))).toEqual(said(read(table, map)));
      }),
    );
  });

  it('nested without end is refused, and brackets in texts do not count', () => {
    const result = read('['.repeat(1_000_000), MAP);
    expect(result.orders).toEqual([]);
    expect(told(result)).toEqual(['1:1 orders/json']);
    expect(only(read(`[{"no": "${'['.repeat(500)}"}]`, orderMap({ order: ['no'] }))).number).toHaveLength(500);
  });

  it('takes nothing from null, objects and keys that are absent', () => {
    const result = read('[{"no": 1, "to": {"name": null, "zip": {}}}]', {
      ...MAP,
      columns: { order: ['no'], buyer: ['to.name'], postcode: ['to.zip'] },
    });
    expect(only(result)).toMatchObject({ buyer: '', postcode: '' });
  });
});
