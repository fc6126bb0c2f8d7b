import bwipjs from 'bwip-js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { gridOf } from '../../src/geometry/grid.js';
import { TURNS, type Turn } from '../../src/geometry/placement.js';
import type { EvenLines } from '../../src/proof/even-lines.js';
import { matrixGrid } from '../../src/proof/matrix-grid.js';
import { measureMatrix, type MatrixMeasure } from '../../src/proof/measure-matrix.js';
import { gradeOf } from '../../src/proof/simulated-grade.js';
import type { Code, GreyRaster, Symbology } from '../../src/reading/source.js';

const grid = gridOf('203dpi');
const PER_PT = 203 / 72;

/** A symbol's modules as an independent writer draws them, row by row. */
interface Drawn {
  readonly symbology: Symbology;
  readonly columns: number;
  readonly rows: number;
  readonly dark: readonly boolean[];
}

function drawn(symbology: Symbology, bcid: string, text: string): Drawn {
  const [{ pixs, pixx }] = bwipjs.raw({ bcid, text } as never) as unknown as [{ pixs: number[]; pixx: number }];
  return { symbology, columns: pixx, rows: pixs.length / pixx, dark: Array.from(pixs, (each) => each === 1) };
}

const LONG = 'SAMPLE, NOT VALID FOR CARRIAGE. '.repeat(5);
const SYMBOLS: readonly Drawn[] = [
  drawn('QR', 'qrcode', 'SAMPLE'),
  drawn('QR', 'qrcode', LONG),
  drawn('Data Matrix', 'datamatrix', 'S1'),
  drawn('Data Matrix', 'datamatrixrectangular', 'SAMPLE 42'),
  drawn('Data Matrix', 'datamatrix', LONG),
  drawn('Aztec', 'azteccode', 'SAMPLE'),
  drawn('Aztec', 'azteccode', LONG),
  drawn('PDF417', 'pdf417', 'SAMPLE'),
  drawn('PDF417', 'pdf417', LONG),
];
const QR = SYMBOLS[0] as Drawn;
const LONG_QR = SYMBOLS[1] as Drawn;
/** Of the property. */
const RUNS = 60;

/** The same symbol after a clockwise turn. */
function turnedBy({ symbology, columns, rows, dark }: Drawn, turn: Turn): Drawn {
  if (turn === 0) return { symbology, columns, rows, dark };
  const quarter = Array.from({ length: dark.length }, (_, at) => {
    const [column, row] = [at % rows, Math.floor(at / rows)];
    return dark[(rows - 1 - column) * columns + row] ?? false;
  });
  return turnedBy({ symbology, columns: rows, rows: columns, dark: quarter }, (turn - 90) as Turn);
}

interface Page {
  readonly dots: GreyRaster;
  readonly code: Code;
}

interface Put {
  readonly turn?: Turn;
  /** Dots a module along the page's x, and down it; in PDF417 a row is three modules high. */
  readonly x?: number;
  readonly y?: number;
  readonly at?: readonly [x: number, y: number];
  /** What a reader's corners are off by, dots. */
  readonly off?: number;
  readonly change?: (data: Uint8Array, width: number) => void;
}

/** A page of dots with a symbol on it, each line between modules rounded to a dot by itself. */
function page(symbol: Drawn, { turn = 0, x = 3, y = x, at = [40, 50], off = 0, change }: Put = {}): Page {
  const { symbology, columns, rows, dark } = turnedBy(symbol, turn);
  const stacked = symbology === 'PDF417' ? 3 : 1;
  const [dx, dy] = turn % 180 === 0 ? [x, y * stacked] : [x * stacked, y];
  const [xs, ys] = [
    Array.from({ length: columns + 1 }, (_, line) => Math.round(at[0] + line * dx)),
    Array.from({ length: rows + 1 }, (_, line) => Math.round(at[1] + line * dy)),
  ];
  const [width, height] = [(xs[columns] ?? 0) + 60, (ys[rows] ?? 0) + 70];
  const data = new Uint8Array(width * height).fill(255);
  dark.forEach((ink, module) => {
    const [column, row] = [module % columns, Math.floor(module / columns)];
    if (ink)
      for (let v = ys[row] ?? 0; v < (ys[row + 1] ?? 0); v++)
        data.fill(0, v * width + (xs[column] ?? 0), v * width + (xs[column + 1] ?? 0));
  });
  change?.(data, width);
  const pt = (dot: number): number => (dot + off) / PER_PT;
  const [x0, y0, x1, y1] = [pt(at[0]), pt(at[1]), pt(at[0] + columns * dx), pt(at[1] + rows * dy)];
  const box = { x: x0, y: y0, width: x1 - x0, height: y1 - y0 };
  const corners = [
    { x: x0, y: y0 },
    { x: x1, y: y0 },
    { x: x1, y: y1 },
    { x: x0, y: y1 },
  ] as const;
  return {
    dots: { width, height, data, pixelsPerPt: PER_PT, origin: { x: 0, y: 0 } },
    code: { symbology, identifier: ']Q1', bytes: '', corners, box, turn, ...(stacked === 1 ? { modules: sizeOf(symbol) } : {}) },
  };
}

