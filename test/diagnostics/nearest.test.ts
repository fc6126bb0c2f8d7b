import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { editDistance, nearest } from '../../src/diagnostics/nearest.js';

describe('editDistance', () => {
  it.each([
    ['', '', 0],
    ['verify', 'verify', 0],
    ['verfy', 'verify', 1],
    ['verfiy', 'verify', 1],
    ['crop', 'drops', 2],
    ['', 'scale', 5],
  ])('counts the edits from %j to %j: %i', (a, b, distance) => {
    expect(editDistance(a, b)).toBe(distance);
  });

  it('is the same both ways, zero for equal words only, and never more than the longer word', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 12 }), fc.string({ maxLength: 12 }), (a, b) => {
        const distance = editDistance(a, b);
        expect(distance).toBe(editDistance(b, a));
        expect(distance === 0).toBe(a === b);
        expect(distance).toBeLessThanOrEqual(Math.max(a.length, b.length));
      }),
    );
  });
});

describe('nearest', () => {
  const steps = ['crop', 'locate-label', 'packing-slip', 'rotate', 'scale', 'split-pages', 'verify'];

  it.each([
    ['locate-lable', 'locate-label'],
    ['packingSlip', 'packing-slip'],
    ['Packing slip', 'packing-slip'],
    ['split_pages', 'split-pages'],
    ['split-page', 'split-pages'],
    ['rotat', 'rotate'],
    ['locate', 'locate-label'],
    ['scale-down', 'scale'],
    ['SCALE', 'scale'],
  ])('takes %j for %j', (word, meant) => {
    expect(nearest(word, steps)).toBe(meant);
  });

  it.each(['banana', '', '---', 'x', 'v'.repeat(5000)])('takes %.20j for none of them', (word) => {
    expect(nearest(word, steps)).toBeUndefined();
  });

  it('gives the first of equally near words', () => {
    expect(nearest('rats', ['cats', 'bats'])).toBe('cats');
  });
});
