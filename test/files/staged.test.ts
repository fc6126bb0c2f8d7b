import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { dropPieces, stage } from '../../src/files/staged.js';
import { isTemporaryName } from '../../src/files/temporary-name.js';
import { failingDisk } from './failing-disk.js';
import { temporaryFolder } from './temp-folder.js';

async function* pieces(): AsyncGenerator<Uint8Array> {
  yield Buffer.from('the new ');
  yield Buffer.from('content');
}

async function staged(path: string): Promise<Extract<Awaited<ReturnType<typeof stage>>, { ok: true }>['staged']> {
  const result = await stage(path, pieces());
  if (!result.ok) throw new Error(result.reason.message);
  return result.staged;
}

it('replaces a file only when told to', async () => {
  const path = join(temporaryFolder(), 'stack.pdf');
  writeFileSync(path, 'old');
  const file = await staged(path);
  expect(readFileSync(path, 'utf8')).toBe('old');
  expect(await file.commit()).toEqual({ ok: true });
  expect(readFileSync(path, 'utf8')).toBe('the new content');
});

it('leaves nothing of a file that is discarded', async () => {
  const folder = temporaryFolder();
  await (await staged(join(folder, 'stack.pdf'))).discard();
  expect(readdirSync(folder)).toEqual([]);
});

it('leaves either the old or the new file, whole, whichever request to the disk fails', async () => {
  let failedRuns = 0;
  for (let nth = 1; ; nth += 1) {
    const folder = temporaryFolder();
    const path = join(folder, 'stack.pdf');
    writeFileSync(path, 'old');
    const failing = failingDisk(nth, 'ENOSPC', false);
    const result = await stage(path, pieces(), failing.disk);
    const ended = result.ok ? await result.staged.commit() : result;
    if (failing.requests() < nth) {
      expect(ended).toEqual({ ok: true });
      break;
    }
    failedRuns += 1;
    expect(ended).toMatchObject({ ok: false, reason: { code: 'files/no-space' } });
    expect(['old', 'the new content']).toContain(readFileSync(path, 'utf8'));
    expect(readdirSync(folder).filter(isTemporaryName)).toEqual([]);
  }
  // create, two writes, stat, sync, close, rename, sync of the folder
  expect(failedRuns).toBe(8);
});

it('takes an error of the disk in the pieces for one, and throws any other again', async () => {
  const path = join(temporaryFolder(), 'stack.pdf');
  const failing = async function* (error: Error): AsyncGenerator<Uint8Array> {
    yield Buffer.from('x');
    throw error;
  };
  const unreadable = Object.assign(new Error('EIO'), { code: 'EIO', syscall: 'read' });
  expect(await stage(path, failing(unreadable))).toMatchObject({ ok: false, reason: { code: 'files/failed' } });
  await expect(stage(path, failing(new TypeError('ours')))).rejects.toThrow('ours');
  await expect(dropPieces(path, failing(new TypeError('ours')))).rejects.toThrow('ours');
  expect(existsSync(path)).toBe(false);
});
