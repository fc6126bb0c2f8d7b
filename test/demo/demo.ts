import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { differences, outcomeOf } from './expected.js';
import { writeInbox } from './inbox.js';

// The demo: makes the downloads of an invented studio, runs the built command over them as a seller would, and holds the result against
// what it must be.
const folder = 'demo';
console.log('An invented studio, forty orders, six sales channels. Every label is a sample, not valid for carriage.');
console.log(`Making its downloads in ${folder}/inbox …`);
await writeInbox(folder);

console.log(`\n> slipyard run --config ${folder}/pipeline.yaml\n`);
const { status } = spawnSync(process.execPath, ['dist/cli.js', 'run', '--config', `${folder}/pipeline.yaml`], { stdio: 'inherit' });

// Exit code 1 says that something is held or failed, which is as it should be here.
const ran = status === 1;
const wrong = ran
  ? differences(outcomeOf(JSON.parse(readFileSync(join(folder, 'out', 'run.json'), 'utf8'))))
  : [`the command ended with ${status}`];
if (wrong.length > 0) {
  console.error(`\nThe demo did not end as it should:\n  ${wrong.join('\n  ')}`);
  process.exitCode = 1;
} else {
  console.log('\nAll as it should be: the good orders are in the stack, and each planted fault was found and kept out of it.');
  console.log('Where to look:');
  console.log(`  ${folder}/out/print/stack-4x6in.pdf  the stack; print at actual size`);
  console.log(`  ${folder}/out/held                   a picture and a reason for each held page`);
  console.log(`  ${folder}/out/run.json               the account of every page`);
  console.log(`  ${folder}/inbox, ${folder}/pipeline.yaml  what it was made from`);
}
