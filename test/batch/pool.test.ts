import { PLAIN_PRINTER } from '../../src/geometry/printer.js';
import { afterEach, describe, expect, it } from 'vitest';
import type { WorkOrder } from '../../src/batch/messages.js';
import { defaultJobs, Pool } from '../../src/batch/pool.js';
import type { WorkerOptions } from '../../src/batch/worker-handle.js';
import type { DocumentResult } from '../../src/recipe/outcome.js';

const never = new AbortController().signal;
let pool: Pool | undefined;
afterEach(() => pool?.close());

const talk: string[] = [];
function poolOf(story: string, jobs = 1, options: Partial<WorkerOptions> = {}): Pool {
  talk.length = 0;
  const script = new URL(`../faults/workers/${story}.js`, import.meta.url);
  pool = new Pool(jobs, { script, stallSeconds: 20, memoryMb: 256, onTalk: (text) => talk.push(text), ...options });
  return pool;
}

const order = (shownName: string): WorkOrder => ({
  type: 'document',
  item: { channel: 0, path: `/nowhere/${shownName}`, entry: undefined, shownName, sha256: '', size: 0 },
  recipe: { name: 'any', about: '', steps: [] },
  media: '4x6in',
  grid: '203dpi',
  printer: PLAIN_PRINTER,
  large: undefined,
  texts: false,
});

async function runAll(under: Pool, names: readonly string[]): Promise<(DocumentResult | undefined)[]> {
  return Promise.all(names.map((name) => under.process(order(name), never)));
}

const stateOf = (result: DocumentResult | undefined): DocumentResult['items'][number]['state'] | undefined => result?.items[0]?.state;

describe('a document that breaks its worker fails alone', () => {
  const stories: [story: string, options: Partial<WorkerOptions>, code: string, message: RegExp][] = [
    ['dies-on-page-4', {}, 'batch/crashed', /crashed on page 4 \(RangeError: offset is out of bounds\)/],
    ['ends-itself', {}, 'batch/crashed', /ended itself on page 1 \(exit code 7\)/],
    ['loops-for-ever', { stallSeconds: 3 }, 'batch/no-progress', /no progress for 3 s on page 2/],
    ['eats-memory', { memoryMb: 48 }, 'batch/out-of-memory', /more memory on page 1 than a worker gets \(48 MB\)/],
    ['wasm-trap', {}, 'batch/crashed', /crashed on page 1 \(RuntimeError: unreachable\)/],
  ];
  for (const [story, options, code, message] of stories) {
    for (const jobs of [1, 2]) {
      it(`${story}, ${jobs} at a time`, async () => {
        const results = await runAll(poolOf(story, jobs, options), ['a', 'bad', 'b', 'c', 'bad', 'd']);
        expect(results.map((result) => stateOf(result)?.kind)).toEqual(['skipped', 'failed', 'skipped', 'skipped', 'failed', 'skipped']);
        const state = stateOf(results[1]);
        if (state?.kind !== 'failed') throw new Error('no failed state');
        expect(state.code).toBe(code);
        expect(state.message).toMatch(message);
        expect(state.remedy).not.toBe('');
        expect(results[1]).toMatchObject({ pageCount: 0, pressed: undefined, pictures: [] });
      });
    }
  }
});

it("takes a worker's death over a later document for nobody's fault until that document kills a fresh one too", async () => {
  const results = await runAll(poolOf('worn-out'), ['a', 'b', 'c']);
  expect(results.map((result) => stateOf(result)?.kind)).toEqual(['skipped', 'skipped', 'skipped']);
});

it('lets a slow document go on as long as pages begin', async () => {
  const pages: number[] = [];
  const result = await poolOf('slow-but-alive', 1, { stallSeconds: 3 }).process(order('bad'), never, (page) => pages.push(page));
  expect(stateOf(result)?.kind).toBe('skipped');
  expect(pages).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9]);
});

it("keeps what libraries print off the command's own streams", async () => {
  await poolOf('talks').process(order('bad'), never);
  await expect.poll(() => talk.join('')).toBe('a library says hello\n');
});

it('starts nothing more once it is told to stop, and finishes what is running', async () => {
  const stop = new AbortController();
  const under = poolOf('slow-but-alive');
  const running = under.process(order('bad'), stop.signal, () => stop.abort());
  const waiting = under.process(order('good'), stop.signal);
  expect(stateOf(await running)?.kind).toBe('skipped');
  expect(await waiting).toBeUndefined();
});

it('uses at least one worker', () => {
  expect(defaultJobs()).toBeGreaterThanOrEqual(1);
});