const sizeOf = ({ columns, rows }: Drawn): { columns: number; rows: number } => ({ columns, rows });

const measured = (symbol: Drawn, put: Put = {}, gain = 0.5): MatrixMeasure | undefined => {
  const { dots, code } = page(symbol, put);
  return measureMatrix(dots, code, grid, gain);
};

/** The raster's modules as the grid has them: the colour in the middle of each. */
function found({ dots, code }: Page): boolean[] | undefined {
  const lines = matrixGrid(dots, code);
  if (!lines) return undefined;
  const middles = ({ start, count, module }: EvenLines): number[] =>
    Array.from({ length: count }, (_, index) => Math.floor(start + (index + 0.5) * module));
  return middles(lines.y).flatMap((v) => middles(lines.x).map((u) => dots.data[v * dots.width + u] === 0));
}

describe('matrixGrid', () => {
  it.each(SYMBOLS.map((each) => [`${each.symbology} ${each.columns} × ${each.rows}`, each] as const))(
    'gives every module of %s back, whichever way up',
    (_, symbol) => {
      for (const turn of TURNS) {
        for (const x of [1.5, 2, 3, 3.4]) expect(found(page(symbol, { turn, x })), `${turn}, ${x}`).toEqual(turnedBy(symbol, turn).dark);
      }
    },
  );

  it('gives them back at any size, in any place, and with corners a dot and a half off', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...SYMBOLS),
        fc.constantFrom(...TURNS),
        fc.oneof(fc.integer({ min: 2, max: 6 }), fc.double({ min: 1.8, max: 6, noNaN: true })),
        fc.double({ min: 20, max: 22, noNaN: true }),
        fc.double({ min: -1.5, max: 1.5, noNaN: true }),
        (symbol, turn, x, start, off) => {
          const each = page(symbol, { turn, x, at: [start, start + 0.4], off });
          expect(found(each)).toEqual(turnedBy(symbol, turn).dark);
          const stacked = symbol.symbology === 'PDF417' && turn % 180 !== 0;
          const lines = matrixGrid(each.dots, each.code)?.[stacked ? 'y' : 'x'];
          // Each line is rounded by itself: at the worst, half a dot one way in one half and the other way in the other.
          expect(Math.abs((lines?.module ?? 0) - x)).toBeLessThan(1.5 / (lines?.count ?? 1));
        },
      ),
      { numRuns: RUNS },
    );
  });

  it('gives them back with a speck on every hundredth dot and ink that has grown by one', () => {
    let seed = 5;
    const chance = (): number => (seed = (seed * 16807) % 2147483647) / 2147483647;
    const worn = (data: Uint8Array): void => {
      for (let at = data.length - 1; at > 0; at--) if (data[at - 1] === 0) data[at] = 0;
      for (let at = 0; at < data.length; at++) if (chance() < 0.01) data[at] = 255 - (data[at] ?? 0);
    };
    for (const symbol of SYMBOLS) {
      for (const x of [5, 6.1]) {
        const { dots, code } = page(symbol, { x, change: worn });
        const lines = matrixGrid(dots, code);
        expect(lines?.x.count, `${symbol.symbology} ${x}`).toBe(symbol.columns);
        expect(Math.abs((lines?.x.module ?? 0) - x)).toBeLessThan(0.1);
        expect(lines?.x.growth).toBeCloseTo(1, 0);
        expect(lines?.y.count).toBe(symbol.rows);
      }
    }
  });

  it('rows of a PDF417 whose edges go over three dots are no more rows', () => {
    const ragged = (data: Uint8Array, width: number): void => {
      for (let at = data.length - 1; at >= 2 * width; at--) {
        const late = Math.floor((at % width) / 9) % 3;
        if (late > 0) data[at] = data[at - late * width] ?? 255;
      }
    };
    const stacked = SYMBOLS.at(-1) as Drawn;
    for (const x of [3, 4])
      expect(measured(stacked, { x, change: ragged })).toMatchObject({ columns: stacked.columns, rows: stacked.rows });
  });

  it('finds none in a slanted code, a row of bars, a MaxiCode, paper, or dots by chance', () => {
    const { dots, code } = page(QR);
    const { modules, ...untold } = code;
    expect(modules).toEqual({ columns: 21, rows: 21 });
    expect(matrixGrid(dots, untold)).toBeUndefined();
    expect(matrixGrid(dots, { ...code, turn: undefined })).toBeUndefined();
    expect(matrixGrid(dots, { ...untold, symbology: 'Code 128' })).toBeUndefined();
    expect(matrixGrid(dots, { ...untold, symbology: 'MaxiCode' })).toBeUndefined();
    for (const symbology of ['QR', 'PDF417'] as const) {
      expect(matrixGrid({ ...dots, data: dots.data.map(() => 255) }, { ...code, symbology })).toBeUndefined();
      let seed = 11;
      const chance = dots.data.map(() => ((seed = (seed * 16807) % 2147483647) % 2 === 0 ? 0 : 255));
      expect(matrixGrid({ ...dots, data: chance }, { ...code, symbology })).toBeUndefined();
    }
  });
});

