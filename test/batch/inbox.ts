import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, utimesSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, relative } from 'node:path';
import { afterAll } from 'vitest';
import type { RunEvent } from '../../src/batch/events.js';
import { runBatch, type RunEnd, type RunRequest } from '../../src/batch/run-batch.js';
import type { Pipeline } from '../../src/config/pipeline.js';
import { PLAIN_PRINTER } from '../../src/geometry/printer.js';
import type { CompiledStep } from '../../src/config/recipe.js';

const folders: string[] = [];
afterAll(() => {
  for (const folder of folders) rmSync(folder, { recursive: true, force: true });
});

export function temporaryFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), 'slipyard-batch-'));
  folders.push(folder);
  return folder;
}

export interface ToldItem {
  readonly role?: string;
  readonly state?: string;
  readonly parcel?: number;
  /** What it says. */
  readonly lines?: readonly string[];
}

/** Writes a document that tells the plain-press worker what comes of it, as old as last night's. */
export function tell(
  path: string,
  items: readonly ToldItem[],
  more: { delay?: number; padding?: number; mark?: string; pressed?: string } = {},
): void {
  write(path, `%PDF-1.4\n${JSON.stringify({ items, ...more })}\n`);
}

export function write(path: string, text: string | Uint8Array): void {
  mkdirSync(dirname(path), { recursive: true });
  writeFileSync(path, text);
  const lastNight = new Date(Date.now() - 8 * 3600 * 1000);
  utimesSync(path, lastNight, lastNight);
}

const VERIFY: CompiledStep = { name: 'verify', options: { codes: 'required', allow: [], gain: { value: 0.5, unit: 'dots' } } };
export const NUMBER: CompiledStep = { name: 'number', options: { 'on-label-page': true, size: { value: 9, unit: 'pt' } } };
export const TWO_UP: CompiledStep = {
  name: 'impose',
  options: { sheet: 'letter', columns: 1, rows: 2, lying: 'sideways', 'first-free': 1 },
};

/** A pipeline with one channel for each folder of `channels`, all its PDFs. */
export function pipelineOf(
  folder: string,
  channels: Readonly<Record<string, readonly CompiledStep[]>>,
  changes: Partial<Pipeline> = {},
): Pipeline {
  return {
    file: join(folder, 'pipeline.yaml'),
    folder,
    media: '4x6in',
    grid: '203dpi',
    printer: PLAIN_PRINTER,
    outputs: [],
    day: { studio: { name: '', contact: [] }, stackOrder: [], lists: '4x6in' },
    out: join(folder, 'out'),
    jobs: 1,
    channels: Object.entries(channels).map(([name, steps]) => ({
      name,
      files: [`${name}/*.pdf`],
      recipe: { name: 'plain', about: 'A recipe.', steps: [VERIFY, ...steps] },
    })),
    ...changes,
  };
}

export const PLAIN_PRESS = new URL('../faults/workers/plain-press.js', import.meta.url);

export interface Ran {
  readonly end: RunEnd;
  readonly events: readonly RunEvent[];
}

export async function run(pipeline: Pipeline, changes: Partial<RunRequest> = {}): Promise<Ran> {
  const events: RunEvent[] = [];
  const end = await runBatch({
    pipeline,
    dryRun: false,
    today: '2026-11-28',
    stop: new AbortController().signal,
    log: () => '',
    worker: { script: PLAIN_PRESS },
    ...changes,
    emit: (event) => {
      events.push(event);
      changes.emit?.(event);
    },
  });
  return { end, events };
}

/** Every file below `folder` by its path in it. */
export function filesIn(folder: string): Map<string, Buffer> {
  const files = new Map<string, Buffer>();
  for (const entry of readdirSync(folder, { recursive: true, encoding: 'utf8' }).sort()) {
    const path = join(folder, entry);
    if (statSync(path).isFile()) files.set(relative(folder, path).replaceAll('\\', '/'), readFileSync(path));
  }
  return files;
}

/** The same without what may differ from run to run. */
export function lastingFilesIn(folder: string): Map<string, Buffer> {
  const files = filesIn(folder);
  files.delete('times.json');
  files.delete('log.jsonl');
  return files;
}
