import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { PDFDocument } from 'pdf-lib';
import { expect, it } from 'vitest';
import { NUMBER, pipelineOf, run, tell, temporaryFolder, TWO_UP } from '../batch/inbox.js';
import { builtCli, type Ended, runToEnd } from '../built.js';
import { copyFresh, expectTidy, expectWhole, visibleFilesIn } from './out-folder.js';

const PLAIN_RUN = fileURLToPath(new URL('./plain-run.js', import.meta.url));

/** Pressed pages made beforehand, so that the many runs are short. */
async function pressedPages(count: number): Promise<string> {
  const document = await PDFDocument.create({ updateMetadata: false });
  for (let n = 0; n < count; n += 1) document.addPage([288, 432]).drawRectangle({ x: 20, y: 40, width: 200, height: 20 + n });
  return Buffer.from(await document.save()).toString('base64');
}

it(
  'a run that is killed at any request to change the disk leaves whole files, and the next one makes the same of it',
  { timeout: 240_000 },
  async () => {
    builtCli();
    const folder = temporaryFolder();
    const [before, undisturbed, out] = ['before', 'undisturbed', 'out'].map((name) => join(folder, name)) as [string, string, string];
    tell(join(folder, 'south/yesterday.pdf'), [{ role: 'label' }, { state: 'held' }], { pressed: await pressedPages(1) });
    const today = [{ role: 'label', parcel: 1 }, { role: 'slip', parcel: 1 }, { state: 'held' }];
    tell(join(folder, 'north/today.pdf'), today, { pressed: await pressedPages(2) });
    // Of yesterday's stacks one is replaced, the other goes.
    await run(pipelineOf(folder, { north: [], south: [TWO_UP] }, { out: before }));
    const pipeline = pipelineOf(folder, { north: [NUMBER] }, { out });
    const file = join(folder, 'pipeline.json');
    writeFileSync(file, JSON.stringify(pipeline));
    const killedAt = (request: number): Promise<Ended> => {
      copyFresh(before, out);
      return runToEnd(process.execPath, [PLAIN_RUN, file, String(request)], folder);
    };

    const whole = await killedAt(0);
    expect(whole.stderr).toBe('');
    const { requests, kind } = JSON.parse(whole.stdout) as { requests: number; kind: string };
    expect(kind).toBe('finished');
    expect(requests).toBeGreaterThan(20);
    copyFresh(out, undisturbed);
    const [old, made] = [visibleFilesIn(before), visibleFilesIn(undisturbed)];
    expect([...made.keys()].filter((path) => path.startsWith('print/'))).toEqual(['print/stack-4x6in.pdf']);
    expect([...old.keys()].filter((path) => path.startsWith('print/'))).toEqual(['print/stack-4x6in.pdf', 'print/stack-letter-1x2.pdf']);

    // Everything is asked for in turn, so the Nth request is the same one each time.
    for (let request = 1; request <= requests; request += 1) {
      expect((await killedAt(request)).code, `killed at request ${request}`).toBeNull();
      expectWhole(out, old, made);
      expect((await run(pipeline)).end.kind).toBe('finished');
      expect(visibleFilesIn(out), `after a kill at request ${request}`).toEqual(made);
      expectTidy(out);
    }
  },
);
