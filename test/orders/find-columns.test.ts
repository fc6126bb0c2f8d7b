import { describe, expect, it } from 'vitest';
import { orderMap } from '../../src/orders/order-map.js';
import { only, read, told, withCode } from './reading.js';

const columns = { order: ['Order'], buyer: ['Name'], sku: ['SKU', 'Item no.'], address: ['Street', 'Town'] };

describe('the columns of a map in a file', () => {
  it('are found whatever their capitals, blanks and order', () => {
    const order = only(read('TOWN; street ;name;  order\nSampleton;7 Example Street;Ada;A-1\n', orderMap({ ...columns, sku: ['Name'] })));
    expect(order).toMatchObject({ number: 'A-1', buyer: 'Ada', address: ['7 Example Street', 'Sampleton'] });
  });

  it('of which one of several is there are no loss, but of those that are joined each is missed', () => {
    const result = read('Order,Name,Item no.,Street\nA-1,Ada,MUG-1,7 Example Street\n', orderMap(columns));
    expect(only(result)).toMatchObject({ items: [{ sku: 'MUG-1' }], address: ['7 Example Street'] });
    expect(withCode(result, 'orders/missing-column').map(({ message }) => message)).toEqual(['the file has no column `Town`']);
  });

  it('that are missing are told with the nearest name, or with those that there are', () => {
    const result = read('Order,Nmae\nA-1,Ada\n', orderMap({ order: ['Order'], buyer: ['Name'], 'ship-by': ['Latest day'] }));
    expect(only(result)).toMatchObject({ number: 'A-1', buyer: '' });
    expect(told(result)).toEqual(['1:1 orders/missing-column', '1:1 orders/missing-column']);
    const remedies = result.diagnostics.map(({ remedy }) => remedy);
    expect(remedies).toContain('Write `Nmae` for `buyer` below `orders: columns:` in the recipe.');
    expect(remedies).toContain(
      'The file has `Order`, `Nmae`: write the one for `ship-by` below `orders: columns:` in the recipe, or take the key out.',
    );
  });

  it('without the one of the order number are not asked for, and there are no orders', () => {
    const result = read('Number,Name\nA-1,Ada\n', orderMap(columns));
    expect(result.orders).toEqual([]);
    expect(result.diagnostics).toMatchObject([{ code: 'orders/missing-column', severity: 'error' }]);
    expect(result.diagnostics[0]?.message).toBe('the file has no column `Order`, so no order can be read');
  });

  it('of which there are many are not all named', () => {
    const names = Array.from({ length: 40 }, (_, at) => `Column ${at}`);
    const [diagnostic] = read(
      `${names.join(',')}\n${names.map(() => 'x').join(',')}\n`,
      orderMap({ order: ['Bestellnummer'] }),
    ).diagnostics;
    expect(diagnostic?.remedy).toContain('`Column 11`, …: write the one for `order`');
    expect(diagnostic?.remedy).not.toContain('Column 12');
  });
});
