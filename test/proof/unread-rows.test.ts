import { PDFDocument, rgb } from 'pdf-lib';
import { describe, expect, it } from 'vitest';
import { openSource } from '../../src/batch/open-source.js';
import { processDocument } from '../../src/batch/process-document.js';
import { loadRecipe } from '../../src/config/load-recipe.js';
import { unreadRows } from '../../src/proof/unread-rows.js';
import { ROOT } from '../house/tree.js';
import { LAYOUTS } from '../samples/layouts.js';
import { sample, type Sample } from '../samples/sample.js';

const WHOLE = { x: 0, y: 0, width: 288, height: 432 };

async function label(): Promise<Sample> {
  const layout = LAYOUTS.find(({ name }) => name === 'page-4x6');
  if (!layout) throw new Error('no layout');
  return sample(layout, 'vector', 0);
}

describe('unreadRows', () => {
  it('names the rows of bars that no code explains', async () => {
    const document = await openSource((await label()).bytes);
    if ('refused' in document) throw new Error(document.refused.code);
    const page = document.page(1);
    const codes = await page.codes(WHOLE, 203 / 36);
    expect(unreadRows(page, WHOLE, codes)).toEqual([]);
    expect(unreadRows(page, WHOLE, codes.slice(1))).toHaveLength(1);
    expect(unreadRows(page, WHOLE, [])).toHaveLength(2);
    document.close();
  });

  it('holds a label whose main code is spoilt, although its other code reads', async () => {
    const { bytes, expected } = await label();
    const main = expected.pages[0]?.labels[0]?.codes.reduce((large, code) => (code.box.width > large.box.width ? code : large));
    if (!main) throw new Error('no code');
    const pdf = await PDFDocument.load(bytes, { updateMetadata: false });
    for (let bar = 1; bar < 16; bar += 1) {
      const x = main.box.x + (bar * main.box.width) / 16;
      pdf.getPage(0).drawRectangle({ x, y: 432 - main.box.y - main.box.height, width: 2, height: main.box.height, color: rgb(0, 0, 0) });
    }
    const { value } = loadRecipe('any-page', ROOT);
    if (!value) throw new Error('any-page has mistakes');
    const { items } = await processDocument({ bytes: await pdf.save(), shownName: 'a.pdf', recipe: value, media: '4x6in', grid: '203dpi' });
    expect(items.map(({ state }) => state)).toMatchObject([{ kind: 'held', code: 'verify/unread-bars' }]);
    expect(items[0]?.codes).toHaveLength(1);
  });
});
