import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readDate } from '../../src/orders/dates.js';
import { DATE_ORDERS, type DateOrder } from '../../src/orders/order-map.js';

const iso = (text: string, order?: DateOrder): string => {
  const read = readDate(text, order);
  return read.kind === 'date' ? read.iso : read.kind;
};

describe('ISO 8601 calendar dates', () => {
  it.each([
    ['2026-11-28', 'extended format'],
    ['20261128', 'basic format'],
    ['2026-11-28T14:03:22Z', 'with a time of day in UTC'],
    ['2026-11-28T14:03:22.123+01:00', 'with a fraction and a time shift'],
    ['20261128T140322Z', 'all basic'],
    ['2026-11-28T14:03', 'without seconds'],
  ])('%s: %s', (text) => {
    for (const order of [undefined, ...DATE_ORDERS]) expect(iso(text, order)).toBe('2026-11-28');
  });

  it('the day counts as it is written, whatever the zone', () => {
    expect(iso('2026-11-28T23:59:59-11:00')).toBe('2026-11-28');
  });

  it('any day comes back in both formats', () => {
    const day = fc
      .date({ min: new Date('1970-01-01'), max: new Date('2199-12-31'), noInvalidDate: true })
      .map((each) => each.toISOString().slice(0, 10));
    fc.assert(
      fc.property(day, (text) => {
        expect(iso(text)).toBe(text);
        expect(iso(text.replaceAll('-', ''))).toBe(text);
      }),
    );
  });
});

describe('dates in figures', () => {
  it.each([
    ['28/11/2026', undefined],
    ['11/28/2026', undefined],
    ['28.11.2026', undefined],
    ['28. 11. 2026', undefined],
    ['28-11-2026', 'day-month-year'],
    ['11/28/26', 'month-day-year'],
    ['28.11.26', 'day-month-year'],
    ['26/11/28', 'year-month-day'],
    ['2026/11/28', 'month-day-year'],
    ['28/11/2026 14:03', undefined],
    ['11/28/2026 2:03:22 PM', undefined],
    ['2026-11-28 14:03:22 UTC', undefined],
    ['2026-11-28 14:03:22 +0100', undefined],
  ] as const)('%s (%s)', (text, order) => {
    expect(iso(text, order)).toBe('2026-11-28');
  });

  it('that can be read in two ways need their order', () => {
    expect(iso('03/04/2026')).toBe('ambiguous');
    expect(iso('03/04/2026', 'day-month-year')).toBe('2026-04-03');
    expect(iso('03/04/2026', 'month-day-year')).toBe('2026-03-04');
    expect(iso('03.04.26')).toBe('ambiguous');
    expect(iso('04/04/2026')).toBe('2026-04-04');
  });

  it('that do not fit the stated order are not turned round', () => {
    expect(iso('11/28/2026', 'day-month-year')).toBe('unreadable');
    expect(iso('28/11/2026', 'month-day-year')).toBe('unreadable');
    expect(iso('28/11/2026', 'year-month-day')).toBe('unreadable');
  });
});

describe('dates in words', () => {
  it.each([
    '28 November 2026',
    'Nov 28, 2026',
    'November 28th, 2026',
    'Saturday, 28 Nov 2026',
    '28. November 2026',
    '28 novembre 2026',
    '28 de noviembre de 2026',
    '28 nov. 2026 14:03',
    '28-Nov-2026',
    '28 listopada 2026',
  ])('%s', (text) => {
    expect(iso(text)).toBe('2026-11-28');
  });

  it('know months with accents and short forms', () => {
    expect(iso('1er août 2026')).toBe('2026-08-01');
    expect(iso('3. März 2026')).toBe('2026-03-03');
    expect(iso('12 déc. 2026')).toBe('2026-12-12');
  });
});

describe('no dates', () => {
  it.each(['', 'soon', '2026', '31/02/2026', '2026-02-30', '2026-13-01', '1/1/1', '28/11', 'November 2026', '99999999'])('%j', (text) => {
    expect(iso(text)).toBe('unreadable');
  });

  it('a spreadsheet count of days is named', () => {
    expect(iso('45987')).toBe('serial');
    expect(iso('45987.583')).toBe('serial');
  });

  it('any text is read without a throw, and what is read is a day', () => {
    fc.assert(
      fc.property(fc.string(), fc.constantFrom(undefined, ...DATE_ORDERS), (text, order) => {
        const read = readDate(text, order);
        if (read.kind === 'date') expect(new Date(read.iso).toISOString().slice(0, 10)).toBe(read.iso);
      }),
    );
  });
});
