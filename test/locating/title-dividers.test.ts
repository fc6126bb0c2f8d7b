import { describe, expect, it } from 'vitest';
import { titleDividers } from '../../src/locating/title-dividers.js';
import { drawnPage } from '../reading/drawn-page.js';
import { Drawing } from '../samples/drawing.js';

/** A page with writing at its head and something that is titled so below it. */
async function linesOver(title: string, at: { readonly y?: number; readonly size?: number; readonly beside?: 'a line' | 'more' } = {}) {
  const { y = 300, size = 16, beside } = at;
  const d = new Drawing(612, 792);
  d.block(60, 60, ['Ada Invented', '14 Sample Lane', 'Larch Halt EX 00187', 'and some lines of type', 'that are all of one size'], {
    size: 10,
  });
  d.text(60, y, title, { size }).block(60, y + 20, ['Service, Tracked', 'Price, 4.35', 'SAMPLE'], { size: 10 });
  if (beside === 'a line') d.text(400, y, 'Thistle & Tin', { size });
  if (beside === 'more') d.rect(400, y - 60, 100, 180);
  return titleDividers(await drawnPage(d));
}

describe('titleDividers', () => {
  it('lie in the white over the title of another paper', async () => {
    const [line, ...others] = await linesOver('Receipt - keep for your records');
    expect(others).toEqual([]);
    expect(line).toMatchObject({ x: 0, width: 612 });
    expect(line?.y).toBeGreaterThan(150);
    expect(line?.y).toBeLessThan(285);
    expect(await linesOver('Packing slip', { beside: 'a line' })).toHaveLength(1);
  });

  it('lie over the title of a table or a paragraph wider than labels are across, too, however close below a line', async () => {
    const over = async (rows: number, width: number, size = 12): Promise<number> => {
      const d = new Drawing(612, 792);
      d.block(60, 60, Array<string>(12).fill('and some lines of type that are all of one size'), { size: 9 });
      d.text(60, 202, 'Order lines', { size });
      for (let row = 0; row < rows; row++)
        d.text(60, 220 + row * 14, 'PF-210', { size: 9 }).text(60 + width, 220 + row * 14, '6.00', { size: 9 });
      return titleDividers(await drawnPage(d)).length;
    };
    expect(await over(2, 420)).toBe(1);
    expect(await over(1, 420)).toBe(0);
    expect(await over(2, 200)).toBe(0);
    expect(await over(2, 420, 9)).toBe(0);
  });

  it.each([
    ['a label may hold it', 'Customs declaration', {}],
    ['it is another title', 'Thank you', {}],
    ['it is set as all else', 'Receipt', { size: 10 }],
    ['there is no more white than between lines', 'Receipt', { y: 124 }],
    ['something goes on beside it', 'Receipt', { beside: 'more' as const }],
  ])('are none where %s', async (_, title, at) => {
    expect(await linesOver(title, at)).toEqual([]);
  });
});
