import { readFileSync } from 'node:fs';

/**
 * What tells a process from a later one with the same id: the machine's start and the process's own start, where the system
 * tells them (Linux, proc(5)). Undefined elsewhere, and for a process that is not there.
 */
export function processMark(pid: number): string | undefined {
  try {
    const boot = readFileSync('/proc/sys/kernel/random/boot_id', 'utf8').trim();
    const stat = readFileSync(`/proc/${pid}/stat`, 'utf8');
    // The second field is the program's name in brackets and may hold anything, so count from the last bracket.
    const fields = stat.slice(stat.lastIndexOf(')') + 2).split(' ');
    const started = fields[19];
    return started === undefined ? undefined : `${boot}:${started}`;
  } catch {
    return undefined;
  }
}

/** Whether a process with this id is there. One that belongs to another user is. */
export function isAlive(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return error instanceof Error && 'code' in error && error.code === 'EPERM';
  }
}
