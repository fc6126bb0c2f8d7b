import { expect, it } from 'vitest';
import { gridOf } from '../../src/geometry/grid.js';
import { impose } from '../../src/steps/impose.js';
import { optionsOf } from './on-sample.js';

it('impose plans two-up on letter by default, sideways, and leaves the rest of the plan alone', () => {
  const number = { onLabelPage: false, fontSize: 9 };
  expect(impose.plan({ number, impose: undefined }, optionsOf(impose, { 'first-free': 2 }), gridOf('203dpi'))).toEqual({
    number,
    impose: { sheet: 'letter', columns: 1, rows: 2, turn: 90, firstFree: 2 },
  });
  const upright = impose.plan(
    { number: undefined, impose: undefined },
    optionsOf(impose, { sheet: 'a4', columns: 2, lying: 'upright' }),
    gridOf('203dpi'),
  );
  expect(upright.impose).toEqual({ sheet: 'a4', columns: 2, rows: 2, turn: 0, firstFree: 1 });
});
