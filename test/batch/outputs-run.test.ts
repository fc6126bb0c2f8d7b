import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import type { ItemRecord, RunRecord } from '../../src/batch/run-record.js';
import { openPdf } from '../../src/reading/open-pdf.js';
import { runBuilt, type Ended } from '../built.js';
import { customs } from '../locating/survey-pages.js';
import { contentFor } from '../samples/content.js';
import { declaration } from '../samples/declaration.js';
import { tidewick } from '../samples/labels/tidewick.js';
import { A4, label, LETTER, other, type LayoutPage } from '../samples/layout.js';
import { documentOf } from '../steps/on-pages.js';
import { lastingFilesIn, temporaryFolder } from './inbox.js';

const content = (order: number) => contentFor(`abroad ${order}`, order);
const labelPage = (order: number): LayoutPage => ({ width: 288, height: 432, regions: [label(tidewick(content(order)), 0, 0)] });
const declared = (order: number, page: typeof LETTER = LETTER): LayoutPage => ({
  ...page,
  regions: [other(declaration(540, 660, content(order), '1/1'), (page.width - 540) / 2, 60)],
});
const small = (): LayoutPage => ({ ...LETTER, regions: [other(customs(240, 300), 36, 36)] });
const huge = (): LayoutPage => ({ width: 842, height: 1191, regions: [other(customs(780, 1100, 7), 31, 40)] });

/** By file: a label, and the forms behind it. Orders 1 to 5 are packed from the last to the first. */
const FILES: Readonly<Record<string, readonly LayoutPage[]>> = {
  'order-1001.pdf': [labelPage(1)],
  'order-1002.pdf': [labelPage(2), declared(2)],
  'order-1003.pdf': [labelPage(3), small()],
  'order-1004.pdf': [labelPage(4), declared(4, A4), declared(4, A4), { ...A4, regions: [other(customs(500, 200, 10), 40, 40)] }],
  'order-1005.pdf': [labelPage(5), huge()],
};

const RECIPE = `about: Any page, with orders.
orders:
  columns: { order: Order, sku: SKU, quantity: Pieces, description: Item, buyer: Buyer, postcode: Postcode }
  file-name: order-{order}*
steps:
  - split-pages: { by: content }
  - locate-label: auto
  - rotate: upright
  - scale
  - packing-slip: next-page
  - customs-form
  - verify
  - number
`;

const pipeline = (more: string, name: string): string => `media: 4x6in
grid: 203dpi
out: ${name}
stack-order: [sku]
${more}channels:
  - name: abroad
    files: in/*.pdf
    orders: in/orders.csv
    recipe: recipe.yaml
`;
const OFFICE = 'outputs:\n  office: { media: letter, margins: 5mm }\nlarge-pages: office\n';

const folder = temporaryFolder();

async function ran(name: string, more: string, jobs = 2): Promise<{ readonly ended: Ended; readonly record: RunRecord }> {
  writeFileSync(join(folder, `${name}.yaml`), pipeline(more, name));
  const ended = await runBuilt(['run', '--config', `${name}.yaml`, '--jobs', String(jobs), '--no-color'], folder);
  return { ended, record: JSON.parse(readFileSync(join(folder, name, 'run.json'), 'utf8')) as RunRecord };
}

const items = (record: RunRecord, order: number): readonly ItemRecord[] =>
  record.documents.find(({ name }) => name.includes(`order-${order}`))?.items ?? [];
const told = (record: RunRecord, order: number): readonly string[] =>
  items(record, order).map(
    ({ role, state, output = '-', printed, reason }) => `${role} ${state} ${output} ${printed?.number ?? reason?.code ?? ''}`,
  );

/** The last line of each page of a stack: its number, and what stands beside it. */
async function stamps(name: string, stack: string): Promise<readonly string[]> {
  const opened = await openPdf(readFileSync(join(folder, name, 'print', stack)));
  if ('refused' in opened) throw new Error(opened.refused.message);
  const lines = Array.from({ length: opened.pageCount }, (_, index) => {
    const page = opened.page(index + 1);
    const bottom = Math.max(...page.words().map(({ box }) => box.y));
    const words = page.words().filter(({ box }) => Math.abs(box.y - bottom) < 4);
    return `${page.width}x${page.height} ${words.map(({ text }) => text).join(' ')}`;
  });
  opened.close();
  return lines;
}

beforeAll(async () => {
  mkdirSync(join(folder, 'in'));
  for (const [name, pages] of Object.entries(FILES)) writeFileSync(join(folder, 'in', name), await documentOf(pages));
  const rows = Object.keys(FILES).map(
    (name, index) => `${name.slice(6, 10)},SKU-${9 - index},1,Mug,${content(index + 1).to[0] ?? ''},${content(index + 1).postcode}`,
  );
  writeFileSync(join(folder, 'in', 'orders.csv'), ['Order,SKU,Pieces,Item,Buyer,Postcode', ...rows, ''].join('\n'));
  writeFileSync(join(folder, 'recipe.yaml'), RECIPE);
});

