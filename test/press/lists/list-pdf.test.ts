import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { PDFDocument } from 'pdf-lib';
import { describe, expect, it } from 'vitest';
import { mediaNamed } from '../../../src/geometry/media.js';
import { handOverList } from '../../../src/press/lists/hand-over-list.js';
import { listPdf } from '../../../src/press/lists/list-pdf.js';
import { pickList, type PickLine } from '../../../src/press/lists/pick-list.js';
import { handOvers } from '../../../src/orders/hand-over.js';
import { numberRanges } from '../../../src/orders/number-ranges.js';
import { pickRows } from '../../../src/orders/pick-list.js';
import { order, packed, thing } from '../../orders/packed.js';
import { inTempFolder, outsideCheck, runTool } from '../../outside/tools.js';

const line = (sku: string, changes: Partial<PickLine> = {}): PickLine => ({
  bin: 'A1',
  sku,
  description: `Thing ${sku}`,
  variant: '',
  quantity: 1,
  parcels: '1',
  ...changes,
});
const on = { date: '28 November 2026' };

const parcels = Array.from({ length: 90 }, (_, at) =>
  packed(at + 1, [order(`S-${1001 + at}`, [thing(`MUG-${at % 30}`, 1 + (at % 3), { bin: `B${at % 7}` })])], {
    carrier: at % 2 === 0 ? 'Kite Post' : 'Heron',
  }),
);

/** What a page says, its blanks made one. */
const textOf = (bytes: Uint8Array): Promise<readonly string[]> =>
  inTempFolder((folder) => {
    const path = join(folder, 'list.pdf');
    writeFileSync(path, bytes);
    return runTool('pdftotext', ['-layout', path, '-'])
      .toString()
      .split('\f')
      .slice(0, -1)
      .map((text) => text.replace(/\s+/g, ' '));
  });

describe('a list as a PDF', () => {
  it.each(['4x6in', 'letter', 'a4', '100x150mm'])(
    'has pages of exactly its media, black only, and asks for true size: %s',
    async (name) => {
      const media = mediaNamed(name);
      const made = await listPdf(pickList([line('PIN'), line('BOW')], { ...on, parcels: 1 }, media), media);
      const document = await PDFDocument.load(made.bytes);
      expect(document.getPages().map((page) => page.getSize())).toEqual([{ width: media.width, height: media.height }]);
      expect(made).toMatchObject({ pages: 1, diagnostics: [] });
      expect(document.catalog.getViewerPreferences()?.getPrintScaling()).toBe('None');
    },
  );

  it('is the same bytes each time', async () => {
    const media = mediaNamed('4x6in');
    const make = async (): Promise<Uint8Array> => (await listPdf(pickList([line('PIN')], { ...on, parcels: 1 }, media), media)).bytes;
    expect(Buffer.compare(await make(), await make())).toBe(0);
  });

  it('names in brackets what no typeface has, with one warning for each list', async () => {
    const media = mediaNamed('letter');
    const lines = ['\u{1F426}', '\u{10380}', '\u{1F389}', '\u{1F381}', '\u{1F514}', '\u{1F4E6}', '鷺'];
    const made = await listPdf(
      pickList(
        lines.map((sign) => line('PIN', { description: `Pin ${sign}` })),
        { ...on, parcels: 1 },
        media,
      ),
      media,
    );
    expect(made.diagnostics).toMatchObject([
      {
        code: 'press/substituted',
        severity: 'warning',
        message: expect.stringMatching(/^on the pick list: .*\[bird\].*And 1 more\.$/) as unknown,
      },
    ]);
    expect(made.diagnostics[0]?.message).not.toMatch(/Pin|9DFA/);
  });

  it('says that there is nothing, on one page', async () => {
    const media = mediaNamed('4x6in');
    expect(await listPdf(pickList([], { ...on, parcels: 0 }, media), media)).toMatchObject({ pages: 1 });
    expect(await listPdf(handOverList([], on, media), media)).toMatchObject({ pages: 1 });
  });

  outsideCheck('a pick list says each article, its pieces and its parcels, in order: pdftotext', ['pdftotext'], async () => {
    const rows = pickRows(parcels);
    const lines = rows.map((row) => ({ ...row, parcels: numberRanges(row.numbers) }));
    for (const name of ['letter', '4x6in']) {
      const media = mediaNamed(name);
      const { bytes, pages } = await listPdf(pickList(lines, { ...on, parcels: parcels.length }, media), media);
      const texts = await textOf(bytes);
      expect(texts).toHaveLength(pages);
      const whole = texts.join(' ');
      expect(whole).toContain(`${rows.length} articles, 180 pieces, for 90 parcels.`);
      for (const [index, text] of texts.entries()) {
        expect(text).toContain(`Page ${index + 1} of ${pages}`);
        expect(text).toContain('28 November 2026');
        expect(text).toMatch(/Bin (?:SKU|Article)/);
      }
      let at = 0;
      for (const { sku, bin } of rows) {
        at = whole.indexOf(`${bin} ${sku} `, at);
        expect(at, `${bin} ${sku}`).toBeGreaterThan(0);
      }
      for (const { sku, quantity, parcels: wanted } of lines.slice(0, 5)) {
        const told = new RegExp(
          name === 'letter' ? `${sku} Thing ${sku} ${quantity} ${wanted}` : `${sku} ${quantity} Thing ${sku} for ${wanted}`,
        );
        expect(whole).toMatch(told);
      }
    }
  });

  outsideCheck(
    'a hand-over list says each parcel once, the counts, a place to sign and what it is not: pdftotext',
    ['pdftotext'],
    async () => {
      for (const name of ['a4', '4x6in']) {
        const media = mediaNamed(name);
        const { bytes } = await listPdf(handOverList(handOvers(parcels), on, media), media);
        const texts = await textOf(bytes);
        const whole = texts.join(' ');
        expect(whole).toContain('90 parcels in all: Heron 45, Kite Post 45.');
        for (const { tracking } of parcels) expect(whole.split(tracking)).toHaveLength(2);
        expect(whole.match(/(?:Heron|Kite Post): 45 parcels/g)).toEqual(['Heron: 45 parcels', 'Kite Post: 45 parcels']);
        expect(whole.match(/Taken over by \(name\).*?Signature.*?Date and time/g)).toHaveLength(2);
        for (const text of texts) {
          expect(text).toContain('It is no manifest of a carrier');
          expect(/Heron.*?KP/.test(text.replace(/.*in all[^.]*\./, '')) && / Kite Post /.test(text.replace(/.*in all[^.]*\./, ''))).toBe(
            false,
          );
        }
        expect(whole).not.toMatch(/Robin|Example Street/);
      }
    },
  );
});
