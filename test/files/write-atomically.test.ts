import { mkdirSync, readFileSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { disk } from '../../src/files/disk.js';
import { isTemporaryName } from '../../src/files/temporary-name.js';
import { writeAtomically } from '../../src/files/write-atomically.js';
import { failingDisk } from './failing-disk.js';
import { temporaryFolder } from './temp-folder.js';

const OLD = 'the old content';
const NEW = 'the new content, a bit longer';

describe('write-atomically', () => {
  it('writes text and bytes, and replaces what was there', async () => {
    const path = join(temporaryFolder(), 'stack.pdf');
    expect(await writeAtomically(path, OLD)).toEqual({ ok: true });
    expect(await writeAtomically(path, new Uint8Array([1, 2, 3]))).toEqual({ ok: true });
    expect([...readFileSync(path)]).toEqual([1, 2, 3]);
    expect(await writeAtomically(path, 'né')).toEqual({ ok: true });
    expect(readFileSync(path, 'utf8')).toBe('né');
  });

  it('leaves either the old or the new file, whole, whichever request to the disk fails, once or for good', async () => {
    let failedRuns = 0;
    for (const forGood of [false, true]) {
      for (let nth = 1; ; nth += 1) {
        const folder = temporaryFolder();
        const path = join(folder, 'run.json');
        writeFileSync(path, OLD);
        const failing = failingDisk(nth, 'ENOSPC', forGood);
        const result = await writeAtomically(path, NEW, failing.disk);
        const content = readFileSync(path, 'utf8');
        if (failing.requests() < nth) {
          expect(result).toEqual({ ok: true });
          expect(content).toBe(NEW);
          break;
        }
        failedRuns += 1;
        expect(result.ok).toBe(false);
        expect([OLD, NEW]).toContain(content);
        const others = readdirSync(folder).filter((name) => name !== 'run.json');
        if (!forGood) expect(others).toEqual([]);
        expect(others.every(isTemporaryName)).toBe(true);
      }
    }
    // create, write, stat, sync, close, rename, sync of the folder
    expect(failedRuns).toBe(14);
  });

  it('takes a file that came out short for a full disk', async () => {
    const folder = temporaryFolder();
    const short = {
      ...disk,
      create: async (path: string) => {
        const file = await disk.create(path);
        return {
          writeFile: (data: Uint8Array | string) => file.writeFile(data.slice(0, 4)),
          stat: () => file.stat(),
          sync: () => file.sync(),
          close: () => file.close(),
        };
      },
    };
    const result = await writeAtomically(join(folder, 'a.pdf'), NEW, short);
    expect(result).toMatchObject({ ok: false, reason: { code: 'files/no-space' } });
    expect(readdirSync(folder)).toEqual([]);
  });

  it.each([
    ['EACCES', 'files/no-permission'],
    ['EROFS', 'files/read-only'],
    ['EDQUOT', 'files/no-space'],
    ['EMFILE', 'files/too-many-open'],
    ['EIO', 'files/failed'],
  ])('tells %s as %s with the path and a remedy', async (errno, code) => {
    const path = join(temporaryFolder(), 'a.pdf');
    const result = await writeAtomically(path, NEW, failingDisk(1, errno, false).disk);
    if (result.ok) throw new Error('must fail');
    expect(result.reason.code).toBe(code);
    expect(result.reason.message).toContain(path);
    expect(result.reason.remedy).toMatch(/^[A-Z].*\.$/);
  });

  it('reports a missing folder and a folder of that name by the real disk', async () => {
    const folder = temporaryFolder();
    expect(await writeAtomically(join(folder, 'none', 'a.pdf'), NEW)).toMatchObject({ reason: { code: 'files/missing-folder' } });
    mkdirSync(join(folder, 'taken'));
    expect(await writeAtomically(join(folder, 'taken'), NEW)).toMatchObject({ reason: { code: 'files/is-folder' } });
    expect(readdirSync(folder)).toEqual(['taken']);
  });

  it('does not hide a bug of ours behind a reason', async () => {
    const broken = { ...disk, rename: () => Promise.reject(new TypeError('a bug')) };
    const folder = temporaryFolder();
    await expect(writeAtomically(join(folder, 'a.pdf'), NEW, broken)).rejects.toThrow('a bug');
    expect(readdirSync(folder)).toEqual([]);
  });
});
