import { describe, expect, it } from 'vitest';
import { only, readTable, told } from './reading.js';

const table = (...numbers: readonly string[]): string =>
  `Order,Tracking\n${numbers.map((number, index) => `A-${index},${number}\n`).join('')}`;

describe('a tracking number a digit short of all others', () => {
  it('is named as perhaps without its 0, and stays as it is', () => {
    const result = readTable(table('012345678983', '986578788855', '477179081230', '12345678983'));
    expect(told(result)).toEqual(['5:5 orders/lost-zeros']);
    expect(result.diagnostics[0]).toMatchObject({ severity: 'note', message: expect.stringContaining('11 digits') as string });
    expect(result.orders.at(-1)?.tracking).toEqual(['12345678983']);
  });

  it.each([
    ['few others', table('986578788855', '12345678983')],
    ['numbers of several lengths', table('986578788855', '477179081230', '799531274483', '12345678983', '1234567890')],
    ['others that are not digits alone', table('986578788855', '477179081230', '799531274483', '12345678983', 'RX123456785DE')],
    ['short numbers', table('1234567', '1234568', '1234569', '123456')],
  ])('is not with %s', (_name, text) => {
    expect(readTable(text).diagnostics).toEqual([]);
  });

  it('costs nothing else', () => {
    expect(only(readTable(table('12345678983')))).toMatchObject({ tracking: ['12345678983'] });
  });
});
