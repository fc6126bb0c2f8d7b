import { describe, expect, it } from 'vitest';
import { runningLines } from '../../src/locating/running-lines.js';
import { drawnPage } from '../reading/drawn-page.js';
import { Drawing } from '../samples/drawing.js';

const ADDRESS = 'https://www.shop.example/orders/print';
const page = (foot: readonly string[], more: (d: Drawing) => Drawing = (d) => d): Drawing => {
  const d = new Drawing(612, 792).text(20, 18, '11/24/26, 9:41 AM', { size: 7 }).text(306, 18, 'Print your label', { size: 7 });
  for (const [k, text] of foot.entries()) d.text(20 + 550 * k, 780, text, { size: 7 });
  return more(d.text(100, 60, 'What the page is about.', { size: 10 }));
};
const linesOf = async (drawing: Drawing, turn: 0 | 90 = 0) =>
  runningLines(await drawnPage(drawing, turn)).map(({ x, y, width, height }) => [x, y, x + width, y + height].map(Math.round));

describe('runningLines', () => {
  it("are a browser's lines at head and foot, which way ever the page is turned", async () => {
    const [head, foot, ...more] = await linesOf(page([ADDRESS, '1/2']));
    expect(more).toEqual([]);
    expect([Math.round((head?.[0] ?? 0) / 20), (head?.[3] ?? 99) < 28, Math.round((foot?.[0] ?? 0) / 20), (foot?.[1] ?? 0) > 764]).toEqual([
      1,
      true,
      1,
      true,
    ]);
    expect(await linesOf(page([ADDRESS, '1/2']), 90)).toHaveLength(2);
    expect(await linesOf(page(['shop.example/orders/print', '1/2']))).toHaveLength(2);
    expect(await linesOf(page([ADDRESS, '1/2'], (d) => d.text(420, 18, 'Order 17 - print', { size: 7 })))).toHaveLength(2);
  });

  it('are none without an address and a page number, or with a line at one end only', async () => {
    expect(await linesOf(page([ADDRESS]))).toEqual([]);
    expect(await linesOf(page(['Pottery on the hill', '1/2']))).toEqual([]);
    expect(await linesOf(page(['Pottery and/or tin', '1/2']))).toEqual([]);
    expect(await linesOf(page([]))).toEqual([]);
  });

  it('are none where the margin holds more than one line, large type, or other words close by', async () => {
    expect(await linesOf(page([ADDRESS, '1/2'], (d) => d.text(60, 27, 'Sender', { size: 6 })))).toEqual([]);
    expect(await linesOf(page([ADDRESS, '1/2'], (d) => d.text(400, 20, 'PARCEL', { size: 14 })))).toEqual([]);
    expect(await linesOf(page([ADDRESS, '1/2'], (d) => d.text(60, 32, 'Sender', { size: 8 })))).toEqual([]);
  });
});
