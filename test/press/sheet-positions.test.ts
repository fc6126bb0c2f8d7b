import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sheetPositions } from '../../src/press/sheet-positions.js';

/** Positions counted from 1, as a seller does. */
const positions = (parcels: readonly number[], perSheet: number, firstFree: number, pairs: boolean): readonly number[] =>
  sheetPositions(parcels, { perSheet, firstFree, pairs }).map((each) => each + 1);

describe('positions of pages on sheets', () => {
  it('follow each other from the first free one', () => {
    expect(positions([2, 1, 2], 4, 3, false)).toEqual([3, 4, 5, 6, 7]);
  });

  it('keep label and slip in a pair, and leave a position empty rather than part them', () => {
    expect(positions([2, 2, 1, 2], 4, 1, true)).toEqual([1, 2, 3, 4, 5, 7, 8]);
    expect(positions([2, 2], 4, 2, true)).toEqual([3, 4, 5, 6]);
  });

  it('keep a longer parcel on one sheet, and let one run on that no sheet can hold', () => {
    expect(positions([2, 3, 1], 4, 1, true)).toEqual([1, 2, 5, 6, 7, 9]);
    expect(positions([1, 5, 1], 4, 1, true)).toEqual([1, 5, 6, 7, 8, 9, 11]);
  });

  it('begin on the used sheet all the same where no pair fits on it: nobody puts it in to have it come out again', () => {
    expect(positions([2, 2, 2], 2, 2, true)).toEqual([2, 3, 5, 6, 7, 8]);
    expect(positions([1, 2], 2, 2, true)).toEqual([2, 3, 4]);
    expect(positions([2, 2], 4, 4, true)).toEqual([4, 5, 7, 8]);
  });

  it('are each taken once, in order, on the used sheet first, and pairs are whole on a sheet', () => {
    const order = fc.record({ perSheet: fc.integer({ min: 1, max: 12 }).map((half) => 2 * half), first: fc.nat(), pairs: fc.boolean() });
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 9 }), { maxLength: 12 }), order, (parcels, { perSheet, first, pairs }) => {
        const firstFree = 1 + (first % perSheet);
        const taken = positions(parcels, perSheet, firstFree, pairs);
        expect(taken).toHaveLength(parcels.reduce((sum, each) => sum + each, 0));
        expect(taken.every((each, at) => each > (taken[at - 1] ?? firstFree - 1))).toBe(true);
        if (!pairs) {
          expect(taken).toEqual(taken.map((_, at) => firstFree + at));
          return;
        }
        if (parcels.length > 0) expect(taken[0]).toBeLessThanOrEqual(perSheet);
        // The first parcel of a used sheet may have no pair of positions there.
        const isSplit = taken[0] === firstFree && (firstFree % 2 === 0 || firstFree - 1 + (parcels[0] ?? 0) > perSheet);
        let at = 0;
        for (const pages of isSplit ? parcels.slice(1) : parcels) {
          if (at === 0 && isSplit) at = parcels[0] ?? 0;
          const own = taken.slice(at, at + pages);
          at += pages;
          const [label = 0] = own;
          expect(label % 2).toBe(1);
          expect(own).toEqual(own.map((_, page) => label + page));
          const sheetOf = (each: number): number => Math.ceil(each / perSheet);
          if (pages <= perSheet) expect(new Set(own.map(sheetOf)).size).toBe(1);
        }
      }),
    );
  });
});
