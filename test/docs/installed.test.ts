import { existsSync, mkdirSync, mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { runToEnd, type Ended } from '../built.js';
import { letterSheets, orderFile } from '../demo/studio.js';
import { textOf } from '../house/tree.js';
import { contentFor } from '../samples/content.js';
import { declaration } from '../samples/declaration.js';
import { tidewick } from '../samples/labels/tidewick.js';
import { label, LETTER, other, type LayoutPage } from '../samples/layout.js';
import { LAYOUTS } from '../samples/layouts.js';
import { sample } from '../samples/sample.js';
import { documentOf } from '../steps/on-pages.js';
import { installFromTarball, shellEnv } from './install.js';
import { fencesOf } from './markdown.js';

const top = mkdtempSync(join(tmpdir(), 'slipyard-installed-'));
let prefix = '';

beforeAll(async () => {
  prefix = await installFromTarball(top);
}, 600_000);
afterAll(() => {
  rmSync(top, { recursive: true, force: true });
});

function emptyFolder(name: string): string {
  const folder = join(top, name);
  mkdirSync(folder);
  return folder;
}

/** A line typed in a shell that has the installed command on its path. */
const typed = (line: string, folder: string): Promise<Ended> => runToEnd('sh', ['-c', line], folder, shellEnv(prefix));

async function put(folder: string, layoutName: string, as?: string): Promise<void> {
  const layout = LAYOUTS.find(({ name }) => name === layoutName);
  if (!layout) throw new Error(`the layout ${layoutName} is gone`);
  const { bytes, fileName } = await sample(layout, 'vector', 0);
  mkdirSync(folder, { recursive: true });
  writeFileSync(join(folder, as ?? fileName), bytes);
}

/** One label with its order's rows of an export. */
async function putOrder(folder: string): Promise<void> {
  const [sheet] = await letterSheets();
  const [heads = '', ...rows] = Buffer.from(orderFile().bytes).toString('utf8').split('\r\n');
  const number = rows[0]?.split(';')[0] ?? '';
  const own = rows.filter((row) => row.startsWith(`${number};`));
  mkdirSync(folder, { recursive: true });
  writeFileSync(join(folder, sheet?.path.split('/').at(-1) ?? ''), sheet?.bytes ?? '');
  writeFileSync(join(folder, 'orders.csv'), [heads, ...own, ''].join('\r\n'));
}

/** A label with a customs form too large for its media. */
async function putAbroad(folder: string): Promise<void> {
  const content = contentFor('readme abroad', 1);
  mkdirSync(folder, { recursive: true });
  const pages: LayoutPage[] = [
    { width: 288, height: 432, regions: [label(tidewick(content), 0, 0)] },
    { ...LETTER, regions: [other(declaration(540, 660, content, '1/1'), 36, 50)] },
  ];
  writeFileSync(join(folder, 'order.pdf'), await documentOf(pages));
}

describe('installed from its own tarball, in an empty folder', () => {
  it('lists steps, checks a shipped recipe, and runs over one document', async () => {
    const folder = emptyFolder('first');
    const steps = await typed('slipyard steps', folder);
    expect([steps.code, steps.stderr]).toEqual([0, '']);
    expect(steps.stdout).toContain('locate-label');
    expect((await typed('slipyard check any-page', folder)).code).toBe(0);
    expect(readdirSync(folder)).toEqual([]);

    await put(folder, 'letter-upper-sideways', 'label.pdf');
    const run = await typed('slipyard run --recipe any-page --out out label.pdf', folder);
    expect(`${String(run.code)} ${run.stderr}`).toMatch(/^0 /);
    expect(readdirSync(join(folder, 'out', 'print'))).toEqual(['stack-4x6in.pdf']);
    expect(existsSync(join(folder, 'out', 'run.json'))).toBe(true);
  });

  it('says what to do in a folder without a pipeline', async () => {
    const run = await typed('slipyard run', emptyFolder('without'));
    expect(run.code).toBe(2);
    expect(run.stderr).toContain('pipeline.yaml');
  });

  it('knows its version and answers --help', async () => {
    const folder = emptyFolder('help');
    const { version } = JSON.parse(textOf('package.json')) as { version: string };
    expect((await typed('slipyard --version', folder)).stdout.trim()).toBe(version);
    expect((await typed('slipyard run --help', folder)).stdout).toContain('Example:');
  });
});

describe("README's commands, one after the other", () => {
  it('do what it says', { timeout: 600_000 }, async () => {
    const folder = emptyFolder('readme');
    await put(join(folder, 'inbox', 'mugs'), 'letter-upper-sideways');
    await put(join(folder, 'inbox', 'prints'), 'label-then-slip');
    await putOrder(join(folder, 'inbox', 'clay'));
    await putAbroad(join(folder, 'abroad'));
    let commands = 0;
    for (const { language, text } of fencesOf(textOf('README.md'))) {
      if (language === 'yaml') {
        // The first line of each YAML block names its file.
        const [, name] = /^# (\S+\.yaml)\n/.exec(text) ?? [];
        if (name === undefined) throw new Error(`a YAML block without its file's name:\n${text}`);
        mkdirSync(dirname(join(folder, name)), { recursive: true });
        writeFileSync(join(folder, name), `${text}\n`);
      } else if (language === 'sh') {
        for (const line of text.split('\n')) {
          const { code, stdout, stderr } = await typed(line, folder);
          expect(`${line}: ${String(code)}\n${stderr}${stdout}`).toMatch(/^.+: 0\n/);
          commands++;
        }
      }
    }
    expect(commands).toBeGreaterThan(8);
    // What README promises to be there by then.
    expect(readdirSync(join(folder, 'out')).sort()).toEqual(['held', 'log.jsonl', 'print', 'run.json', 'times.json']);
    expect(existsSync(join(folder, 'out', 'print', 'stack-4x6in.pdf'))).toBe(true);
    expect(existsSync(join(folder, 'one-off', 'print', 'stack-4x6in.pdf'))).toBe(true);
    expect(readdirSync(join(folder, 'sheets', 'print'))).toHaveLength(1);
    expect(readdirSync(join(folder, 'orders-out', 'lists'))).toEqual([
      'hand-over-list.csv',
      'hand-over-list.pdf',
      'pick-list.csv',
      'pick-list.pdf',
    ]);
    const { account } = JSON.parse(readFileSync(join(folder, 'orders-out', 'run.json'), 'utf8')) as { account: { output: object } };
    const sums = { readyItems: 1, madePages: 1, stackPages: 2 };
    expect(account.output).toEqual({ ...sums, byOutput: { roll: sums } });
    expect(readdirSync(join(folder, 'with-office', 'print'))).toEqual(['stack-4x6in.pdf', 'stack-office-letter.pdf']);
    expect(readdirSync(join(folder, 'with-office', 'held'))).toEqual([]);
    expect(readdirSync(join(folder, 'recipes')).sort()).toEqual(['mine.yaml', 'pipeline.schema.json', 'recipe.schema.json']);
  });
});
