import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { loadPipeline } from '../../../src/config/load-pipeline.js';
import type { Pipeline } from '../../../src/config/pipeline.js';
import { openPdf } from '../../../src/reading/open-pdf.js';
import { lastingFilesIn, run, temporaryFolder } from '../../batch/inbox.js';
import { Random } from '../day/random.js';
import { expectedParcels } from './expected.js';
import type { DayFile } from './files.js';
import { smallDay } from './generate.js';
import { writeDay, writeExports } from './inbox.js';
import { lastingWorker, RELAY } from './lasting-worker.js';
import { DAY, type RunDay, type RunOrder } from './run-day.js';
import { planted, toldBy, type Recorded } from './told.js';

interface Written {
  readonly day: RunDay;
  readonly folder: string;
  readonly files: readonly DayFile[];
  readonly pipeline: Pipeline;
}

async function written(seed: number): Promise<Written> {
  const day = smallDay(seed);
  const folder = temporaryFolder();
  const files = await writeDay(folder, day);
  const { value: pipeline, diagnostics } = loadPipeline(join(folder, 'pipeline.yaml'));
  if (!pipeline) throw new Error(JSON.stringify(diagnostics));
  return { day, folder, files, pipeline };
}

/** Runs it; what is in the output folder, without what differs from run to run. */
async function ran(pipeline: Pipeline, worker = {}): Promise<{ readonly record: Recorded; readonly files: ReadonlyMap<string, Buffer> }> {
  const { end } = await run(pipeline, { worker, today: DAY });
  expect(end.kind).toBe('finished');
  return { record: JSON.parse(readFileSync(join(pipeline.out, 'run.json'), 'utf8')) as Recorded, files: lastingFilesIn(pipeline.out) };
}

const printedIn = (files: ReadonlyMap<string, Buffer>): ReadonlyMap<string, Buffer> =>
  new Map([...files].filter(([name]) => /^(?:print|lists)\//.test(name)));

function expectSame(files: ReadonlyMap<string, Buffer>, wanted: ReadonlyMap<string, Buffer>): void {
  expect([...files.keys()]).toEqual([...wanted.keys()]);
  const differing = [...files].filter(([name, bytes]) => !bytes.equals(wanted.get(name) ?? Buffer.alloc(0))).map(([name]) => name);
  expect(differing).toEqual([]);
}

/** The same inbox, asked for in another way: one worker, the patterns of files and orders in another order. */
function askedOtherwise(pipeline: Pipeline, out: string): Pipeline {
  const channels = pipeline.channels.map((channel) => ({
    ...channel,
    files: channel.files.toReversed(),
    orders: (channel.orders ?? []).flatMap((each) => ['2*', '*'].map((end) => each.replace(/\*$/, end))),
  }));
  return { ...pipeline, out, jobs: 1, channels };
}

/** A plain order: none of those that were planted, alone in its one parcel. */
function plainOrder(day: RunDay): RunOrder {
  const touched = new Set(day.planted.map(({ order }) => order));
  const [plain] = day.labels
    .toReversed()
    .flatMap(({ orders, ends }) => (orders.length === 1 && ends === 'ready' && !touched.has(orders[0]?.number ?? '') ? orders : []));
  if (!plain) throw new Error('no plain order');
  return plain;
}

/** The order numbers that can be read on the page behind each page of the stack, sorted. */
async function numbersBehind(stack: Uint8Array): Promise<readonly (readonly string[])[]> {
  const source = await openPdf(stack);
  if ('refused' in source) throw new Error(source.refused.code);
  try {
    return Array.from({ length: source.pageCount }, (_, at) => {
      const words = at + 2 > source.pageCount ? [] : source.page(at + 2).words();
      return [...new Set(words.flatMap(({ text }) => /[A-Z]{3}-1\d{4}/.exec(text) ?? []))].sort();
    });
  } finally {
    source.close();
  }
}

let endWorker: () => Promise<unknown>;
beforeAll(() => void (endWorker = lastingWorker()));
afterAll(() => endWorker());

describe.each(Array.from({ length: 12 }, (_, at) => at + 1))('a small day as documents, seed %i', (seed) => {
  it('ends as it was planted: each fault found and no other, all adds up, each label before its slip', { timeout: 300_000 }, async () => {
    const { day, folder, files, pipeline } = await written(seed);
    expect(day.orders.length).toBeGreaterThanOrEqual(3);
    expect(day.orders.length).toBeLessThanOrEqual(8);
    const { record, files: made } = await ran({ ...pipeline, jobs: 1 }, RELAY);
    const told = toldBy(record, folder);
    expect(told).toEqual(planted(day, files, told));

    const { orders, ...places } = record.orders.sums;
    expect(Object.values(places).reduce((sum, each) => sum + each, 0)).toBe(orders);
    expect(record.orders.each.length).toBe(orders);
    const parcels = expectedParcels(files, day.stackOrder);
    const roles = parcels.flatMap((parcel) =>
      parcel.pages.map((role) => ({ role, own: parcel.orders.map(({ number }) => number).sort() })),
    );
    const stack = made.get(record.stacks[0]?.file ?? '');
    const behind = stack ? await numbersBehind(stack) : [];
    expect(behind.length).toBe(roles.length);
    for (const [at, { role, own }] of roles.entries()) if (role === 'label') expect(behind[at]).toEqual(own);
  });
});

describe.each([18, 19])('a small day, seed %i', (seed) => {
  it('ends the same way however it is asked for', { timeout: 300_000 }, async () => {
    const { day, folder, files, pipeline } = await written(seed);
    const once = await ran(pipeline);
    const told = toldBy(once.record, folder);
    expect(told).toEqual(planted(day, files, told));

    // Rows that stand again at the end of a file would be rows of one block behind the last order.
    const shuffled = new Random(seed).shuffled(day.orders);
    const twice = shuffled.filter(({ again, more }) => again ?? more);
    writeExports(folder, [...twice, ...shuffled.filter((order) => !twice.includes(order))]);
    const otherwise = await ran(askedOtherwise(pipeline, join(folder, 'out 2')), RELAY);
    expectSame(printedIn(otherwise.files), printedIn(once.files));

    writeExports(folder, day.orders);
    const again = await ran({ ...pipeline, jobs: 1 }, RELAY);
    expectSame(again.files, once.files);

    const out = plainOrder(day);
    writeExports(
      folder,
      day.orders.filter((order) => order !== out),
    );
    const without = toldBy((await ran({ ...pipeline, jobs: 1 }, RELAY)).record, folder);
    const own = expectedParcels(files, day.stackOrder).filter(({ orders }) => orders.includes(out));
    expect(own.length).toBe(1);
    const gone = new Set(own.flatMap(({ codes }) => codes.map((each) => each.join())));
    expect(without.labels).toEqual(told.labels.filter((codes) => !gone.has(codes.join())));
    expect(without.places).toEqual(told.places.filter((each) => !each.startsWith(`${out.number} `)));
  });
});
