import { execFileSync } from 'node:child_process';
import { appendFileSync, mkdirSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { sha256 } from '../../src/files/fingerprint.js';
import { findWork } from '../../src/intake/find-work.js';
import { INTAKE_LIMITS } from '../../src/intake/limits.js';
import { readWork } from '../../src/intake/read-work.js';
import { NO_LABELS, smallPdf } from '../faults/inputs/documents.js';
import { addFile, codes, find, inbox, names, refusals } from './inbox.js';

const pdf = smallPdf;

describe('find-work', () => {
  it('gives everything in the fixed order, whatever the order of patterns', async () => {
    const folder = inbox({ 'b/label 10.pdf': pdf('1'), 'b/label 2.pdf': pdf('2'), 'a/x.pdf': pdf('3'), 'a/sub/y.pdf': pdf('4') });
    const first = await find(folder, { one: ['b/*.pdf'], two: ['a/**/*.pdf'] });
    expect(names(first.intake)).toEqual(['b/label 2.pdf', 'b/label 10.pdf', 'a/sub/y.pdf', 'a/x.pdf']);
    expect(first.intake.work.map((item) => item.channel)).toEqual([0, 0, 1, 1]);
    expect(first.intake.work[0]).toEqual({
      channel: 0,
      path: join(folder, 'b/label 2.pdf'),
      entry: undefined,
      shownName: 'b/label 2.pdf',
      sha256: sha256(pdf('2')),
      size: pdf('2').length,
    });
    expect(first.diagnostics).toEqual([]);
    const files = ['b/label 10.pdf', 'a/x.pdf', 'b/label 2.pdf', 'a/sub/y.pdf'];
    const shuffled = await find(folder, { all: files });
    expect(await find(folder, { all: [...files].reverse() })).toEqual(shuffled);
    expect(await find(folder, { all: ['**/*.pdf', ...files] })).toEqual(shuffled);
  });

  it('takes all files of a folder, and names that look like patterns as they stand', async () => {
    const folder = inbox({ 'in/order (2) [copy].pdf': pdf('1'), 'in/LABEL.PDF': pdf('2'), 'in/deep/er/c.pdf': pdf('3') });
    expect(names((await find(folder, { all: ['in'] })).intake)).toEqual(['in/deep/er/c.pdf', 'in/LABEL.PDF', 'in/order (2) [copy].pdf']);
    expect(names((await find(folder, { all: ['in/order (2) [copy].pdf'] })).intake)).toEqual(['in/order (2) [copy].pdf']);
    expect(names((await find(folder, { all: ['in/*.pdf', '!in/order*'] })).intake)).toEqual(['in/LABEL.PDF']);
    expect(names((await find(folder, { all: ['in', '!**/deep/**'] })).intake)).toHaveLength(2);
    expect(names((await find(folder, { all: ['in/{label,none}.pdf'] })).intake)).toEqual(['in/LABEL.PDF']);
  });

  it('works below a folder whose own name is hidden or looks like a pattern', async () => {
    const folder = inbox({ '.shop (new) {1}/in/a.pdf': pdf('1') });
    const below = join(folder, '.shop (new) {1}');
    expect(names((await find(below, { all: ['in/*.pdf', '!in/b*'] })).intake)).toEqual(['in/a.pdf']);
    expect(names((await find(folder, { all: [join(below, 'in')] })).intake)).toEqual(['.shop (new) {1}/in/a.pdf']);
    expect(names((await find(join(folder, 'none'), { all: [join(below, 'in')] })).intake)).toEqual(['../.shop (new) {1}/in/a.pdf']);
  });

  it('passes over hidden and temporary files, and takes unfinished downloads for labels that are missing yet', async () => {
    const folder = inbox({
      'in/a.pdf': pdf('1'),
      'in/.DS_Store': 'x',
      'in/._a.pdf': 'x',
      'in/Thumbs.db': 'x',
      'in/b.pdf.part': pdf('2'),
      'in/c.pdf.crdownload': pdf('3'),
      'in/d.tmp': pdf('4'),
      'in/~$e.docx': 'x',
      'in/.hidden/f.pdf': pdf('5'),
      'in/g.pdf.download/g.pdf': pdf('6'),
    });
    const { intake, diagnostics } = await find(folder, { all: ['in'] });
    expect(names(intake)).toEqual(['in/a.pdf']);
    expect(refusals(intake).sort()).toEqual([
      'in/.DS_Store: skipped intake/hidden-file',
      'in/._a.pdf: skipped intake/hidden-file',
      'in/Thumbs.db: skipped intake/hidden-file',
      'in/b.pdf.part: failed intake/partial-download',
      'in/c.pdf.crdownload: failed intake/partial-download',
      'in/d.tmp: skipped intake/temporary-file',
      'in/g.pdf.download/g.pdf: failed intake/partial-download',
      'in/~$e.docx: skipped intake/temporary-file',
    ]);
    expect(diagnostics).toEqual([]);
  });

  it('tells every kind of wrong document from its content, under the name of a PDF', async () => {
    const files = Object.fromEntries(NO_LABELS.map(([, , content], i) => [`in/${String(i).padStart(2, '0')}.pdf`, content]));
    const { intake } = await find(inbox({ ...files, 'in/good.txt': pdf('1') }), { all: ['in/*'] });
    expect(names(intake)).toEqual(['in/good.txt']);
    expect(intake.refused.map(({ state, reason }) => [state, reason.code])).toEqual(NO_LABELS.map(([, code]) => ['failed', code]));
  });

  it('skips a byte-identical document and names the first one, across channels too', async () => {
    const folder = inbox({ 'a/1.pdf': pdf('1'), 'a/2.pdf': pdf('1'), 'b/3.pdf': pdf('1'), 'b/4.pdf': pdf('4') });
    const { intake } = await find(folder, { one: ['a/*'], two: ['b/*'] });
    expect(names(intake)).toEqual(['a/1.pdf', 'b/4.pdf']);
    expect(refusals(intake)).toEqual(['a/2.pdf: skipped intake/duplicate', 'b/3.pdf: skipped intake/duplicate']);
    expect(intake.refused[1]?.reason.message).toContain('a/1.pdf');
  });

  it('reports documents that two channels name, once for each pair, and takes them for the first', async () => {
    const folder = inbox({ 'in/1.pdf': pdf('1'), 'in/2.pdf': pdf('2'), 'in/3.pdf': pdf('3') });
    const { intake, diagnostics } = await find(folder, { one: ['in/[12].pdf'], two: ['in/*.pdf'] });
    expect(intake.work.map((item) => `${item.channel} ${item.shownName}`)).toEqual(['0 in/1.pdf', '0 in/2.pdf', '1 in/3.pdf']);
    expect(intake.refused).toEqual([]);
    expect(codes(diagnostics)).toEqual(['error intake/two-channels']);
    expect(diagnostics[0]?.message).toBe('channels one and two both name in/1.pdf and 1 more; taken for one only');
  });

  it('takes brackets for what they are where a folder or file has them in its name', async () => {
    const folder = inbox({
      'mugs (1)/a.pdf': pdf('1'),
      'mugs 1/b.pdf': pdf('2'),
      'Orders [May]/c.pdf': pdf('3'),
      'in/mugs (2)/{x} order (3).pdf': pdf('4'),
      'in/12/d.pdf': pdf('5'),
    });
    expect(names((await find(folder, { all: ['mugs (1)/*.pdf'] })).intake)).toEqual(['mugs (1)/a.pdf']);
    expect(names((await find(folder, { all: ['Orders [May]/**/*.pdf'] })).intake)).toEqual(['Orders [May]/c.pdf']);
    expect(names((await find(folder, { all: ['in/*/{x} order (*).pdf'] })).intake)).toEqual(['in/mugs (2)/{x} order (3).pdf']);
    expect(names((await find(folder, { all: ['*/mugs (2)/*.pdf'] })).intake)).toEqual(['in/mugs (2)/{x} order (3).pdf']);
    expect(names((await find(folder, { all: ['in/[0-9]2/*.pdf', '!mugs (1)/*'] })).intake)).toEqual(['in/12/d.pdf']);
    expect(names((await find(folder, { all: ['mugs*/*.pdf', '!mugs (1)/*'] })).intake)).toEqual(['mugs 1/b.pdf']);
  });

  it('reports a folder or file that is named before any wildcard and is not there', async () => {
    const folder = inbox({ 'in/1.pdf': pdf('1'), 'in/7/2.pdf': pdf('2') });
    const missing = async (pattern: string): Promise<readonly string[]> => {
      const { diagnostics } = await find(folder, { all: [pattern] });
      return diagnostics.map(({ severity, code, message }) => `${severity} ${code} ${/folder (.*)$/.exec(message)?.[1] ?? ''}`);
    };
    expect(await missing('im/*.pdf')).toEqual(['error intake/no-file im']);
    expect(await missing('in/mugs/**/*.pdf')).toEqual(['error intake/no-file in/mugs']);
    expect(await missing('in/1.pdf/*')).toEqual(['error intake/no-file in/1.pdf']);
    expect(await missing('im/')).toEqual(['error intake/no-file im/']);
    expect(await missing('in/mugs (1)/*.pdf')).toEqual(['error intake/no-file in/mugs (1)']);
    expect(await missing('in/order (1).pdf')).toEqual(['error intake/no-file in/order (1).pdf']);
    expect(await missing(join(folder, 'im/*.pdf'))).toEqual([`error intake/no-file ${join(folder, 'im')}`]);
    for (const there of ['in/*.png', 'in/[67]/*.png', '*.png', '*/mugs/*.pdf', 'i{n,m}/*.png'])
      expect(await missing(there)).toEqual(['warning intake/no-match ']);
  });

  it('says what is wrong on the command line without a channel, and of a name that stands twice once', async () => {
    const folder = inbox({});
    const named = { name: 'any-page', files: ['no-such.pdf', 'no-such.pdf'], recipe: { name: 'any-page', about: '', steps: [] } };
    const { diagnostics } = await findWork({ file: undefined, folder, out: join(folder, 'out'), channels: [named] });
    expect(diagnostics.map(({ message }) => message)).toEqual(['there is no file or folder no-such.pdf']);
  });

  it('names what is there and may be meant', async () => {
    const folder = inbox({ 'in/mugs/order-1.pdf': pdf('1'), 'in/prints.pdf': pdf('2') });
    const remedy = async (pattern: string): Promise<string | undefined> => (await find(folder, { all: [pattern] })).diagnostics[0]?.remedy;
    expect(await remedy('in/mug/*.pdf')).toBe('Is it in/mugs?');
    expect(await remedy('IN/Mugs')).toBe('Is it in/mugs?');
    expect(await remedy(join(folder, 'inn/mugs/*'))).toBe(`Is it ${join(folder, 'in/mugs')}?`);
    expect(await remedy('in/mugs/ordr-1.pdf')).toBe('Is it in/mugs/order-1.pdf?');
    const nothingNear = 'Check the spelling and the folder that you are in.';
    for (const far of ['in/mugs/order-2.pdf', 'in/prints/*', 'elsewhere/mugs/*']) expect(await remedy(far)).toBe(nothingNear);
  });

  it('says when a channel only takes away', async () => {
    const folder = inbox({ 'in/1.pdf': pdf('1') });
    const { intake, diagnostics } = await find(folder, { all: ['!in/2.pdf'] });
    expect([names(intake), codes(diagnostics)]).toEqual([[], ['error intake/nothing-named']]);
  });

  it('warns of a pattern that matches nothing, and reports a name that is not there', async () => {
    const folder = inbox({ 'in/1.pdf': pdf('1') });
    const result = await find(folder, { one: ['in/*.png', 'nowhere/*.pdf'], two: ['in/2.pdf', 'in/1.pdf'] });
    expect(codes(result.diagnostics)).toEqual(['warning intake/no-match', 'error intake/no-file', 'error intake/no-file']);
    expect(result.diagnostics.every(({ remedy }) => remedy !== undefined)).toBe(true);
    expect(names(result.intake)).toEqual(['in/1.pdf']);
  });

  it('warns of an empty folder: it is there, so its name is no mistake', async () => {
    const folder = inbox({});
    mkdirSync(join(folder, 'empty'));
    const { diagnostics } = await find(folder, { one: ['empty'] });
    expect(codes(diagnostics)).toEqual(['warning intake/no-match']);
  });

  it('never takes the output folder, by whichever way it is reached', async () => {
    const folder = inbox({ 'in/1.pdf': pdf('1'), 'out/print/labels.pdf': pdf('2'), 'out/run.json': '{}', 'outer.pdf': pdf('3') });
    symlinkSync(join(folder, 'out'), join(folder, 'in', 'link'));
    const all = await find(folder, { all: ['**/*'] });
    expect(names(all.intake)).toEqual(['in/1.pdf', 'outer.pdf']);
    expect(all.intake.refused).toEqual([]);
    expect(all.diagnostics).toEqual([]);
    const named = await find(folder, { all: ['out/print/labels.pdf'] });
    expect([names(named.intake), codes(named.diagnostics)]).toEqual([[], ['error intake/only-output']]);
    const inItself = await find(folder, { all: ['in/*.pdf'] }, { out: folder });
    expect([names(inItself.intake), codes(inItself.diagnostics)]).toEqual([[], ['error intake/only-output']]);
  });

  it('follows links, and reports one that leads nowhere', async () => {
    const folder = inbox({ 'real/1.pdf': pdf('1'), 'in/2.pdf': pdf('2') });
    symlinkSync(join(folder, 'real'), join(folder, 'in', 'linked'));
    symlinkSync(join(folder, 'none.pdf'), join(folder, 'in', 'broken.pdf'));
    const { intake, diagnostics } = await find(folder, { all: ['in/**/*.pdf'] });
    expect(names(intake)).toEqual(['in/2.pdf', 'in/linked/1.pdf']);
    expect(codes(diagnostics)).toEqual(['warning intake/unreadable']);
    expect(diagnostics[0]?.message).toContain('broken.pdf');
  });

  it.skipIf(process.platform !== 'linux')('says so of a file whose name can not be spelt', async () => {
    const folder = inbox({ 'in/1.pdf': pdf('1') });
    writeFileSync(Buffer.concat([Buffer.from(join(folder, 'in/t')), Buffer.from([0xf6]), Buffer.from('pfe.pdf')]), pdf('2'));
    const { intake } = await find(folder, { all: ['in/*'] });
    expect(refusals(intake)).toEqual(['in/t\ufffdpfe.pdf: failed intake/unreadable']);
    expect(intake.refused[0]?.reason.message).toContain('its name holds letters');
  });

  it('tells no path of the machine: of a file from elsewhere its own name, of a folder that can not be read the way from here', async () => {
    const folder = inbox({ 'here/1.pdf': pdf('1'), 'beside/2.pdf': pdf('2') });
    const { intake } = await find(join(folder, 'here'), { all: [join(folder, 'here/1.pdf'), '../beside/*'] });
    expect(names(intake)).toEqual(['1.pdf', '../beside/2.pdf']);
    expect(names((await find('/opt/shop', { all: [join(folder, 'here/1.pdf')] })).intake)).toEqual(['1.pdf']);
    symlinkSync('loop', join(folder, 'here', 'loop'));
    const { diagnostics } = await find(join(folder, 'here'), { all: ['**/*.pdf'] });
    expect(JSON.stringify(diagnostics)).not.toContain(folder);
  });

  it('does not wait at a pipe for a document', async () => {
    const folder = inbox({ 'in/1.pdf': pdf('1') });
    execFileSync('mkfifo', [join(folder, 'in', 'pipe.pdf')]);
    const { intake } = await find(folder, { all: [join(folder, 'in', 'pipe.pdf'), 'in/1.pdf'] });
    expect([names(intake), refusals(intake)]).toEqual([['in/1.pdf'], ['in/pipe.pdf: failed intake/not-a-file']]);
  });

  it('refuses a document beyond the limit before reading it', async () => {
    const folder = inbox({ 'in/1.pdf': pdf('1'), 'in/2.pdf': Buffer.concat([pdf('2'), Buffer.alloc(1000)]) });
    const { intake } = await find(folder, { all: ['in/*'] }, { limits: { ...INTAKE_LIMITS, documentBytes: 900 } });
    expect([names(intake), refusals(intake)]).toEqual([['in/1.pdf'], ['in/2.pdf: failed intake/too-large']]);
  });

  it('shows a name that would act on a terminal harmlessly, and still reads its file', async () => {
    const folder = inbox({ 'in/a\u001b[2J\u202efdp.pdf': pdf('1') });
    const { intake } = await find(folder, { all: ['in/*'] });
    expect(names(intake)).toEqual(['in/a?[2J?fdp.pdf']);
    const [item] = intake.work;
    expect(item && (await readWork(item))).toMatchObject({ ok: true });
  });
});

describe('find-work: files that are still being written', () => {
  it('takes a young file that has come to rest', async () => {
    const folder = inbox({ 'in/1.pdf': pdf('1') });
    writeFileSync(join(folder, 'in', '2.pdf'), pdf('2'));
    expect(names((await find(folder, { all: ['in/*'] }, { wait: 20 })).intake)).toEqual(['in/1.pdf', 'in/2.pdf']);
  });

  it('fails one that grows meanwhile, and takes the others', async () => {
    const folder = inbox({ 'in/1.pdf': pdf('1') });
    const growing = join(folder, 'in', '2.pdf');
    writeFileSync(growing, pdf('2'));
    const writer = setInterval(() => appendFileSync(growing, 'more'), 5);
    try {
      const { intake } = await find(folder, { all: ['in/*'] }, { wait: 150 });
      expect([names(intake), refusals(intake)]).toEqual([['in/1.pdf'], ['in/2.pdf: failed intake/still-written']]);
    } finally {
      clearInterval(writer);
    }
  });

  it('takes an empty file beside its unfinished download for what it is', async () => {
    const folder = inbox({ 'in/1.pdf': '', 'in/1.pdf.part': pdf('1'), 'in/2.pdf': '' });
    const { intake } = await find(folder, { all: ['in/*.pdf'] });
    expect(refusals(intake)).toEqual(['in/1.pdf: failed intake/still-written', 'in/2.pdf: failed intake/empty']);
  });
});

describe('read-work', () => {
  it('gives the bytes, or the reason when the file has gone since', async () => {
    const folder = inbox({ 'in/1.pdf': pdf('1') });
    const read = await readWork({ path: join(folder, 'in/1.pdf'), entry: undefined });
    expect(read.ok && sha256(read.bytes)).toBe(sha256(pdf('1')));
    mkdirSync(join(folder, 'in/2.pdf'));
    expect(await readWork({ path: join(folder, 'in/none.pdf'), entry: undefined })).toMatchObject({
      reason: { code: 'files/missing-folder' },
    });
    expect(await readWork({ path: join(folder, 'in/2.pdf'), entry: undefined })).toMatchObject({ reason: { code: 'files/is-folder' } });
    addFile(folder, 'in/3.zip', 'x');
    expect(await readWork({ path: join(folder, 'in/3.zip'), entry: 'a' })).toMatchObject({ reason: { code: 'intake/zip-damaged' } });
  });
});
