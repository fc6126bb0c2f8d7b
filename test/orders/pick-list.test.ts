import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pickRows, pickTable } from '../../src/orders/pick-list.js';
import { order, packed, someParcels, thing } from './packed.js';

describe('the rows of a pick list', () => {
  it('are one for each thing and bin, sorted as a person counts, things without a bin last', () => {
    const mug = thing('MUG-2', 1, { bin: 'B10', description: 'Mug', variant: 'blue' });
    const rows = pickRows([
      packed(1, [order('S-1', [mug, thing('CARD', 3)])]),
      packed(2, [order('S-2', [{ ...mug, quantity: 4, description: 'Blue mug' }, thing('TRAY', 1, { bin: 'B9' })])]),
      packed(3, [order('S-3', [{ ...mug, variant: 'red' }])]),
    ]);
    expect(rows).toEqual([
      { bin: 'B9', sku: 'TRAY', description: 'Thing TRAY', variant: '', quantity: 1, numbers: [2] },
      { bin: 'B10', sku: 'MUG-2', description: 'Blue mug / Mug', variant: 'blue', quantity: 5, numbers: [1, 2] },
      { bin: 'B10', sku: 'MUG-2', description: 'Mug', variant: 'red', quantity: 1, numbers: [3] },
      { bin: '', sku: 'CARD', description: 'Thing CARD', variant: '', quantity: 3, numbers: [1] },
    ]);
  });

  it('count an order that goes in two parcels once', () => {
    const big = order('S-1', [thing('SHELF', 2)], { parcels: 2 });
    expect(pickRows([packed(4, [big]), packed(5, [big])])).toMatchObject([{ quantity: 2, numbers: [4, 5] }]);
  });

  it('tell things without a SKU apart by their names', () => {
    const rows = pickRows([packed(1, [order('S-1', [thing('', 1, { description: 'Pin' }), thing('', 1, { description: 'Bow' })])])]);
    expect(rows.map(({ description }) => description)).toEqual(['Bow', 'Pin']);
  });

  it('are none for parcels without orders', () => {
    expect(pickRows([packed(1, [])])).toEqual([]);
    expect(pickTable([])).toHaveLength(1);
  });

  it('hold every piece of every order once, and only numbers of parcels that hold it', () => {
    fc.assert(
      fc.property(someParcels, (parcels) => {
        const rows = pickRows(parcels);
        const orders = new Map(parcels.flatMap((each) => each.orders.map((inside) => [inside.id, inside] as const)));
        const pieces = [...orders.values()].flatMap(({ items }) => items.map(({ quantity }) => quantity));
        expect(rows.reduce((sum, { quantity }) => sum + quantity, 0)).toBe(pieces.reduce((sum, each) => sum + each, 0));
        for (const { sku, bin, numbers } of rows) {
          const holders = parcels.filter((each) =>
            each.orders.some(({ items }) => items.some((item) => item.sku === sku && item.bin === bin)),
          );
          expect(numbers).toEqual(holders.map(({ number }) => number));
        }
        expect(pickRows([...parcels].reverse())).toEqual(rows);
      }),
    );
  });

  it('hold no buyer', () => {
    expect(JSON.stringify(pickTable(pickRows([packed(1, [order('S-1', [thing('A1')])])])))).not.toMatch(/Robin|Example Street|00000/);
  });
});
