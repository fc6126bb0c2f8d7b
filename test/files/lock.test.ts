import { spawn, spawnSync } from 'node:child_process';
import { existsSync, readFileSync, readdirSync, utimesSync, writeFileSync } from 'node:fs';
import { hostname } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { disk } from '../../src/files/disk.js';
import { LOCK_NAME, acquireLock } from '../../src/files/lock.js';
import { processMark } from '../../src/files/process-mark.js';
import { systemError } from './failing-disk.js';
import { temporaryFolder } from './temp-folder.js';

const holder = (changes: object): string =>
  JSON.stringify({ pid: process.pid, host: hostname(), started: '2026-01-05T07:00:00.000Z', token: 'theirs', ...changes });

/** A process id that was alive a moment ago. */
const deadPid = (): number => spawnSync(process.execPath, ['-e', '']).pid;

describe('lock', () => {
  it('is given once, refused while held, and given again after its release', async () => {
    const folder = temporaryFolder();
    const first = await acquireLock(folder);
    if (!first.ok) throw new Error('must be free');
    const second = await acquireLock(folder);
    expect(second).toMatchObject({ ok: false, reason: { code: 'files/locked' } });
    if (!second.ok) expect(second.reason.message).toContain(`process ${process.pid}`);
    expect(readdirSync(folder)).toEqual([LOCK_NAME]);
    expect(await first.lock.release()).toEqual({ ok: true });
    expect(await first.lock.release()).toEqual({ ok: true });
    expect(readdirSync(folder)).toEqual([]);
    expect(await acquireLock(folder)).toMatchObject({ ok: true });
  });

  it('is taken over from a process that has ended', async () => {
    const folder = temporaryFolder();
    writeFileSync(join(folder, LOCK_NAME), holder({ pid: deadPid() }));
    const result = await acquireLock(folder);
    expect(result).toMatchObject({ ok: true });
    expect(readFileSync(join(folder, LOCK_NAME), 'utf8')).toContain(`"pid":${process.pid}`);
    expect(readdirSync(folder)).toEqual([LOCK_NAME]);
  });

  it.skipIf(processMark(process.pid) === undefined)('is taken over when another process has got the id since', async () => {
    const folder = temporaryFolder();
    writeFileSync(join(folder, LOCK_NAME), holder({ mark: 'an-earlier-start-of-the-machine:1' }));
    expect(await acquireLock(folder)).toMatchObject({ ok: true });
    expect(readFileSync(join(folder, LOCK_NAME), 'utf8')).not.toContain('an-earlier-start');
  });

  it('is not taken from a living process, nor from one on another machine', async () => {
    const folder = temporaryFolder();
    const other = spawn(process.execPath, ['-e', 'setInterval(() => {}, 1000)']);
    try {
      writeFileSync(join(folder, LOCK_NAME), holder({ pid: other.pid, mark: processMark(other.pid ?? 0) }));
      expect(await acquireLock(folder)).toMatchObject({ ok: false, reason: { code: 'files/locked' } });
      const here = await acquireLock(folder);
      // Where the system doesn't tell one process from a later one of the same number, only a person can.
      if (!here.ok) expect(here.reason.remedy).toContain(`delete ${join(folder, LOCK_NAME)}`);
    } finally {
      other.kill('SIGKILL');
    }
    writeFileSync(join(folder, LOCK_NAME), holder({ pid: deadPid(), host: 'another-machine' }));
    const result = await acquireLock(folder);
    if (result.ok) throw new Error('must be held');
    expect(result.reason.message).toContain('another-machine');
    expect(result.reason.remedy).toContain(join(folder, LOCK_NAME));
    expect(readdirSync(folder)).toEqual([LOCK_NAME]);
  });

  it('waits for a half-written lock file to be finished, and takes over an old one', async () => {
    const folder = temporaryFolder();
    const path = join(folder, LOCK_NAME);
    writeFileSync(path, '{"pid":');
    expect(await acquireLock(folder)).toMatchObject({ ok: false, reason: { code: 'files/locked' } });
    utimesSync(path, 1_000_000, 1_000_000);
    expect(await acquireLock(folder)).toMatchObject({ ok: true });
  });

  it('takes over one from before the clock was put back', async () => {
    const folder = temporaryFolder();
    const path = join(folder, LOCK_NAME);
    writeFileSync(path, '{"pid":');
    const ahead = Date.now() / 1000 + 3600;
    utimesSync(path, ahead, ahead);
    expect(await acquireLock(folder)).toMatchObject({ ok: true });
  });

  it('goes to exactly one of many that find a dead one at the same time', async () => {
    for (let round = 0; round < 5; round += 1) {
      const folder = temporaryFolder();
      writeFileSync(join(folder, LOCK_NAME), holder({ pid: deadPid() }));
      const results = await Promise.all(Array.from({ length: 12 }, () => acquireLock(folder)));
      expect(results.filter((each) => each.ok)).toHaveLength(1);
      expect(readdirSync(folder)).toEqual([LOCK_NAME]);
    }
  });

  it('gets over a take-over that was itself interrupted', async () => {
    const folder = temporaryFolder();
    writeFileSync(join(folder, LOCK_NAME), holder({ pid: deadPid() }));
    writeFileSync(join(folder, `${LOCK_NAME}-takeover`), holder({ pid: deadPid() }));
    expect(await acquireLock(folder)).toMatchObject({ ok: true });
    expect(readdirSync(folder)).toEqual([LOCK_NAME]);
  });

  it('works on a disk that knows no second names', async () => {
    const folder = temporaryFolder();
    const plain = { ...disk, link: () => Promise.reject(systemError('EPERM')) };
    const first = await acquireLock(folder, plain);
    if (!first.ok) throw new Error('must be free');
    expect(await acquireLock(folder, plain)).toMatchObject({ ok: false, reason: { code: 'files/locked' } });
    await first.lock.release();
    expect(readdirSync(folder)).toEqual([]);
  });

  it('does not remove a lock that is no longer its own', async () => {
    const folder = temporaryFolder();
    const result = await acquireLock(folder);
    if (!result.ok) throw new Error('must be free');
    writeFileSync(join(folder, LOCK_NAME), holder({}));
    expect(await result.lock.release()).toEqual({ ok: true });
    expect(existsSync(join(folder, LOCK_NAME))).toBe(true);
  });

  it('reports a folder that is not there', async () => {
    expect(await acquireLock(join(temporaryFolder(), 'none'))).toMatchObject({ ok: false, reason: { code: 'files/missing-folder' } });
  });
});
