import { spawn } from 'node:child_process';
import { readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { performance } from 'node:perf_hooks';
import type { Group } from './draw.js';

const CLI = join(import.meta.dirname, '..', '..', 'dist', 'cli.js');

/** One run of the built command over the inbox. */
export interface Measured {
  readonly groups: readonly Group[];
  readonly jobs: number;
  readonly documents: number;
  /** Labels that came out ready. */
  readonly labels: number;
  /** Items that did not; a bench over a broken program would otherwise look fast. */
  readonly notReady: number;
  readonly wallSeconds: number;
  /** From the start of the process until the first document had ended. */
  readonly firstDocumentSeconds: number;
  /** CPU ms of the whole process, start and stacks included. */
  readonly cpuMs: number;
  readonly stageMs: Readonly<Record<string, number>>;
  readonly peakMemoryMb: number;
}

interface Times {
  readonly documents: number;
  readonly processCpuMs: number;
  readonly stageMs: Record<string, number>;
  readonly peakMemoryMb: number;
}

/** The peak of a running process's memory, MB, as the system counts it; undefined where there is no /proc. */
function highWater(pid: number): number | undefined {
  try {
    const [, kb] = /^VmHWM:\s+(\d+) kB/m.exec(readFileSync(`/proc/${pid}/status`, 'utf8')) ?? [];
    return kb === undefined ? undefined : Math.round(Number(kb) / 1024);
  } catch {
    return undefined;
  }
}

export async function measure(folder: string, groups: readonly Group[], jobs: number): Promise<Measured> {
  const out = join(folder, `out-${groups.join('-')}-${jobs}`);
  rmSync(out, { recursive: true, force: true });
  const config = join(folder, `pipeline-${groups.join('-')}.yaml`);
  const channels = groups.map((group) => `  - name: ${group}\n    files: inbox/${group}/*\n    recipe: any-page\n`);
  writeFileSync(config, `out: ${JSON.stringify(out)}\nchannels:\n${channels.join('')}`);

  const start = performance.now();
  const child = spawn(process.execPath, [CLI, 'run', '--config', config, '--jobs', String(jobs), '--json', '--quiet'], {
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  let peak = 0;
  const poll = setInterval(() => (peak = Math.max(peak, highWater(child.pid ?? 0) ?? 0)), 100);
  let first: number | undefined;
  let labels = 0;
  let notReady = 0;
  for await (const line of createInterface({ input: child.stdout })) {
    const event = JSON.parse(line) as { type: string };
    if (event.type === 'document') first ??= performance.now();
  }
  const code = await new Promise<number | null>((resolve) => {
    if (child.exitCode !== null) resolve(child.exitCode);
    else child.once('close', resolve);
  });
  const end = performance.now();
  clearInterval(poll);
  if (code !== 0 && code !== 1) throw new Error(`the run ended with exit code ${String(code)}`);

  const times = JSON.parse(readFileSync(join(out, 'times.json'), 'utf8')) as Times;
  const record = JSON.parse(readFileSync(join(out, 'run.json'), 'utf8')) as {
    documents: readonly { items: readonly { role: string; state: { kind: string } | string }[] }[];
  };
  for (const { role, state } of record.documents.flatMap(({ items }) => items)) {
    const kind = typeof state === 'string' ? state : state.kind;
    if (kind === 'ready' && (role === 'label' || role === 'return-label')) labels++;
    if (kind === 'held' || kind === 'failed') notReady++;
  }
  return {
    groups,
    jobs,
    documents: times.documents,
    labels,
    notReady,
    wallSeconds: (end - start) / 1000,
    firstDocumentSeconds: ((first ?? end) - start) / 1000,
    cpuMs: times.processCpuMs,
    stageMs: times.stageMs,
    // What the process says of itself counts what its parent held when it was forked: only where nothing better is known.
    peakMemoryMb: peak > 0 ? peak : times.peakMemoryMb,
  };
}
