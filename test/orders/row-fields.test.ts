import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { linesOf, oneLine } from '../../src/orders/row-fields.js';
import { only, readTable, told } from './reading.js';

const valueOf = (column: string, cell: string) => only(readTable(`Order,${column}\nA-1,"${cell.replaceAll('"', '""')}"\n`));

describe('a cell', () => {
  it('is cleaned of what spreadsheets wrap numbers in', () => {
    expect(valueOf('ZIP', '="02003"').postcode).toBe('02003');
    expect(valueOf('ZIP', "'02003").postcode).toBe('02003');
    expect(valueOf('Tracking', '="9400 1112 0620 6406 2607 87"').tracking).toEqual(['9400111206206406260787']);
    // An apostrophe that belongs to a name stays.
    expect(valueOf('Name', "'t Hooft Samplewright").buyer).toBe("'t Hooft Samplewright");
  });

  it('loses signs that nobody sees, and keeps those that join letters', () => {
    expect(valueOf('Name', '\u200eOdile\u200b \u202aSamplewright\u202c\u0007').buyer).toBe('Odile Samplewright');
    expect(valueOf('Name', 'می\u200cخواهم').buyer).toBe('می\u200cخواهم');
    expect(valueOf('Name', 'Odile\u00a0 \tSamplewright').buyer).toBe('Odile Samplewright');
  });

  it.each([['\n'], ['\r\n'], ['\r'], ['\u000b'], ['\u000c'], ['\u0085'], ['\u2028'], ['\u2029']])(
    'has lines wherever a program breaks them: %j',
    (end) => {
      expect(valueOf('Street', `7 Example Street${end}Unit 2${end}${end}`).address).toEqual(['7 Example Street', 'Unit 2']);
      expect(valueOf('Card', `Dear you${end}With love`).giftMessage).toBe('Dear you\nWith love');
      expect(valueOf('Name', `Odile${end}Samplewright`).buyer).toBe('Odile Samplewright');
    },
  );

  it('that a spreadsheet has damaged is left out and told, of a number only', () => {
    for (const column of ['ZIP', 'Tracking', 'Item no.']) {
      const read = readTable(`Order,${column}\nA-1,9.40011E+21\n`);
      expect(told(read)).toEqual(['2:5 orders/damaged']);
      expect(only(read)).toMatchObject({ postcode: '', tracking: [] });
      expect(JSON.stringify(only(read).items)).not.toContain('9.4');
    }
    expect(valueOf('Item', '9.40011E+21').items).toMatchObject([{ description: '9.40011E+21' }]);
    expect(told(readTable('Order,Item\nA-1,#####\n'))).toEqual(['2:5 orders/damaged']);
    expect(told(readTable('Order,Name\nA-1,#N/A\n'))).toEqual(['2:5 orders/damaged']);
  });

  it('that holds a damaged order number costs its row, and the others count', () => {
    const read = readTable('Order,Name\n1.00023E+11,Ada\nA-2,Eve\n');
    expect([told(read), only(read).number]).toEqual([['2:1 orders/damaged'], 'A-2']);
  });

  it('whose letters were read in another encoding is told, and stays as it is', () => {
    const read = readTable('Order,Name\nA-1,ZoÃ© Samplewright\n');
    expect([told(read), only(read).buyer]).toEqual([['2:5 orders/mojibake'], 'ZoÃ© Samplewright']);
    expect(read.diagnostics[0]?.message).not.toContain('Samplewright');
  });
});

describe('several columns of a field', () => {
  it('are joined or the first that holds something counts, and what is wrong is told at its own', () => {
    const order = only(readTable('Order,Street,Town,Item\nA-1,,Sampleton,Mug\n'));
    expect(order.address).toEqual(['Sampleton']);
    expect(told(readTable('Order,Street,Town\nA-1,7 Example Street,#REF!\n'))).toEqual(['2:22 orders/damaged']);
  });
});

describe('text', () => {
  it('on one line and by lines is the same words, nothing empty', () => {
    fc.assert(
      fc.property(fc.string({ unit: fc.constantFrom('a', 'é', ' ', '\t', '\n', '\r', '\u00a0') }), (text) => {
        expect(linesOf(text).join(' ')).toBe(oneLine(text));
        for (const line of linesOf(text)) expect(line).toMatch(/^\S(?:.*\S)?$/u);
      }),
    );
  });
});
