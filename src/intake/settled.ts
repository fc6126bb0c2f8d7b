import { stat } from 'node:fs/promises';
import type { Stats } from 'node:fs';
import { errnoOf } from '../files/failure.js';

/** A file changed less than this long ago (ms) may still be being written. */
const YOUNG = 2_000;
/** How long a file that was changed just now is watched for further changes, ms. */
export const SETTLE_WAIT = 300;

/** What tells one state of a file from the next. */
export interface FileState {
  readonly size: number;
  readonly modified: number;
  readonly isFile: boolean;
}

const stateOf = (stats: Stats): FileState => ({ size: stats.size, modified: stats.mtimeMs, isFile: stats.isFile() });

export const sameState = (a: FileState, b: FileState): boolean => a.size === b.size && a.modified === b.modified;

/** How a file stands now, or the system's error for it, as data. */
export async function fileState(path: string): Promise<FileState | { readonly error: Error }> {
  try {
    return stateOf(await stat(path));
  } catch (error) {
    if (error instanceof Error && errnoOf(error) !== undefined) return { error };
    throw error;
  }
}

/**
 * How each file stands, and `moving` for one that changed during a short wait. The wait happens once for all files together
 * and only when one of them is young, so that last night's files cost nothing.
 *
 * @param wait in ms.
 */
export async function settledStates(
  paths: readonly string[],
  wait: number,
): Promise<ReadonlyMap<string, FileState | 'moving' | { readonly error: Error }>> {
  const states = new Map<string, FileState | 'moving' | { readonly error: Error }>();
  const young: [string, FileState][] = [];
  for (const path of paths) {
    const state = await fileState(path);
    states.set(path, state);
    if (!('error' in state) && state.isFile && Date.now() - state.modified < YOUNG) young.push([path, state]);
  }
  if (young.length === 0) return states;
  await new Promise((done) => setTimeout(done, wait));
  for (const [path, before] of young) {
    const now = await fileState(path);
    states.set(path, 'error' in now || sameState(before, now) ? now : 'moving');
  }
  return states;
}

/** Some browsers hold a name with an empty file while the content still comes in beside it. */
export async function hasUnfinishedTwin(path: string): Promise<boolean> {
  for (const ending of ['.part', '.crdownload']) if (!('error' in (await fileState(path + ending)))) return true;
  return false;
}
