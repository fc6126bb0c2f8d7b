import { describe, expect, it } from 'vitest';
import { placementMatrix, type Turn } from '../../src/geometry/placement.js';
import { compareCodes, isEqual } from '../../src/proof/compare-codes.js';
import type { Code, Symbology } from '../../src/reading/source.js';

const code = (
  bytes: string,
  x: number,
  y: number,
  more: { turn?: Turn | undefined; identifier?: string; symbology?: Symbology } = {},
): Code => ({
  symbology: more.symbology ?? 'QR',
  identifier: more.identifier ?? ']Q1',
  bytes,
  corners: [
    { x, y },
    { x: x + 40, y },
    { x: x + 40, y: y + 40 },
    { x, y: y + 40 },
  ],
  box: { x, y, width: 40, height: 40 },
  turn: 'turn' in more ? more.turn : 0,
});

/** The source's region at (100, 50) comes to the output's corner. */
const matrix = placementMatrix({ x: 100, y: 50, width: 288, height: 432 }, 0, 1, 0, 0);
const counts = (source: readonly Code[], output: readonly Code[]): Record<string, number> => {
  const result = compareCodes(source, output, matrix, 0);
  const kinds = ['same', 'lost', 'changed', 'moved', 'extra'] as const;
  return Object.fromEntries(kinds.filter((kind) => result[kind].length > 0).map((kind) => [kind, result[kind].length]));
};

describe('codes of source and output', () => {
  it('are the same with the same identifier and bytes in the same place', () => {
    const result = compareCodes([code('aa', 120, 70), code('bb', 220, 70)], [code('bb', 120, 20), code('aa', 20, 20)], matrix, 0);
    expect(isEqual(result)).toBe(true);
    expect(result.same.map((each) => each.source.bytes)).toEqual(['aa', 'bb']);
  });

  it('are a multiset: the same code twice must come back twice', () => {
    expect(counts([code('aa', 120, 70), code('aa', 220, 70)], [code('aa', 20, 20)])).toEqual({ same: 1, lost: 1 });
    expect(counts([code('aa', 120, 70)], [code('aa', 20, 20), code('aa', 120, 20)])).toEqual({ same: 1, extra: 1 });
  });

  it('differ by their symbology identifier alone: GS1 or not', () => {
    expect(counts([code('aa', 120, 70, { identifier: ']C1' })], [code('aa', 20, 20, { identifier: ']C0' })])).toEqual({ changed: 1 });
  });

  it('differ by a separator that text would not show', () => {
    expect(counts([code('313d32', 120, 70)], [code('311d32', 20, 20)])).toEqual({ changed: 1 });
  });

  it('are moved when they lie more than 2 mm off, or read in another direction', () => {
    expect(counts([code('aa', 120, 70)], [code('aa', 24, 20)])).toEqual({ same: 1 });
    expect(counts([code('aa', 120, 70)], [code('aa', 27, 20)])).toEqual({ moved: 1 });
    expect(counts([code('aa', 120, 70)], [code('aa', 20, 20, { turn: 180 })])).toEqual({ moved: 1 });
    expect(counts([code('aa', 120, 70, { turn: undefined })], [code('aa', 20, 20, { turn: 180 })])).toEqual({ same: 1 });
  });

  it('of PDF417 may be seen without one of its ends on one side; where both are seen alike, 2 mm count', () => {
    const wide = (x: number, width: number): Code => ({
      ...code('aa', x, 20, { symbology: 'PDF417', identifier: ']L2' }),
      corners: [
        { x, y: 20 },
        { x: x + width, y: 20 },
        { x: x + width, y: 60 },
        { x, y: 60 },
      ],
    });
    const source = {
      ...wide(120, 160),
      corners: wide(120, 160).corners.map(({ x, y }) => ({ x, y: y + 50 })) as unknown as Code['corners'],
    };
    expect(counts([source], [wide(20, 200)])).toEqual({ same: 1 });
    expect(counts([source], [wide(-20, 200)])).toEqual({ same: 1 });
    expect(counts([source], [wide(30, 200)])).toEqual({ moved: 1 });
    expect(counts([source], [wide(20, 160)])).toEqual({ same: 1 });
    expect(counts([source], [wide(27, 160)])).toEqual({ moved: 1 });
  });

  it('of bars may be seen higher or lower along the bars, not along the row', () => {
    const bars = (x: number, y: number): Code => code('aa', x, y, { symbology: 'Code 128', identifier: ']C0' });
    expect(counts([bars(120, 70)], [bars(20, 35)])).toEqual({ same: 1 });
    expect(counts([bars(120, 70)], [bars(35, 20)])).toEqual({ moved: 1 });
  });
});
