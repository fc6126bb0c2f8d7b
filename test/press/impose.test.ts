import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { contains, intersection, type Box } from '../../src/geometry/box.js';
import { inToPt, mmToPt } from '../../src/geometry/length.js';
import { mediaNamed } from '../../src/geometry/media.js';
import { applyToBox } from '../../src/geometry/placement.js';
import { cutMarks } from '../../src/press/cut-marks.js';
import { imposeCells, positionBoxes, type Cell, type ImposeLayout } from '../../src/press/impose.js';

const EVEN: ImposeLayout = { columns: 2, rows: 2, turn: 0, firstFree: 1 };
const a4 = mediaNamed('a4');
const a6 = mediaNamed('a6');

const cellsOf = (result: ReturnType<typeof imposeCells>): readonly Cell[] => {
  if ('refused' in result) throw new Error(result.refused.message);
  return result;
};
const refusal = (result: ReturnType<typeof imposeCells>): string => ('refused' in result ? result.refused.code : 'fits');
const mm = (box: Box | undefined): readonly number[] =>
  box ? [box.x, box.y, box.width, box.height].map((pt) => +((pt / 72) * 25.4).toFixed(3)) : [];

describe('label sheets', () => {
  const label = mediaNamed('100x70mm');
  const measured: ImposeLayout = {
    ...EVEN,
    rows: 4,
    marginLeft: mmToPt(4),
    marginTop: mmToPt(6),
    pitchAcross: mmToPt(102),
    pitchDown: mmToPt(71),
  };

  it('have their labels where margins and pitch say', () => {
    const cells = cellsOf(imposeCells(8, label, a4, measured));
    expect(mm(cells[0]?.box)).toEqual([4, 6, 100, 70]);
    expect(mm(cells[1]?.box)).toEqual([106, 6, 100, 70]);
    expect(mm(cells[7]?.box)).toEqual([106, 219, 100, 70]);
  });

  it('are taken as even where only margins are known, and as in the middle where only the pitch is', () => {
    const margins = cellsOf(imposeCells(4, label, a4, { ...EVEN, marginLeft: mmToPt(2), marginTop: mmToPt(10) }));
    expect(mm(margins[3]?.box)).toEqual([108, 217, 100, 70]);
    const pitch = cellsOf(imposeCells(4, label, a4, { ...EVEN, pitchAcross: mmToPt(104), pitchDown: mmToPt(80) }));
    expect(mm(pitch[0]?.box)).toEqual([3, 73.5, 100, 70]);
    expect(mm(pitch[3]?.box)).toEqual([107, 153.5, 100, 70]);
  });

  it('are refused when labels would lie over each other, off the sheet or where its printer cannot print', () => {
    expect(refusal(imposeCells(1, label, a4, { ...measured, pitchAcross: mmToPt(99) }))).toBe('impose/too-large');
    expect(refusal(imposeCells(1, label, a4, { ...measured, marginTop: mmToPt(15) }))).toBe('impose/off-sheet');
    expect(refusal(imposeCells(1, label, a4, { ...measured, printerMargin: mmToPt(4) }))).toBe('fits');
    expect(refusal(imposeCells(1, label, a4, { ...measured, printerMargin: mmToPt(4.5) }))).toBe('impose/off-sheet');
    expect(refusal(imposeCells(1, a6, a4, EVEN))).toBe('fits');
    expect(refusal(imposeCells(1, a6, a4, { ...EVEN, printerMargin: mmToPt(4) }))).toBe('impose/too-large');
  });

  it('say by how much', () => {
    const off = imposeCells(1, label, a4, { ...measured, marginTop: mmToPt(20) });
    expect('refused' in off && off.refused.message).toBe('4 labels down reach 6.0 mm beyond the edge of the sheet');
    const reach = imposeCells(1, label, a4, { ...measured, printerMargin: mmToPt(6) });
    expect('refused' in reach && reach.refused.message).toBe("2 labels across reach 2.0 mm beyond the printer's margin of 6.0 mm");
  });
});

