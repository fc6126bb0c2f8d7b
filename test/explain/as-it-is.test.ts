import { describe, expect, it } from 'vitest';
import { fitWhole, printedModule } from '../../src/explain/as-it-is.js';
import { gridOf, type GridName } from '../../src/geometry/grid.js';
import { parseMedia } from '../../src/geometry/media.js';

const roll = parseMedia('4x6in');
const MIL = 0.0254;
const CODE_128 = { least: 0.25, most: 0.43, source: 'a test', trust: 'secondary' } as const;

function fitted(name: string, lying = false) {
  const media = parseMedia(name);
  if (!media || !roll) throw new Error(name);
  return fitWhole(lying ? { width: media.height, height: media.width } : media, roll);
}

describe('fitting a page whole to 4×6 in', () => {
  it.each([
    // Handbook section 5.5, COMPUTED.
    ['letter', 0.4706],
    ['a4', 0.4838],
    ['legal', 0.4286],
    ['half-letter', 0.7059],
    ['a5', 0.6865],
    ['a6', 0.9676],
    ['100x150mm', 1.016],
    ['4x8in', 0.75],
  ])('%s: %f (handbook section 5.5), standing or lying', (name, factor) => {
    expect(fitted(name)).toMatchObject({ pageTurned: false, factorUnturned: undefined });
    expect(fitted(name).factor).toBeCloseTo(factor, 4);
    expect(fitted(name, true)).toMatchObject({ pageTurned: true });
    expect(fitted(name, true).factor).toBeCloseTo(factor, 4);
  });

  it('of a lying page tells what comes of it where the dialog does not turn it', () => {
    expect(fitted('letter', true).factorUnturned).toBeCloseTo(4 / 11, 6);
  });
});

describe('a module on the print', () => {
  it.each([
    // Handbook section 5.5, COMPUTED: what 13, 15, 17 and 21 mil become.
    ['letter', [6.12, 7.06, 8.0, 9.88]],
    ['a4', [6.29, 7.26, 8.22, 10.16]],
    ['half-letter', [9.18, 10.59, 12.0, 14.82]],
    ['a5', [8.92, 10.3, 11.67, 14.42]],
  ])('from %s: 13, 15, 17 and 21 mil become %j mil (handbook section 5.5)', (name, mils) => {
    [13, 15, 17, 21].forEach((mil, index) => {
      const { moduleMil = 0 } = printedModule(mil * MIL, CODE_128, fitted(name).factor, gridOf('8dpmm'));
      expect(Math.abs(moduleMil - (mils[index] ?? 0))).toBeLessThan(0.011);
    });
  });

  it('of 0.381 mm at 8 dots/mm is 1.434 dots at 0.4706, and too fine (handbook section 11.6)', () => {
    const { moduleDots, standing } = printedModule(0.381, CODE_128, 0.470588, gridOf('8dpmm'));
    expect(moduleDots).toBeCloseTo(1.434, 3);
    expect(standing).toBe('too-fine');
  });

  it('of 0.381 mm at 8 dots/mm is 3.048 dots at true size (handbook section 11.6)', () => {
    expect(printedModule(0.381, CODE_128, 1, gridOf('8dpmm')).moduleDots).toBeCloseTo(3.048, 3);
  });

  it.each<[number, GridName, string]>([
    [0.23, '203dpi', 'too-fine'],
    [0.25, '203dpi', 'in-range'],
    [0.25, '300dpi', 'in-range'],
    [0.2, '600dpi', 'too-fine'],
    [0.43, '203dpi', 'in-range'],
    [0.5, '203dpi', 'over-range'],
  ])('of %f mm at %s is %s for Code 128 (ISO 15394 by handbook section 2.2: 0.25 to 0.43 mm)', (mm, grid, standing) => {
    expect(printedModule(mm, CODE_128, 1, gridOf(grid)).standing).toBe(standing);
  });

  it('may be wide enough to be read and still under the range of its number', () => {
    expect(printedModule(0.375, { ...CODE_128, least: 0.495 }, 1, gridOf('203dpi')).standing).toBe('under-range');
  });

  it('that can not be measured is called so', () => {
    expect(printedModule(undefined, undefined, 0.5, gridOf('203dpi'))).toEqual({
      moduleDots: undefined,
      moduleMil: undefined,
      standing: 'not-measured',
    });
  });
});
