import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { MOST, wholeNumber } from '../../src/orders/order-values.js';
import { only, readTable, told } from './reading.js';

const read = (column: string, cell: string, stated = {}) => readTable(`Order,${column}\nA-1,"${cell.replaceAll('"', '""')}"\n`, stated);
const valueOf = (column: string, cell: string, stated = {}) => only(read(column, cell, stated));

describe('a count', () => {
  it.each([
    ['2', 2],
    ['2.0', 2],
    ['2,00', 2],
    ['0', 0],
    ['007', 7],
    [String(MOST), MOST],
  ])('%s is %s', (text, value) => expect(wholeNumber(text)).toBe(value));

  it.each(['', '-1', '+2', '2.5', '1,000', '1.000', '1e3', '2 x', 'two', '½', '100000', '1000000000000'])('%j is none', (text) =>
    expect(wholeNumber(text)).toBeUndefined(),
  );

  it('is that of any whole number up to the most, and of nothing else that JavaScript takes for one', () => {
    fc.assert(
      fc.property(fc.nat(MOST), fc.string(), (count, text) => {
        expect(wholeNumber(String(count))).toBe(count);
        expect([undefined, Number(text.replace(',', '.'))]).toContain(wholeNumber(text));
      }),
    );
  });
});

describe('a value of an order', () => {
  it('is a date in ISO 8601, or unknown and told', () => {
    expect(valueOf('Ship by', '28 November 2026').shipBy).toBe('2026-11-28');
    expect(valueOf('Ship by', '2026-11-28T23:30:00-05:00').shipBy).toBe('2026-11-28');
    expect(valueOf('Ship by', '03/04/2026', { dateOrder: 'day-month-year' }).shipBy).toBe('2026-04-03');
    expect(valueOf('Ship by', '').shipBy).toBeUndefined();
    for (const [cell, code] of [
      ['03/04/2026', 'orders/ambiguous-date'],
      ['46354', 'orders/damaged'],
      ['2026-02-30', 'orders/bad-date'],
      ['soon', 'orders/bad-date'],
    ] as const) {
      expect([valueOf('Ship by', cell).shipBy, told(read('Ship by', cell))]).toEqual([undefined, [`2:5 ${code}`]]);
    }
  });

  it('is a country by its code or name, or unknown, told once for all that say so', () => {
    for (const name of ['DE', 'de', 'DEU', 'Germany', 'Deutschland', 'Allemagne']) expect(valueOf('Country', name).country).toBe('DE');
    const result = readTable('Order,Country\nA-1,Wobbleland\nA-2,WOBBLELAND\nA-3,Tuvunu\n');
    expect(told(result)).toEqual(['2:5 orders/unknown-country', '4:5 orders/unknown-country']);
    expect(result.orders.map(({ country }) => country)).toEqual(['', '', '']);
  });

  it('is a state, and one that nobody knows is to be shipped and told with what to write', () => {
    expect(valueOf('Status', 'Canceled').state).toBe('cancelled');
    const result = read('Status', "It's wobbling");
    expect([only(result).state, result.diagnostics[0]?.remedy]).toEqual([
      'to-ship',
      "Say what it means, below `orders: states:` in the recipe: `'It''s wobbling': shipped`.",
    ]);
    expect(valueOf('Status', 'Wobbling', { states: { wobbling: 'shipped' } }).state).toBe('shipped');
  });

  it('says whether it is a gift; what says neither is one, so that no price is printed', () => {
    for (const yes of ['yes', 'TRUE', '1', 'x', 'ja']) expect(valueOf('Gift', yes).gift).toBe(true);
    for (const no of ['no', 'false', '0', '']) expect(valueOf('Gift', no).gift).toBe(false);
    expect([valueOf('Gift', 'With a ribbon').gift, told(read('Gift', 'With a ribbon'))]).toEqual([true, ['2:5 orders/unknown-word']]);
    expect(read('Gift', 'With a ribbon').diagnostics[0]?.message).not.toContain('ribbon');
  });

  it('says in how many parcels it goes; what is no number, or none, is one', () => {
    expect(valueOf('Parcels', '3').parcels).toBe(3);
    for (const cell of ['0', 'some', '-1']) expect([valueOf('Parcels', cell).parcels, told(read('Parcels', cell))]).toEqual([1, ['2:5 orders/bad-number']]); // prettier-ignore
    expect([valueOf('Parcels', '').parcels, told(read('Parcels', ''))]).toEqual([1, []]);
  });

  it('keeps the lines of an address and of a card, without empty ones', () => {
    expect(valueOf('Street', ' 7 Example Street \n\n  Unit 2 ').address).toEqual(['7 Example Street', 'Unit 2']);
    expect(valueOf('Card', '\nDear you,\n\n  all the best\n').giftMessage).toBe('Dear you,\nall the best');
  });
});
