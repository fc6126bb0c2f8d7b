import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { ROOT } from '../house/tree.js';
import { differences, type Recorded } from './expected.js';
import { demoFiles, writeInbox } from './inbox.js';

// The demo: makes the downloads of an invented studio, runs the built command over them as a seller would, and holds the result against
// what it must be. It writes in the folder demo/ of the checkout and nowhere else.
process.chdir(ROOT);
const folder = 'demo';
console.log('The day of an invented studio: forty orders from six sales channels, and a few things gone wrong among them.');
console.log(`Making its downloads in ${folder}/inbox (${folder}/ is emptied first) …`);
const files = await demoFiles();
writeInbox(folder, files);

console.log(`\n> slipyard run --config ${folder}/pipeline.yaml\n`);
const { status } = spawnSync(process.execPath, [join('dist', 'cli.js'), 'run', '--config', `${folder}/pipeline.yaml`], {
  stdio: 'inherit',
});

const documents = files.flatMap((each) => each.documents);
const account = join(folder, 'out', 'run.json');
// Exit code 1 says that something is held or failed, which is as it should be here.
const wrong =
  status === 1 && existsSync(account)
    ? differences(JSON.parse(readFileSync(account, 'utf8')) as Recorded, documents)
    : [`the command ended with ${status ?? 'a signal'}, and not with 1, as it should when something is held`];

if (wrong.length > 0) {
  console.error(`\nThe demo did not end as it should:\n  ${wrong.join('\n  ')}`);
  process.exitCode = 1;
} else {
  console.log('\n─── The demo ended as it should. ───');
  console.log('All forty orders are in the stacks: each label with the codes it was drawn with,');
  console.log('each slip right behind its label. One channel has no slips: its ten were made from its orders.');
  console.log('The labels of another lie on label sheets, two a sheet, from the second position on.');
  console.log("Two parcels go abroad: their customs declarations are for the office printer, with the parcels' numbers.");
  console.log('One more order still waits for its label, and is named as a loose end; one was cancelled.');
  console.log('These had been planted, and were found and kept out of it:');
  for (const { path, fault, ends } of documents) {
    if (fault) console.log(`  ${(ends[0]?.split(' ')[1] ?? '').padEnd(8)} ${fault.padEnd(38)} ${path}`);
  }
  console.log('\nWhere to look:');
  console.log(`  ${folder}/out/print/stack-4x6in.pdf   the stack to print, at actual size`);
  console.log(`  ${folder}/out/print/stack-label-sheets-letter-1x2.pdf  sheets of two labels, at actual size`);
  console.log(`  ${folder}/out/print/stack-office-letter.pdf  customs declarations, at actual size`);
  console.log(`  ${folder}/out/lists/                  what to fetch, and what the carrier takes`);
  console.log(`  ${folder}/out/held/                   a picture and the reason of each held page`);
  console.log(`  ${folder}/out/run.json                the account of every page`);
  console.log(`  ${folder}/pipeline.yaml               what was asked for, to change and run again`);
  console.log(`  ${folder}/inbox/                      the downloads it was made from`);
  console.log('\nEvery label here is a sample of a carrier that does not exist. None is valid for carriage.');
}
