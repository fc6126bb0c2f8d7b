import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { type Kept, Scratch } from '../../src/files/scratch.js';

let folder: string;
beforeEach(() => (folder = mkdtempSync(join(tmpdir(), 'scratch-'))));
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const bytes = (length: number, value: number): Uint8Array => new Uint8Array(length).fill(value);
async function putAll(scratch: Scratch, all: readonly Uint8Array[]): Promise<Kept[]> {
  const results = await Promise.all(all.map((each) => scratch.put(each)));
  return results.map((result) => {
    if (!result.ok) throw new Error(result.reason.message);
    return result.kept;
  });
}

it('gives back what was put, from memory up to the limit and from the file beyond it', async () => {
  const path = join(folder, 'scratch');
  const scratch = new Scratch(path, 25);
  const all = [bytes(10, 1), bytes(10, 2), bytes(10, 3), bytes(30_000, 4), bytes(5, 5)];
  const kept = await putAll(scratch, all);
  expect(kept.map((each) => each instanceof Uint8Array)).toEqual([true, true, false, false, true]);
  for (const [index, each] of kept.entries()) expect(await scratch.get(each)).toEqual(all[index]);
  expect(existsSync(path)).toBe(true);
  expect(await scratch.remove()).toEqual({ ok: true });
  expect(existsSync(path)).toBe(false);
});

it('keeps everything in memory where nothing may be written', async () => {
  const scratch = new Scratch(undefined, 0);
  const [kept] = await putAll(scratch, [bytes(10, 1)]);
  expect(kept).toBeInstanceOf(Uint8Array);
  expect(await scratch.remove()).toEqual({ ok: true });
});

it('says why the disk does not take it', async () => {
  const scratch = new Scratch(join(folder, 'missing', 'scratch'), 0);
  expect(await scratch.put(bytes(1, 1))).toMatchObject({ ok: false, reason: { code: 'files/missing-folder' } });
});
