import { expect, it } from 'vitest';
import type { Box } from '../../src/geometry/box.js';
import { holdsSeveral } from '../../src/locating/several-frames.js';
import { barsIn, inches } from './judged.js';

const ALL = inches(0.5, 0.5, 7.5, 2.5);
const holds = (frames: readonly Box[], coded: readonly Box[] = frames): boolean => holdsSeveral(ALL, frames, coded.map(barsIn));

it('two labels in frames of one size are no label together', () => {
  expect(holds([inches(0.5, 0.5, 3.5, 2.2), inches(4.4, 0.5, 3.5, 2.2)])).toBe(true);
});

it('fields of one label, small, with a rule in common, of other sizes or without a code, are', () => {
  const left = inches(0.5, 0.5, 3.5, 2.2);
  expect(holds([left, inches(4, 0.5, 3.5, 2.2)])).toBe(false);
  expect(holds([left, inches(4.4, 0.5, 3.5, 2)])).toBe(false);
  expect(holds([left, inches(4.4, 0.5, 3.5, 2.2)], [left])).toBe(false);
  expect(holds([inches(0.5, 0.5, 3, 1.4), inches(4.4, 0.5, 3, 1.4)])).toBe(false);
  expect(holds([left])).toBe(false);
});
