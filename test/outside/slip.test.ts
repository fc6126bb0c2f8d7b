import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect } from 'vitest';
import { gridOf } from '../../src/geometry/grid.js';
import { slipPages, type SlipPages } from '../../src/press/slip/slip-pages.js';
import type { SlipContent, SlipLook } from '../../src/sheet/slip-content.js';
import { showOnGrid } from '../press/pdfium-page.js';
import { empty, item, look, media, order, SCRIPTS } from '../press/slip/slips.js';
import { alone, black } from './letters.js';
import { RASTERISERS, rasterisedPages, zbarCodes } from './rasters.js';
import { inTempFolder, outsideCheck, runTool } from './tools.js';

const grid = gridOf('203dpi');
const press = (content: SlipContent, asked: Partial<SlipLook> = {}, on: Parameters<typeof gridOf>[0] = '203dpi'): Promise<SlipPages> =>
  slipPages(content, { ...look, ...asked }, media, gridOf(on));

/** What pdftotext takes out, without its own signs for direction. */
const textOf = (pdf: Uint8Array): string =>
  runTool('pdftotext', ['-enc', 'UTF-8', '-', '-'], pdf)
    .toString()
    .replace(/[\u202a-\u202e\f]/g, '')
    .normalize('NFC');

describe('slips, read by other programs', () => {
  for (const [script, text] of Object.entries(SCRIPTS)) {
    outsideCheck(`${script}: pdftotext takes the text out as it was put in`, ['pdftotext'], async () => {
      const { pdf } = await press({ ...empty, studio: text, items: [item(1, text)], notes: text });
      const lines = textOf(pdf).replace(/\s+/g, ' ');
      expect(lines.split(text.normalize('NFC'))).toHaveLength(4);
    });
  }

  for (const [script, text] of Object.entries(SCRIPTS)) {
    outsideCheck(
      `${script}: a message of 1,000 characters and 60 items come out whole, and an empty field costs nothing`,
      ['pdftotext'],
      async () => {
        const words = Array.from({ length: 200 }, () => text)
          .join(' ')
          .normalize('NFC');
        const giftMessage = words.slice(0, words.lastIndexOf(' ', 1001));
        const items = Array.from({ length: 60 }, (_, at) =>
          item(at + 1, at % 3 === 0 ? '' : text, at % 4 === 0 ? '' : text, `S${at + 1}K`),
        );
        const { pdf, pages, warnings } = await press({ ...empty, items, giftMessage });
        expect(warnings).toEqual([]);
        expect(pages).toBeGreaterThan(1);
        const said = textOf(pdf)
          .replace(/page \d+ of \d+|continued|QTY|ITEM|GIFT MESSAGE/g, '')
          .replace(/\s+/g, '');
        const numbers = Array.from({ length: 60 }, (_, at) => `S${at + 1}K`);
        let from = 0;
        for (const number of numbers) expect((from = said.indexOf(number, from)), number).toBeGreaterThan(0);
        // From the last item's number on there is the message and nothing else.
        expect(said.slice(from + 'S60K'.length)).toBe(giftMessage.replace(/\s+/g, ''));
      },
    );
  }

  outsideCheck('pdftotext takes out marks in their order, ligatures and vowels before their consonant', ['pdftotext'], async () => {
    for (const text of ['محمّد', 'كِتَابٌ جديد', 'لا إله', 'שָׁלוֹם', 'น้ำ ป้ำ', 'कि र्कि', 'fi ffi é']) {
      const taken = textOf((await press({ ...empty, notes: text })).pdf).replace(/\s+/g, ' ');
      expect(taken, text).toContain(text.normalize('NFC'));
    }
  });

  for (const [script, text] of Object.entries(SCRIPTS)) {
    outsideCheck(`${script}: poppler draws the same letters as PDFium does`, ['pdftoppm', 'pdfinfo'], async () => {
      const { pdf } = await press({ ...empty, studio: text, notes: text }, { code: 'none' });
      const [page] = await rasterisedPages('pdftoppm', pdf, 203);
      const shown = await showOnGrid(pdf, 1, media.width, media.height, grid);
      if (!page) throw new Error('no page');
      expect([page.width, page.height]).toEqual([shown.width, shown.height]);
      const dots = { ...shown, dpi: 203 };
      expect(black(page, { x: 0, y: 0, ...media })).toBeGreaterThan(1500);
      // Edges and thin strokes fall on one dot or a neighbour; a lost or a wrong glyph is dozens of dots with nothing near them.
      expect(alone(page, dots)).toBeLessThan(10);
      expect(alone(dots, page)).toBeLessThan(10);
    });
  }

  for (const tool of RASTERISERS) {
    for (const on of ['203dpi', '300dpi'] as const) {
      outsideCheck(`${tool} at ${on}: zbar reads the order number from every page`, [tool, 'pdfinfo', 'zbarimg'], async () => {
        const items = Array.from({ length: 12 }, () => item(1, 'Paper star', 'Ivory', 'ST-IV'));
        for (const [orderNumber, code, type] of [
          ['LK-20417-731', 'code128', 'CODE-128'],
          ['20417731', 'code128', 'CODE-128'],
          ['LK-20417-731', 'qr', 'QR-Code'],
          ['LK-20417-731/'.repeat(4), 'code128', 'QR-Code'],
        ] as const) {
          const slip = await press({ ...order, orderNumber, items }, { code }, on);
          const pages = await rasterisedPages(tool, slip.pdf, gridOf(on).dpi);
          expect(pages).toHaveLength(slip.pages);
          expect(pages.length).toBeGreaterThan(1);
          for (const page of pages) {
            const codes = await zbarCodes(page);
            expect(codes.map(({ type: kind, bytes }) => [kind, Buffer.from(bytes, 'hex').toString()])).toEqual([[type, orderNumber]]);
          }
        }
      });
    }

    outsideCheck(`${tool}: the number's box and the code's clear space are white on every page`, [tool, 'pdfinfo'], async () => {
      const items = Array.from({ length: 20 }, () => item(1, 'Paper star '.repeat(9), 'Ivory', 'ST-IV'));
      for (const code of ['code128', 'qr'] as const) {
        const { pdf, numberBox, codeBox } = await press({ ...order, items }, { code });
        if (!codeBox) throw new Error('no code');
        const quiet = code === 'qr' ? (16 * 72) / 203 : (30 * 72) / 203;
        for (const page of await rasterisedPages(tool, pdf, 203)) {
          expect(black(page, numberBox)).toBe(0);
          expect(black(page, { ...codeBox, width: quiet })).toBe(0);
          expect(black(page, { ...codeBox, x: codeBox.x + codeBox.width - quiet, width: quiet })).toBe(0);
          if (code === 'qr') expect(black(page, { ...codeBox, height: quiet })).toBe(0);
          expect(black(page, codeBox)).toBeGreaterThan(2000);
        }
      }
    });
  }

  outsideCheck('qpdf finds nothing wrong in the file', ['qpdf'], async () => {
    const { pdf } = await press({ ...order, giftMessage: Object.values(SCRIPTS).join('\n') });
    await inTempFolder((folder) => {
      const path = join(folder, 'slip.pdf');
      writeFileSync(path, pdf);
      expect(runTool('qpdf', ['--check', path]).toString()).toContain('No syntax or stream encoding errors found');
    });
  });
});
