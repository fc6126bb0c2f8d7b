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

  it('that tell it differently leave the first, in doubt, with the places of the others', () => {
    const merged = mergeOrders(['Mug', 'Bowl', 'Mug', 'Plate'].map((item, at) => file(`${at}.csv`, `Order,Name,Item\nA-1,Ada,${item}\n`)));
    expect(merged.orders).toMatchObject([{ number: 'A-1', items: [{ description: 'Mug' }], place: { file: '0.csv', line: 2 } }]);
    expect(merged.orders[0]?.differsAt).toEqual([1, 3].map((at) => ({ file: `${at}.csv`, line: 2 })));
    expect(merged.diagnostics.map(({ severity, place }) => [severity, place])).toEqual(
      (['warning', 'note', 'warning'] as const).map((severity, at) => [
        severity,
        { kind: 'orders', file: `${at + 1}.csv`, line: 2, col: 1 },
      ]),
    );
    for (const { message } of merged.diagnostics) expect(message).toContain('stands in 0.csv, line 2, too');
  });

  it('of which one says that it is to be shipped leave it to be shipped', () => {
    const text = (status: string): string => `Order,Status,Item\nA-1,${status},Mug\n`;
    const read = (...states: readonly string[]) =>
      mergeOrders(states.map((status, at) => readOrders(Buffer.from(text(status)), `${at}.csv`, mapFor(['Order', 'Status', 'Item']), 0)))
        .orders;
    expect(read('shipped', 'paid')).toMatchObject([{ state: 'to-ship' }]);
    expect(read('cancelled', 'refunded')).toMatchObject([{ state: 'to-ship' }]);
    expect(read('shipped', 'shipped')).toMatchObject([{ state: 'shipped' }]);
  });

  it('that write its number in another way tell of one order, for no label tells them apart', () => {
    const merged = mergeOrders([
      file('a.csv', 'Order,Name,Item\n#A-1,Ada,Mug\na-1,Ada,Mug\n'),
      file('b.csv', 'Order,Name,Item\n\uff21-1,Eve,Mug\n-,Ada,Mug\n--,Ada,Mug\n'),
    ]);
    expect(merged.orders.map(({ number, differsAt = [] }) => [number, differsAt.length])).toEqual([['#A-1', 1], ['-', 0], ['--', 0]]); // prettier-ignore
    expect(merged.diagnostics.map(({ severity }) => severity)).toEqual(['note', 'warning']);
  });

  it('so that two orders whose numbers differ in capitals alone are in doubt, and it is said why', () => {
    const merged = mergeOrders([file('a.csv', 'Order,Name,Item\nkX7Qa,Ada,Mug\nKx7qA,Eve,Bowl\n')]);
    expect(merged.orders).toMatchObject([{ number: 'kX7Qa', buyer: 'Ada', differsAt: [{ file: 'a.csv', line: 3 }] }]);
    expect(merged.diagnostics).toMatchObject([
      {
        code: 'orders/duplicate-number',
        message:
          'order `Kx7qA` stands in line 2 as `kX7Qa`, too, and says other things (capitals and signs in front tell no two orders apart); a label for it is held',
        place: { line: 3 },
      },
    ]);
    expect(merged.diagnostics[0]?.remedy).toContain('Write the number alike');
    const apart = mergeOrders([file('a.csv', 'Order,Name,Item\nA-1,Ada,Mug\n'), file('b.csv', 'Order,Name,Item\na-1,Ada,Mug\n')]);
    expect(apart.diagnostics[0]?.message).toBe(
      'order `a-1` stands in a.csv, line 2 as `A-1`, too, and says the same; it counts once (capitals and signs in front tell no two orders apart)',
    );
    expect(apart.diagnostics[0]?.remedy).toBe('Leave out one of the files if they are the same export.');
  });
});
