import { readFileSync } from 'node:fs';

/** Linux, proc_pid_status(5): the most memory that the process held since it became this program, kB. Undefined when not told. */
export function highWaterKb(status: string): number | undefined {
  const kb = /^VmHWM:\s+(\d+) kB$/m.exec(status)?.[1];
  return kb === undefined ? undefined : Number(kb);
}

/** The most memory that this process held at a time, all its threads together, MB. */
export function peakMemoryMb(): number {
  let status = '';
  try {
    status = readFileSync('/proc/self/status', 'utf8');
  } catch {
    // Only Linux has it.
  }
  // Where there is no such file: getrusage(2), which on Linux would count what the parent held before it started us.
  return Math.round((highWaterKb(status) ?? process.resourceUsage().maxRSS) / 1024);
}
