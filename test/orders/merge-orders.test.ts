import { describe, expect, it } from 'vitest';
import { mergeOrders } from '../../src/orders/merge-orders.js';
import { readOrders } from '../../src/orders/read-orders.js';
import { mapFor } from './reading.js';

const file = (name: string, text: string) => readOrders(Buffer.from(text), name, mapFor(['Order', 'Name', 'Item']), 0);

describe('several order files of a channel', () => {
  it('give their orders one after the other, with all that was wrong', () => {
    const merged = mergeOrders([
      file('a.csv', 'Order,Name,Item\nA-1,Ada,Mug\n,Eve,Mug\n'),
      file('b.csv', 'Order,Name,Item\nA-2,Eve,Mug\n'),
    ]);
    expect(merged.orders.map(({ number, place }) => `${number} ${place.file}`)).toEqual(['A-1 a.csv', 'A-2 b.csv']);
    expect(merged.diagnostics.map(({ code }) => code)).toEqual(['orders/no-number']);
  });

  it('an order in two of them is one; the note is for the second', () => {
    const text = 'Order,Name,Item\nA-1,Ada,Mug\n';
    const merged = mergeOrders([file('a.csv', text), file('b.csv', `\n${text}`)]);
    expect(merged.orders).toHaveLength(1);
    expect(merged.orders[0]?.incomplete).toBeUndefined();
    expect(merged.diagnostics).toMatchObject([{ code: 'orders/duplicate-number', severity: 'note', place: { file: 'b.csv', line: 3 } }]);
  });

  it('that tell it differently leave the first, as incomplete', () => {
    const merged = mergeOrders([file('a.csv', 'Order,Name,Item\nA-1,Ada,Mug\n'), file('b.csv', 'Order,Name,Item\nA-1,Ada,Bowl\n')]);
    expect(merged.orders).toMatchObject([{ number: 'A-1', incomplete: true, items: [{ description: 'Mug' }], place: { file: 'a.csv' } }]);
    expect(merged.diagnostics).toMatchObject([{ severity: 'warning', message: expect.stringContaining('a.csv, line 2') as string }]);
  });
});
