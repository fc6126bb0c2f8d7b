import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { PDFDocument } from 'pdf-lib';
import { expect, it } from 'vitest';
import { filesIn, NUMBER, pipelineOf, run, tell, temporaryFolder, TWO_UP } from '../batch/inbox.js';
import { builtCli, type Ended, runToEnd } from '../built.js';
import { copyFresh, expectTidy, expectWhole, visibleFilesIn } from './out-folder.js';

const PLAIN_RUN = fileURLToPath(new URL('./plain-run.js', import.meta.url));

/** Pressed pages made beforehand, so that the many runs are short. */
async function pressedPages(count: number): Promise<string> {
  const document = await PDFDocument.create({ updateMetadata: false });
  for (let n = 0; n < count; n += 1) document.addPage([288, 432]).drawRectangle({ x: 20, y: 40, width: 200, height: 20 + n });
  return Buffer.from(await document.save()).toString('base64');
}

/** Every file with its bytes. Temporary names and what a lock says of its holder are others each time. */
function stateOf(out: string): readonly string[] {
  return [...filesIn(out)]
    .map(([path, bytes]) => {
      const name = path.replace(/(^|\/)\.\d+-[^/]+/, '$1.temporary');
      return `${name}: ${bytes.includes('"pid"') ? 'a lock' : bytes.toString('base64')}`;
    })
    .sort();
}

it('a run killed at any request to change the disk leaves whole files, and the next one makes the same of it', async () => {
  builtCli();
  const folder = temporaryFolder();
  const [before, out, snapshots] = ['before', 'out', 'snapshots'].map((name) => join(folder, name)) as [string, string, string];
  tell(join(folder, 'south/yesterday.pdf'), [{ role: 'label' }, { state: 'held' }], { pressed: await pressedPages(1) });
  const today = [{ role: 'label', parcel: 1 }, { role: 'slip', parcel: 1 }, { state: 'held' }];
  tell(join(folder, 'north/today.pdf'), today, { pressed: await pressedPages(2) });
  // Of yesterday's stacks one is replaced, the other goes.
  await run(pipelineOf(folder, { north: [], south: [TWO_UP] }, { out: before }));
  const pipeline = pipelineOf(folder, { north: [NUMBER] }, { out });
  const file = join(folder, 'pipeline.json');
  writeFileSync(file, JSON.stringify(pipeline));
  const plainRun = (...args: readonly string[]): Promise<Ended> => {
    copyFresh(before, out);
    return runToEnd(process.execPath, [PLAIN_RUN, file, ...args], folder);
  };

  const undisturbed = await plainRun(snapshots);
  expect(undisturbed.stderr).toBe('');
  const { requests, kind } = JSON.parse(undisturbed.stdout) as { requests: number; kind: string };
  expect(kind).toBe('finished');
  expect(requests).toBeGreaterThan(20);
  const [old, made] = [visibleFilesIn(before), visibleFilesIn(out)];
  expect([...made.keys()].filter((path) => path.startsWith('print/'))).toEqual(['print/stack-4x6in.pdf']);
  expect([...old.keys()].filter((path) => path.startsWith('print/'))).toEqual(['print/stack-4x6in.pdf', 'print/stack-letter-1x2.pdf']);

  // A copy of the folder is what a kill leaves: starting anew for each request would take minutes.
  for (const request of [2, Math.floor(requests / 2), requests - 8]) {
    expect((await plainRun('kill', String(request))).code).toBeNull();
    expect(stateOf(out), `killed at request ${request}`).toEqual(stateOf(join(snapshots, String(request))));
  }

  for (let request = 1; request <= requests; request += 1) {
    const killed = join(snapshots, String(request));
    expectWhole(killed, old, made);
    expect((await run({ ...pipeline, out: killed })).end.kind).toBe('finished');
    expect(visibleFilesIn(killed), `after a kill at request ${request}`).toEqual(made);
    expectTidy(killed);
  }
});
