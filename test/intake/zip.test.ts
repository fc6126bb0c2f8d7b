import { readdirSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { sha256 } from '../../src/files/fingerprint.js';
import { INTAKE_LIMITS } from '../../src/intake/limits.js';
import { readWork } from '../../src/intake/read-work.js';
import { counts } from '../../src/intake/zip.js';
import { smallPdf as pdf } from '../faults/inputs/documents.js';
import { zipOf, type ZipFile } from '../faults/inputs/zips.js';
import { addFile, find, inbox, names, refusals } from './inbox.js';

const file = (name: string, changes: Partial<ZipFile> = {}): ZipFile => ({ name, data: pdf(name), ...changes });
const findIn = (zip: Uint8Array, limits = INTAKE_LIMITS) => find(inbox({ 'in/day.zip': zip }), { all: ['in/*'] }, { limits });

describe('zip', () => {
  it('makes a document of each file, in natural order, and reads each one back', async () => {
    const { intake } = await findIn(
      zipOf([file('b/label 10.pdf'), file('b/label 2.pdf', { stored: true }), file('größe.pdf'), file('a.pdf')]),
    );
    expect(names(intake)).toEqual(['in/day.zip/a.pdf', 'in/day.zip/b/label 2.pdf', 'in/day.zip/b/label 10.pdf', 'in/day.zip/größe.pdf']);
    for (const item of intake.work) {
      const read = await readWork(item);
      if (!read.ok) throw new Error(read.reason.code);
      expect(sha256(read.bytes)).toBe(item.sha256);
      expect(read.bytes.length).toBe(item.size);
      expect(Buffer.compare(read.bytes, pdf(item.entry ?? ''))).toBe(0);
    }
    expect(intake.work).toHaveLength(4);
  });

  it('goes through its names once to find them and once more to read them, however many there are, and anew when it was replaced', async () => {
    const folder = inbox({ 'in/day.zip': zipOf(Array.from({ length: 30 }, (_, n) => file(`${n}.pdf`))) });
    const before = counts.directories;
    const { intake } = await find(folder, { all: ['in/*'] });
    for (const item of intake.work) expect((await readWork(item)).ok).toBe(true);
    expect(counts.directories - before).toBeLessThanOrEqual(2);

    addFile(folder, 'in/day.zip', zipOf([file('another.pdf'), file('7.pdf', { data: pdf('other') })]));
    const [item] = intake.work.filter(({ entry }) => entry === '7.pdf');
    if (!item) throw new Error('no 7.pdf');
    const read = await readWork(item);
    expect(read.ok && Buffer.compare(read.bytes, pdf('other'))).toBe(0);
  });

  it('judges each file in it as one in a folder', async () => {
    const { intake } = await findIn(
      zipOf([
        file('a.pdf'),
        file('again.pdf', { data: pdf('a.pdf') }),
        file('page.pdf', { data: Buffer.from('<html></html>') }),
        file('empty.pdf', { data: Buffer.alloc(0) }),
        file('__MACOSX/._a.pdf'),
        file('.hidden.pdf'),
        file('half.pdf.part'),
        file('inner.zip', { data: zipOf([file('x.pdf')]) }),
        file('folder/', { data: Buffer.alloc(0), stored: true }),
      ]),
    );
    expect(names(intake)).toEqual(['in/day.zip/a.pdf']);
    expect(refusals(intake).sort()).toEqual([
      'in/day.zip/.hidden.pdf: skipped intake/hidden-file',
      'in/day.zip/__MACOSX/._a.pdf: skipped intake/hidden-file',
      'in/day.zip/again.pdf: skipped intake/duplicate',
      'in/day.zip/empty.pdf: failed intake/empty',
      'in/day.zip/half.pdf.part: failed intake/partial-download',
      'in/day.zip/inner.zip: failed intake/zip-in-zip',
      'in/day.zip/page.pdf: failed intake/html',
    ]);
  });

  it('loses only the file that is damaged, has a wrong check sum, lies about its size, or has its name twice', async () => {
    const { intake } = await findIn(
      zipOf([
        file('good.pdf'),
        file('sum.pdf', { saidCrc: 1 }),
        file('longer.pdf', { saidSize: 10 }),
        file('shorter.pdf', { saidSize: 100_000 }),
        file('odd.pdf', { method: 98 }),
        file('twice.pdf'),
        file('twice.pdf', { data: pdf('other') }),
      ]),
    );
    expect(names(intake)).toEqual(['in/day.zip/good.pdf']);
    expect(refusals(intake).sort()).toEqual([
      'in/day.zip/longer.pdf: failed intake/zip-damaged',
      'in/day.zip/odd.pdf: failed intake/zip-method',
      'in/day.zip/shorter.pdf: failed intake/zip-damaged',
      'in/day.zip/sum.pdf: failed intake/zip-damaged',
      'in/day.zip/twice.pdf: failed intake/zip-same-name',
      'in/day.zip/twice.pdf: failed intake/zip-same-name',
    ]);
  });

  it('reads files with names that step upwards, and writes nothing anywhere', async () => {
    const folder = inbox({
      'in/day.zip': zipOf([file('../../evil.pdf'), file('/etc/abs.pdf'), file('..\\back.pdf'), file('a\u001b[2J.pdf')]),
    });
    const before = readdirSync(dirname(folder)).filter((name) => name.includes('evil'));
    const { intake } = await find(folder, { all: ['in/*'] });
    expect(names(intake)).toEqual(['in/day.zip/a?[2J.pdf', 'in/day.zip/back.pdf', 'in/day.zip/etc/abs.pdf', 'in/day.zip/evil.pdf']);
    for (const item of intake.work) expect(await readWork(item)).toMatchObject({ ok: true });
    expect(readdirSync(folder)).toEqual(['in']);
    expect(readdirSync(join(folder, 'in'))).toEqual(['day.zip']);
    expect(readdirSync(dirname(folder)).filter((name) => name.includes('evil'))).toEqual(before);
  });

  const whole = zipOf([file('a.pdf'), file('b.pdf')]);
  const refusedWhole: [string, string, Uint8Array][] = [
    ['locked with a password', 'intake/zip-encrypted', zipOf([file('a.pdf', { encrypted: true }), file('b.pdf')])],
    ['without files', 'intake/zip-empty', zipOf([])],
    ['with folders only', 'intake/zip-empty', zipOf([file('x/', { data: Buffer.alloc(0) })])],
    ['cut off at its end', 'intake/zip-damaged', whole.subarray(0, whole.length - 30)],
    ['cut off in the middle', 'intake/zip-damaged', whole.subarray(0, 200)],
    [
      'whose directory is nonsense',
      'intake/zip-damaged',
      Buffer.concat([whole.subarray(0, -90), Buffer.alloc(68, 7), whole.subarray(-22)]),
    ],
    ['that is an office document', 'intake/office-document', zipOf([file('[Content_Types].xml'), file('word/document.xml')])],
    ['that is an open document', 'intake/office-document', zipOf([file('mimetype', { stored: true }), file('content.xml')])],
    ['of too many files', 'intake/zip-too-large', zipOf(Array.from({ length: 12 }, (_, i) => file(`${i}.pdf`)))],
    [
      'that unpacks to too much in all',
      'intake/zip-too-large',
      zipOf([1, 2, 3].map((i) => file(`${i}`, { data: Buffer.alloc(9_000_000, i) }))),
    ],
    ['that unpacks to thousands of times its size', 'intake/zip-too-large', zipOf([file('0', { data: Buffer.alloc(20_000_000) })])],
  ];
  it.each(refusedWhole)('refuses a ZIP %s as a whole, in one line', async (_what, code, zip) => {
    const { intake } = await findIn(zip, { ...INTAKE_LIMITS, zipEntries: 10, zipBytes: 25_000_000 });
    expect(refusals(intake)).toEqual([`in/day.zip: failed ${code}`]);
    expect(intake.work).toEqual([]);
    expect(intake.refused[0]?.reason.remedy).toMatch(/^[A-Z].*\.$/);
  });

  it('refuses one file beyond the limit of a document', async () => {
    const { intake } = await findIn(zipOf([file('a.pdf'), file('b.pdf', { data: Buffer.alloc(5000, 'x') })]), {
      ...INTAKE_LIMITS,
      documentBytes: 4000,
    });
    expect([names(intake), refusals(intake)]).toEqual([['in/day.zip/a.pdf'], ['in/day.zip/b.pdf: failed intake/too-large']]);
  });
});
