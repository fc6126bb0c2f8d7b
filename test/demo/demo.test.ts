import { createHash } from 'node:crypto';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { runBuilt } from '../built.js';
import { differences, EXPECTED, outcomeOf } from './expected.js';
import { demoFiles, writeInbox } from './inbox.js';

const folder = mkdtempSync(join(tmpdir(), 'slipyard-demo-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe('the demo', () => {
  it('makes the same downloads each time', async () => {
    const digest = async (): Promise<string[]> =>
      (await demoFiles()).map(({ path, bytes }) => `${path} ${createHash('sha256').update(bytes).digest('hex')}`);
    expect(await digest()).toEqual(await digest());
  });

  it('ends as it says it should, and exits 1 because faults were planted', async () => {
    await writeInbox(join(folder, 'demo'));
    const { code, stderr } = await runBuilt(['run', '--config', 'pipeline.yaml', '--no-color'], join(folder, 'demo'));
    expect(stderr).not.toContain('error');
    expect(code).toBe(1);
    const record: unknown = JSON.parse(readFileSync(join(folder, 'demo', 'out', 'run.json'), 'utf8'));
    expect(differences(outcomeOf(record))).toEqual([]);
  });

  it('would tell a missing label and an unexpected fault', () => {
    const made = { ready: { ...EXPECTED.ready, label: 37 }, reasons: { ...EXPECTED.reasons, 'scale/too-large': 1 } };
    expect(differences(made)).toEqual(['label: 37 instead of 38', 'scale/too-large: 1 instead of 0']);
  });
});
