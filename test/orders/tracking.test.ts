import { describe, expect, it } from 'vitest';
import { order } from './make.js';
import { knowsTracking, knownNumberIn, tailOf, trackingKey, TrackingIndex } from '../../src/orders/tracking.js';

describe('a tracking number for comparing', () => {
  it.each([
    ['9400 1112 0620 6406 2607 87', '9400111206206406260787'],
    ['ee876543216ca', 'EE876543216CA'],
    ['00395123451234567895', '395123451234567895'],
    ['395123451234567895', '395123451234567895'],
    ['00 with 8 digits 12345678', '00WITH8DIGITS12345678'],
  ])('%s', (number, key) => expect(trackingKey(number)).toBe(key));

  it.each(['', '12', '1234567', 'PENDING', 'AWAITING1', 'n/a'])('none: %j', (number) => expect(trackingKey(number)).toBeUndefined());

  it('is shown by its last four characters', () => {
    expect(tailOf('EE 876 543 216 CA')).toBe('…16CA');
  });

  it('is known to an order when it can be one', () => {
    expect([
      knowsTracking(order('A')),
      knowsTracking(order('A', { tracking: ['n/a'] })),
      knowsTracking(order('A', { tracking: ['EE876543216CA'] })),
    ]).toEqual([false, false, true]);
  });
});

describe('numbers in codes', () => {
  const within = (numbers: readonly string[], ...texts: readonly string[]): readonly string[] => {
    const index = new TrackingIndex<string>();
    for (const number of numbers) index.add(number, number);
    return index.within(texts.map((text) => ({ text, tracking: undefined })));
  };

  it.each([
    // Handbook section 11.2 and 11.4: package id behind 420 and postcode.
    ['420787459400111206206406260787', '9400111206206406260787'],
    ['420212345678\x1d9374890100000003985039', '9374890100000003985039'],
    ['4202123456789374890100000003985039', '9374890100000003985039'],
    // Handbook section 11.3: the last twelve of 34 digits, the last fifteen of 22.
    ['1001921334250001000300779017972697', '779017972697'],
    ['9611020987654312345672', '987654312345672'],
    ['EE876543216CA', 'EE876543216CA'],
  ])('%s holds %s', (text, number) => expect(within([number, '1Z999AA10123456784'], text)).toEqual([number]));

  it('one code that can be split in two ways holds both', () => {
    expect(within(['9400111206206406260787', '12349400111206206406260787'], '420787451234' + '9400111206206406260787')).toEqual([
      '12349400111206206406260787',
      '9400111206206406260787',
    ]);
  });

  it('what the code is comes before what it ends with', () => {
    expect(within(['9400111206206406260787', '420787459400111206206406260787'], '420787459400111206206406260787')).toEqual([
      '420787459400111206206406260787',
    ]);
  });

  it('no number in the middle, behind letters, or short at the end', () => {
    expect(within(['9400111206206406260787'], '94001112062064062607871')).toEqual([]);
    expect(within(['9400111206206406260787'], 'AB9400111206206406260787')).toEqual([]);
    expect(within(['12345678901'], '42012345678901')).toEqual([]);
  });

  it('gives each number once, and whose it is', () => {
    expect(within(['EE876543216CA'], 'EE876543216CA', 'https://norrvane.example/EE876543216CA')).toEqual(['EE876543216CA']);
    const index = new TrackingIndex<number>();
    index.add('EE876543216CA', 1);
    index.add('ee 876543216 ca', 2);
    index.add('EE876543216CA', 1);
    expect([index.get('EE876543216CA'), index.get('X')]).toEqual([[1, 2], []]);
  });
});

describe('the number that an order knows and a label holds', () => {
  it('is as the order writes it, wherever the code has it; none where no code does', () => {
    const codes = [
      { text: '4202001792449208349232878587', tracking: undefined },
      { text: 'KLN-10001', tracking: undefined },
    ];
    expect(knownNumberIn([{ tracking: ['9200000000000000000017', '92449208349232878587'] }], codes)).toBe('92449208349232878587');
    expect(knownNumberIn([{ tracking: ['9200000000000000000017'] }], codes)).toBeUndefined();
    expect(knownNumberIn([], codes)).toBeUndefined();
  });
});
