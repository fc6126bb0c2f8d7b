import { describe, expect, it } from 'vitest';
import { findHeader } from '../../src/orders/find-header.js';
import { LineIndex } from '../../src/orders/line-index.js';
import { only, read, mapFor } from './reading.js';

const found = (text: string, names: readonly string[], stated?: string): string => {
  const bytes = Buffer.from(text);
  const header = findHeader(bytes, new LineIndex(bytes), names, stated);
  return header ? `${JSON.stringify(header.delimiter)} ${header.record.cells.join('/')}` : 'none';
};

describe('the delimiter', () => {
  it.each([',', ';', '\t', '|'])('%j is found by the names of the header', (sign) => {
    const text = ['Order', 'Name, first', 'ZIP'].join(sign) + '\n' + ['A-1', 'x;y|z', '1'].join(sign) + '\n';
    expect(found(text, ['Order', 'ZIP'])).toContain(JSON.stringify(sign));
  });

  it.each([',', ';', '\t', '|'])('%j is found by the shape of the table', (sign) => {
    const rows = [
      ['alpha', 'beta', 'gamma'],
      ['1', '2', '3'],
      ['4', '5', '6'],
    ];
    expect(found(rows.map((row) => row.join(sign)).join('\n'), [])).toBe(`${JSON.stringify(sign)} alpha/beta/gamma`);
  });

  it('that is stated wins, in the recipe and in a line of its own', () => {
    expect(found('Order:Name\nA-1:Ada\n', ['Order'], ':')).toBe('":" Order/Name');
    expect(found('sep=^\r\nOrder^Name\r\nA-1^Ada\r\n', ['Order'])).toBe('"^" Order/Name');
    expect(only(read('sep=;\nOrder;Name\nA-1;Ada\n', mapFor(['Order', 'Name'])))).toMatchObject({ buyer: 'Ada', place: { line: 3 } });
  });
});

describe('the header', () => {
  it('is the row with most of the names, the first of several', () => {
    expect(found('Order list,\nOrder,Name\nOrder,Name\n', ['Order', 'Name'])).toBe('"," Order/Name');
  });

  it('stands among the first rows or is not found', () => {
    expect(found(`${'x,y\n'.repeat(60)}Order,Name\n`, ['Order', 'Name'])).toBe('"," x/y');
    expect(found('', ['Order'])).toBe('none');
  });
});
