import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { acquireLock } from '../../src/files/lock.js';
import { filesIn, temporaryFolder } from '../batch/inbox.js';
import { ROOT } from '../house/tree.js';
import { CASES } from './cases.js';
import { put } from './inbox.js';
import { transcript, type Transcript } from './transcript.js';

const GOLDEN = join(ROOT, 'test/cli/golden');
const LOCKED = ['run-locked', 'run-locked-json'];

/** Compares with the golden text; UPDATE_GOLDEN=1 puts a new one in place. Review it as a seller would read it. */
function expectGolden(name: string, { text }: Transcript): void {
  const path = join(GOLDEN, `${name}.txt`);
  if (process.env['UPDATE_GOLDEN'] === '1') writeFileSync(path, text);
  expect(text).toBe(existsSync(path) ? readFileSync(path, 'utf8') : `no golden text ${name}.txt: UPDATE_GOLDEN=1 makes it`);
}

function expectJsonLines({ stdout, code }: Transcript): void {
  const lines = stdout.trimEnd().split('\n');
  const values = lines.map((line) => JSON.parse(line) as { type?: unknown });
  for (const [index, value] of values.entries()) expect(value.type, lines[index]).toEqual(expect.any(String));
  expect(values.at(-1)).toEqual({ type: 'end', exitCode: code });
  expect(values.filter(({ type }) => type === 'end')).toHaveLength(1);
  if (code !== 0 && code !== 1) expect(values.length).toBeGreaterThan(1);
}

describe('the command line, word for word', () => {
  it.each(Object.entries(CASES))('%s', async (name, { args, code, before }) => {
    const folder = temporaryFolder();
    await before?.(folder);
    const found = filesIn(folder);
    const told = await transcript(args, folder);
    expectGolden(name, told);
    expect(told.code).toBe(code);
    if (args.includes('--json')) expectJsonLines(told);
    const left = filesIn(folder);
    for (const [path, bytes] of found) expect(left.get(path), `${path} belongs to the user`).toEqual(bytes);
    // What was not started, and what was only tried, leaves nothing behind.
    if (code === 2 || args.includes('--dry-run')) expect([...left.keys()]).toEqual([...found.keys()]);
  });

  it.each(LOCKED)('%s', async (name) => {
    const folder = temporaryFolder();
    await put(folder, ['label.pdf', 'page-4x6']);
    mkdirSync(join(folder, 'out'));
    const locked = await acquireLock(join(folder, 'out'));
    if (!locked.ok) throw new Error(locked.reason.message);
    const json = name.endsWith('json') ? ['--json'] : [];
    const told = await transcript(['run', '--recipe', 'any-page', '--out', 'out', ...json, 'label.pdf'], folder);
    await locked.lock.release();
    expectGolden(name, told);
    expect(told.code).toBe(3);
    if (json.length > 0) expectJsonLines(told);
  });

  it('has no golden text without a case', () => {
    const names = [...Object.keys(CASES), ...LOCKED].map((name) => `${name}.txt`);
    expect(readdirSync(GOLDEN).sort()).toEqual(names.sort());
  });
});
