import { mkdirSync, utimesSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import type { Diagnostic } from '../../src/diagnostics/diagnostic.js';
import { findWork, type FindOptions } from '../../src/intake/find-work.js';
import type { Intake } from '../../src/intake/work.js';
import { temporaryFolder } from '../files/temp-folder.js';

/** A folder with last night's files, by name below it. */
export function inbox(files: Readonly<Record<string, Uint8Array | string>>): string {
  const folder = temporaryFolder();
  for (const [name, data] of Object.entries(files)) addFile(folder, name, data);
  return folder;
}

export function addFile(folder: string, name: string, data: Uint8Array | string): void {
  const path = join(folder, name);
  mkdirSync(dirname(path), { recursive: true });
  writeFileSync(path, data);
  utimesSync(path, 1_700_000_000, 1_700_000_000);
}

const RECIPE = { name: 'any-page', about: '', steps: [] };

/** Finds work for channels given as name and patterns; the output folder is `out`. */
export async function find(
  folder: string,
  channels: Readonly<Record<string, readonly string[]>>,
  options: FindOptions & { readonly out?: string } = {},
): Promise<{ intake: Intake; diagnostics: readonly Diagnostic[] }> {
  const { out = join(folder, 'out'), ...rest } = options;
  const list = Object.entries(channels).map(([name, files]) => ({ name, files, recipe: RECIPE }));
  return findWork({ file: join(folder, 'pipeline.yaml'), folder, out, channels: list }, rest);
}

export const names = (intake: Intake): string[] => intake.work.map((item) => item.shownName);

/** Shown name, state and code of what was refused. */
export const refusals = (intake: Intake): string[] =>
  intake.refused.map(({ item, state, reason }) => `${item.shownName}: ${state} ${reason.code}`);

export const codes = (diagnostics: readonly Diagnostic[]): string[] => diagnostics.map(({ severity, code }) => `${severity} ${code}`);
