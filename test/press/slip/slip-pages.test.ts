import { describe, expect, it } from 'vitest';
import { gridOf } from '../../../src/geometry/grid.js';
import { slipPages, type SlipPages } from '../../../src/press/slip/slip-pages.js';
import type { SlipContent, SlipLook } from '../../../src/sheet/slip-content.js';
import { showOnGrid, type Shown } from '../pdfium-page.js';
import { empty, item, look, media, order } from './slips.js';

const grid = gridOf('203dpi');
const press = (content: SlipContent, with_: Partial<SlipLook> = {}): Promise<SlipPages> =>
  slipPages(content, { ...look, ...with_ }, media, grid);

const dark = (shown: Shown): number => shown.data.reduce((count, value) => count + (value < 128 ? 1 : 0), 0);

describe('slip pages', () => {
  it('are pages of the media with ink on each', async () => {
    const slip = await press({ ...order, items: Array.from({ length: 30 }, (_, at) => item(1, `Paper star ${at}`)) });
    expect(slip.pages).toBeGreaterThan(1);
    for (let page = 1; page <= slip.pages; page++) {
      expect(dark(await showOnGrid(slip.pdf, page, media.width, media.height, grid))).toBeGreaterThan(3000);
    }
  });

  it('are the same bytes for the same order, whatever was drawn before', async () => {
    const first = await press(order);
    await press({ ...order, studio: 'Σχέδιο', giftMessage: 'محمّد 手作り', orderNumber: 'X-1' });
    const second = await press(order);
    expect(Buffer.compare(first.pdf, second.pdf)).toBe(0);
  });

  it('have nothing to say for an empty order, and say nothing', async () => {
    const slip = await press(empty);
    expect(slip).toMatchObject({ pages: 1, warnings: [] });
    expect(slip.codeBox).toBeUndefined();
  });
});
