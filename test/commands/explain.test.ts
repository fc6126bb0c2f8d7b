import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import { picturePath, pictureProblem } from '../../src/commands/explain-picture.js';
import { type ExplainArgs, runExplain } from '../../src/commands/explain.js';
import { filesIn, temporaryFolder, write } from '../batch/inbox.js';
import { put } from '../cli/inbox.js';
import { capture, type Captured } from './capture.js';

const ARGS: ExplainArgs = { files: [], recipe: undefined, media: undefined, grid: undefined, picture: undefined, json: false };
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
