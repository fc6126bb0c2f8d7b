import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { findOrderFiles, readOrderFile } from '../../src/intake/find-orders.js';
import { findWork } from '../../src/intake/find-work.js';

const folder = mkdtempSync(join(tmpdir(), 'slipyard-orders-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
mkdirSync(join(folder, 'clay'));
for (const name of ['orders 10.csv', 'orders 2.csv', 'label.pdf']) writeFileSync(join(folder, 'clay', name), name);

const recipe = { name: 'clay', about: 'Clay.', steps: [] };
const channel = { name: 'clay', files: ['clay/*'], recipe };
const pipeline = (orders: readonly string[]) => ({
  file: join(folder, 'pipeline.yaml'),
  folder,
  out: join(folder, 'out'),
  channels: [{ ...channel, orders }],
});

describe('order files', () => {
  it('are found in natural order, and are no documents though the channel names its whole folder', async () => {
    const named = pipeline(['clay/orders*.csv']);
    const { files, diagnostics } = await findOrderFiles(named);
    expect(diagnostics).toEqual([]);
    expect(files.map(({ shownName }) => shownName)).toEqual(['clay/orders 2.csv', 'clay/orders 10.csv']);
    const { intake } = await findWork(named, { except: new Set(files.map(({ path }) => path)) });
    const documents = [...intake.work, ...intake.refused.map((each) => each.item)];
    expect(documents.map(({ shownName }) => shownName)).toEqual(['clay/label.pdf']);
  });

  it('that are named and not there are told', async () => {
    const { files, diagnostics } = await findOrderFiles(pipeline(['clay/export.csv']));
    expect(files).toEqual([]);
    expect(diagnostics.map(({ severity }) => severity)).toEqual(['error']);
  });

  it('that went away since are told with their name', async () => {
    const gone = { channel: 0, path: join(folder, 'gone.csv'), shownName: 'gone.csv' };
    const read = await readOrderFile(gone);
    expect('diagnostic' in read && read.diagnostic).toMatchObject({ severity: 'error', place: { kind: 'document', file: 'gone.csv' } });
  });

  it('of a channel without orders there are none', async () => {
    expect(await findOrderFiles({ folder, out: join(folder, 'out'), channels: [channel] })).toEqual({ files: [], diagnostics: [] });
  });
});
