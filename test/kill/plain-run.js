// A run with the plain worker that shows what a kill would leave: `node plain-run.js PIPELINE.json SNAPSHOTS` copies the
// output folder to SNAPSHOTS/N before the Nth request to change the disk, a write half done, and says at the end how many
// there were. `node plain-run.js PIPELINE.json kill N` kills itself at the Nth instead.
import { cpSync, readFileSync } from 'node:fs';
import fs from 'node:fs/promises';
import { join } from 'node:path';
import { syncBuiltinESMExports } from 'node:module';

const [, , pipelineFile, snapshots, killAt] = process.argv;
const pipeline = JSON.parse(readFileSync(pipelineFile, 'utf8'));
let requests = 0;

function interrupt() {
  requests += 1;
  if (killAt === undefined) cpSync(pipeline.out, join(snapshots, String(requests)), { recursive: true });
  else if (requests === Number(killAt)) process.kill(process.pid, 'SIGKILL');
}

for (const name of ['rename', 'link', 'unlink', 'mkdir', 'rm']) {
  const real = fs[name];
  fs[name] = async (...args) => {
    interrupt();
    return real(...args);
  };
}
const open = fs.open;
fs.open = async (path, flags, ...more) => {
  const file = await open(path, flags, ...more);
  if (flags !== 'wx') return file;
  const writeFile = file.writeFile.bind(file);
  file.writeFile = async (data) => {
    const bytes = Buffer.from(data);
    const half = Math.floor(bytes.byteLength / 2);
    await writeFile(bytes.subarray(0, half));
    interrupt();
    await writeFile(bytes.subarray(half));
  };
  return file;
};
syncBuiltinESMExports();

// Imported only now, so that it gets the functions above.
const { runBatch } = await import('../../dist/batch/run-batch.js');
const end = await runBatch({
  pipeline,
  dryRun: false,
  stop: new AbortController().signal,
  emit: () => undefined,
  log: () => '',
  worker: { script: new URL('../faults/workers/plain-press.js', import.meta.url) },
});
process.stdout.write(JSON.stringify({ requests, kind: end.kind }));
