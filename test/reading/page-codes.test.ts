import { inflateRawSync } from 'node:zlib';
import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import type { Box } from '../../src/geometry/box.js';
import { takeCounts } from '../../src/reading/counters.js';
import { codeLikeAreas } from '../../src/reading/code-like.js';
import { readCodes } from '../../src/reading/codes.js';
import { openImage } from '../../src/reading/open-image.js';
import { readPageCodes } from '../../src/reading/page-codes.js';
import { code128, dataMatrix, itf, pdf417, qr } from '../samples/code-art.js';
import { DOT, Drawing } from '../samples/drawing.js';
import { QUARTER_TURNS } from '../samples/sample.js';
import { drawnPage } from './drawn-page.js';

const SOFT_BARS =
  'tZJRCsAgDEN7zR4w5/IoGZujpaWiU5avgI8QQ8k9iYiaA9nkEUgEZ6gDt2ukWoL2p2lqgb5ZXCzQUax39SoV6lVO0AIYFchocL6m/xY5tVqgKICA5uE/ovON7CKEv+oC';
const FINE = 406 / 72;
const art = (): Drawing =>
  new Drawing(288, 432)
    .text(144, 40, 'SAMPLE ONLY', { size: 30, bold: true, align: 'center' })
    .bars(code128('SAMPLE-000001'), 144, 120, 2 * DOT, 60)
    .bars(itf('12345678901234'), 250, 300, 2 * DOT, 50, 90)
    .matrix(dataMatrix('SAMPLE|0001'), 40, 200, 4 * DOT)
    .matrix(qr('https://example.test/1'), 120, 200, 3 * DOT)
    .matrix(pdf417('SAMPLE 0001, NOT VALID', 4), 100, 330, 2 * DOT);
const all = (page: { width: number; height: number }): Box => ({ x: 0, y: 0, width: page.width, height: page.height });
const bytes = (codes: readonly { bytes: string }[]) => codes.map((each) => each.bytes).sort();

describe('readPageCodes', () => {
  it('finds every code of a page at each turn, each once', async () => {
    const drawing = art();
    for (const turn of QUARTER_TURNS) {
      const page = await drawnPage(drawing, turn);
      expect(bytes(await readPageCodes(page, all(page), () => FINE))).toEqual(bytes(drawing.codes()));
    }
  });

  it('finds bars with a rule in their quiet zone, either way', async () => {
    const close = new Drawing(432, 288).bars(code128('SAMPLE01'), 216, 120, 7 * DOT, 60);
    const { x, y, width, height } = close.codes()[0]?.box ?? expect.fail('a code');
    close.rect(x - 12, y, 1, height).rect(x + width + 11, y, 1, height);
    for (const turn of QUARTER_TURNS) {
      const page = await drawnPage(close, turn);
      expect(bytes(await readPageCodes(page, all(page), () => FINE))).toEqual(bytes(close.codes()));
    }
  });

  it.each([
    ['QR', qr('https://example.test/sample/0001'), 4],
    ['Data Matrix', dataMatrix('SAMPLE|0001|NOT VALID'), 1],
  ] as const)('reads a %s code with words and rules just outside its quiet zone, at each size of both', async (_, art, quiet) => {
    for (const module of [3 * DOT, 5 * DOT]) {
      for (const size of [8, 13]) {
        const drawing = new Drawing(288, 432).matrix(art, 100, 120, module);
        const { x, y, width, height } = drawing.codes()[0]?.box ?? expect.fail('a code');
        const gap = Math.max(quiet * module, 3);
        drawing.rect(x - gap - 1, y - gap - 1, 180, 1).rect(x - gap - 1, y - gap - 1, 1, 150);
        for (const line of [0, 1, 2, 3]) {
          drawing.text(x + width + gap, y + (line + 1) * 1.1 * size, 'SAMPLE Street 17', { size, bold: true });
          drawing.text(x, y + height + gap + (line + 1) * 1.1 * size, 'SAMPLE 0000 1111', { size, bold: true });
        }
        const page = await drawnPage(drawing);
        expect(bytes(await readPageCodes(page, all(page), () => FINE)), `${module.toFixed(2)} pt, ${size} pt`).toEqual(
          bytes(drawing.codes()),
        );
      }
    }
  });

  it.each([
    ['QR', qr('SAMPLE-0001')],
    ['Data Matrix', dataMatrix('SAMPLE|0001|NOT VALID')],
  ] as const)('reads a %s code with modules larger than type, where there is no other', async (_, art) => {
    const large = new Drawing(288, 432).text(20, 40, 'SAMPLE', { size: 24, bold: true }).matrix(art, 144, 180, 8);
    const page = await drawnPage(large);
    expect(codeLikeAreas(page).map(({ kind }) => kind)).toEqual(['matrix']);
    expect(bytes(await readPageCodes(page, all(page), () => 203 / 72))).toEqual(bytes(large.codes()));
  });

  it('reads a picture’s bars by their greys where its pixels alone, each ink or paper, say too little', async () => {
    // A row of pixels of a Code 39 that another program drew at 300 dpi, 2.7 pixels a module.
    const row = inflateRawSync(Buffer.from(SOFT_BARS, 'base64'));
    const pixels = Buffer.concat(Array.from({ length: 190 }, () => row));
    const png = await sharp(pixels, { raw: { width: row.length, height: 190, channels: 1 } })
      .extend({ top: 60, bottom: 60, left: 60, right: 60, background: 'white' })
      .withMetadata({ density: 300 })
      .png()
      .toBuffer();
    const source = await openImage(new Uint8Array(png));
    if ('refused' in source) throw new Error(source.refused.message);
    const page = source.page(1);
    expect(await readCodes(page.render(all(page), 'own'))).toEqual([]);
    const [code, ...more] = await readPageCodes(page, all(page), () => 'own');
    expect([code?.symbology, Buffer.from(code?.bytes ?? '', 'hex').toString(), more]).toEqual(['Code 39', 'LX0098123477', []]);
  });

  it('tells only the codes that lie in the region whole', async () => {
    const page = await drawnPage(art());
    const upper = await readPageCodes(page, { x: 0, y: 0, width: 288, height: 170 }, () => FINE);
    expect(upper.map(({ symbology }) => symbology)).toEqual(['Code 128']);
    expect(await readPageCodes(page, { x: 0, y: 0, width: 144, height: 170 }, () => FINE)).toEqual([]);
  });

  it('reads no more areas than there are codes, and the whole page once when thorough', async () => {
    const drawing = art();
    const page = await drawnPage(drawing);
    page.ink();
    takeCounts();
    await readPageCodes(page, all(page), () => FINE);
    const { decodes, sourceRasters } = takeCounts();
    // Stacked codes are first tried as rows of bars, then as what they are.
    expect(decodes).toBeLessThanOrEqual(drawing.codes().length + 2);
    expect(sourceRasters).toBe(decodes);
    expect(bytes(await readPageCodes(page, all(page), () => FINE, { thorough: true }))).toEqual(bytes(drawing.codes()));
    expect(takeCounts()).toMatchObject({ decodes: 1, sourceRasters: 1 });
  });

  it('decodes nothing when nothing on the page looks like a code, and all of it when it is to be thorough', async () => {
    const page = await drawnPage(new Drawing(200, 200).text(20, 40, 'SAMPLE', { size: 12 }));
    takeCounts();
    expect(await readPageCodes(page, all(page), () => FINE)).toEqual([]);
    expect(takeCounts().decodes).toBe(0);
    expect(await readPageCodes(page, all(page), () => FINE, { thorough: true })).toEqual([]);
    expect(takeCounts().decodes).toBe(1);
  });
});
