import { describe, expect, it } from 'vitest';
import type { RunRecord } from '../../src/batch/run-record.js';
import { duplicateOf } from '../../src/intake/reasons.js';
import type { LooseEnd } from '../../src/orders/loose-ends.js';
import { summary } from '../../src/report/summary.js';
import { DOCUMENTS, record, STACK } from './fakes.js';

const PLAIN = { colour: false, out: 'out', dryRun: false };

describe('summary', () => {
  it('says what was made, what is held and why, what to do, and where to look', () => {
    expect(summary(record(DOCUMENTS, [STACK]), PLAIN)).toBe(`1 label and 1 packing slip are ready to print, in one stack:
  out/print/stack-4x6in.pdf  2 pages, 1 parcel

Held, not printed: 2
  A code of the label can not be read back. [verify/code-lost]
    in/b.pdf, page 1 (label)  → out/held/001-b.pdf-p1.png
    in/b.pdf, page 2 (label)  → out/held/002-b.pdf-p2.png
    do: Download it again.

Failed: 1
  The file was changed. [batch/changed]
    in/c.pdf
    do: Run again.

Skipped: 1
  No label on it. [batch/no-label]
    in/b.pdf, page 3
    do: Nothing, if that is so.

The account adds up: 3 documents (2 read, 1 failed, 0 skipped), 5 pages, 6 items (2 ready, 2 held, 1 skipped, 1 failed).
Look at out/held for pictures of what is held and at out/run.json for what became of each page.
`);
  });

  it('names no file that a dry run did not write', () => {
    const text = summary(record(DOCUMENTS, [STACK]), { ...PLAIN, dryRun: true });
    expect(text).toContain('1 label and 1 packing slip would be ready to print');
    expect(text).not.toMatch(/held\/|run\.json/);
    const [, , failed] = DOCUMENTS;
    if (!failed) throw new Error('no failed document');
    const many = Array.from({ length: 30 }, (_, index) => ({ ...failed, name: `in/${index}.pdf` }));
    expect(summary(record(many, []), { ...PLAIN, dryRun: true })).toMatch(/and 18 more\n/);
  });

  it('gives each document that is there twice one line, and the remedy once', () => {
    const [, , failed] = DOCUMENTS;
    const [item] = failed?.items ?? [];
    if (!failed || !item) throw new Error('no failed document');
    const copies = Array.from({ length: 30 }, (_, index) => ({
      ...failed,
      name: `in/copy ${index}.pdf`,
      state: 'skipped' as const,
      items: [{ ...item, state: 'skipped' as const, reason: duplicateOf(`in/${index}.pdf`) }],
    }));
    const text = summary(record(copies, []), PLAIN);
    expect(text).toContain(
      '  in/copy 11.pdf: it is a duplicate of in/11.pdf, byte for byte [intake/duplicate]\n    and 18 more, see out/run.json\n',
    );
    expect(text.match(/^ {4}do: /gm)).toHaveLength(1);
  });

  it('names every order without a label, but of labels that are told above only the first few again', () => {
    const end = (code: LooseEnd['code'], n: number): LooseEnd => ({
      code,
      message: `${code} ${n}`,
      remedy: `Do ${code}.`,
      orders: [],
      labels: [],
    });
    const looseEnds = (['orders/no-label', 'orders/no-order'] as const).flatMap((code) =>
      Array.from({ length: 30 }, (_, n) => end(code, n)),
    );
    const sums = { orders: 30, packed: 0, held: 0, 'no-label': 30, 'not-expected': 0 };
    const orders = { sums, looseEnds, lists: [] } as unknown as NonNullable<RunRecord['orders']>;
    const text = summary({ ...record(DOCUMENTS, [STACK]), orders }, PLAIN);
    expect(text.match(/ {2}orders\/no-label \d+ /g)).toHaveLength(30);
    expect(text.match(/ {2}orders\/no-order \d+ /g)).toHaveLength(12);
    expect(text.match(/do: Do orders/g)).toHaveLength(2);
  });

  it('says again what was wrong from the beginning, and nothing of mere warnings', () => {
    const wrong = (severity: 'error' | 'warning', message: string) =>
      ({ code: 'intake/no-file', severity, message, place: { kind: 'run' } }) as const;
    const told = {
      ...record(DOCUMENTS, [STACK]),
      diagnostics: [wrong('error', 'there is no folder mugs'), wrong('warning', 'nothing matches')],
    };
    const text = summary(told, PLAIN);
    expect(text).toContain('\nMistakes to put right: 1\n  there is no folder mugs [intake/no-file]\n\nThe account adds up');
    expect(text).not.toContain('nothing matches');
  });

  it('tells of sheets where several pages lie on one', () => {
    const text = summary(record(DOCUMENTS.slice(0, 1), [{ ...STACK, file: 'print/stack-letter-1x2.pdf', sheets: 1 }]), PLAIN);
    expect(text).toContain('out/print/stack-letter-1x2.pdf  2 pages on 1 sheet, 1 parcel');
  });

  it('says of each stack which printer it is for, and which parcels its pages go with', () => {
    const office = { ...STACK, file: 'print/stack-office-letter.pdf', output: 'office', media: 'letter', pages: 2 };
    const [first] = DOCUMENTS;
    if (!first) throw new Error('no document');
    const forms = (numbers: readonly number[]) => ({
      ...first,
      pages: 2 + numbers.length,
      items: [
        ...first.items,
        ...numbers.map((number, page) => ({
          ...(first.items[1] as (typeof first.items)[number]),
          id: `f${number}`,
          page: page + 3,
          role: 'customs-form' as const,
          output: 'office',
          printed: { stack: office.file, number, page: page + 1 },
        })),
      ],
    });
    const text = summary(record([forms([12, 7])], [STACK, office]), PLAIN);
    expect(text).toContain('out/print/stack-4x6in.pdf  2 pages of 4x6in for the roll, 1 parcel\n');
    expect(text).toContain('out/print/stack-office-letter.pdf  2 pages of letter for office, to go with parcels 7 and 12\n');
    const one = summary(record([forms([7])], [STACK, { ...office, pages: 1, sheets: 1 }]), PLAIN);
    expect(one).toContain('1 page of letter for office, to go with parcel 7\n');
    const many = summary(record([forms([7])], [STACK, { ...office, parcels: 40, pages: 40, sheets: 40 }]), PLAIN);
    expect(many).toContain('40 pages of letter for office, 40 parcels\n');
  });

  it('says when there was nothing to do, and when nothing came of it', () => {
    expect(summary(record([], []), PLAIN)).toBe('Nothing to do: no documents were found, so there is no stack in out/print.\n');
    expect(summary(record([], []), { ...PLAIN, dryRun: true })).toBe('Nothing to do: no documents were found.\n');
    expect(summary(record(DOCUMENTS.slice(2), []), PLAIN)).toMatch(/^Nothing is ready to print\.\n/);
  });

  it('only counts what labels leave of their pages', () => {
    const [, held] = DOCUMENTS;
    const [item] = held?.items ?? [];
    if (!held || !item) throw new Error('no document');
    const reason = { code: 'locate-label/remainder', message: 'the rest of the page', remedy: 'Nothing to do.' } as const;
    const rests = ['p1', 'p2', 'p3'].map(
      (id, index) => ({ ...item, id, page: index + 1, role: 'remainder', state: 'skipped', reason }) as const,
    );
    const text = summary(record([{ ...held, items: rests }], []), PLAIN);
    expect(text).toContain('Skipped: 3\n  the rest of the page: 3 times [locate-label/remainder]\n\n');
  });

  it('says what was put right', () => {
    const [first] = DOCUMENTS;
    if (!first) throw new Error('no document');
    const note = { code: 'reading/put-right', severity: 'note', message: 'the size was put right', place: { kind: 'run' } } as const;
    const text = summary(record([{ ...first, diagnostics: [note] }], [STACK]), PLAIN);
    expect(text).toContain('Noted: 1\n  the size was put right\n    in/a.pdf\n');
  });

  it('names a few of many and counts the rest', () => {
    const [, , failed] = DOCUMENTS;
    if (!failed) throw new Error('no failed document');
    const many = Array.from({ length: 30 }, (_, index) => ({ ...failed, name: `in/${index}.pdf` }));
    const text = summary(record(many, []), PLAIN);
    expect(text).toContain('in/11.pdf');
    expect(text).not.toContain('in/12.pdf');
    expect(text).toContain('and 18 more, see out/run.json');
  });

  it('is the same text with and without colour', () => {
    const coloured = summary(record(DOCUMENTS, [STACK]), { ...PLAIN, colour: true });
    const bare = coloured.replaceAll(/\u001b\[\d+m/g, '');
    expect(coloured).not.toBe(bare);
    expect(bare).toBe(summary(record(DOCUMENTS, [STACK]), PLAIN));
  });
});
