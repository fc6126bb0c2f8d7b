import { dirname, join } from 'node:path';
import { disk as realDisk, type Disk, type OpenFile } from './disk.js';
import { errnoOf, fileFailure, type FileResult } from './failure.js';
import { temporaryName } from './temporary-name.js';

/** Systems without a way to flush a folder answer with one of these; the rename itself has happened. */
const NO_FOLDER_SYNC: ReadonlySet<string | undefined> = new Set(['EISDIR', 'EINVAL', 'EPERM', 'EACCES', 'ENOTSUP', 'EBADF']);

/**
 * Writes a whole file or nothing: under a temporary name in the same folder, length checked, flushed, closed, renamed,
 * folder flushed. A file that was there before stays whole until the rename and is then replaced. The folder must exist.
 *
 * A failure of the disk comes back as a reason and leaves no temporary file, as far as the disk still allows; a killed
 * process may leave one, which `removeLeftovers` clears away.
 */
export async function writeAtomically(path: string, data: Uint8Array | string, disk: Disk = realDisk): Promise<FileResult> {
  const folder = dirname(path);
  const temporary = join(folder, temporaryName());
  try {
    await writeNew(temporary, data, disk);
    await disk.rename(temporary, path);
  } catch (error) {
    await removeQuietly(temporary, disk);
    return fileFailure(error, `cannot write ${path}`);
  }
  return flushFolder(path, disk);
}

/** Flushes the folder of a file that has just got its name. */
export async function flushFolder(path: string, disk: Disk): Promise<FileResult> {
  try {
    await disk.syncFolder(dirname(path));
  } catch (error) {
    if (!NO_FOLDER_SYNC.has(errnoOf(error))) return fileFailure(error, `cannot flush the folder of ${path}`);
  }
  return { ok: true };
}

/** Creates a file that must not exist yet, writes, checks its length, flushes and closes it. Throws the errors of the disk. */
export async function writeNew(path: string, data: Uint8Array | string, disk: Disk): Promise<void> {
  const file = await disk.create(path);
  try {
    await file.writeFile(data);
    await checkLength(file, path, typeof data === 'string' ? Buffer.byteLength(data) : data.byteLength);
    await file.sync();
  } catch (error) {
    await closeQuietly(file);
    throw error;
  }
  await file.close();
}

/** Throws when not all has arrived: some network disks report a full disk only by a short file. */
export async function checkLength(file: OpenFile, path: string, expected: number): Promise<void> {
  const { size } = await file.stat();
  if (size === expected) return;
  throw Object.assign(new Error(`${size} of ${expected} bytes arrived`), { code: 'ENOSPC', syscall: 'write', path });
}

/** The first error is the one to tell; what fails while clearing up after it adds nothing. */
export async function removeQuietly(path: string, disk: Disk): Promise<void> {
  try {
    await disk.remove(path);
  } catch (error) {
    if (errnoOf(error) === undefined) throw error;
  }
}

export async function closeQuietly(file: OpenFile): Promise<void> {
  try {
    await file.close();
  } catch (error) {
    if (errnoOf(error) === undefined) throw error;
  }
}
