import { expect, it } from 'vitest';
import { gridOf } from '../../src/geometry/grid.js';
import type { Length } from '../../src/geometry/length.js';
import { number } from '../../src/steps/number.js';
import { optionsOf } from './on-sample.js';

const impose = { sheet: 'letter', columns: 1, rows: 2, turn: 90, firstFree: 1 } as const;

it('number plans its type in pt and leaves the rest of the plan alone', () => {
  const plan = (size: Length) => number.plan({ number: undefined, impose }, optionsOf(number, { size }), gridOf('300dpi'));
  expect(plan({ value: 0.125, unit: 'in' })).toEqual({ number: { onLabelPage: true, fontSize: 9 }, impose });
  expect(plan({ value: 50, unit: 'dots' }).number?.fontSize).toBeCloseTo(12, 9);
});

it('number stays off labels unless it is asked onto them, and then not in two minds', () => {
  const options = optionsOf(number, { 'on-label': true });
  expect(number.plan({ number: undefined, impose }, options, gridOf('203dpi')).number).toEqual({
    onLabelPage: true,
    onLabel: true,
    fontSize: 9,
  });
  expect(number.together?.(options)).toBeUndefined();
  expect(number.together?.(optionsOf(number, { 'on-label-page': false }))).toBeUndefined();
  expect(number.together?.(optionsOf(number, { 'on-label-page': false, 'on-label': true }))?.message).toMatch(/`on-label`/);
});
