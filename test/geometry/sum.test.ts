import { expect, it } from 'vitest';
import { mean, sum } from '../../src/geometry/sum.js';

it('sum adds up lists and typed arrays, nothing to 0', () => {
  expect(sum([])).toBe(0);
  expect(sum([1, 2, 3.5])).toBe(6.5);
  expect(sum(new Uint8Array([200, 100]))).toBe(300);
});

it('mean is the sum by the number of values, and none has no mean', () => {
  expect(mean([1, 2, 6])).toBe(3);
  expect(mean([])).toBeNaN();
});
