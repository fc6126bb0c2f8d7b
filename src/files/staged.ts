import { dirname, join } from 'node:path';
import { disk as realDisk, type Disk } from './disk.js';
import { errnoOf, fileFailure, type FileResult } from './failure.js';
import { temporaryName } from './temporary-name.js';
import { checkLength, closeQuietly, flushFolder, removeQuietly } from './write-atomically.js';

/** What is written: whole, or in pieces so that it need not be in memory at once. */
export type FileData = Uint8Array | string | AsyncIterable<Uint8Array>;

/** A whole file on the disk that does not have its name yet. */
export interface Staged {
  readonly path: string;
  /** Gives it its name; what had the name before is replaced. */
  commit(): Promise<FileResult>;
  /** Removes it. */
  discard(): Promise<void>;
}

/**
 * Writes a file under a temporary name, flushed and with its length checked: `writeAtomically` in two halves, so that several
 * files can be complete before the first of them replaces another. The folder must exist. What the pieces throw is taken for
 * an error of the disk when it is one, and thrown again otherwise.
 */
export async function stage(path: string, data: FileData, disk: Disk = realDisk): Promise<FileResult<{ readonly staged: Staged }>> {
  const temporary = join(dirname(path), temporaryName());
  try {
    await writePieces(temporary, data, disk);
  } catch (error) {
    await removeQuietly(temporary, disk);
    return fileFailure(error, `cannot write ${path}`);
  }
  const commit = async (): Promise<FileResult> => {
    try {
      await disk.rename(temporary, path);
    } catch (error) {
      await removeQuietly(temporary, disk);
      return fileFailure(error, `cannot write ${path}`);
    }
    return flushFolder(path, disk);
  };
  return { ok: true, staged: { path, commit, discard: () => removeQuietly(temporary, disk) } };
}

async function writePieces(path: string, data: FileData, disk: Disk): Promise<void> {
  const file = await disk.create(path);
  try {
    let length = 0;
    for await (const piece of typeof data === 'string' || data instanceof Uint8Array ? [data] : data) {
      await file.writeFile(piece);
      length += Buffer.byteLength(piece);
    }
    await checkLength(file, path, length);
    await file.sync();
  } catch (error) {
    await closeQuietly(file);
    throw error;
  }
  await file.close();
}

/** Goes through the pieces and drops them: what a dry run does instead of `stage`. */
export async function dropPieces(path: string, data: FileData): Promise<FileResult<{ readonly staged: Staged }>> {
  try {
    if (typeof data !== 'string' && !(data instanceof Uint8Array)) {
      const pieces = data[Symbol.asyncIterator]();
      while (!(await pieces.next()).done);
    }
  } catch (error) {
    if (errnoOf(error) === undefined) throw error;
    return fileFailure(error, `cannot write ${path}`);
  }
  return { ok: true, staged: { path, commit: async () => ({ ok: true }), discard: async () => undefined } };
}
