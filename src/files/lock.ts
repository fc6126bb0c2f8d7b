import { randomUUID } from 'node:crypto';
import { hostname } from 'node:os';
import { join } from 'node:path';
import { disk as realDisk, type Disk } from './disk.js';
import { errnoOf, fileFailure, type FileResult } from './failure.js';
import { isAlive, processMark } from './process-mark.js';
import { temporaryName } from './temporary-name.js';
import { removeQuietly, writeNew } from './write-atomically.js';

/** The lock file's name in the folder that it guards. */
export const LOCK_NAME = '.slipyard-lock';
/** A lock file that can't be read as one is somebody's half-written one for this long (ms), and debris afterwards. */
const UNREADABLE_GRACE = 10_000;
const ATTEMPTS = 20;
const PAUSE = 25;

/** What a lock file says of its holder. */
interface Holder {
  readonly pid: number;
  readonly host: string;
  /** ISO 8601, UTC. */
  readonly started: string;
  readonly mark: string | undefined;
  readonly token: string;
}

export interface Lock {
  /** Removes the lock file, if it still is ours. Safe to call twice. */
  release(): Promise<FileResult>;
}

/**
 * One run at a time per folder, which must exist. The lock of a process that has ended is taken over; that of a living one,
 * or of one on another machine, whose life can't be told from here, comes back as the reason `files/locked`.
 */
export async function acquireLock(folder: string, disk: Disk = realDisk): Promise<FileResult<{ readonly lock: Lock }>> {
  const path = join(folder, LOCK_NAME);
  const mine: Holder = {
    pid: process.pid,
    host: hostname(),
    started: new Date().toISOString(),
    mark: processMark(process.pid),
    token: randomUUID(),
  };
  const draft = join(folder, temporaryName());
  try {
    await writeNew(draft, JSON.stringify(mine), disk);
    for (let attempt = 0; attempt < ATTEMPTS; attempt += 1) {
      if (await claim(draft, path, disk)) return { ok: true, lock: heldLock(path, mine, disk) };
      const holder = await readHolder(path, disk);
      if (holder !== 'gone') {
        if (holder !== 'debris' && !isOver(holder)) return { ok: false, reason: heldBy(holder, folder, path) };
        if (await takeOver(draft, path, disk)) return { ok: true, lock: heldLock(path, mine, disk) };
      }
      await new Promise((resolve) => setTimeout(resolve, PAUSE));
    }
    return { ok: false, reason: heldBy(undefined, folder, path) };
  } catch (error) {
    return fileFailure(error, `cannot lock the folder ${folder}`);
  } finally {
    await removeQuietly(draft, disk);
  }
}

/** Gives the draft the lock's name, which is one indivisible act and fails when the name is taken. */
async function claim(draft: string, path: string, disk: Disk): Promise<boolean> {
  try {
    await disk.link(draft, path);
    return true;
  } catch (error) {
    const errno = errnoOf(error);
    if (errno === 'EEXIST') return false;
    if (errno !== 'EPERM' && errno !== 'ENOTSUP' && errno !== 'ENOSYS' && errno !== 'EOPNOTSUPP') throw error;
  }
  // A disk without second names (some memory sticks and network folders): creating the file is indivisible too.
  try {
    await writeNew(path, await disk.readText(draft), disk);
    return true;
  } catch (error) {
    if (errnoOf(error) === 'EEXIST') return false;
    throw error;
  }
}

/** Of several runs that find a dead one's lock, one gets the right to replace it; it looks again before it does. */
async function takeOver(draft: string, path: string, disk: Disk): Promise<boolean> {
  const right = `${path}-takeover`;
  if (!(await claim(draft, right, disk))) {
    const other = await readHolder(right, disk);
    if (other === 'debris' || (other !== 'gone' && isOver(other))) await removeQuietly(right, disk);
    return false;
  }
  try {
    const holder = await readHolder(path, disk);
    if (holder !== 'gone' && (holder === 'debris' || isOver(holder))) await disk.remove(path);
    return await claim(draft, path, disk);
  } finally {
    await removeQuietly(right, disk);
  }
}

async function readHolder(path: string, disk: Disk): Promise<Holder | 'gone' | 'debris'> {
  try {
    const text = await disk.readText(path);
    const holder = parseHolder(text);
    if (holder) return holder;
    // A clock that was put back may have left one in the future.
    if (Math.abs(Date.now() - (await disk.modified(path))) > UNREADABLE_GRACE) return 'debris';
    return { pid: 0, host: '', started: '', mark: undefined, token: '' };
  } catch (error) {
    if (errnoOf(error) === 'ENOENT') return 'gone';
    throw error;
  }
}

function parseHolder(text: string): Holder | undefined {
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    return undefined;
  }
  if (typeof value !== 'object' || value === null) return undefined;
  const { pid, host, started, mark, token } = value as Record<string, unknown>;
  if (typeof pid !== 'number' || typeof host !== 'string' || typeof started !== 'string' || typeof token !== 'string') return undefined;
  return { pid, host, started, mark: typeof mark === 'string' ? mark : undefined, token };
}

function isOver(holder: Holder): boolean {
  if (holder.host !== hostname()) return false;
  if (!isAlive(holder.pid)) return true;
  const mark = processMark(holder.pid);
  return holder.mark !== undefined && mark !== undefined && mark !== holder.mark;
}

function heldBy(holder: Holder | undefined, folder: string, path: string): { code: 'files/locked'; message: string; remedy: string } {
  const who = holder?.pid ? ` (process ${holder.pid} on ${holder.host}, since ${holder.started})` : '';
  const orDelete = `If no run is going on there, delete ${path}, then run again.`;
  return {
    code: 'files/locked',
    message: `another run${who} is using the output folder ${folder}`,
    // The life of a process elsewhere can't be told from here, nor on every system whether another one has its number by now.
    remedy: `Wait until it has ended, or name another output folder.${holder?.pid ? ` ${orDelete}` : ''}`,
  };
}

function heldLock(path: string, mine: Holder, disk: Disk): Lock {
  return {
    release: async () => {
      try {
        const holder = await readHolder(path, disk);
        if (holder !== 'gone' && holder !== 'debris' && holder.token === mine.token) await disk.remove(path);
        return { ok: true };
      } catch (error) {
        return fileFailure(error, `cannot remove the lock ${path}`);
      }
    },
  };
}
