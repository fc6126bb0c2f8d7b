import { describe, expect, it } from 'vitest';
import { CODE_128, code128Modules, code128Values } from '../../src/press/code128.js';
import { readCodes } from '../../src/reading/codes.js';
import { modulesOf } from '../outside/code128-table.js';
import { VECTORS } from '../outside/code128-vectors.js';
import { drawModules } from '../outside/modules.js';

/** Printable ASCII without FNC1 in sets B and C: what this writer writes. */
const WRITTEN = VECTORS.filter(({ identifier, values }) => identifier === ']C0' && values[0] !== 103);

describe('code128Values', () => {
  it.each(WRITTEN)('$name ($source)', ({ text, values, modules, bits }) => {
    expect(code128Values(text)).toEqual(values);
    const widths = code128Modules(text) ?? [];
    expect(widths.reduce((sum, each) => sum + each, 0)).toBe(modules);
    const drawn = widths.map((width, index) => (index % 2 === 0 ? '1' : '0').repeat(width)).join('');
    expect(drawn).toBe(bits ?? modulesOf(values));
  });

  it('takes the shorter of both sets', () => {
    const setsOf = (text: string): string =>
      (code128Values(text) ?? [])
        .slice(0, -2)
        .filter((value) => value === 99 || value === 100 || value > 102)
        .map((value) => ({ 99: 'C', 100: 'B', 104: 'B', 105: 'C' })[value])
        .join('');
    expect(['12', '123', '1234X', '12345', 'X12', 'X1234', 'X12345', 'X1234Y', 'X123456Y'].map(setsOf)).toEqual([
      'C',
      'B',
      'CB',
      'CB',
      'B',
      'BC',
      'B',
      'B',
      'BCB',
    ]);
  });

  it.each(['A', '7', '42', 'DOT2', 'order 17/41 (~ {x}) "q"', '0'.repeat(24), 'A1B22C333D4444E55555F666666'])(
    'writes “%s” so that our reader reads it',
    async (text) => {
      const bits = (code128Modules(text) ?? []).map((width, index) => (index % 2 === 0 ? '1' : '0').repeat(width)).join('');
      expect((await readCodes(drawModules(bits, 3))).map(({ symbology, bytes }) => [symbology, bytes])).toEqual([
        ['Code 128', Buffer.from(text).toString('hex')],
      ]);
    },
  );

  it.each(['', 'Bögen', 'a\tb', '送', '\x7f'])('writes nothing for “%s”', (text) => {
    expect(code128Values(text)).toBeUndefined();
    expect(code128Modules(text)).toBeUndefined();
  });

  it('has the 107 characters of the standard', () => {
    expect(CODE_128).toHaveLength(107);
  });
});
