import { spawn } from 'node:child_process';
import { existsSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { ROOT, sources } from './house/tree.js';

/** The built command. Throws when it is older than its source: a test of it would judge what is no longer there. */
export function builtCli(): string {
  const cli = join(ROOT, 'dist', 'cli.js');
  const stale = sources().filter((path) => {
    const made = join(ROOT, path.replace(/^src\//, 'dist/').replace(/\.ts$/, '.js'));
    return !existsSync(made) || statSync(made).mtimeMs < statSync(join(ROOT, path)).mtimeMs;
  });
  if (stale.length > 0) throw new Error(`dist is older than ${stale.slice(0, 3).join(', ')}: run npm run build first`);
  return cli;
}

export interface Ended {
  readonly code: number | null;
  readonly stdout: string;
  readonly stderr: string;
}

/** Runs a program to its end; never throws for how it ended. */
export function runToEnd(command: string, args: readonly string[], cwd: string, env: NodeJS.ProcessEnv = process.env): Promise<Ended> {
  return new Promise((resolve, reject) => {
    const child = spawn(command, args, { cwd, env, stdio: ['ignore', 'pipe', 'pipe'] });
    const [out, err]: [Buffer[], Buffer[]] = [[], []];
    child.stdout.on('data', (chunk: Buffer) => out.push(chunk));
    child.stderr.on('data', (chunk: Buffer) => err.push(chunk));
    child.once('error', reject);
    child.once('close', (code) => {
      resolve({ code, stdout: Buffer.concat(out).toString('utf8'), stderr: Buffer.concat(err).toString('utf8') });
    });
  });
}

/** The built command in `cwd`, without a terminal. */
export const runBuilt = (args: readonly string[], cwd: string): Promise<Ended> => runToEnd(process.execPath, [builtCli(), ...args], cwd);
