import { mkdirSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { runCheck } from '../../src/commands/check.js';
import { capture } from './capture.js';

const CHANNEL = '  - { name: paper-birds, files: inbox/*.pdf, recipe: any-page }\n';

describe('check', () => {
  let folder: string;
  const write = (name: string, text: string): string => {
    writeFileSync(join(folder, name), text);
    return join(folder, name);
  };

  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), 'slipyard-check-'));
    mkdirSync(join(folder, 'inbox', 'returns'), { recursive: true });
    mkdirSync(join(folder, 'inbox', 'Mugs 2'));
  });
  afterAll(() => {
    rmSync(folder, { recursive: true });
  });

  it('counts channels and recipes, each recipe once', async () => {
    const config = write('two.yaml', `channels:\n${CHANNEL}${CHANNEL.replace('paper-birds', 'clay-pots')}`);
    expect(await capture((io) => runCheck({ config, files: [] }, io))).toEqual({
      exitCode: 0,
      out: '2 channels, 1 recipe: no problems\n',
      err: '',
    });
  });

  it('tells mistakes as its result, counts them, and ends with 2', async () => {
    const config = write('wrong.yaml', `media: 4x6\ngrid: 203\nchannels:\n${CHANNEL}`);
    const { exitCode, out, err } = await capture((io) => runCheck({ config, files: [] }, io));
    expect(exitCode).toBe(2);
    expect(out).toMatch(/wrong\.yaml:1:8: error: .*\n {2}1 \| media: 4x6\n.*\^{3}\n.*do: Write `4x6in`\./);
    expect(out).toMatch(/wrong\.yaml:2:7: error: [^]*\n2 errors; nothing would be started\n$/);
    expect(err).toBe('');
  });

  it('takes recipes by name and by file, and a pipeline by its file', async () => {
    const pipeline = write('p.yaml', `channels:\n${CHANNEL}`);
    const recipe = write('r.yaml', 'about: A recipe.\nsteps: [split-pages, verify]\n');
    expect((await capture((io) => runCheck({ files: ['any-page', recipe] }, io))).out).toBe('2 recipes: no problems\n');
    expect((await capture((io) => runCheck({ files: [pipeline, recipe] }, io))).out).toBe('1 channel, 2 recipes: no problems\n');
  });

  it('refuses what a run would refuse: pages that do not fit on their sheet', async () => {
    write('tight.yaml', 'about: Too many on a sheet.\nsteps: [split-pages, verify, impose: { sheet: letter, columns: 5, rows: 5 }]\n');
    const config = write('tight-pipeline.yaml', `channels:\n${CHANNEL.replace('any-page', './tight.yaml')}`);
    const { exitCode, out } = await capture((io) => runCheck({ config, files: [] }, io));
    expect(out).toMatch(/tight\.yaml:2:\d+: error: `impose`: a page of .* does not fit a position/);
    expect(exitCode).toBe(2);
  });

  it.each([
    ['inbox', 'inbox/*.pdf', true],
    ['inbox', './inbox', true],
    ['inbox/returns', 'inbox/*.pdf', false],
    ['in', 'inbox/*.pdf', false],
  ])('with out: %s warns that nothing of %s would be read: %s', async (out, files, warned) => {
    const config = write('out.yaml', `out: ${out}\nchannels:\n${CHANNEL.replace('inbox/*.pdf', files)}`);
    const ended = await capture((io) => runCheck({ config, files: [] }, io));
    expect(ended.exitCode).toBe(0);
    expect(
      /out\.yaml:3:\d+: warning: .* lies in the output folder `inbox`, where nothing is ever read \[intake\/only-output\]/.test(ended.out),
    ).toBe(warned);
  });

  describe('warns of folders and files that are not there, and names what is near', () => {
    it.each([
      ['inbox/return/*', 'inbox/return', 'Is it `inbox/returns`?'],
      ['Inbox/Returns/*.pdf', 'Inbox/Returns', 'Is it `inbox/returns`?'],
      ['inbox/mugs 2', 'inbox/mugs 2', 'Is it `inbox/Mugs 2`?'],
      ['"!inbox/retuns/old*"', 'inbox/retuns', 'Is it `inbox/returns`?'],
      ['inbox/mugs 3/*', 'inbox/mugs 3', 'Make the folder, or write the name of one that is there.'],
      ['inbox/prints/*', 'inbox/prints', 'Make the folder, or write the name of one that is there.'],
    ])('%s', async (pattern, missing, remedy) => {
      const files = pattern.startsWith('"') ? `[inbox/*, ${pattern}]` : pattern;
      const config = write('gone.yaml', `channels:\n${CHANNEL}  - name: mugs\n    recipe: any-page\n    files: ${files}\n`);
      const { exitCode, out } = await capture((io) => runCheck({ config, files: [] }, io));
      expect(out).toMatch(/gone\.yaml:5:\d+: warning: /);
      expect(out).toContain(`there is no file or folder \`${missing}\` [intake/no-file]`);
      expect(out).toContain(`do: ${remedy}`);
      expect(out).toMatch(/\n2 channels, 1 recipe: 1 warning\n$/);
      expect(exitCode).toBe(0);
    });

    it('says nothing of an empty folder, nor of what a wildcard stands for', async () => {
      const files = '[inbox/returns, inbox/returns/*.pdf, "inbox/ret*/x*/*.pdf", "*/returns/*"]';
      const config = write('there.yaml', `channels:\n  - { name: mugs, recipe: any-page, files: ${files} }\n`);
      expect((await capture((io) => runCheck({ config, files: [] }, io))).out).toBe('1 channel, 1 recipe: no problems\n');
    });

    it('says it beside what else is wrong', async () => {
      const config = write('both.yaml', 'channels:\n  - { name: mugs, recipe: any-pag, files: inbox/return/*, orders: exports/* }\n');
      const { exitCode, out } = await capture((io) => runCheck({ config, files: [] }, io));
      expect(out).toMatch(/1 error, 2 warnings; nothing would be started\n$/);
      expect(exitCode).toBe(2);
    });
  });

  it('says what to do when there is no pipeline', async () => {
    const config = join(folder, 'none', 'pipeline.yaml');
    const { exitCode, out } = await capture((io) => runCheck({ config, files: [] }, io));
    expect(exitCode).toBe(2);
    expect(out).toContain('there is no file');
    expect(out).toContain('slipyard run --recipe any-page --out out');
  });

  it.each([
    ['chanels: []\n', /a pipeline (?:has no `chanels`|needs `channels`)/],
    ['media: 4x6in\nchanels:\n  - { name: mugs }\n', /a pipeline has no `chanels`/],
    ['abuot: x\nsteps: [split-pages, verify]\n', /a recipe has no `abuot`/],
    ['steps: []\nmedia: 4x6in\nabout: x\n', /`steps` is an empty list/],
  ])('takes a file with misspelt keys for what it is more like: %j', async (text, expected) => {
    const named = write('named.yaml', text);
    const { exitCode, out } = await capture((io) => runCheck({ files: [named] }, io));
    expect(out).toMatch(expected);
    expect(exitCode).toBe(2);
  });

  it('gives JSON lines, diagnostics in the shape that `run` gives them', async () => {
    const config = write('json.yaml', `jobs: 0\nchannels:\n${CHANNEL}`);
    const lines = (await capture((io) => runCheck({ config, files: [], json: true }, io))).out.trimEnd().split('\n');
    expect(lines.map((line) => (JSON.parse(line) as { type: string }).type)).toEqual(['diagnostic', 'checked']);
    const diagnostic = { code: 'config/bad-value', severity: 'error', place: { line: 1, col: 7 } };
    expect(JSON.parse(lines[0] ?? '')).toMatchObject({ type: 'diagnostic', diagnostic });
  });

  it('touches nothing', async () => {
    const config = write('still.yaml', `out: results\nchannels:\n${CHANNEL}`);
    const before = readdirSync(folder);
    await capture((io) => runCheck({ config, files: [] }, io));
    expect(readdirSync(folder)).toEqual(before);
  });
});
