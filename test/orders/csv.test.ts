import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { csvText, guarded, type Cell } from '../../src/orders/csv.js';
import { outsideCheck, runTool } from '../outside/tools.js';

describe('CSV', () => {
  it('has a byte order mark, CRLF after each row, and quotes only where they are needed', () => {
    expect(csvText([['sku', 'n'], ['A "1"', 2], ['x,y\nz', 0.5], [''], ['café']])).toBe(
      '\uFEFFsku,n\r\n"A ""1""",2\r\n"x,y\nz",0.5\r\n""\r\ncafé\r\n',
    );
    expect(csvText([])).toBe('\uFEFF');
  });

  it.each(['=1+1', '+1', '-1', '@SUM(A1)', '\t=1', '\r=1', '  =1', '\uFF1D1'])('takes the sting out of %j', (text) => {
    expect(guarded(text)).toBe(`'${text}`);
  });

  it.each(['003404341234567890', '123456789012', '00501', '12E5', '3-14', '3/14', '2026-11-28', 'MAR1', '1 Sept'])(
    'keeps %j as the text that it is',
    (text) => {
      expect(guarded(text)).toBe(`'${text}`);
    },
  );

  it.each(['A-1001', '12345', '0', 'Mug, blue', 'a=b', '3–5', 'MARBLE-12-X', '1, 2', ''])('leaves %j alone', (text) => {
    expect(guarded(text)).toBe(text);
  });

  it('leaves numbers as they are: a spreadsheet may add them up', () => {
    expect(csvText([[-3, 123456789012345]])).toBe('\uFEFF-3,123456789012345\r\n');
  });

  it('never lets a text begin as a formula', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (text) => {
        expect(guarded(text)).not.toMatch(/^\s*[=+\-@\uFF1D\uFF0B\uFF0D\uFF20]|^[\t\r\n]/);
        expect(guarded(text).replace(/^'/, '')).toBe(text.replace(/^'/, ''));
      }),
    );
  });

  // Python's csv module reads the "excel" dialect, which is RFC 4180 with CRLF.
  outsideCheck('comes back cell by cell: Python csv', ['python3'], () => {
    const cell = fc.oneof(fc.string(), fc.stringMatching(/^[a"',;\t\r\n =-]{0,8}$/), fc.string({ unit: 'grapheme' }), fc.nat());
    const tables = fc.sample(fc.array(fc.array(cell, { minLength: 1, maxLength: 5 }), { maxLength: 6 }), { numRuns: 200, seed: 41 });
    const script = [
      'import csv, io, json, sys',
      'texts = json.load(sys.stdin)',
      "rows = [list(csv.reader(io.StringIO(t.encode().decode('utf-8-sig'), newline=''), strict=True)) for t in texts]",
      'json.dump(rows, sys.stdout)',
    ].join('\n');
    const read = runTool('python3', ['-c', script], Buffer.from(JSON.stringify(tables.map((rows) => csvText(rows))))).toString();
    const asRead = (each: Cell): string => (typeof each === 'number' ? String(each) : guarded(each));
    expect(JSON.parse(read)).toEqual(tables.map((rows) => rows.map((row) => row.map(asRead))));
  });
});
