import { createHash } from 'node:crypto';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { runBuilt, type Ended } from '../built.js';
import type { DemoFile } from './demo-file.js';
import { differences, EXPECTED_PARCELS, type Recorded } from './expected.js';
import { demoFiles, writeInbox } from './inbox.js';

const folder = mkdtempSync(join(tmpdir(), 'slipyard-demo-'));
const demo = join(folder, 'demo');
let files: readonly DemoFile[] = [];
let ended: Ended;
let record: Recorded;

beforeAll(async () => {
  files = await demoFiles();
  writeInbox(demo, files);
  ended = await runBuilt(['run', '--config', 'pipeline.yaml', '--no-color'], demo);
  record = JSON.parse(readFileSync(join(demo, 'out', 'run.json'), 'utf8')) as Recorded;
}, 120_000);
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const documents = (): DemoFile['documents'] => files.flatMap((each) => each.documents);
/** The record with its first document changed. */
const withFirst = (change: (first: Recorded['documents'][number]) => readonly Recorded['documents'][number][]): Recorded => ({
  ...record,
  documents: record.documents.flatMap((each, index) => (index === 0 ? change(each) : [each])),
});

describe('the demo', () => {
  it('is forty orders of six channels, and what goes wrong on any day: twelve files, eleven kinds', () => {
    const good = documents().filter(({ fault }) => fault === undefined);
    const parcels = good.flatMap(({ ends }) => ends).filter((end) => /^(?:label|return-label) ready$/.test(end));
    expect(parcels.length).toBe(EXPECTED_PARCELS);
    expect(new Set(files.map(({ path }) => path.split('/')[0])).size).toBe(6);
    const planted = documents().filter(({ fault }) => fault !== undefined);
    expect(new Set(planted.flatMap(({ ends }) => ends)).size).toBe(11);
    expect(planted.length).toBe(12);
  });

  it('makes the same downloads each time', { timeout: 60_000 }, async () => {
    const digests = (made: readonly DemoFile[]): string[] =>
      made.map(({ path, bytes }) => `${path} ${createHash('sha256').update(bytes).digest('hex')}`);
    expect(digests(await demoFiles())).toEqual(digests(files));
  });

  it('has a pipeline without mistakes', async () => {
    const { code, stderr } = await runBuilt(['check', '--config', 'pipeline.yaml', '--no-color'], demo);
    expect([code, stderr]).toEqual([0, '']);
  });

  it('ends as it says it should, and with 1 because something is held', () => {
    expect(differences(record, documents())).toEqual([]);
    expect(ended.code).toBe(1);
  });

  it('would tell each kind of difference', () => {
    const tell = (changed: Recorded): string => differences(changed, documents()).join('\n');
    expect(tell(withFirst(() => []))).toMatch(/^inbox\/.+: missing$/);
    expect(tell(withFirst((first) => [first, { ...first, name: 'inbox/other.pdf' }]))).toBe('inbox/other.pdf: not expected');
    expect(tell(withFirst((first) => [{ ...first, items: [] }]))).toMatch(/: nothing instead of page failed reading\/cut-off$/);
    expect(tell({ ...record, stacks: [] })).toBe(
      'stacks: nothing instead of roll 34 parcels, 55 pages on 55 sheets, label-sheets 6 parcels, 6 pages on 4 sheets, office 2 parcels, 3 pages on 3 sheets',
    );

    expect(tell({ ...record, orders: { sums: {}, looseEnds: [] } })).toContain('loose ends: nothing instead of orders/no-label');

    const changed = (role: string, change: (item: Recorded['documents'][number]['items'][number]) => object): Recorded => ({
      ...record,
      documents: record.documents.map((each) => ({
        ...each,
        items: each.items.map((item) => (item.role === role && item.state === 'ready' ? { ...item, ...change(item) } : item)),
      })),
    });
    expect(tell(changed('return-label', () => ({ codes: [] }))).split('\n').length).toBe(2);
    expect(tell(changed('slip', () => ({ printed: { number: 0, page: 0 } }))).split('\n').length).toBe(11);
    expect(tell(changed('customs-form', () => ({ output: 'roll' }))).split('\n').length).toBe(3);
  });
});
