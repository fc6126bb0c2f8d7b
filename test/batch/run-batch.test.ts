import { mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { RunRecord } from '../../src/batch/run-record.js';
import type { Pipeline } from '../../src/config/pipeline.js';
import { acquireLock, LOCK_NAME } from '../../src/files/lock.js';
import { filesIn, lastingFilesIn, NUMBER, pipelineOf, run, tell, temporaryFolder, TWO_UP, write } from './inbox.js';

const LABEL = { role: 'label', parcel: 1 };
const SLIP = { role: 'slip', parcel: 1 };
const HELD_SLIP = { ...SLIP, state: 'held' };

/** Two channels, one of them two-up, with a held parcel, a duplicate, a page without a label and a spreadsheet. */
function studio(): { folder: string; pipeline: Pipeline } {
  const folder = temporaryFolder();
  for (let n = 1; n <= 12; n += 1) tell(join(folder, `north/order ${n}.pdf`), [LABEL, SLIP], { delay: (13 - n) * 5, mark: `n${n}` });
  tell(join(folder, 'north/order 3b.pdf'), [LABEL, HELD_SLIP]);
  tell(join(folder, 'south/all.pdf'), [{ role: 'label' }, { role: 'page', state: 'skipped' }, { role: 'label' }]);
  tell(join(folder, 'south/loose slip.pdf'), [{ role: 'slip' }]);
  tell(join(folder, 'south/again.pdf'), [LABEL, HELD_SLIP]);
  write(join(folder, 'south/orders.pdf'), 'order;name\n1;a\n');
  return { folder, pipeline: pipelineOf(folder, { north: [NUMBER], south: [NUMBER, TWO_UP] }) };
}

function recordIn(folder: string): RunRecord {
  return JSON.parse(readFileSync(join(folder, 'out/run.json'), 'utf8')) as RunRecord;
}

describe('a run', () => {
  it('makes stacks, keeps what is held with its picture and reason, and accounts for everything', async () => {
    const { folder, pipeline } = studio();
    const { end } = await run(pipeline);
    expect(end.kind).toBe('finished');
    const record = recordIn(folder);
    expect(end).toEqual({ kind: 'finished', record });
    expect(record.account).toMatchObject({
      documents: { taken: 17, read: 15, failed: 1, skipped: 1 },
      pages: { source: 30, withItems: 30 },
      items: { given: 32, ready: 26, held: 3, skipped: 2, failed: 1 },
      output: { readyItems: 26, stackPages: 26 },
    });
    expect(record.stacks).toMatchObject([
      { file: 'print/stack-4x6in.pdf', parcels: 12, pages: 24, sheets: 24 },
      { file: 'print/stack-letter-1x2.pdf', parcels: 2, pages: 2, sheets: 1 },
    ]);
    expect([...filesIn(join(folder, 'out')).keys()]).toEqual([
      'held/001-north-order-3b.pdf-p1.json',
      'held/001-north-order-3b.pdf-p1.png',
      'held/002-north-order-3b.pdf-p2.json',
      'held/002-north-order-3b.pdf-p2.png',
      'held/003-south-loose-slip.pdf-p1.json',
      'held/003-south-loose-slip.pdf-p1.png',
      'log.jsonl',
      'print/stack-4x6in.pdf',
      'print/stack-letter-1x2.pdf',
      'run.json',
      'times.json',
    ]);
    expect(JSON.parse(readFileSync(join(folder, 'out/held/002-north-order-3b.pdf-p2.json'), 'utf8'))).toMatchObject({
      document: 'north/order 3b.pdf',
      channel: 'north',
      page: 2,
      role: 'slip',
      state: 'held',
      picture: '002-north-order-3b.pdf-p2.png',
      reason: { code: 'verify/code-lost', remedy: 'Download it again.' },
    });
  });

  it('keeps the fixed order: channel as listed, names as a person counts them, pages', async () => {
    const { folder, pipeline } = studio();
    await run(pipeline);
    const record = recordIn(folder);
    expect(record.documents.map(({ name }) => name).slice(0, 5)).toEqual([
      'north/order 1.pdf',
      'north/order 2.pdf',
      'north/order 3.pdf',
      'north/order 3b.pdf',
      'north/order 4.pdf',
    ]);
    const printed = record.documents.flatMap(({ items }) => items.flatMap(({ printed: place }) => (place ? [place] : [])));
    expect(printed.map(({ number }) => number)).toEqual([...Array.from({ length: 12 }, (_, n) => [n + 1, n + 1]).flat(), 13, 14]);
    expect(printed.slice(0, 3).map(({ page }) => page)).toEqual([1, 2, 3]);
  });

  it('gives the same bytes for 1, 2 and 8 jobs', async () => {
    const { folder, pipeline } = studio();
    const outputs = [];
    for (const jobs of [1, 2, 8]) {
      const out = join(folder, `out-${jobs}`);
      expect((await run({ ...pipeline, jobs, out })).end.kind).toBe('finished');
      outputs.push(lastingFilesIn(out));
    }
    expect(outputs[1]).toEqual(outputs[0]);
    expect(outputs[2]).toEqual(outputs[0]);
  });

  it('gives the same bytes for any order of the files that are named', async () => {
    const { folder } = studio();
    const names = Array.from({ length: 12 }, (_, n) => `north/order ${n + 1}.pdf`);
    const outputs = [];
    for (const files of [names, names.toReversed(), [...names.slice(5), ...names.slice(0, 5)]]) {
      const pipeline = pipelineOf(folder, { north: [NUMBER] }, { file: undefined, out: join(folder, `out-${outputs.length}`) });
      const [channel] = pipeline.channels;
      if (!channel) throw new Error('no channel');
      await run({ ...pipeline, channels: [{ ...channel, files }] });
      outputs.push(lastingFilesIn(pipeline.out));
    }
    expect(outputs[0]?.size).toBe(2);
    expect(outputs[1]).toEqual(outputs[0]);
    expect(outputs[2]).toEqual(outputs[0]);
  });

  it('leaves exactly its own files where another run was before, and those of the user', async () => {
    const { folder, pipeline } = studio();
    await run(pipeline);
    writeFileSync(join(folder, 'out/print/my notes.txt'), 'mine');
    const fewer = pipelineOf(folder, { south: [NUMBER, TWO_UP] });
    await run(fewer);
    const files = filesIn(join(folder, 'out'));
    expect([...files.keys()].filter((name) => /^(?:print|held)/.test(name))).toEqual([
      'held/001-south-again.pdf-p1.json',
      'held/001-south-again.pdf-p1.png',
      'held/002-south-again.pdf-p2.json',
      'held/002-south-again.pdf-p2.png',
      'held/003-south-loose-slip.pdf-p1.json',
      'held/003-south-loose-slip.pdf-p1.png',
      'print/my notes.txt',
      'print/stack-letter-1x2.pdf',
    ]);
  });

  it('touches nothing in a dry run, and comes to the same result', async () => {
    const { folder, pipeline } = studio();
    const dry = await run(pipeline, { dryRun: true });
    expect([...filesIn(folder).keys()].filter((name) => name.startsWith('out'))).toEqual([]);
    expect(dry.end).toEqual((await run(pipeline)).end);
  });

  it('does nothing while another run is using the output folder', async () => {
    const { folder, pipeline } = studio();
    await run(pipeline);
    const before = filesIn(join(folder, 'out'));
    const locked = await acquireLock(pipeline.out);
    if (!locked.ok) throw new Error(locked.reason.message);
    const { end } = await run(pipeline);
    await locked.lock.release();
    expect(end).toMatchObject({ kind: 'cannot-go-on', reason: { code: 'files/locked' } });
    expect(end).not.toHaveProperty('left');
    expect(filesIn(join(folder, 'out'))).toEqual(before);
  });

  it('finishes what is in work when it is told to stop, writes nothing, and leaves the outputs of the run before', async () => {
    const { folder, pipeline } = studio();
    await run(pipeline);
    const before = lastingFilesIn(join(folder, 'out'));
    tell(join(folder, 'north/order 13.pdf'), [LABEL]);
    const stop = new AbortController();
    const { end } = await run(pipeline, {
      stop: stop.signal,
      emit: (event) => event.type === 'document' && event.done === 3 && stop.abort(),
    });
    expect(end).toMatchObject({ kind: 'stopped', of: 18 });
    expect(lastingFilesIn(join(folder, 'out'))).toEqual(before);
    expect((await run(pipeline)).end.kind).toBe('finished');
  });

  it('tells what fails beside its results, and keeps them', async () => {
    const { folder, pipeline } = studio();
    for (const name of ['times.json', 'log.jsonl']) mkdirSync(join(folder, 'out', name, 'x'), { recursive: true });
    const lock = join(folder, 'out', LOCK_NAME);
    const inTheWay = (): void => {
      rmSync(lock);
      mkdirSync(lock);
    };
    const { end, events } = await run(pipeline, { emit: (event) => event.type === 'stacking' && inTheWay() });
    expect(end.kind).toBe('finished');
    expect(recordIn(folder).stacks).toHaveLength(2);
    const told = events.flatMap((event) => (event.type === 'diagnostic' ? [event.diagnostic] : []));
    expect(told.map(({ severity, code, message }) => `${severity} ${code} ${/times|log|lock/.exec(message)?.[0] ?? ''}`)).toEqual([
      'warning files/is-folder times',
      'warning files/is-folder log',
      'warning files/is-folder lock',
    ]);
  });

  it('says when there is nothing to do', async () => {
    const folder = temporaryFolder();
    mkdirSync(join(folder, 'north'));
    const { end } = await run(pipelineOf(folder, { north: [] }));
    expect(end).toMatchObject({ kind: 'finished', record: { stacks: [], documents: [], account: { documents: { taken: 0 } } } });
  });

  it.each([['nroth/1.pdf'], ['nroth/*.pdf'], ['north/more/**/*.pdf'], ['!north/1.pdf']])(
    'leaves the outputs of the run before when %s finds nothing',
    async (misspelt) => {
      const folder = temporaryFolder();
      tell(join(folder, 'north/1.pdf'), [{ role: 'label', parcel: 1 }]);
      const pipeline = pipelineOf(folder, { north: [] });
      await run(pipeline);
      const before = lastingFilesIn(pipeline.out);
      const [channel] = pipeline.channels;
      if (!channel) throw new Error('no channel');
      const { end } = await run({ ...pipeline, channels: [{ ...channel, files: [misspelt] }] });
      expect(end).toMatchObject({
        kind: 'cannot-go-on',
        reason: { code: misspelt.startsWith('!') ? 'intake/nothing-named' : 'intake/no-file' },
        left: 'as-it-was',
      });
      expect(lastingFilesIn(pipeline.out)).toEqual(before);
    },
  );

  it('keeps pressed pages in a scratch file when they are many, and removes it', async () => {
    const folder = temporaryFolder();
    for (let n = 0; n < 20; n += 1)
      tell(join(folder, `north/${n}.pdf`), [{ role: 'label' }, { state: 'held' }], { padding: 5_000, mark: `${n}` });
    const pipeline = pipelineOf(folder, { north: [] });
    const undisturbed = { ...pipeline, out: join(folder, 'undisturbed') };
    await run(undisturbed);
    let most = 0;
    const watch = (): void => void (most = Math.max(most, ...[...filesIn(pipeline.out)].map(([, bytes]) => bytes.byteLength)));
    const { end } = await run(pipeline, { memoryForPages: 20_000, emit: (event) => event.type === 'stacking' && watch() });
    expect(end.kind).toBe('finished');
    expect(most).toBeGreaterThan(50_000);
    expect(lastingFilesIn(pipeline.out)).toEqual(lastingFilesIn(undisturbed.out));
  });
});
