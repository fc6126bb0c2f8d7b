import { join } from 'node:path';
import { disk as realDisk, type Disk } from './disk.js';
import { errnoOf, type FileFailure, fileFailure, type FileResult } from './failure.js';
import { isTemporaryName } from './temporary-name.js';

/** Makes a folder and those above it; one that exists is fine. */
export async function ensureFolder(folder: string, disk: Disk = realDisk): Promise<FileResult> {
  try {
    await disk.makeFolder(folder);
    return { ok: true };
  } catch (error) {
    const errno = errnoOf(error);
    if (errno === 'EEXIST') return { ok: false, reason: fileInTheWay(folder, 'its name') };
    if (errno === 'ENOTDIR') return { ok: false, reason: fileInTheWay(folder, 'the name of a folder above it') };
    return fileFailure(error, `cannot make the folder ${folder}`);
  }
}

const fileInTheWay = (folder: string, name: string): FileFailure => ({
  code: 'files/is-file',
  message: `cannot make the folder ${folder}: a file has ${name}`,
  remedy: 'Rename or move that file, or name another folder, then run again.',
});

/** Names of the files in a folder, sorted by code unit; hidden ones too, temporary ones not. A missing folder has none. */
export async function listFiles(folder: string, disk: Disk = realDisk): Promise<FileResult<{ readonly names: readonly string[] }>> {
  try {
    const entries = await disk.list(folder);
    const names = entries.filter((each) => each.isFile && !isTemporaryName(each.name)).map((each) => each.name);
    return { ok: true, names: names.sort() };
  } catch (error) {
    if (errnoOf(error) === 'ENOENT') return { ok: true, names: [] };
    return fileFailure(error, `cannot list the folder ${folder}`);
  }
}

/** Removes a file; one that is already gone is fine. */
export async function removeFile(path: string, disk: Disk = realDisk): Promise<FileResult> {
  try {
    await disk.remove(path);
    return { ok: true };
  } catch (error) {
    if (errnoOf(error) === 'ENOENT') return { ok: true };
    return fileFailure(error, `cannot remove ${path}`);
  }
}

/**
 * Removes the temporary files that an interrupted run left in `folder` (not in folders below it), and gives their number.
 * Only for the holder of the folder's lock: a living run's temporary files look the same.
 */
export async function removeLeftovers(folder: string, disk: Disk = realDisk): Promise<FileResult<{ readonly removed: number }>> {
  try {
    const leftovers = (await disk.list(folder)).filter((each) => each.isFile && isTemporaryName(each.name));
    for (const { name } of leftovers) await disk.remove(join(folder, name));
    return { ok: true, removed: leftovers.length };
  } catch (error) {
    if (errnoOf(error) === 'ENOENT') return { ok: true, removed: 0 };
    return fileFailure(error, `cannot clear the folder ${folder}`);
  }
}
