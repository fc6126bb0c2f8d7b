import { ensureFolder, removeFile } from './folder.js';
import { dropPieces, type FileData, stage, type Staged } from './staged.js';
import { writeAtomically } from './write-atomically.js';
import type { FileResult } from './failure.js';

/** What a run changes on the disk; a dry run takes the same path with a writer that drops everything. */
export interface Writer {
  ensureFolder(folder: string): Promise<FileResult>;
  /** Writes the whole file or nothing (see `writeAtomically`). */
  write(path: string, data: Uint8Array | string): Promise<FileResult>;
  /** Writes a whole file that gets its name later (see `stage`). */
  stage(path: string, data: FileData): Promise<FileResult<{ readonly staged: Staged }>>;
  remove(path: string): Promise<FileResult>;
}

export const diskWriter: Writer = {
  ensureFolder: (folder) => ensureFolder(folder),
  write: (path, data) => writeAtomically(path, data),
  stage: (path, data) => stage(path, data),
  remove: (path) => removeFile(path),
};

const nothing = async (): Promise<FileResult> => ({ ok: true });

/** Drops everything and always succeeds. */
export const dryWriter: Writer = { ensureFolder: nothing, write: nothing, stage: dropPieces, remove: nothing };
