import { describe, expect, it } from 'vitest';
import { orderMap } from '../../src/orders/order-map.js';
import { only, read, told } from './reading.js';

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
    expect(read('{"data":{"orders":[]}}', AT)).toEqual({ orders: [], diagnostics: [] });
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
    const result = read(whole.slice(0, -60), MAP);
    expect(result.orders.map(({ number }) => number)).toEqual(['1001', '1002']);
    expect(result.diagnostics.map(({ code }) => code)).toContain('orders/json');
  });

  it('tells two objects with one number, also next to each other', () => {
    const map = orderMap({ order: ['no'], sku: ['code'] });
    const result = read('[{"no": 1, "code": "a"}, {"no": 1, "code": "a"}, {"no": 1, "code": "b"}]', map);
    expect(told(result)).toEqual(['1:33 orders/duplicate-number']);
    expect(only(result).items.map(({ sku }) => sku)).toEqual(['a', 'b']);
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
