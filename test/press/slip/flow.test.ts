import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { flow, type Block, type Row } from '../../../src/press/slip/flow.js';
import { strip } from '../../../src/press/slip/rows.js';

const rows = fc.array(
  fc.integer({ min: 1, max: 40 }).map((height) => strip(height)),
  { minLength: 1, maxLength: 8 },
);
const head = strip(12);
const blocks: fc.Arbitrary<readonly Block[]> = fc.array(
  fc
    .record({ rows, gap: fc.integer({ min: 0, max: 10 }), whole: fc.boolean(), headed: fc.boolean() })
    .map(({ headed, ...block }) => ({ ...block, ...(headed ? { head } : {}) })),
  { maxLength: 12 },
);

describe('the flow of rows', () => {
  it('puts every row once, in order, below the last, on the page', () => {
    fc.assert(
      fc.property(blocks, fc.integer({ min: 60, max: 200 }), fc.integer({ min: 60, max: 200 }), (given, first, rest) => {
        const pages = flow(given, first, rest);
        const placed = pages.flat().map(({ row }) => row);
        expect(placed.filter((row) => row !== head)).toEqual(given.flatMap((block) => block.rows));
        pages.forEach((page, at) => {
          let bottom = 0;
          for (const { row, y } of page) {
            expect(y).toBeGreaterThanOrEqual(bottom - 1e-9);
            bottom = y + row.height;
          }
          expect(bottom).toBeLessThanOrEqual((at === 0 ? first : rest) + 1e-6);
          if (at > 0) expect(page.length).toBeGreaterThan(0);
        });
      }),
    );
  });

  it('does not part what belongs together and fits a page', () => {
    fc.assert(
      fc.property(blocks, fc.integer({ min: 100, max: 200 }), (given, room) => {
        const pages = flow(given, room, room);
        const pageOf = (row: Row | undefined): number => pages.findIndex((page) => page.some((each) => each.row === row));
        for (const { rows: inside, whole, head: above } of given) {
          const total = inside.reduce((sum, { height }) => sum + height, above?.height ?? 0);
          if (whole && total <= room) expect(pageOf(inside.at(-1))).toBe(pageOf(inside[0]));
        }
      }),
    );
  });

  it('puts a head above the first of its rows on every page, and never last', () => {
    const block = (): Block => ({ rows: [strip(30)], gap: 0, head, whole: true });
    const pages = flow([block(), block(), block(), block(), block()], 80, 80);
    expect(pages.map((page) => page.map(({ row }) => (row === head ? 'head' : 'row')))).toEqual([
      ['head', 'row', 'row'],
      ['head', 'row', 'row'],
      ['head', 'row'],
    ]);
  });

  it('leaves out what only parts, where there is nothing to part', () => {
    const line: Row = { ...strip(1), between: true };
    const block = (): Block => ({ rows: [line, strip(30)], gap: 0, head, whole: true });
    const pages = flow([block(), block(), block()], 80, 80);
    expect(pages.map((page) => page.filter(({ row }) => row === line).length)).toEqual([1, 0]);
  });

  it('has no gap at the top of a page, and one page for nothing', () => {
    expect(flow([{ rows: [strip(5)], gap: 9, whole: false }], 50, 50)[0]?.[0]?.y).toBe(0);
    expect(flow([], 50, 50)).toEqual([[]]);
  });
});
