import type { Disk } from '../../src/files/disk.js';
import { disk } from '../../src/files/disk.js';

/** An error as the operating system reports it. */
export const systemError = (code: string): Error => Object.assign(new Error(code), { code, syscall: 'test' });

/** The real disk, of which the `nth` request (from 1) fails with `code`: once, or from then on. Counts the requests made. */
export function failingDisk(nth: number, code: string, forGood: boolean): { disk: Disk; requests: () => number } {
  let count = 0;
  const gate = (): void => {
    count += 1;
    if (count === nth || (forGood && count > nth)) throw systemError(code);
  };
  const gated =
    <A extends unknown[], R>(act: (...args: A) => Promise<R>) =>
    async (...args: A): Promise<R> => {
      gate();
      return act(...args);
    };
  const failing: Disk = {
    rename: gated(disk.rename),
    link: gated(disk.link),
    remove: gated(disk.remove),
    makeFolder: gated(disk.makeFolder),
    readText: gated(disk.readText),
    modified: gated(disk.modified),
    list: gated(disk.list),
    syncFolder: gated(disk.syncFolder),
    create: async (path) => {
      gate();
      const file = await disk.create(path);
      return {
        writeFile: gated((data: Uint8Array | string) => file.writeFile(data)),
        stat: gated(() => file.stat()),
        sync: gated(() => file.sync()),
        // The handle is closed in any case, as a failing close(2) does.
        close: async () => {
          await file.close();
          gate();
        },
      };
    },
  };
  return { disk: failing, requests: () => count };
}
