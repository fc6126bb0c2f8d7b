import { spawn } from 'node:child_process';
import { cpSync } from 'node:fs';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { beforeAll, describe, expect, it } from 'vitest';
import { temporaryFolder } from '../batch/inbox.js';
import { builtCli, runBuilt } from '../built.js';
import { put } from '../cli/inbox.js';
import { expectTidy, expectWhole, type Files, visibleFilesIn } from './out-folder.js';

const ARGS = ['run', '--recipe', 'any-page', '--out', 'out', '--jobs', '1'];

interface Line {
  readonly type: string;
  readonly exitCode?: number;
  readonly done?: number;
  readonly of?: number;
}

interface Disturbed {
  readonly code: number | null;
  readonly signal: NodeJS.Signals | null;
  readonly lines: readonly Line[];
  readonly stderr: string;
}

/** Runs the built command and sends it a signal at its first line of a type; a second one as soon as it says that it stops. */
async function disturbed(folder: string, at: string, signal: NodeJS.Signals, twice = false): Promise<Disturbed> {
  const child = spawn(process.execPath, [builtCli(), ...ARGS, '--json', 'inbox'], { cwd: folder, stdio: ['ignore', 'pipe', 'pipe'] });
  let stderr = '';
  let sent = 0;
  const send = (): void => void (sent += Number(child.kill(signal)));
  child.stderr.on('data', (chunk: Buffer) => {
    stderr += chunk.toString('utf8');
    if (twice && sent === 1 && stderr.includes('Stopping')) send();
  });
  const lines: Line[] = [];
  const closed = new Promise<Pick<Disturbed, 'code' | 'signal'>>((resolve) =>
    child.once('close', (code, by) => {
      resolve({ code, signal: by });
    }),
  );
  for await (const text of createInterface({ input: child.stdout })) {
    const line = JSON.parse(text) as Line;
    lines.push(line);
    if (line.type === at && sent === 0) send();
  }
  return { ...(await closed), lines, stderr };
}

describe('the built command, disturbed', () => {
  let folder = '';
  let out = '';
  let old: Files = new Map();
  let made: Files = new Map();

  beforeAll(async () => {
    folder = temporaryFolder();
    out = join(folder, 'out');
    await put(
      folder,
      ['yesterday/label.pdf', 'page-a6'],
      ['inbox/order 1.pdf', 'page-4x6'],
      ['inbox/order 2.pdf', 'letter-ninety-percent'],
      ['inbox/order 3.pdf', 'letter-cut-line'],
    );
    expect((await runBuilt([...ARGS, 'yesterday'], folder)).code).toBe(0);
    old = visibleFilesIn(out);
    cpSync(out, join(folder, 'before'), { recursive: true });
    expect((await runBuilt(['run', '--recipe', 'any-page', '--out', 'undisturbed', '--jobs', '1', 'inbox'], folder)).code).toBe(1);
    made = visibleFilesIn(join(folder, 'undisturbed'));
    expect([...made.keys()]).toEqual([
      'held/001-inbox-order-2.pdf-p1.json',
      'held/001-inbox-order-2.pdf-p1.png',
      'print/stack-4x6in.pdf',
      'run.json',
    ]);
  });

  it.each([
    ['SIGINT', 130],
    ['SIGTERM', 143],
  ] as const)('%s once: what is in work is finished, nothing is written, it says what is left', async (signal, exitCode) => {
    const { code, lines, stderr } = await disturbed(folder, 'started', signal);
    expect(code).toBe(exitCode);
    const [stopped, end] = lines.slice(-2);
    const done = lines.filter(({ type }) => type === 'document').length;
    // It was told before the first document had ended, and that one was in work.
    expect(done).toBeGreaterThanOrEqual(1);
    expect(done).toBeLessThan(3);
    expect(stopped).toEqual({ type: 'stopped', done, of: 3 });
    expect(end).toEqual({ type: 'end', exitCode });
    expect(stderr).toContain('Stopping: what is in work is finished, nothing more is begun. Once more leaves at once.\n');
    expect(stderr).toContain(`Stopped: ${done} of 3 documents done, ${3 - done} left. No stack was written`);
    expect(visibleFilesIn(out)).toEqual(old);
    expectTidy(out);
  });

  it('SIGINT twice: it leaves at once', async () => {
    const { code, lines } = await disturbed(folder, 'started', 'SIGINT', true);
    expect(code).toBe(130);
    expect(lines.map(({ type }) => type)).not.toContain('stopped');
    expect(visibleFilesIn(out)).toEqual(old);
  });

  it('kill -9 amid the documents and amid the stacks: whole files always, and the same result in the end', async () => {
    for (const at of ['document', 'stacking']) {
      const { code, signal } = await disturbed(folder, at, 'SIGKILL');
      // When it stacks, it may have ended before the signal comes.
      if (at !== 'stacking') expect([code, signal]).toEqual([null, 'SIGKILL']);
      expectWhole(out, old, made);
    }
    expect((await runBuilt([...ARGS, 'inbox'], folder)).code).toBe(1);
    expect(visibleFilesIn(out)).toEqual(made);
    expectTidy(out);
  });
});
