import { spawn } from 'node:child_process';
import { ROOT } from './house/tree.js';

/** What `npm test` checks before it runs a test; each goes through all files on one core. */
const CHECKS = ['lint', 'types', 'format'];

function check(name: string): Promise<{ readonly code: number | null; readonly told: string }> {
  return new Promise((resolve, reject) => {
    const child = spawn('npm', ['run', '--silent', name], {
      cwd: ROOT,
      stdio: ['ignore', 'pipe', 'pipe'],
      shell: process.platform === 'win32',
    });
    const told: Buffer[] = [];
    for (const stream of [child.stdout, child.stderr]) stream.on('data', (chunk: Buffer) => told.push(chunk));
    child.once('error', reject);
    child.once('close', (code) => {
      resolve({ code, told: Buffer.concat(told).toString('utf8') });
    });
  });
}

const running = CHECKS.map(check);
for (const [index, ended] of running.entries()) {
  const { code, told } = await ended;
  process.stdout.write(`${CHECKS[index] ?? ''}: ${code === 0 ? 'nothing found' : 'failed'}\n${code === 0 ? '' : told}`);
  if (code !== 0) process.exitCode = 1;
}
