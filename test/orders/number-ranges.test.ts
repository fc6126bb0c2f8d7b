import fc from 'fast-check';
import { expect, it } from 'vitest';
import { numberRanges } from '../../src/orders/number-ranges.js';

it('tells numbers as a person would write them', () => {
  expect(numberRanges([15, 3, 13, 7, 12, 14, 3])).toBe('3, 7, 12–15');
  expect(numberRanges([2, 1])).toBe('1, 2');
  expect(numberRanges([])).toBe('');
});

it('names each number, and no other', () => {
  fc.assert(
    fc.property(fc.array(fc.integer({ min: 1, max: 60 })), (numbers) => {
      const told = numberRanges(numbers)
        .split(', ')
        .filter((run) => run !== '')
        .flatMap((run) => {
          const [first = 0, last = first] = run.split('–').map(Number);
          return Array.from({ length: last - first + 1 }, (_, at) => first + at);
        });
      expect(told).toEqual([...new Set(numbers)].sort((a, b) => a - b));
    }),
  );
});
