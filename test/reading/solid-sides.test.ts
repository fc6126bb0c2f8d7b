import { describe, expect, it } from 'vitest';
import { codeLikeAreas } from '../../src/reading/code-like.js';
import { matrixBySides } from '../../src/reading/solid-sides.js';
import { dataMatrix } from '../samples/code-art.js';
import { Drawing } from '../samples/drawing.js';
import { QUARTER_TURNS } from '../samples/sample.js';
import { drawnPage, rasterWith } from './drawn-page.js';

type Rect = readonly [number, number, number, number];
const AREA = { x: 15, y: 15, width: 120, height: 120 };

/** Two solid sides of a square of `count` modules of `m` pixels from (30, 30), and `teeth` along the other two. */
const sides = (count: number, m: number, teeth: (at: number) => boolean): readonly Rect[] => [
  [30, 30, m, count * m],
  [30, 30 + (count - 1) * m, count * m, m],
  ...Array.from({ length: count }, (_, at) => at)
    .filter(teeth)
    .flatMap((at): readonly Rect[] => [
      [30 + at * m, 30, m, m],
      [30 + (count - 1) * m, 30 + (count - 1 - at) * m, m, m],
    ]),
];
const isEven = (at: number): boolean => at % 2 === 0;

describe('matrixBySides', () => {
  it.each(['SAMPLE|0001', 'SAMPLE|0001|NOT VALID FOR CARRIAGE', 'SAMPLE|'.repeat(12)])(
    'sees the Data Matrix code that says %s, with modules as large as small type, at each turn',
    async (text) => {
      for (const module of [2, 2.6]) {
        for (const turn of QUARTER_TURNS) {
          const drawing = new Drawing(288, 432).matrix(dataMatrix(text), 144, 200, module).text(20, 40, 'SAMPLE', { size: 12 });
          const kinds = codeLikeAreas(await drawnPage(drawing, turn)).map(({ kind }) => kind);
          expect(kinds, `${module} pt, ${turn}°`).toEqual(['matrix']);
        }
      }
    },
  );

  it('needs modules in turn on both other sides, an even number, each as wide as the next', () => {
    expect(matrixBySides(rasterWith(300, 300, sides(20, 4, isEven)), AREA)).toEqual({ x: 20, y: 20, width: 80 / 1.5, height: 80 / 1.5 });
    expect(
      matrixBySides(
        rasterWith(
          300,
          300,
          sides(20, 4, () => false),
        ),
        AREA,
      ),
    ).toBeUndefined();
    expect(
      matrixBySides(
        rasterWith(
          300,
          300,
          sides(20, 4, (at) => at % 4 < 2),
        ),
        AREA,
      ),
    ).toBeDefined();
    expect(
      matrixBySides(
        rasterWith(
          300,
          300,
          sides(20, 4, (at) => at % 3 === 0),
        ),
        AREA,
      ),
    ).toBeUndefined();
    expect(matrixBySides(rasterWith(300, 300, sides(21, 4, isEven)), AREA)).toBeUndefined();
  });

  it('sees none in a frame, a table or bars', () => {
    const grid = Array.from({ length: 7 }, (_, at): readonly Rect[] => [
      [30, 30 + 20 * at, 121, 1],
      [30 + 20 * at, 30, 1, 121],
    ]).flat();
    expect(matrixBySides(rasterWith(300, 300, grid), AREA)).toBeUndefined();
    const bars = Array.from({ length: 12 }, (_, at): Rect => [30 + 10 * at, 30, 5, 120]);
    expect(matrixBySides(rasterWith(300, 300, [...bars, [30, 145, 120, 5]]), AREA)).toBeUndefined();
  });
});
