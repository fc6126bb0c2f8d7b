import { mkdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import { picturePath, pictureProblem } from '../../src/commands/explain-picture.js';
import { type ExplainArgs, runExplain } from '../../src/commands/explain.js';
import { filesIn, temporaryFolder, write } from '../batch/inbox.js';
import { put } from '../cli/inbox.js';
import { capture, type Captured } from './capture.js';

const ARGS: ExplainArgs = {
  files: [],
  config: undefined,
  recipe: undefined,
  media: undefined,
  grid: undefined,
  picture: undefined,
  json: false,
};
const explain = (folder: string, changes: Partial<ExplainArgs>): Promise<Captured> =>
  capture((io) => runExplain({ ...ARGS, ...changes }, { ...io, folder }));

describe('explain', () => {
  it('writes nothing unless a picture is asked for', async () => {
    const folder = temporaryFolder();
    await put(folder, ['label.pdf', 'page-4x6']);
    const { exitCode, err } = await explain(folder, { files: ['label.pdf'] });
    expect({ exitCode, err }).toEqual({ exitCode: 0, err: '' });
    expect([...filesIn(folder).keys()]).toEqual(['label.pdf']);
  });

  it('draws one page under the name given, several with their numbers', async () => {
    const folder = temporaryFolder();
    await put(folder, ['label.pdf', 'page-4x6'], ['two.pdf', 'label-then-slip']);
    const one = await explain(folder, { files: ['label.pdf'], picture: 'one.png' });
    expect(one.out).toMatch(/picture +one\.png\n/);
    const several = await explain(folder, { files: ['label.pdf', 'two.pdf'], picture: 'all.png', json: true });
    expect([...filesIn(folder).keys()]).toEqual(['all-1.png', 'all-2.png', 'all-3.png', 'label.pdf', 'one.png', 'two.pdf']);
    const lines = several.out
      .trimEnd()
      .split('\n')
      .map((line) => JSON.parse(line) as { document: string; page: number; picture: string });
    expect(lines.map(({ document, page, picture }) => [document, page, picture])).toEqual([
      ['label.pdf', 1, 'all-1.png'],
      ['two.pdf', 1, 'all-2.png'],
      ['two.pdf', 2, 'all-3.png'],
    ]);
    expect((await sharp(join(folder, 'one.png')).metadata()).format).toBe('png');
  });

  it.each(['label.png', 'label-2.png'])('never draws over a document such as %s', async (name) => {
    const folder = temporaryFolder();
    write(
      join(folder, name),
      await sharp({ create: { width: 8, height: 8, channels: 3, background: 'white' } })
        .png()
        .toBuffer(),
    );
    const before = readFileSync(join(folder, name));
    const { exitCode, err } = await explain(folder, { files: [name], picture: 'label.png' });
    expect(exitCode).toBe(2);
    expect(err).toContain('commands/bad-usage');
    expect(readFileSync(join(folder, name))).toEqual(before);
  });

  it('goes on after a document that can not be read, and ends with 1', async () => {
    const folder = temporaryFolder();
    await put(folder, ['label.pdf', 'page-4x6']);
    write(join(folder, 'cut.pdf'), '%PDF-1.7\n% that is all\n');
    const { exitCode, out, err } = await explain(folder, { files: ['cut.pdf', 'label.pdf'] });
    expect(exitCode).toBe(1);
    expect(err).toContain('cut.pdf: ');
    expect(out).toMatch(/^label\.pdf: /);
  });

  it('ends with 3 when the picture can not be written', async () => {
    const folder = temporaryFolder();
    await put(folder, ['label.pdf', 'page-4x6']);
    const { exitCode, err } = await explain(folder, { files: ['label.pdf'], picture: 'nowhere/page.png' });
    expect(exitCode).toBe(3);
    expect(err).toContain('files/missing-folder');
  });
});

/** A pipeline with a channel on sheets, one with options of its own, and one abroad. */
const PIPELINE = `media: 4x6in
grid: 203dpi
outputs:
  office: { media: letter, grid: 300dpi, margins: 5mm }
large-pages: office
channels:
  - name: mugs
    files: inbox/mugs/*
    recipe: label-pages
    options: { scale: { to: true-size, floor: 90% }, rotate: { to: 180 } }
  - name: prints
    files: inbox/prints/*
    print-on: office
    recipe: two-up-sheets
`;

describe('explain where there is a pipeline', () => {
  const inFolder = async (): Promise<string> => {
    const folder = temporaryFolder();
    await put(folder, ['inbox/mugs/a.pdf', 'page-4x6'], ['inbox/prints/b.pdf', 'page-4x6-full-bleed'], ['c.pdf', 'label-then-slip']);
    write(join(folder, 'pipeline.yaml'), PIPELINE);
    return folder;
  };
  const pages = ({ out }: Captured): { slipyard: object; asItIs: object }[] =>
    out
      .trimEnd()
      .split('\n')
      .map((line) => JSON.parse(line) as { slipyard: object; asItIs: object });
  const roll = { name: 'roll', media: '4x6in', grid: '203dpi', laidOnSheets: false };

  it("treats a document as its channel's, with the channel's options, for the channel's output", async () => {
    const folder = await inFolder();
    const [mugs, prints, none] = await Promise.all(
      ['inbox/mugs', 'inbox/prints/b.pdf', 'c.pdf'].map(async (file) => pages(await explain(folder, { files: [file], json: true }))[0]),
    );
    expect(mugs?.slipyard).toMatchObject({ recipe: 'label-pages', pipeline: 'pipeline.yaml', channel: 'mugs', output: roll });
    expect(mugs?.slipyard).toMatchObject({ items: [{ state: 'ready', turn: 180 }] });
    const sheets = { name: 'office', media: 'letter', grid: '300dpi', laidOnSheets: true };
    expect(prints?.slipyard).toMatchObject({ recipe: 'two-up-sheets', channel: 'prints', output: sheets });
    expect(prints?.asItIs).toMatchObject({ media: 'letter', grid: '300dpi' });
    expect(none?.slipyard).toMatchObject({ recipe: 'any-page', pipeline: 'pipeline.yaml', output: roll });
    expect(none?.slipyard).not.toHaveProperty('channel');
  });

  it('says so in its text', async () => {
    const folder = await inFolder();
    const { out, err } = await explain(folder, { files: ['inbox/mugs', 'inbox/prints', 'c.pdf'] });
    expect(err).toBe('');
    const titles = out.split('\n').filter((line) => line.startsWith('What Slipyard would do'));
    expect([...new Set(titles)]).toEqual([
      'What Slipyard would do, in no channel of pipeline.yaml, recipe any-page, for the roll (4x6in, 203dpi)',
      'What Slipyard would do, channel mugs of pipeline.yaml, recipe label-pages, for the roll (4x6in, 203dpi)',
      'What Slipyard would do, channel prints of pipeline.yaml, recipe two-up-sheets, laid on sheets for office (letter, 300dpi)',
    ]);
  });

  it('counts what is typed more than the pipeline', async () => {
    const folder = await inFolder();
    const files = ['inbox/prints/b.pdf'];
    const [other] = pages(await explain(folder, { files, recipe: 'label-pages', json: true }));
    expect(other?.slipyard).toMatchObject({ recipe: 'label-pages', channel: 'prints', output: { name: 'office', media: 'letter' } });
    const [typed] = pages(await explain(folder, { files, media: '100x150mm', grid: '600dpi', json: true }));
    expect(typed?.slipyard).toMatchObject({ recipe: 'two-up-sheets', output: { media: '100x150mm', grid: '600dpi' } });
    const [roller] = pages(await explain(folder, { files: ['inbox/mugs'], grid: '300dpi', json: true }));
    expect(roller?.slipyard).toMatchObject({ output: { ...roll, grid: '300dpi' } });
  });

  it('takes a pipeline by its name, and no order file for a document', async () => {
    const folder = await inFolder();
    write(join(folder, 'recipes/own.yaml'), ORDERS_RECIPE);
    write(join(folder, 'other.yaml'), 'channels:\n  - { name: hats, files: inbox/mugs/*, orders: inbox/mugs/*.csv, recipe: own }\n');
    write(join(folder, 'inbox/mugs/orders.csv'), 'Order,SKU\n1,A\n');
    const { exitCode, out, err } = await explain(folder, { files: ['inbox/mugs'], config: 'other.yaml' });
    expect({ exitCode, err }).toEqual({ exitCode: 0, err: '' });
    expect(out).toContain('channel hats of other.yaml, recipe own');
  });

  it('tells what is wrong with the pipeline, and ends with 2', async () => {
    const folder = await inFolder();
    write(join(folder, 'pipeline.yaml'), PIPELINE.replace('recipe: label-pages', 'recipe: label-page'));
    const { exitCode, out, err } = await explain(folder, { files: ['inbox/mugs'] });
    expect({ exitCode, out }).toEqual({ exitCode: 2, out: '' });
    expect(err).toMatch(/pipeline\.yaml:\d+:\d+: error: there is no recipe `label-page`/);
    const tooFine = await explain(folder, { files: ['inbox/mugs'], grid: '9dpi' });
    expect(tooFine.exitCode).toBe(2);
  });
});

const ORDERS_RECIPE = `about: Orders.
orders: { columns: { order: Order, sku: SKU } }
steps: [split-pages, { locate-label: auto }, { rotate: upright }, scale, verify, number]
`;

describe('explain with nothing to explain tells it once', () => {
  const errors = ({ err }: Captured): string[] => err.split('\n').filter((line) => line.includes('error: '));

  it.each([
    [[], 2, 'error: no files are named [commands/bad-usage]'],
    [['nothing.pdf'], 3, 'error: there is no file or folder nothing.pdf [intake/no-file]'],
    [['nothing*'], 3, 'error: nothing matches nothing* [intake/no-match]'],
    [['empty.pdf'], 1, 'empty.pdf: error: the file is empty [intake/empty]'],
    [['empty'], 3, 'error: nothing matches empty [intake/no-match]'],
  ])('%j', async (files, code, told) => {
    const folder = temporaryFolder();
    write(join(folder, 'empty.pdf'), '');
    mkdirSync(join(folder, 'empty'));
    const end = await explain(folder, { files });
    expect([end.exitCode, errors(end)]).toEqual([code, [told]]);
  });
});

describe('the name of a picture', () => {
  it.each(['page.pdf', 'page', '.png', 'folder/.png'])('can not be %s', (name) => {
    expect(pictureProblem(name)?.code).toBe('commands/bad-usage');
  });

  it.each([
    ['page.png', 'page-3.png'],
    ['a/b.PNG', 'a/b-3.PNG'],
  ])('%s gets its number before the ending', (name, numbered) => {
    expect(pictureProblem(name)).toBeUndefined();
    expect(picturePath(name, undefined)).toBe(name);
    expect(picturePath(name, 3)).toBe(numbered);
  });
});
