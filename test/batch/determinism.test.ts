import { join } from 'node:path';
import { expect, it } from 'vitest';
import { runBuilt } from '../built.js';
import { put } from '../cli/inbox.js';
import { lastingFilesIn, temporaryFolder } from './inbox.js';

const FILES = ['order 1.pdf', 'order 2.pdf', 'order 10.pdf', 'shop/order 1.pdf', 'label.png'];

/** Labels as vectors and as pictures, a slip, a held one, a picture. */
async function inbox(): Promise<string> {
  const folder = temporaryFolder();
  await put(
    folder,
    ['order 1.pdf', 'page-4x6', 'bilevel', 180],
    ['order 2.pdf', 'letter-ninety-percent'],
    ['order 10.pdf', 'label-then-slip'],
    ['shop/order 1.pdf', 'letter-upper-sideways', 'vector', 90],
    ['label.png', 'picture-4x6', 'bilevel'],
  );
  return folder;
}

it(
  'the whole pipeline gives the same bytes for 1, 2 and 8 jobs and any order of the files, and leaves nothing of a run before',
  { timeout: 240_000 },
  async () => {
    const folder = await inbox();
    const made = async (out: string, jobs: number, files: readonly string[]): Promise<Map<string, Buffer>> => {
      const ended = await runBuilt(['run', '--recipe', 'any-page', '--out', out, '--jobs', String(jobs), ...files], folder);
      expect(ended.code, ended.stderr).toBe(1);
      return lastingFilesIn(join(folder, out));
    };
    const one = await made('one', 1, FILES);
    expect([...one.keys()].filter((path) => path.startsWith('print/'))).toEqual(['print/stack-4x6in.pdf']);
    expect([...one.keys()].some((path) => path.startsWith('held/'))).toBe(true);
    expect(await made('two', 2, FILES.toReversed())).toEqual(one);

    // Into a folder that has the outputs of other files.
    const few = await made('few', 1, ['order 2.pdf']);
    expect(few.get('run.json')).not.toEqual(one.get('run.json'));
    expect(await made('few', 8, [...FILES.slice(3), ...FILES.slice(0, 3)])).toEqual(one);
  },
);
