import { mkdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { temporaryFolder } from '../batch/inbox.js';
import { runBuilt } from '../built.js';
import { put } from './inbox.js';

const RUN = ['run', '--recipe', 'any-page', '--out', 'out', '--quiet', 'label.pdf'];

it('a run that could not go on says whether what lies in print is of an earlier run', async () => {
  const folder = temporaryFolder();
  await put(folder, ['label.pdf', 'page-4x6']);
  expect((await runBuilt(RUN, folder)).code).toBe(0);

  const stack = join(folder, 'out/print/stack-4x6in.pdf');
  rmSync(stack);
  mkdirSync(join(stack, 'in the way'), { recursive: true });
  const mixed = await runBuilt(RUN, folder);
  expect(mixed.code).toBe(3);
  expect(mixed.stderr).toContain('a folder has this name');
  expect(mixed.stderr).toContain('print nothing from there until a run has ended well');

  const asItWas = await runBuilt([...RUN.slice(0, -1), 'lable.pdf'], folder);
  expect(asItWas.code).toBe(3);
  expect(asItWas.stderr).toContain('what an earlier run left in out is as it was');
});
