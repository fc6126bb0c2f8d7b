import bwipjs from 'bwip-js';
import { describe, expect, it } from 'vitest';
import { barModules } from '../../src/proof/bar-modules.js';
import { CODE_128 } from '../../src/press/code128.js';
import { isSymbol, modulesOf, valueOf } from '../../src/proof/code128.js';

/** Bars and spaces in modules as an independent writer draws them. */
function drawn(bcid: string, text: string, more: Record<string, unknown> = {}): number[] {
  const [first] = bwipjs.raw({ bcid, text, ...more } as never) as unknown as { sbs: number[] }[];
  const widths = [...(first?.sbs ?? [])];
  // A space behind the last bar belongs to no symbol.
  return widths.length % 2 === 0 ? widths.slice(0, -1) : widths;
}

describe('Code 128', () => {
  it('has 106 characters of 11 modules and a stop of 13, no two alike', () => {
    const lengths = CODE_128.map((row) => Array.from(row, Number).reduce((sum, each) => sum + each, 0));
    expect(lengths).toEqual([...Array<number>(106).fill(11), 13]);
    expect(new Set(CODE_128).size).toBe(107);
  });

  it('draws every data character as bwip-js does (its raw mode takes values)', () => {
    for (let value = 0; value < 103; value++) {
      const symbol = drawn('code128', `^103^${String(value).padStart(3, '0')}`, { raw: true });
      expect(symbol.slice(6, 12), String(value)).toEqual(modulesOf(value));
    }
    expect(['211412', '211214', '211232']).toEqual(CODE_128.slice(103, 106));
  });

  // ISO/IEC 15417 figure 1 and GenSpecs figure 6.6.5-3 by way of zint's tests (handbook section 11.4, secondary).
  it.each([
    ['AIM', '11010010000101000110001100010001010111011000101110110001100011101011', [104, 33, 41, 45, 45, 106]],
    [
      '(420)45458',
      '110100111001111010111010110111000100100011001110101100011101100010111100100101100011101011',
      [105, 102, 42, 4, 54, 58, 88, 106],
    ],
  ])('reads the bits of %s', (_, bits, values) => {
    const widths = (bits.match(/1+|0+/g) ?? []).map((run) => run.length);
    expect(barModules(widths, 'Code 128')).toEqual({ modules: widths, module: 1 });
    const read = Array.from({ length: values.length }, (__, index) => valueOf(widths.slice(6 * index, 6 * index + 6)));
    expect(read).toEqual(values);
    expect(isSymbol(values)).toBe(true);
  });

  // Handbook section 11.4 (computed there).
  it.each([
    [[104, 33, 41, 45, 99, 12, 34, 87, 106]],
    [[105, 102, 42, 2, 12, 34, 56, 78, 102, 93, 74, 89, 1, 0, 0, 0, 3, 98, 50, 39, 102, 106]],
    [[104, 37, 37, 99, 87, 65, 43, 21, 100, 22, 35, 33, 5, 106]],
  ])('knows the check character of %j, and no other', (values) => {
    expect(isSymbol(values)).toBe(true);
    for (let other = 0; other < 103; other++) {
      if (other !== values.at(-2)) expect(isSymbol([...values.slice(0, -2), other, 106])).toBe(false);
    }
  });
});

describe('barModules', () => {
  const LINEAR = [
    ['Code 128', drawn('code128', 'SAMPLE-0042-7788')],
    ['ITF', drawn('interleaved2of5', '15400141288763')],
    ['Code 39', drawn('code39', 'SAMPLE 42')],
  ] as const;

  it.each(LINEAR)('understands %s at any size, either way round', (symbology, modules) => {
    for (const module of [0.7, 2, 3.047, 6]) {
      const widths = modules.map((each) => each * module);
      for (const row of [widths, widths.toReversed()]) {
        const found = barModules(row, symbology);
        expect(found?.module).toBeCloseTo(module, 6);
        found?.modules.forEach((each, index) => {
          expect(each).toBeCloseTo((row[index] ?? NaN) / module, 6);
        });
      }
    }
  });

  it.each(LINEAR)('does not take a damaged %s for one', (symbology, modules) => {
    expect(barModules(modules.slice(1), symbology)).toBeUndefined();
    expect(barModules(modules.slice(0, -2), symbology)).toBeUndefined();
    const smeared = modules.toSpliced(9, 3, (modules[9] ?? 0) + (modules[10] ?? 0) + (modules[11] ?? 0));
    expect(barModules(smeared, symbology)).toBeUndefined();
    expect(barModules([], symbology)).toBeUndefined();
  });

  it('gives Code 128 its modules back when every edge is off by up to a third of one', () => {
    const modules = LINEAR[0][1];
    let seed = 7;
    const noise = (): number => ((seed = (seed * 16807) % 2147483647) / 2147483647 - 0.5) * 0.4;
    const edges = modules.reduce<number[]>((all, each) => [...all, (all.at(-1) ?? 0) + each], [0]).map((edge) => edge + noise());
    const widths = edges.slice(1).map((edge, index) => edge - (edges[index] ?? 0));
    expect(barModules(widths, 'Code 128')?.modules).toEqual(modules);
  });
});
