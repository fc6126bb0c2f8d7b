import { mkdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { highWaterKb } from '../../src/batch/peak-memory.js';
import { builtCli, runToEnd } from '../built.js';
import { temporaryFolder } from './inbox.js';

it('takes the high water mark from what Linux tells of a process', () => {
  expect(highWaterKb('Name:\tnode\nVmPeak:\t 1200000 kB\nVmHWM:\t   71680 kB\nVmRSS:\t   60000 kB\n')).toBe(71_680);
  expect(highWaterKb('')).toBeUndefined();
});

it('does not count what the program that started it held', async () => {
  const folder = temporaryFolder();
  mkdirSync(join(folder, 'inbox'));
  const args = [builtCli(), 'run', '--recipe', 'any-page', '--out', 'out', 'inbox/*.pdf'];
  const parent = `const held = Buffer.alloc(450 << 20, 1);
    const { status } = require('node:child_process').spawnSync(process.execPath, ${JSON.stringify(args)});
    process.exit(held.length > 0 ? status : 9);`;
  expect((await runToEnd(process.execPath, ['-e', parent], folder)).code).toBe(0);
  const { peakMemoryMb } = JSON.parse(readFileSync(join(folder, 'out/times.json'), 'utf8')) as { peakMemoryMb: number };
  expect(peakMemoryMb).toBeGreaterThan(30);
  expect(peakMemoryMb).toBeLessThan(400);
});
