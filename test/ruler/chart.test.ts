import { describe, expect, it } from 'vitest';
import { gridOf } from '../../src/geometry/grid.js';
import { mediaNamed } from '../../src/geometry/media.js';
import { Chart, wrapped } from '../../src/ruler/chart.js';

const chart = (): Chart => new Chart(mediaNamed('4x6in'), gridOf('203dpi'));

describe('Chart', () => {
  it('keeps fine lines on the page, and their middles where they belong within half a dot', () => {
    const at = chart();
    for (const mm of [0, 0.04, 10, 50.01, 101.6]) at.upright(mm, 10, 20);
    expect(at.marks.map(({ x }) => x)).toEqual([0, 0, 79, 399, 811]);
    expect(at.marks.every(({ y, width, height }) => y === 80 && width === 1 && height === 80)).toBe(true);
  });

  it('makes fine lines of about the same thickness on every grid', () => {
    const hairs = (['203dpi', '8dpmm', '300dpi', '12dpmm', '600dpi', '24dpmm'] as const).map((name) => {
      return new Chart(mediaNamed('4x6in'), gridOf(name)).hair;
    });
    expect(hairs).toEqual([1, 1, 1, 2, 3, 3]);
  });

  it.each([
    [-1, 0, 2, 2],
    [0, 0, 813, 1],
    [0, 1217, 1, 2],
    [0, 0, 0, 1],
    [0.5, 0, 1, 1],
  ])('refuses a mark at %d %d of %d by %d', (x, y, width, height) => {
    expect(() => {
      chart().mark(x, y, width, height);
    }).toThrow(RangeError);
  });
});

describe('wrapped', () => {
  const in10 = (text: string): readonly string[] => wrapped(text, (line) => line.length <= 10);
  it('breaks at blanks, never at no-break ones, and gives a long word its own line', () => {
    expect(in10('one two three four')).toEqual(['one two', 'three four']);
    expect(in10('a [1mm,\u00a02mm] b')).toEqual(['a', '[1mm,\u00a02mm]', 'b']);
    expect(in10('one unbreakableword two')).toEqual(['one', 'unbreakableword', 'two']);
    expect(in10('')).toEqual(['']);
  });
});
