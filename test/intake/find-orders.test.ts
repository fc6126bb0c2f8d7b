import { appendFileSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { findOrderFiles, readOrderFile, settledOrders } from '../../src/intake/find-orders.js';
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

  it('a pattern that finds none says that no orders are known', async () => {
    const { diagnostics } = await findOrderFiles(pipeline(['clay/export*.csv']));
    expect(diagnostics.map(({ code, severity, message }) => [code, severity, message])).toEqual([
      ['intake/no-match', 'warning', 'channel clay: no order file matches clay/export*.csv, so no order of it is known'],
    ]);
  });

  it('a hidden file is none, and an unfinished download is one whose orders are missing', async () => {
    mkdirSync(join(folder, 'odd'));
    for (const name of ['._orders.csv', 'orders.csv', 'orders 2.csv.part', '~$orders.csv']) writeFileSync(join(folder, 'odd', name), name);
    const { files, diagnostics } = await findOrderFiles(pipeline(['odd/*']));
    expect(files.map(({ shownName }) => shownName)).toEqual(['odd/orders.csv']);
    const told = diagnostics.map(({ place, severity, code }) => `${place.kind === 'document' ? place.file : ''} ${severity} ${code}`);
    expect(told.sort()).toEqual([
      'odd/._orders.csv note intake/hidden-file',
      'odd/orders 2.csv.part error intake/partial-download',
      'odd/~$orders.csv note intake/temporary-file',
    ]);
  });

  it('that went away since are told with their name', async () => {
    const gone = { channel: 0, path: join(folder, 'gone.csv'), shownName: 'gone.csv' };
    const read = await readOrderFile(gone, await settledOrders([gone]));
    expect('diagnostic' in read && read.diagnostic).toMatchObject({ severity: 'error', place: { kind: 'document', file: 'gone.csv' } });
  });

  describe('that are not whole yet are not read, since what is missing at their end would be missed by nobody', () => {
    const file = { channel: 0, path: join(folder, 'export.csv'), shownName: 'export.csv' };
    const stillWritten = {
      diagnostic: { code: 'intake/still-written', severity: 'error', place: { kind: 'document', file: 'export.csv' } },
    };

    it('one that grows while it is watched', async () => {
      writeFileSync(file.path, 'Order\nA-1\n');
      const states = settledOrders([file], 200);
      setTimeout(() => appendFileSync(file.path, 'A-2\n'), 60);
      expect(await readOrderFile(file, await states)).toMatchObject(stillWritten);
    });

    it('one that grew after it was watched', async () => {
      writeFileSync(file.path, 'Order\nA-1\n');
      const states = await settledOrders([file], 1);
      appendFileSync(file.path, 'A-2\n');
      expect(await readOrderFile(file, states)).toMatchObject(stillWritten);
    });

    it('an empty one whose content a browser still puts beside it', async () => {
      writeFileSync(file.path, '');
      writeFileSync(`${file.path}.part`, 'Order\n');
      expect(await readOrderFile(file, await settledOrders([file], 1))).toMatchObject(stillWritten);
    });
  });

  it('that are whole are read, however young', async () => {
    const file = { channel: 0, path: join(folder, 'whole.csv'), shownName: 'whole.csv' };
    writeFileSync(file.path, 'Order\nA-1\n');
    const read = await readOrderFile(file, await settledOrders([file], 1));
    expect('bytes' in read && Buffer.from(read.bytes).toString()).toBe('Order\nA-1\n');
  });

  it('of a channel without orders there are none', async () => {
    expect(await findOrderFiles({ folder, out: join(folder, 'out'), channels: [channel] })).toEqual({ files: [], diagnostics: [] });
  });
});
