import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { temporaryFolder } from '../batch/inbox.js';
import { builtCli, type Ended, runToEnd } from '../built.js';
import { put } from './inbox.js';

/** A device that answers every write as a full disk does (Linux, full(4)). */
const FULL = '/dev/full';

function redirected(command: string, redirection: string, folder: string): Promise<Ended> {
  return runToEnd('/bin/sh', ['-c', `'${process.execPath}' '${builtCli()}' ${command} ${redirection}`], folder);
}

describe.skipIf(!existsSync(FULL))('outputs that lead to a full disk', () => {
  let folder = '';
  beforeAll(async () => {
    folder = temporaryFolder();
    await put(folder, ['label.pdf', 'page-4x6']);
  });
  const run = (out: string): string => `run --recipe any-page --out ${out} label.pdf`;
  const ready = (out: string): unknown =>
    (JSON.parse(readFileSync(join(folder, out, 'run.json'), 'utf8')) as { account: { items: { ready: number } } }).account.items.ready;

  it('a run whose talk goes nowhere makes its stack all the same', async () => {
    const { code, stdout } = await redirected(run('quiet-out'), `2>${FULL}`, folder);
    expect(stdout).toContain('1 label is ready to print');
    expect(code).toBe(0);
    expect(ready('quiet-out')).toBe(1);
  });

  it.each(['', '--json'])('a run whose results go nowhere makes its stack, and says so by its exit code %s', async (option) => {
    const { code, stderr } = await redirected(`${run('lost-out')} ${option}`, `>${FULL}`, folder);
    expect(stderr).toContain("the standard output can't be written (ENOSPC)");
    expect(stderr).not.toMatch(/^\s+at /m);
    expect(code).toBe(3);
    expect(ready('lost-out')).toBe(1);
  });

  it.each(['steps', 'ruler --out -', 'check upper-half'])('%s', async (command) => {
    expect((await redirected(command, `>${FULL}`, folder)).code).toBe(3);
  });
});
