import { describe, expect, it } from 'vitest';
import { daysBetween, labelDate } from '../../src/orders/label-date.js';

describe('the date of a label', () => {
  it.each([
    // ISO 8601-1:2019 5.2.2.1, extended format of a calendar date (from memory).
    ['Ship date: 2026-11-28', '2026-11-28'],
    ['SHIP DATE: 28NOV26', '2026-11-28'],
    ['Date 28 Nov 2026', '2026-11-28'],
    ['Mailed November 28, 2026', '2026-11-28'],
    ['Mailed on Nov. 28th, 2026', '2026-11-28'],
    ['Versanddatum 28. November 2026', '2026-11-28'],
    ['Datum: 28.11.2026', '2026-11-28'],
    ["Date d'envoi : 28 novembre 2026", '2026-11-28'],
    ['Expédié le 1 août 2026', '2026-08-01'],
    ['Fecha de envío: 28 de noviembre de 2026', '2026-11-28'],
    ['Data di spedizione 28 novembre 2026', '2026-11-28'],
    ['Verzenddatum 28/11/2026', '2026-11-28'],
    ['Date: 11/28/2026', '2026-11-28'],
    ['Date: 11/11/2026', '2026-11-11'],
    ['発送日 2026/11/28', '2026-11-28'],
    ['2026-11-28 shipped', '2026-11-28'],
    ['Date 2026-2-9', '2026-02-09'],
    ['Date: 29 Feb 2028', '2028-02-29'],
  ])('%s', (line, date) => expect(labelDate([line])).toBe(date));

  it.each([
    ['no word', '2026-11-28'],
    ['an open order', 'Date: 03/04/2026'],
    ['no such day', 'Date: 31 Feb 2026'],
    ['no such month', 'Date: 2026-13-01'],
    ['two digits of a year', 'Date: 28/11/26'],
    ['two digits with spaces', 'Date: 28 Nov 26'],
    ['the day of delivery', 'Delivery date: 2026-11-28'],
    ['the day of the order', 'Order date: 2026-11-28'],
    ['a due date', 'Due date 28 Nov 2026'],
    ['two days', 'Date 2026-11-28, date 2026-11-27'],
    ['a number that looks like one', 'Date no. 1-2026-11-28-3'],
    ['a word that is no month', 'Date 12 parcels 2026'],
    ['nothing', ''],
  ])('none: %s', (_, line) => expect(labelDate([line])).toBeUndefined());

  it('stands below its word', () => {
    expect(labelDate(['SHIP DATE', '2026-11-28'])).toBe('2026-11-28');
    expect(labelDate(['Order date 2026-11-20', '2026-11-28'])).toBeUndefined();
  });

  it('of shipping wins over a plain date', () => {
    expect(labelDate(['Date 2026-11-20', 'Ship date 2026-11-28'])).toBe('2026-11-28');
    expect(labelDate(['Ship date 2026-11-20', 'Mailed 2026-11-28'])).toBeUndefined();
    expect(labelDate(['Ship date 2026-11-28', 'Mailed 28 Nov 2026', 'Order date 2026-11-01'])).toBe('2026-11-28');
  });
});

describe('days between', () => {
  it('count calendar days, also over the change of clocks and leap days', () => {
    expect(daysBetween('2026-11-28', '2026-11-28')).toBe(0);
    expect(daysBetween('2026-10-24', '2026-10-26')).toBe(2);
    expect(daysBetween('2028-02-28', '2028-03-01')).toBe(2);
    expect(daysBetween('2026-11-28', '2026-11-27')).toBe(-1);
    expect(daysBetween('soon', '2026-11-27')).toBeUndefined();
  });
});
