import bwipjs from 'bwip-js/node';
import { describe, expect } from 'vitest';
import { readCodes } from '../../src/reading/codes.js';
import type { Symbology } from '../../src/reading/source.js';
import { bitsOfWidths } from './code128-table.js';
import { drawMatrix, drawModules, zintModules } from './modules.js';
import { outsideCheck } from './tools.js';

const hex = (text: string): string => Buffer.from(text, 'latin1').toString('hex');
const GS = '\x1d';

/** Elements as narrow (n) or wide (w): the two writers draw wide ones 2 or 3 modules wide, both legal. */
const wideAndNarrow = (modules: string): string =>
  [...modules.replace(/0+$/, '').matchAll(/1+|0+/g)].map(([run]) => (run.length > 1 ? 'w' : 'n')).join('');

interface Case {
  readonly symbology: Symbology;
  /** ISO/IEC 15424 identifier (FROM MEMORY: ]d1 and ]d2 Data Matrix ECC 200 without and with FNC1 first, ]Q1, ]L, ]z, ]I, ]A). */
  readonly identifier: RegExp;
  readonly zint: readonly string[];
  readonly text: string;
  /** Quiet zone in modules: handbook section 4.4. */
  readonly quiet: number;
  readonly rowHeight?: number;
}

/** Two-dimensional symbols written by zint, a writer of its own; read by our reader. */
const MATRIX: readonly Case[] = [
  { symbology: 'Data Matrix', identifier: /^\]d1$/, zint: ['-b', '71', '--square', '-d', 'SAMPLE-0417'], text: 'SAMPLE-0417', quiet: 2 },
  {
    symbology: 'Data Matrix',
    identifier: /^\]d2$/,
    zint: ['-b', '71', '--square', '--gs1', '--gs1parens', '-d', '(420)21234(93)74890100000003985039'],
    text: `42021234${GS}9374890100000003985039`,
    quiet: 2,
  },
  { symbology: 'QR', identifier: /^\]Q1$/, zint: ['-b', '58', '-d', 'PARCEL 17 OF 41'], text: 'PARCEL 17 OF 41', quiet: 4 },
  { symbology: 'Aztec', identifier: /^\]z0$/, zint: ['-b', '92', '-d', 'RETURN 0417'], text: 'RETURN 0417', quiet: 2 },
  {
    symbology: 'PDF417',
    identifier: /^\]L[02]$/,
    zint: ['-b', '55', '-d', 'ROUTE 12 STOP 9'],
    text: 'ROUTE 12 STOP 9',
    quiet: 4,
    rowHeight: 3,
  },
];

describe('symbols of an independent writer, our reader', () => {
  for (const { symbology, identifier, zint, text, quiet, rowHeight } of MATRIX) {
    outsideCheck(`zint's ${symbology} ${JSON.stringify(text)} comes back byte for byte`, ['zint'], async () => {
      const rows = zintModules(zint);
      const columns = Math.max(...rows.map(({ length }) => length));
      const raster = drawMatrix(
        rows.map((row) => row.padEnd(columns, '0')),
        3,
        quiet,
        rowHeight,
      );
      const codes = await readCodes(raster, { symbologies: [symbology] });
      expect(codes.map(({ bytes }) => bytes)).toEqual([hex(text)]);
      expect(codes[0]?.symbology).toBe(symbology);
      expect(codes[0]?.identifier).toMatch(identifier);
    });
  }

  outsideCheck("zint's ITF-14 comes back with its check digit", ['zint'], async () => {
    // BCOCA p. 55 sample, handbook section 11.1: 1540014128876 has the check digit 3.
    const [modules = ''] = zintModules(['-b', '89', '--notext', '--border=0', '-d', '1540014128876']);
    const codes = await readCodes(drawModules(modules, 3), { symbologies: ['ITF'] });
    expect(codes.map(({ identifier, bytes }) => [identifier.slice(0, 2), bytes])).toEqual([[']I', hex('15400141288763')]]);
  });

  outsideCheck("zint's Code 39 comes back", ['zint'], async () => {
    const [modules = ''] = zintModules(['-b', '8', '-d', 'SLIP-17']);
    const codes = await readCodes(drawModules(modules, 3), { symbologies: ['Code 39'] });
    expect(codes.map(({ identifier, bytes }) => [identifier.slice(0, 2), bytes])).toEqual([[']A', hex('SLIP-17')]]);
  });
});

describe('two independent writers agree, so samples drawn by one stand for the standard', () => {
  const linear = [
    ['code39', ['-b', '8'], 'SLIP-17'],
    ['interleaved2of5', ['-b', '3'], '15400141288763'],
  ] as const;
  for (const [type, zint, data] of linear) {
    outsideCheck(`bwip-js and zint draw ${type} ${data} alike`, ['zint'], () => {
      const [drawn] = bwipjs.raw(type, data, {}) as readonly { sbs: readonly number[] }[];
      const [other = ''] = zintModules([...zint, '-d', data]);
      expect(other.length).toBeGreaterThan(100);
      expect(wideAndNarrow(bitsOfWidths(drawn?.sbs ?? []))).toBe(wideAndNarrow(other));
    });
  }

  outsideCheck('bwip-js and zint draw a Data Matrix alike', ['zint'], () => {
    // Digits in pairs: the one encoding that every writer chooses.
    const data = '0417041804190420';
    const [drawn] = bwipjs.raw('datamatrix', data, {}) as readonly { pixs: readonly number[]; pixx: number; pixy: number }[];
    if (!drawn) throw new Error('bwip-js drew nothing');
    const rows = Array.from({ length: drawn.pixy }, (_, y) => drawn.pixs.slice(y * drawn.pixx, (y + 1) * drawn.pixx).join(''));
    expect(rows).toEqual(zintModules(['-b', '71', '--square', '-d', data], drawn.pixx));
  });
});
