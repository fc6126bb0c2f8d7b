// A run with the plain worker that kills itself at its Nth request to change the disk, for 0 never:
// `node plain-run.js PIPELINE.json N`. At the end it says how many requests there were. A write that is killed is half done.
import { readFileSync } from 'node:fs';
import fs from 'node:fs/promises';
import { syncBuiltinESMExports } from 'node:module';

const [, , pipelineFile, killAt] = process.argv;
let requests = 0;
const isLast = () => (requests += 1) === Number(killAt);
const die = () => process.kill(process.pid, 'SIGKILL');

for (const name of ['rename', 'link', 'unlink', 'mkdir', 'rm']) {
  const real = fs[name];
  fs[name] = async (...args) => {
    if (isLast()) die();
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
    if (!isLast()) return writeFile(bytes);
    await writeFile(bytes.subarray(0, bytes.byteLength / 2));
    return die();
  };
  return file;
};
syncBuiltinESMExports();

// Imported only now, so that it gets the functions above.
const { runBatch } = await import('../../dist/batch/run-batch.js');
const end = await runBatch({
  pipeline: JSON.parse(readFileSync(pipelineFile, 'utf8')),
  dryRun: false,
  stop: new AbortController().signal,
  emit: () => undefined,
  log: () => '',
  worker: { script: new URL('../faults/workers/plain-press.js', import.meta.url) },
});
process.stdout.write(JSON.stringify({ requests, kind: end.kind }));
