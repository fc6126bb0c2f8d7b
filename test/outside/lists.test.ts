import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect } from 'vitest';
import { gridOf } from '../../src/geometry/grid.js';
import { mediaNamed } from '../../src/geometry/media.js';
import { handOverList } from '../../src/press/lists/hand-over-list.js';
import { listPdf } from '../../src/press/lists/list-pdf.js';
import { pickList, type PickLine } from '../../src/press/lists/pick-list.js';
import { showOnGrid } from '../press/pdfium-page.js';
import { SCRIPTS } from '../press/slip/slips.js';
import { alone, black } from './letters.js';
import { rasterisedPages } from './rasters.js';
import { inTempFolder, outsideCheck, runTool } from './tools.js';

const media = mediaNamed('4x6in');
const letter = mediaNamed('letter');
const line = (changes: Partial<PickLine>): PickLine => ({
  bin: 'A1',
  sku: 'NB-A5',
  description: '',
  variant: '',
  quantity: 1,
  parcels: '3, 7, 12–15',
  ...changes,
});
const pick = async (lines: readonly PickLine[], page = letter): Promise<Uint8Array> =>
  (await listPdf(pickList(lines, { date: '28 November 2026', parcels: 4 }, page), page)).bytes;

/** What pdftotext takes out, without its own signs for direction, its blanks made one. */
const textOf = (pdf: Uint8Array): string =>
  runTool('pdftotext', ['-enc', 'UTF-8', '-', '-'], pdf)
    .toString()
    .replace(/[\u202a-\u202e\f]/g, '')
    .normalize('NFC')
    .replace(/\s+/g, ' ');

describe('lists, read by other programs', () => {
  for (const [script, text] of Object.entries(SCRIPTS)) {
    outsideCheck(`${script}: pdftotext takes an article and a carrier out as they were put in`, ['pdftotext'], async () => {
      for (const page of [letter, media]) {
        const said = textOf(await pick([line({ description: text })], page));
        expect(said).toContain(text.normalize('NFC'));
        expect(said).toContain('NB-A5');
        expect(said).toContain('3, 7, 12–15');
        const parcels = [{ number: 1, tracking: '940011', orders: ['S-1'], postcode: '00000', country: '' }];
        const { bytes } = await listPdf(handOverList([{ carrier: text, parcels }], { date: '28 November 2026' }, page), page);
        // In the sentence with the sum of all, as heading and with the sum of its own.
        expect(textOf(bytes).split(text.normalize('NFC'))).toHaveLength(4);
      }
    });
  }

  outsideCheck('poppler draws the same letters as PDFium does, in all scripts', ['pdftoppm', 'pdfinfo'], async () => {
    const lines = Object.values(SCRIPTS).map((text) => line({ description: text, sku: text, variant: text }));
    const pdf = await pick(lines, media);
    for (const [at, page] of (await rasterisedPages('pdftoppm', pdf, 203)).entries()) {
      const shown = await showOnGrid(pdf, at + 1, media.width, media.height, gridOf('203dpi'));
      expect([page.width, page.height]).toEqual([shown.width, shown.height]);
      const dots = { ...shown, dpi: 203 };
      expect(black(page, { x: 0, y: 0, ...media })).toBeGreaterThan(3000);
      // A lost or a wrong glyph is dozens of dots with nothing near them.
      expect(alone(page, dots)).toBeLessThan(10);
      expect(alone(dots, page)).toBeLessThan(10);
    }
  });

  outsideCheck('numbers and Latin words among another script are the same words', ['pdftotext'], async () => {
    const mixed = ['דפתר A5 כחול', 'دفتر A5 أزرق', '手作りノート A5 (12)', 'สมุด A5 เล่ม 12'];
    const said = textOf(await pick(mixed.map((description, at) => line({ description, sku: `SKU-${at}` }))));
    for (const [at, description] of mixed.entries()) {
      // In a row of a table pdftotext puts the words of a line by its first one's direction.
      for (const word of description.split(' ')) expect(said).toContain(word);
      expect(said).toContain(`SKU-${at}`);
    }
  });

  outsideCheck('qpdf finds nothing wrong in the file', ['qpdf'], async () => {
    const pdf = await pick(Object.values(SCRIPTS).map((description) => line({ description })));
    await inTempFolder((folder) => {
      const path = join(folder, 'list.pdf');
      writeFileSync(path, pdf);
      expect(runTool('qpdf', ['--check', path]).toString()).toContain('No syntax or stream encoding errors found');
    });
  });
});