describe('a run with an office printer', () => {
  it('sends forms that are too large there, with the number of their label, and adds up', { timeout: 300_000 }, async () => {
    const { ended, record } = await ran('office', OFFICE);
    expect(ended.code, ended.stderr).toBe(1);
    expect(told(record, 1001)).toEqual(['label ready roll 5']);
    expect(told(record, 1002)).toEqual(['label ready roll 4', 'customs-form ready office 4']);
    expect(told(record, 1003)).toEqual(['label ready roll 3', 'customs-form ready roll 3']);
    expect(told(record, 1004)).toEqual(['label ready roll 2', ...Array.from({ length: 3 }, () => 'customs-form ready office 2')]);
    expect(told(record, 1005)).toEqual(['label ready roll 1', 'customs-form held - customs-form/too-large']);

    expect(record.stacks).toMatchObject([
      { file: 'print/stack-4x6in.pdf', output: 'roll', media: '4x6in', grid: '203dpi', parcels: 5, pages: 6, sheets: 6 },
      { file: 'print/stack-office-letter.pdf', output: 'office', media: 'letter', grid: '300dpi', parcels: 2, pages: 4, sheets: 4 },
    ]);
    expect(record.account.output).toEqual({
      readyItems: 10,
      madePages: 0,
      stackPages: 10,
      byOutput: {
        roll: { readyItems: 6, madePages: 0, stackPages: 6 },
        office: { readyItems: 4, madePages: 0, stackPages: 4 },
      },
    });
    for (const form of [...items(record, 1002), ...items(record, 1004)].filter(({ output }) => output === 'office')) {
      expect(form.scale).toBe(1);
    }
    // The code of the form was read back, and measured in dots of its own printer: 1.1 pt are 4.58 of them.
    expect(items(record, 1002)[1]?.codes).toMatchObject([{ symbology: 'Code 128', moduleDots: expect.closeTo(4.58, 1) as number }]);
    expect(ended.stderr + ended.stdout).toContain(
      'print/stack-office-letter.pdf  4 pages of letter for office, to go with parcels 2 and 4\n',
    );
    expect(ended.stderr + ended.stdout).toContain('it is 10.5');

    expect(await stamps('office', 'stack-office-letter.pdf')).toEqual([
      '612x792 2/5 · order 1004',
      '612x792 2/5 · order 1004',
      '612x792 2/5 · order 1004',
      '612x792 4/5 · order 1002',
    ]);
  });

  it('gives the same bytes for 1, 2 and 8 jobs', { timeout: 300_000 }, async () => {
    // Two have made it before this.
    const outputs = [lastingFilesIn(join(folder, 'office'))];
    for (const jobs of [1, 8]) {
      await ran('office', OFFICE, jobs);
      outputs.push(lastingFilesIn(join(folder, 'office')));
    }
    expect([...(outputs[0]?.keys() ?? [])].filter((path) => path.startsWith('print/'))).toHaveLength(2);
    expect(outputs[1]).toEqual(outputs[0]);
    expect(outputs[2]).toEqual(outputs[0]);
  });

  it('holds them with figures and what to write where there is none, and takes the old stack away', { timeout: 300_000 }, async () => {
    const { ended, record } = await ran('office', '');
    expect(told(record, 1002)).toEqual(['label ready roll 4', 'customs-form held - customs-form/office-printer']);
    expect(told(record, 1004)[3]).toBe('customs-form ready roll 2');
    expect(items(record, 1002)[1]?.reason?.remedy).toContain('`large-pages`');
    expect(ended.stderr + ended.stdout).toContain('print/stack-4x6in.pdf  7 pages, 5 parcels\n');
    expect([...lastingFilesIn(join(folder, 'office')).keys()].filter((path) => path.startsWith('print/'))).toEqual([
      'print/stack-4x6in.pdf',
    ]);
  });

  it('holds them with figures where margins leave too little', { timeout: 300_000 }, async () => {
    const { record } = await ran('narrow', 'outputs:\n  office: { media: letter, margins: 45mm }\nlarge-pages: office\n');
    expect(told(record, 1002)).toEqual(['label ready roll 4', 'customs-form held - customs-form/too-large']);
  });

  it('prints everything of a channel on the output that it names', { timeout: 300_000 }, async () => {
    const outputs = 'outputs:\n  second: { media: 100x150mm, grid: 300dpi, output: dots }\n  desk: { media: letter }\nlarge-pages: desk\n';
    writeFileSync(
      join(folder, 'second.yaml'),
      pipeline(outputs, 'second').replace('    recipe: recipe.yaml', '    print-on: second\n    recipe: recipe.yaml'),
    );
    await runBuilt(['run', '--config', 'second.yaml'], folder);
    const record = JSON.parse(readFileSync(join(folder, 'second', 'run.json'), 'utf8')) as RunRecord;
    expect(record.stacks).toMatchObject([
      { file: 'print/stack-second-100x150mm.pdf', output: 'second', media: '100x150mm', grid: '300dpi', parcels: 5, pages: 6 },
      { file: 'print/stack-desk-letter.pdf', output: 'desk', media: 'letter', grid: '300dpi', parcels: 2, pages: 4 },
    ]);
    expect(record.account.output.byOutput).toMatchObject({ second: { stackPages: 6 }, desk: { stackPages: 4 } });
  });
});
