import { existsSync, mkdirSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { ensureFolder, listFiles, removeFile, removeLeftovers } from '../../src/files/folder.js';
import { temporaryName } from '../../src/files/temporary-name.js';
import { dryWriter } from '../../src/files/writer.js';
import { temporaryFolder } from './temp-folder.js';

describe('folder', () => {
  it('makes a folder with those above it, twice without complaint', async () => {
    const folder = join(temporaryFolder(), 'a', 'b');
    expect(await ensureFolder(folder)).toEqual({ ok: true });
    expect(await ensureFolder(folder)).toEqual({ ok: true });
    expect(existsSync(folder)).toBe(true);
  });

  it('reports a file that stands where the folder should', async () => {
    const folder = temporaryFolder();
    writeFileSync(join(folder, 'out'), '');
    for (const [below, words] of [
      ['out', 'a file has its name'],
      ['out/print', 'a file has the name of a folder above it'],
    ] as const) {
      const result = await ensureFolder(join(folder, below));
      expect(result).toMatchObject({ ok: false, reason: { code: 'files/is-file' } });
      expect(!result.ok && result.reason.message).toContain(words);
    }
  });

  it('lists files sorted, without folders and temporary files; a missing folder has none', async () => {
    const folder = temporaryFolder();
    for (const name of ['b.pdf', 'a.pdf', '.hidden', temporaryName()]) writeFileSync(join(folder, name), '');
    mkdirSync(join(folder, 'sub'));
    expect(await listFiles(folder)).toEqual({ ok: true, names: ['.hidden', 'a.pdf', 'b.pdf'] });
    expect(await listFiles(join(folder, 'none'))).toEqual({ ok: true, names: [] });
    expect(await listFiles(join(folder, 'a.pdf'))).toMatchObject({ ok: false });
  });

  it('clears away the leftovers of an interrupted run and nothing else', async () => {
    const folder = temporaryFolder();
    for (const name of ['a.pdf', '.hidden', temporaryName(), temporaryName()]) writeFileSync(join(folder, name), '');
    expect(await removeLeftovers(folder)).toEqual({ ok: true, removed: 2 });
    expect(readdirSync(folder).sort()).toEqual(['.hidden', 'a.pdf']);
    expect(await removeLeftovers(join(folder, 'none'))).toEqual({ ok: true, removed: 0 });
  });

  it('removes a file, also when it is gone already, and never a folder', async () => {
    const folder = temporaryFolder();
    mkdirSync(join(folder, 'spool'));
    writeFileSync(join(folder, 'spool', 'a'), '');
    expect(await removeFile(join(folder, 'spool'))).toMatchObject({ ok: false });
    expect(await removeFile(join(folder, 'spool', 'a'))).toEqual({ ok: true });
    expect(await removeFile(join(folder, 'spool', 'a'))).toEqual({ ok: true });
    expect(readdirSync(folder)).toEqual(['spool']);
  });

  it('changes nothing with the writer of a dry run', async () => {
    const folder = temporaryFolder();
    writeFileSync(join(folder, 'old'), '');
    expect(await dryWriter.ensureFolder(join(folder, 'out'))).toEqual({ ok: true });
    expect(await dryWriter.write(join(folder, 'new'), 'x')).toEqual({ ok: true });
    expect(await dryWriter.remove(join(folder, 'old'))).toEqual({ ok: true });
    expect(readdirSync(folder)).toEqual(['old']);
  });
});