describe('measureMatrix', () => {
  it('of a code on whole dots: every figure as planned, whatever gain', () => {
    for (const symbol of SYMBOLS) {
      for (const turn of TURNS) {
        for (const x of [2, 3, 4]) {
          const measure = measured(symbol, { x, turn });
          const { columns, rows } = turnedBy(symbol, turn);
          expect(measure).toMatchObject({ columns, rows, modulation: 1, modulationAtGain: 1, quiet: 10, grade: 4 });
          for (const none of [measure?.gridOff, measure?.axial ?? 0]) expect(none).toBeCloseTo(0, 9);
          expect(measure?.moduleDots).toBeCloseTo(x, 9);
          expect(measure?.moduleMm).toBeCloseTo((x / 203) * 25.4, 9);
          expect(measure?.moduleMil).toBeCloseTo((x / 203) * 1000, 6);
          expect(measure?.axial === undefined).toBe(symbol.symbology === 'PDF417');
          expect(measure?.rowHeight ?? 3).toBeCloseTo(3, 9);
        }
      }
    }
  });

  it('at sizes that are no whole dots: lines up to half a dot off', () => {
    const measure = measured(LONG_QR, { x: 3.048 });
    expect(measure?.moduleDots).toBeCloseTo(3.048, 2);
    // Half a dot each way is 0.5 · √2 / 3.048 of a module.
    expect(measure?.gridOff).toBeGreaterThan(0.15);
    expect(measure?.gridOff).toBeLessThan(0.25);
  });

  it('of a stretch in one direction: the difference of both, and its grade (ISO/IEC 15415, from memory)', () => {
    expect(measured(LONG_QR, { x: 4, y: 4 * 1.015 })?.axial).toBeCloseTo(0.015, 2);
    const uneven = measured(LONG_QR, { x: 4, y: 4.4 });
    expect(uneven?.axial).toBeCloseTo(0.4 / 4.2, 2);
    expect(uneven?.leastModuleDots).toBeCloseTo(4, 1);
    expect(uneven?.grade).toBeLessThan(3);
  });

  it('what reading had to correct counts for the grade', () => {
    const { dots, code } = page(QR);
    expect(measureMatrix(dots, { ...code, unusedCorrection: 0.5 }, grid, 0)).toMatchObject({ unusedCorrection: 0.5, grade: 3 });
    expect(measureMatrix(dots, code, grid, 0)).toMatchObject({ unusedCorrection: undefined, grade: 4 });
  });

  it('paper that ink shortens, and the end of the page', () => {
    const stamp =
      (x: number, y: number) =>
      (data: Uint8Array, width: number): void => {
        for (let v = y; v < y + 3; v++) data.fill(0, v * width + x, v * width + x + 3);
      };
    const side = 3 * QR.columns;
    expect(measured(QR, { change: stamp(40 - 3 - 6, 70) })?.quiet).toBe(2);
    expect(measured(QR, { change: stamp(40 + side + 12, 70) })?.quiet).toBe(4);
    expect(measured(QR, { change: stamp(60, 50 - 3 - 9) })?.quiet).toBe(3);
    expect(measured(QR, { change: stamp(60, 50 + side + 3) })?.quiet).toBe(1);
    expect(measured(QR, { at: [12, 6] })?.quiet).toBe(2);
  });

  it('a column of dots without ink: what the spot loses, by the area of a segment', () => {
    // Finders are at the left: their ring is ink from the first dot on. The spot is 0.254 mm = 2.03 dots wide; beside the middle a segment is lost.
    const white = (column: number) => (data: Uint8Array, width: number) => {
      for (let at = 40 + column; at < data.length; at += width) data[at] = 255;
    };
    const [r, d] = [1.015, 0.5];
    const lost = (r * r * Math.acos(d / r) - d * Math.sqrt(r * r - d * d)) / (Math.PI * r * r);
    for (const column of [6, 8]) {
      const beside = measured(QR, { change: white(column) });
      expect(beside?.modulation).toBeGreaterThan(1 - 2 * lost - 0.05);
      expect(beside?.modulation).toBeLessThan(1 - 2 * lost + 0.05);
    }
    // In the middle of a module it takes the module's colour: what is left tells badly, the reader's own corrections come on top.
    expect(measured(QR, { change: white(7) })?.grade).toBeLessThan(2);
  });

  it('a smear to the right by a dot leaves the modules as wide as they are, and takes from their modulation at gain', () => {
    const smear = (data: Uint8Array): void => {
      for (let at = data.length - 1; at > 0; at--) if (data[at - 1] === 0) data[at] = 0;
    };
    const smeared = measured(LONG_QR, { change: smear });
    expect(smeared?.moduleDots).toBeCloseTo(3, 9);
    expect(smeared?.modulationAtGain).toBeLessThan(0.9);
  });

  it('a lost column of dots, wherever it is, is seen', () => {
    for (let gone = 41; gone < 40 + 3 * QR.columns - 1; gone += 4) {
      const change = (data: Uint8Array, width: number): void => {
        for (let row = 0; row < data.length; row += width) data.copyWithin(row + gone, row + gone + 1, row + width);
      };
      const measure = measured(QR, { change });
      expect(measure === undefined || (measure.gridOff > 0 && measure.moduleDots < 3), `column ${gone}`).toBe(true);
    }
  });

  it('growth of the ink takes away from modules that are no whole dots', () => {
    const plain = measured(LONG_QR, { x: 2.82 }, 0);
    const grown = measured(LONG_QR, { x: 2.82 }, 0.5);
    expect(plain?.modulationAtGain).toBe(plain?.modulation);
    expect(grown?.modulation).toBe(plain?.modulation);
    expect(grown?.modulationAtGain).toBeLessThan(grown?.modulation ?? 0);
    // Two whole dots of growth leave nothing of a light module of two.
    expect(measured(QR, { x: 2 }, 2)?.modulationAtGain).toBe(0);
  });
});

describe('gradeOf of matrix codes (ISO/IEC 15415, handbook section 5.2)', () => {
  it('gives the table its whole grades', () => {
    expect([0.5, 0.4, 0.3, 0.2, 0].map((value) => gradeOf('moduleModulation', value))).toEqual([4, 3, 2, 1, 0]);
    expect([0.62, 0.5, 0.37, 0.25, 0].map((value) => gradeOf('unusedCorrection', value))).toEqual([4, 3, 2, 1, 0]);
    expect([0.06, 0.08, 0.1, 0.12, 0.2].map((value) => gradeOf('axial', value))).toEqual([4, 3, 2, 1, 0]);
    expect([0.38, 0.5, 0.63, 0.75, 1].map((value) => gradeOf('gridOff', value))).toEqual([4, 3, 2, 1, 0]);
  });
});
