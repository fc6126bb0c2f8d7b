import { open } from 'node:fs/promises';
import { disk as realDisk, type Disk, type OpenFile } from './disk.js';
import { fileFailure, type FileResult } from './failure.js';

/** Bytes put away for later: in memory, or where they lie in the scratch file. */
export type Kept = Uint8Array | { readonly at: number; readonly length: number };

/**
 * Puts bytes away until the run ends: in memory up to a limit, beyond it in one scratch file that nobody but this run reads.
 * The file is not flushed: after a stop nobody wants it. One `put` at a time is written; callers need not wait for each other.
 */
export class Scratch {
  readonly #path: string | undefined;
  readonly #limit: number;
  readonly #disk: Disk;
  #inMemory = 0;
  #end = 0;
  #file: OpenFile | undefined;
  #last: Promise<unknown> = Promise.resolve();

  /**
   * @param path of the scratch file, which must not exist yet; under a `temporaryName` a killed run's is cleared away by the
   * next. Undefined: everything stays in memory. @param limit bytes kept in memory.
   */
  constructor(path: string | undefined, limit: number, disk: Disk = realDisk) {
    this.#path = path;
    this.#limit = limit;
    this.#disk = disk;
  }

  put(bytes: Uint8Array): Promise<FileResult<{ readonly kept: Kept }>> {
    if (this.#path === undefined || this.#inMemory + bytes.byteLength <= this.#limit) {
      this.#inMemory += bytes.byteLength;
      return Promise.resolve({ ok: true, kept: bytes });
    }
    const path = this.#path;
    const written = this.#last.then(() => this.#append(path, bytes));
    this.#last = written;
    return written;
  }

  /** Gives back what was put. Throws the errors of the disk: it is read while something else is being written. */
  async get(kept: Kept): Promise<Uint8Array> {
    if (kept instanceof Uint8Array) return kept;
    const file = await open(this.#path ?? '', 'r');
    try {
      const bytes = new Uint8Array(kept.length);
      let filled = 0;
      while (filled < kept.length) {
        const { bytesRead } = await file.read(bytes, filled, kept.length - filled, kept.at + filled);
        if (bytesRead === 0) throw Object.assign(new Error('the scratch file is short'), { code: 'EIO', syscall: 'read' });
        filled += bytesRead;
      }
      return bytes;
    } finally {
      await file.close();
    }
  }

  /** Closes the scratch file and removes it, as far as there is one. */
  async remove(): Promise<FileResult> {
    await this.#last;
    if (!this.#file || this.#path === undefined) return { ok: true };
    const file = this.#file;
    this.#file = undefined;
    try {
      await file.close();
      await this.#disk.remove(this.#path);
      return { ok: true };
    } catch (error) {
      return fileFailure(error, `cannot remove ${this.#path}`);
    }
  }

  async #append(path: string, bytes: Uint8Array): Promise<FileResult<{ readonly kept: Kept }>> {
    try {
      this.#file ??= await this.#disk.create(path);
      await this.#file.writeFile(bytes);
      const kept = { at: this.#end, length: bytes.byteLength };
      this.#end += bytes.byteLength;
      return { ok: true, kept };
    } catch (error) {
      return fileFailure(error, `cannot write ${path}`);
    }
  }
}
