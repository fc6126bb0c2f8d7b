import { expect, it } from 'vitest';
import { gridOf } from '../../src/geometry/grid.js';
import type { Length } from '../../src/geometry/length.js';
import { number } from '../../src/steps/number.js';
import { optionsOf } from './on-sample.js';

it('number plans its type in pt and leaves the rest of the plan alone', () => {
  const impose = { sheet: 'letter', columns: 1, rows: 2, turn: 90, firstFree: 1 } as const;
  const plan = (size: Length) => number.plan({ number: undefined, impose }, optionsOf(number, { size }), gridOf('300dpi'));
  expect(plan({ value: 0.125, unit: 'in' })).toEqual({ number: { onLabelPage: true, fontSize: 9 }, impose });
  expect(plan({ value: 50, unit: 'dots' }).number?.fontSize).toBeCloseTo(12, 9);
});
