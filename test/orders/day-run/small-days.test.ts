import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { loadPipeline } from '../../../src/config/load-pipeline.js';
import type { Pipeline } from '../../../src/config/pipeline.js';
import { lastingFilesIn, run, temporaryFolder } from '../../batch/inbox.js';
import { Random } from '../day/random.js';
import { expectedParcels } from './expected.js';
import type { DayFile } from './files.js';
import { smallDay } from './generate.js';
import { writeDay, writeExports } from './inbox.js';
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

/** Runs it with the real workers; what is in the output folder, without what differs from run to run. */
async function ran(pipeline: Pipeline): Promise<{ readonly record: Recorded; readonly files: ReadonlyMap<string, Buffer> }> {
  const { end } = await run(pipeline, { worker: {}, today: DAY });
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

describe.each([12, 14])('a small day as documents, seed %i', (seed) => {
  it('ends as it was planted, and the same way however it is asked for', { timeout: 300_000 }, async () => {
    const { day, folder, files, pipeline } = await written(seed);
    const once = await ran(pipeline);
    const told = toldBy(once.record, folder);
    expect(told).toEqual(planted(day, files, told));

    // Rows that stand again at the end of a file would be rows of one block behind the last order.
    const shuffled = new Random(seed).shuffled(day.orders);
    const twice = shuffled.filter(({ again, more }) => again ?? more);
    writeExports(folder, [...twice, ...shuffled.filter((order) => !twice.includes(order))]);
    const otherwise = await ran(askedOtherwise(pipeline, join(folder, 'out 2')));
    expectSame(printedIn(otherwise.files), printedIn(once.files));

    writeExports(folder, day.orders);
    const again = await ran({ ...pipeline, jobs: 1 });
    expectSame(again.files, once.files);

    const out = plainOrder(day);
    writeExports(
      folder,
      day.orders.filter((order) => order !== out),
    );
    const without = toldBy((await ran({ ...pipeline, jobs: 1 })).record, folder);
    const own = expectedParcels(files).filter(({ orders }) => orders.includes(out));
    expect(own.length).toBe(1);
    const gone = new Set(own.flatMap(({ codes }) => codes.map((each) => each.join())));
    expect(without.labels).toEqual(told.labels.filter((codes) => !gone.has(codes.join())));
    expect(without.places).toEqual(told.places.filter((each) => !each.startsWith(`${out.number} `)));
  });
});
