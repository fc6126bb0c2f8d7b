import bwipjs from 'bwip-js/node';
import { describe, expect, it } from 'vitest';
import { readCodes } from '../../src/reading/codes.js';
import { bitsOfWidths, CHARACTERS, checkValue, modulesOf, valuesOf } from './code128-table.js';
import { VECTORS, type Code128Vector } from './code128-vectors.js';
import { drawModules, zintModules } from './modules.js';
import { outsideCheck } from './tools.js';

const isGs1 = ({ identifier }: Code128Vector): boolean => identifier === ']C1';

const hex = (text: string): string => Buffer.from(text, 'latin1').toString('hex');

function bwipModules(type: string, data: string): string {
  const [drawn] = bwipjs.raw(type, data, {}) as readonly { sbs: readonly number[] }[];
  return bitsOfWidths(drawn?.sbs ?? []);
}

describe('Code 128: published symbols, our reader', () => {
  it.each(VECTORS)('$name ($source): check value and length by the rules of handbook section 2.1', ({ values, modules, bits }) => {
    expect(checkValue(values.slice(0, -2))).toBe(values.at(-2));
    expect(modulesOf(values)).toHaveLength(modules);
    expect(11 * (values.length - 3) + 35).toBe(modules);
    if (bits !== undefined) expect(modulesOf(values)).toBe(bits);
  });

  it.each(VECTORS)('$name ($source): drawn with 3 dots a module and read back', async ({ values, bits, identifier, text }) => {
    const codes = await readCodes(drawModules(bits ?? modulesOf(values), 3));
    expect(codes.map(({ symbology, identifier: id, bytes, turn }) => ({ symbology, id, bytes, turn }))).toEqual([
      { symbology: 'Code 128', id: identifier, bytes: hex(text), turn: 0 },
    ]);
  });

  it('a symbol with a wrong check value is not read', async () => {
    expect(await readCodes(drawModules(modulesOf([104, 33, 41, 45, 46, 106]), 3))).toEqual([]);
  });

  it('a space in place of FNC1 is told apart: the bytes differ though the text looks alike', async () => {
    const plain = drawModules(modulesOf([105, 42, 4, 54, 58, checkValue([105, 42, 4, 54, 58]), 106]), 3);
    const [code] = await readCodes(plain);
    expect(code?.identifier).toBe(']C0');
    expect(code?.bytes).toBe(hex('42045458'));
  });
});

describe('Code 128: independent writers', () => {
  const withData = VECTORS.filter((each): each is Code128Vector & { write: string } => each.write !== undefined);

  // bwip-js draws the samples: agreeing with the standard's figures here is what lets the samples stand for the standard.
  it.each(withData.filter(({ bits }) => bits !== undefined))('bwip-js draws $name as $source does', (vector) => {
    expect(bwipModules(isGs1(vector) ? 'gs1-128' : 'code128', vector.write)).toBe(vector.bits);
  });

  outsideCheck('zint draws characters 0 to 99 as the table has them', ['zint'], () => {
    for (let first = 0; first < 100; first += 20) {
      const pairs = Array.from({ length: 20 }, (_, i) => first + i);
      const [modules = ''] = zintModules(['-b', '20', '-d', pairs.map((value) => String(value).padStart(2, '0')).join('')]);
      expect(valuesOf(modules)?.slice(0, -2)).toEqual([105, ...pairs]);
    }
  });

  outsideCheck('zint draws what the published figures show, and our reader reads every one of its symbols', ['zint'], async () => {
    for (const vector of withData) {
      const type = isGs1(vector) ? ['-b', '16', '--gs1parens', '--gs1nocheck'] : ['-b', '20'];
      const [modules = ''] = zintModules([...type, '-d', vector.write]);
      expect(valuesOf(modules), `${vector.name}: characters of the table`).toBeDefined();
      if (vector.bits !== undefined) expect(modules, vector.name).toBe(vector.bits);
      const codes = await readCodes(drawModules(modules, 3));
      expect(
        codes.map(({ identifier, bytes }) => [identifier, bytes]),
        vector.name,
      ).toEqual([[vector.identifier, hex(vector.text)]]);
    }
  });

  it('the table has 107 different characters of 11 modules, the stop of 13', () => {
    expect(new Set(CHARACTERS).size).toBe(107);
    expect(CHARACTERS.slice(0, 106).filter((each) => each.length !== 11)).toEqual([]);
    expect(CHARACTERS[106]).toHaveLength(13);
    // Handbook section 2.1, VERIFIED-S: start A, B, C, FNC1 and stop.
    expect([103, 104, 105, 102, 106].map((value) => CHARACTERS[value])).toEqual([
      '11010000100',
      '11010010000',
      '11010011100',
      '11110101110',
      '1100011101011',
    ]);
  });
});
