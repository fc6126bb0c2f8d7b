import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cellStart, readRecords } from '../../src/orders/delimited.js';
import { LineIndex } from '../../src/orders/line-index.js';

const cells = (text: string, delimiter = ',', width?: number): (readonly string[])[] => {
  const bytes = Buffer.from(text);
  return readRecords(bytes, delimiter, new LineIndex(bytes), width === undefined ? {} : { width }).map((record) => record.cells);
};

/** RFC 4180, section 2, "Definition of the CSV Format"; the examples are the standard's own. From memory. */
describe('RFC 4180 section 2', () => {
  const rows = [
    ['aaa', 'bbb', 'ccc'],
    ['zzz', 'yyy', 'xxx'],
  ];

  it('1: each record on a line of its own, ended by a line break (CRLF)', () => {
    expect(cells('aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n')).toEqual(rows);
  });

  it('2: the last record may be without one', () => {
    expect(cells('aaa,bbb,ccc\r\nzzz,yyy,xxx')).toEqual(rows);
  });

  it('3: a header line has the same format', () => {
    expect(cells('field_name,field_name,field_name\r\naaa,bbb,ccc\r\n')[0]).toEqual(['field_name', 'field_name', 'field_name']);
  });

  it('4: blanks are part of a field, and the last field has no comma behind it', () => {
    expect(cells('aaa, bbb ,ccc')).toEqual([['aaa', ' bbb ', 'ccc']]);
  });

  it('5: a field may stand in quotation marks', () => {
    expect(cells('"aaa","bbb","ccc"\r\nzzz,yyy,xxx')).toEqual(rows);
  });

  it('6: fields with line breaks, quotation marks and commas stand in quotation marks', () => {
    expect(cells('"aaa","b\r\nbb","ccc"\r\nzzz,yyy,xxx')).toEqual([['aaa', 'b\r\nbb', 'ccc'], rows[1]]);
    expect(cells('"a,b",c')).toEqual([['a,b', 'c']]);
  });

  it('7: a quotation mark inside such a field is written twice', () => {
    expect(cells('"aaa","b""bb","ccc"')).toEqual([['aaa', 'b"bb', 'ccc']]);
    expect(cells('"""a"" b","c\n""d"""')).toEqual([['"a" b', 'c\n"d"']]);
  });
});

describe('beyond the standard', () => {
  it('any line break ends a record, also mixed', () => {
    expect(cells('a,b\nc,d\r\ne,f\rg,h')).toEqual([
      ['a', 'b'],
      ['c', 'd'],
      ['e', 'f'],
      ['g', 'h'],
    ]);
  });

  it('empty lines are no records', () => {
    expect(cells('\n\r\na,b\n   \n\nc,d\n\n')).toEqual([
      ['a', 'b'],
      ['c', 'd'],
    ]);
  });
});

describe('a quotation mark out of place', () => {
  it('inside a cell without marks is one', () => {
    expect(cells('a,Mug 5" wide,b\nc,="00123",d')).toEqual([
      ['a', 'Mug 5" wide', 'b'],
      ['c', '="00123"', 'd'],
    ]);
  });

  it.each([
    ['without another in the file', 'a,"b,c\nd,e,f\ng,h,i\n'],
    ['closed by the next row, letters behind it', 'a,"b,c\nd,"e",f\ng,h,i\n'],
    ['closed by the last cell of the next row', 'a,"b,c\nd,e,"f"\ng,h,i\n'],
    ['closed by the next row but one', 'a,"b,c\nd,e,f\ng,"h",i\n'],
    ['in a cell with marks', 'a,"b" wide",c\nd,e,f\ng,h,i\n'],
  ])('%s costs no other row', (_name, text) => {
    const found = cells(text, ',', 3);
    expect(found).toHaveLength(3);
    expect(found[0]?.[0]).toBe('a');
    expect(found[1]).toEqual(['d', 'e', 'f']);
    expect(found[2]).toEqual(['g', 'h', 'i']);
  });

  it('in every row is read in time, and what follows is read, too', () => {
    const rows = Array.from({ length: 3000 }, (_, index) => `${index},"Mug" blue",x`);
    const found = cells(`${rows.join('\n')}\nz,y,x\n`, ',', 3);
    expect(found).toHaveLength(3001);
    expect(found.at(-1)).toEqual(['z', 'y', 'x']);
  });

  it('in every row leaves the quotes of the others what they are', () => {
    const rows = Array.from({ length: 1200 }, (_, index) => `${index},"Mug" blue","x, y"`);
    const found = cells(rows.join('\n') + '\nz,"y, y",x\n', ',', 3);
    expect(found.at(-1)).toEqual(['z', 'y, y', 'x']);
  });

  it('before a row of any length loses nothing', () => {
    const long = 'b'.repeat(300_000);
    expect(cells(`a,${long}\nc,"d`)).toEqual([
      ['a', long],
      ['c', 'd'],
    ]);
  });

  it('is told with its row', () => {
    const bytes = Buffer.from('a,"b,c\nd,e,f\n');
    expect(readRecords(bytes, ',', new LineIndex(bytes), { width: 3 }).map(({ mended }) => mended)).toEqual([true, undefined]);
  });
});

const cell = fc.string({
  unit: fc.constantFrom('a', 'é', '漢', '🏺', ' ', ',', ';', '\t', '|', '"', '\n', '\r\n', '=', "'"),
  maxLength: 8,
});

describe('laws', () => {
  it('whatever is written by the rules comes back, in any delimiter and line break', () => {
    const delimiter = fc.constantFrom(',', ';', '\t', '|');
    const table = fc
      .integer({ min: 2, max: 5 })
      .chain((width) => fc.array(fc.array(cell, { minLength: width, maxLength: width }), { minLength: 1, maxLength: 8 }));
    const quoted = (text: string): string => `"${text.replaceAll('"', '""')}"`;
    fc.assert(
      fc.property(table, delimiter, fc.constantFrom('\n', '\r\n', '\r'), (rows, sign, ending) => {
        const text = rows.map((row) => row.map(quoted).join(sign) + ending).join('');
        expect(cells(text, sign, rows[0]?.length)).toEqual(rows);
      }),
    );
  });

  it('every cell begins where it is said to', () => {
    fc.assert(
      fc.property(
        fc.array(
          cell.filter((text) => !text.includes('"')),
          { minLength: 2, maxLength: 6 },
        ),
        (row) => {
          const written = row.map((text) => `"${text}"`);
          const bytes = Buffer.from(written.join(',') + '\n');
          const [record] = readRecords(bytes, ',', new LineIndex(bytes));
          if (!record) throw new Error('no record');
          let at = 0;
          for (const [index, text] of written.entries()) {
            expect(cellStart(bytes, record, index, ',')).toBe(at);
            at += Buffer.byteLength(text) + 1;
          }
        },
      ),
    );
  });

  it('any text at all is read without a throw, and no record overlaps another', () => {
    fc.assert(
      fc.property(
        fc.string({ unit: fc.constantFrom('a', '"', ',', '\n', '\r', ' '), maxLength: 60 }),
        fc.integer({ min: 1, max: 4 }),
        (text, width) => {
          const bytes = Buffer.from(text);
          let end = 0;
          for (const record of readRecords(bytes, ',', new LineIndex(bytes), { width })) {
            expect(record.start).toBeGreaterThanOrEqual(end);
            expect(record.end).toBeGreaterThan(record.start);
            end = record.end;
          }
          expect(end).toBeLessThanOrEqual(bytes.length);
        },
      ),
      { numRuns: 500 },
    );
  });
});
