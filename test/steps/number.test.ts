import { expect, it } from 'vitest';
import { number } from '../../src/steps/number.js';
import { optionsOf } from './on-sample.js';

it('number plans its type in pt and leaves the rest of the plan alone', () => {
  const impose = { sheet: 'letter', columns: 1, rows: 2, turn: 90, firstFree: 1 } as const;
  expect(number.plan({ number: undefined, impose }, optionsOf(number, { size: { value: 0.125, unit: 'in' } }))).toEqual({
    number: { onLabelPage: true, fontSize: 9 },
    impose,
  });
});