const side = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const someLayout: fc.Arbitrary<ImposeLayout> = fc.record(
  {
    columns: fc.integer({ min: 1, max: 5 }),
    rows: fc.integer({ min: 1, max: 6 }),
    turn: fc.constantFrom(0 as const, 90 as const),
    firstFree: fc.constant(1),
    pitchAcross: side(20, 300),
    pitchDown: side(20, 300),
    marginLeft: side(0, 60),
    marginTop: side(0, 60),
    printerMargin: side(0, 30),
    pairs: fc.boolean(),
  },
  { requiredKeys: ['columns', 'rows', 'turn', 'firstFree'] },
);
const somePage = fc.record({ name: fc.constant('page'), width: side(36, 300), height: side(36, 300) });

describe('imposing, whatever the layout', () => {
  it('refuses, or lays each page once, at true size, over no other, inside what can be printed; cut marks touch no page', () => {
    let laid = 0;
    let marked = 0;
    fc.assert(
      fc.property(
        someLayout,
        somePage,
        fc.array(fc.integer({ min: 1, max: 3 }), { minLength: 1, maxLength: 9 }),
        (layout, page, parcels) => {
          const sheet = mediaNamed('letter');
          const cells = imposeCells(parcels, page, sheet, layout);
          if ('refused' in cells) {
            expect(cells.refused.code).toMatch(/^impose\/(?:too-large|off-sheet)$/);
            return;
          }
          laid += 1;
          expect(cells).toHaveLength(parcels.reduce((sum, each) => sum + each, 0));
          const keep = layout.printerMargin ?? 0;
          const reach = { x: keep, y: keep, width: sheet.width - 2 * keep, height: sheet.height - 2 * keep };
          for (const [at, cell] of cells.entries()) {
            expect(contains(reach, cell.box, 0.02)).toBe(true);
            const drawn = applyToBox(cell.matrix, { x: 0, y: 0, width: page.width, height: page.height });
            expect(contains(cell.box, drawn, 1e-6) && contains(drawn, cell.box, 1e-6)).toBe(true);
            for (const other of cells.slice(at + 1)) {
              const over = other.sheet === cell.sheet ? intersection(cell.box, other.box) : undefined;
              expect(over === undefined || over.width < 0.02 || over.height < 0.02).toBe(true);
            }
          }
          const positions = positionBoxes(page, sheet, layout);
          if ('refused' in positions) throw new Error(positions.refused.message);
          const onFirst = cells.filter((cell) => cell.sheet === 1).map(({ box }) => box);
          for (const mark of cutMarks(onFirst, positions, reach)) {
            marked += 1;
            expect(contains(reach, mark, 1e-6)).toBe(true);
            expect(positions.filter((position) => intersection(position, mark))).toEqual([]);
          }
        },
      ),
      { numRuns: 1500 },
    );
    expect(laid).toBeGreaterThan(50);
    expect(marked).toBeGreaterThan(50);
  });
});

describe('cut marks', () => {
  const letter = mediaNamed('letter');
  const whole = { x: 0, y: 0, width: letter.width, height: letter.height };

  it('lie outside the corners, in line with the edges: eight for a page with room all around', () => {
    const [cell] = cellsOf(imposeCells(1, mediaNamed('4x6in'), letter, { columns: 1, rows: 2, turn: 90, firstFree: 1 }));
    const box = cell?.box ?? whole;
    const marks = cutMarks([box], [box], whole);
    expect(marks).toHaveLength(8);
    // The top left corner's: by hand, 3 pt away, 12 pt long, a quarter of a point wide, on the edge's line.
    expect(marks).toContainEqual({ x: inToPt(1.25) - 15, y: inToPt(0.75) - 0.125, width: 12, height: 0.25 });
    expect(marks).toContainEqual({ x: inToPt(1.25) - 0.125, y: inToPt(0.75) - 15, width: 0.25, height: 12 });
  });

  it('are not there where pages touch, and keep off positions that are still free', () => {
    const four = positionBoxes(a6, a4, EVEN);
    if ('refused' in four) throw new Error(four.refused.message);
    expect(cutMarks(four, four, { x: 0, y: 0, width: a4.width, height: a4.height })).toEqual([]);
    const wide = positionBoxes(mediaNamed('80x120mm'), a4, EVEN);
    if ('refused' in wide) throw new Error(wide.refused.message);
    const marks = cutMarks(wide.slice(0, 1), wide, { x: 0, y: 0, width: a4.width, height: a4.height });
    expect(marks.length).toBeGreaterThan(4);
    for (const mark of marks) expect(wide.some((position) => intersection(position, mark))).toBe(false);
  });
});
