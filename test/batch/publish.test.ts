import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import type { BuiltStack } from '../../src/batch/build-stacks.js';
import { publish, type Published } from '../../src/batch/publish.js';
import type { RunRecord } from '../../src/batch/run-record.js';
import { Scratch } from '../../src/files/scratch.js';
import { diskWriter, type Writer } from '../../src/files/writer.js';
import { temporaryFolder } from '../files/temp-folder.js';
import { reason } from './fakes.js';

const STACK = {
  file: 'print/stack-4x6in.pdf',
  output: 'roll',
  media: '4x6in',
  grid: '203dpi',
  parcels: 1,
  pages: 1,
  sheets: 1,
  sha256: '',
} as const;
// Of a record only what is published matters here.
const RECORD = { stacks: [STACK], documents: [] } as unknown as RunRecord;

async function* pieces(): AsyncGenerator<Uint8Array> {
  yield Buffer.from('today');
}

const stack: BuiltStack = {
  name: 'stack-4x6in.pdf',
  output: 'roll',
  pages: 1,
  chunks: pieces,
  raster: undefined,
  record: () => STACK,
  printed: () => ['0 p1'],
};

/** Publishes over the output of a run before. */
async function over(writer: Writer, record: () => RunRecord | { refused: typeof reason } = () => RECORD): Promise<[Published, string]> {
  const out = temporaryFolder();
  await diskWriter.ensureFolder(join(out, 'print'));
  writeFileSync(join(out, 'print/stack-4x6in.pdf'), 'yesterday');
  writeFileSync(join(out, 'run.json'), 'yesterday');
  const result = await publish({ out, documents: [], stacks: [stack], record }, new Scratch(undefined, 1000), writer);
  return [result, out];
}

/** All that lies there, by its path, temporary files too. */
const lyingIn = (out: string): string[] =>
  readdirSync(out, { recursive: true, encoding: 'utf8', withFileTypes: true }).flatMap((each) => (each.isFile() ? [each.name] : []));

/** The disk, on which the file of this name can't be put in its place. */
const failingAt = (name: string): Writer => ({
  ...diskWriter,
  stage: async (path, data) => {
    const result = await diskWriter.stage(path, data);
    if (!result.ok || !path.endsWith(name)) return result;
    return { ok: true, staged: { ...result.staged, commit: async () => ({ ok: false, reason: { ...reason, code: 'files/no-space' } }) } };
  },
});

it.each([['stack-4x6in.pdf'], ['run.json']])('leaves no temporary file when %s can not be put in its place', async (name) => {
  const [result, out] = await over(failingAt(name));
  expect(result).toMatchObject({ ok: false, reason: { code: 'files/no-space' }, left: 'mixed' });
  expect(lyingIn(out)).toEqual(['stack-4x6in.pdf']);
});

it('leaves no temporary file when what is old can not be removed', async () => {
  const [result, out] = await over({
    ...diskWriter,
    remove: async () => ({ ok: false, reason: { ...reason, code: 'files/no-permission' } }),
  });
  expect(result).toMatchObject({ ok: false, reason: { code: 'files/no-permission' }, left: 'as-it-was' });
  expect(lyingIn(out).sort()).toEqual(['run.json', 'stack-4x6in.pdf']);
});

it('changes nothing when the record is refused', async () => {
  const [result, out] = await over(diskWriter, () => ({ refused: reason }));
  expect(result).toEqual({ ok: false, reason, left: 'as-it-was' });
  expect(lyingIn(out).sort()).toEqual(['run.json', 'stack-4x6in.pdf']);
  for (const name of ['run.json', 'print/stack-4x6in.pdf']) expect(readFileSync(join(out, name), 'utf8')).toBe('yesterday');
});
