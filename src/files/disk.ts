import { link, mkdir, open, readFile, readdir, rename, stat, unlink } from 'node:fs/promises';

/** An open file that is being written. */
export interface OpenFile {
  writeFile(data: Uint8Array | string): Promise<void>;
  stat(): Promise<{ readonly size: number }>;
  sync(): Promise<void>;
  close(): Promise<void>;
}

/**
 * Everything this folder asks of the operating system, one function a request, so that a test can let the Nth one fail.
 * All throw the errors of `node:fs`.
 */
export interface Disk {
  /** Creates a file that must not exist yet. */
  readonly create: (path: string) => Promise<OpenFile>;
  readonly rename: (from: string, to: string) => Promise<void>;
  /** Gives a file a second name that must not exist yet. */
  readonly link: (from: string, to: string) => Promise<void>;
  readonly remove: (path: string) => Promise<void>;
  readonly makeFolder: (path: string) => Promise<void>;
  readonly readText: (path: string) => Promise<string>;
  readonly modified: (path: string) => Promise<number>;
  readonly list: (folder: string) => Promise<readonly { readonly name: string; readonly isFile: boolean }[]>;
  /** Flushes a folder's own entries, so that a rename survives a loss of power. */
  readonly syncFolder: (folder: string) => Promise<void>;
}

export const disk: Disk = {
  create: (path) => open(path, 'wx'),
  rename,
  link,
  remove: unlink,
  makeFolder: async (path) => {
    await mkdir(path, { recursive: true });
  },
  readText: (path) => readFile(path, 'utf8'),
  modified: async (path) => (await stat(path)).mtimeMs,
  list: async (folder) => (await readdir(folder, { withFileTypes: true })).map((each) => ({ name: each.name, isFile: each.isFile() })),
  syncFolder: async (folder) => {
    const handle = await open(folder, 'r');
    try {
      await handle.sync();
    } finally {
      await handle.close();
    }
  },
};
