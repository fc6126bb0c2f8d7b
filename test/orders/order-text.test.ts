import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ORDER_STATES } from '../../src/orders/order.js';
import { listed, ordersWord, orderWord, placeWord, STATE_WORDS } from '../../src/orders/order-text.js';
import { order } from './make.js';

describe('the word for an order', () => {
  it('is its number on one line, cut where it is very long', () => {
    expect(orderWord(order(' A-1001 '))).toBe('A-1001');
    expect(orderWord(order('A-1\u2028\u00a01\u202e\u0007'))).toBe('A-1 1');
    expect(orderWord(order('9'.repeat(40)))).toBe('9'.repeat(40));
    expect(orderWord(order('9'.repeat(41)))).toBe(`${'9'.repeat(39)}…`);
    expect(orderWord(order(''))).toBe('without a number');
    expect(orderWord(order('\u200b'))).toBe('without a number');
  });

  it('is whole characters, forty at most, and nothing that breaks a line', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 90 }), (number) => {
        const word = orderWord(order(number));
        expect(Array.from(word).length).toBeLessThanOrEqual(40);
        expect(word).not.toMatch(/[\p{C}\p{Zl}\p{Zp}]/u);
        expect(word.trim()).toBe(word);
        expect(word).not.toBe('');
      }),
    );
  });

  it('never holds what is the buyer’s', () => {
    const one = order('A-1', { buyer: 'Odile Samplewright', address: ['12 Example Street'], postcode: '10115' });
    expect(`${orderWord(one)} ${ordersWord([one])} ${placeWord(one)}`).not.toMatch(/Odile|Example|10115/);
  });
});

describe('the words for orders', () => {
  it('are in the order in which people sort numbers, each once', () => {
    expect(ordersWord([order('A-10'), order('A-2')])).toBe('orders A-2 and A-10');
    expect(ordersWord([order('A-2'), order('A-2')])).toBe('order A-2');
    expect(ordersWord([])).toBe('orders ');
  });

  it('are two where two long numbers differ only behind the cut', () => {
    const long = '7'.repeat(60);
    expect(ordersWord([order(`${long}1`), order(`${long}2`)])).toMatch(/^orders 7+… and 7+…$/);
  });

  it('do not depend on the order in which orders are given', () => {
    fc.assert(
      fc.property(fc.uniqueArray(fc.integer({ min: 1, max: 99 }), { minLength: 1, maxLength: 12 }), fc.nat(12), (numbers, by) => {
        const orders = numbers.map((each) => order(`A-${each}`));
        const turned = [...orders.slice(by % orders.length), ...orders.slice(0, by % orders.length)];
        expect(ordersWord(turned)).toBe(ordersWord(orders));
      }),
    );
  });
});

describe('a list in a sentence', () => {
  it.each([
    [0, ''],
    [1, 'w1'],
    [2, 'w1 and w2'],
    [3, 'w1, w2 and w3'],
    [6, 'w1, w2, w3, w4, w5 and w6'],
    [7, 'w1, w2, w3, w4, w5 and 2 more'],
    [500, 'w1, w2, w3, w4, w5 and 495 more'],
  ])('of %i words', (count, words) => {
    expect(listed(Array.from({ length: count }, (_, at) => `w${at + 1}`))).toBe(words);
  });
});

it('each state but to-ship has its words, and a place its file and line', () => {
  expect(Object.keys(STATE_WORDS).sort()).toEqual(ORDER_STATES.filter((state) => state !== 'to-ship').sort());
  expect(placeWord(order('A-1', { place: { file: 'a/orders.csv', line: 12 } }))).toBe('a/orders.csv, line 12');
});
