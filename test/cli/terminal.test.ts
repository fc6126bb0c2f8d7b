import { existsSync } from 'node:fs';
import { beforeAll, describe, expect, it } from 'vitest';
import { temporaryFolder } from '../batch/inbox.js';
import { builtCli, type Ended, runToEnd } from '../built.js';
import { put } from './inbox.js';

/** util-linux gives a command a terminal; both outputs come back as one, as people see them. */
const SCRIPT = '/usr/bin/script';
const RUN = ['run', '--recipe', 'any-page', '--out', 'out', 'label.pdf'];
const ESC = '\u001b';

function onTerminal(args: readonly string[], folder: string, env: Readonly<Record<string, string>>): Promise<Ended> {
  const command = [process.execPath, builtCli(), ...args].map((each) => `'${each}'`).join(' ');
  return runToEnd(SCRIPT, ['-qec', command, '/dev/null'], folder, { ...process.env, NO_COLOR: '', TERM: 'xterm', ...env });
}

describe.skipIf(process.platform !== 'linux' || !existsSync(SCRIPT))('on a terminal (script, Debian package bsdutils)', () => {
  let folder = '';
  beforeAll(async () => {
    folder = temporaryFolder();
    await put(folder, ['label.pdf', 'page-4x6']);
  });

  it('messages are coloured, and where colour is not wanted they are the same without it', async () => {
    const coloured = await onTerminal(['run'], folder, {});
    expect(coloured.code).toBe(2);
    expect(coloured.stdout).toContain(`${ESC}[31merror:${ESC}[0m there is no pipeline.yaml`);
    const plain = coloured.stdout.replaceAll(/\u001b\[\d+m/g, '');
    for (const [args, env] of [
      [['run'], { NO_COLOR: '1' }],
      [['run'], { TERM: 'dumb' }],
      [['run', '--no-color'], {}],
    ] as const) {
      expect((await onTerminal(args, folder, env)).stdout).toBe(plain);
    }
  });

  it('one updating line shows how far it is', async () => {
    const { code, stdout } = await onTerminal(RUN, folder, {});
    expect(code).toBe(0);
    expect(stdout).toMatch(/█+ 1\/1 documents: 1 ready, 0 held, 0 failed/);
    expect(stdout).toContain(`${ESC}[1m1 label is ready to print`);
    // The cursor stays visible: it would stay hidden after a kill.
    expect(stdout).not.toContain(`${ESC}[?25l`);
  });

  it('a terminal that can do nothing gets lines only', async () => {
    const { code, stdout } = await onTerminal(RUN, folder, { TERM: 'dumb' });
    expect(code).toBe(0);
    expect(stdout).toContain('1 label is ready to print');
    expect(stdout).not.toMatch(/\u001b|\r(?!\n)/);
  });

  it('--quiet shows results only', async () => {
    const { stdout } = await onTerminal([...RUN, '--quiet'], folder, { NO_COLOR: '1' });
    expect(stdout).toMatch(/^1 label is ready to print/);
  });
});
