import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { temporaryFolder, write } from '../batch/inbox.js';
import { runBuilt } from '../built.js';
import { documentOf, labelPage, slipPage } from '../steps/on-pages.js';

it('what draft prints is a file that check accepts and run uses, on other documents of the channel', { timeout: 300_000 }, async () => {
  const folder = temporaryFolder();
  // Orders of their own: one label in two files would be held by the run as a duplicate.
  for (const [path, order] of [
    ['mugs/1.pdf', 1],
    ['mugs/2.pdf', 2],
    ['new/3.pdf', 3],
  ] as const)
    write(join(folder, path), await documentOf([labelPage(order), slipPage(order)]));
  const drafted = await runBuilt(['draft', 'mugs'], folder);
  expect(`${String(drafted.code)} ${drafted.stderr}`).toMatch(/^0 /);
  mkdirSync(join(folder, 'recipes'));
  writeFileSync(join(folder, 'recipes/mine.yaml'), drafted.stdout);

  expect(await runBuilt(['check', 'recipes/mine.yaml'], folder)).toMatchObject({ code: 0, stdout: '1 recipe: no problems\n' });
  for (const [files, labels] of [
    ['mugs', 2],
    ['new', 1],
  ] as const) {
    const run = await runBuilt(['run', '--recipe', 'recipes/mine.yaml', '--out', `out-${files}`, '--quiet', files], folder);
    expect(`${String(run.code)} ${run.stderr}`).toBe('0 ');
    const { account } = JSON.parse(readFileSync(join(folder, `out-${files}`, 'run.json'), 'utf8')) as { account: { items: object } };
    // Each label and its slip; nothing held, nothing skipped but what is left of a label's page.
    expect(account.items).toMatchObject({ ready: 2 * labels, held: 0, failed: 0 });
  }
});
