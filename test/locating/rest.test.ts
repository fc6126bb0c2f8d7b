import { describe, expect, it } from 'vitest';
import type { Box } from '../../src/geometry/box.js';
import { inkBlobs } from '../../src/locating/ink-blobs.js';
import { isSlip, restOf, type Rest } from '../../src/locating/rest.js';
import { phrasesOf } from '../../src/reading/word-lines.js';
import { drawnPage } from '../reading/drawn-page.js';
import { code128 } from '../samples/code-art.js';
import { Drawing } from '../samples/drawing.js';

const LABEL: Box = { x: 40, y: 40, width: 288, height: 432 };

async function rest(draw: (page: Drawing) => void, labels: readonly Box[] = [LABEL]): Promise<Rest> {
  const d = new Drawing(612, 792);
  for (const { x, y, width, height } of labels) d.frame(x, y, width, height, 1.5);
  draw(d);
  const page = await drawnPage(d);
  return restOf(page, labels, inkBlobs(page.ink()), phrasesOf(page.words()));
}

describe('restOf', () => {
  it('is nothing when there is only the label', async () => {
    expect(await rest((d) => d.text(60, 80, 'PACKING SLIP INSIDE'))).toMatchObject({ name: undefined, returns: undefined, box: undefined });
  });

  it('is one rectangle about all ink beside the label, and what it calls itself', async () => {
    const { name, box } = await rest((d) => {
      d.text(40, 540, 'Packing slip', { size: 18 });
      d.rect(60, 560, 400, 90, 0.4);
      d.text(60, 670, 'One mug, one bowl, and the cards for the shop window.', { size: 9 });
    });
    expect(name).toEqual({ kind: 'packing-slip', words: 'packing slip', heading: true });
    expect(Math.abs((box?.x ?? 0) - 41)).toBeLessThan(2);
    expect(Math.abs((box?.x ?? 0) + (box?.width ?? 0) - 460)).toBeLessThan(2);
    expect(box?.y).toBeGreaterThan(520);
    expect(box && box.y + box.height).toBeLessThan(680);
  });

  it('tells what speaks of a return apart from what the paper is', async () => {
    const { name, returns } = await rest((d) => d.text(40, 540, 'Return label', { size: 14 }).text(40, 600, 'Instructions', { size: 14 }));
    expect(name?.kind).toBe('instructions');
    expect(returns).toBe('return label');
  });

  it('has no rectangle where its ink lies on two sides of the label', async () => {
    const below = (d: Drawing): unknown => d.rect(40, 520, 300, 100);
    expect((await rest((d) => below(d))).box).toBeDefined();
    expect((await rest((d) => (below(d), d.rect(400, 40, 100, 100)))).box).toBeUndefined();
  });

  it('has no rectangle between two labels and about them', async () => {
    const second = { ...LABEL, x: 340, width: 250 };
    const both = [LABEL, second];
    expect((await rest((d) => d.rect(40, 520, 500, 100), both)).box).toBeDefined();
    expect((await rest((d) => d.rect(40, 520, 500, 100).rect(40, 10, 500, 10), both)).box).toBeUndefined();
  });

  it('does not count a cut line across the page', async () => {
    expect((await rest((d) => d.line(0, 500, 612, 500, 0.75, 4))).box).toBeUndefined();
    const { box } = await rest((d) => d.line(0, 500, 612, 500, 0.75, 4).rect(60, 560, 200, 90));
    expect(box?.y).toBeGreaterThan(550);
  });
});

/** A table of items in no language of the vocabulary, from its left top. */
function items(d: Drawing, x: number, y: number, heading = 'Zubereh'): void {
  d.text(x, y, heading, { size: 16 });
  [
    ['2', 'Walomu', '12.50'],
    ['1', 'Kibare', '7.00'],
    ['5', 'Sutole', '1.25'],
  ].forEach(([quantity = '', item = '', price = ''], row) => {
    d.text(x, y + 30 + 18 * row, quantity, { size: 9 });
    d.text(x + 60, y + 30 + 18 * row, item, { size: 9 });
    d.text(x + 300, y + 30 + 18 * row, price, { size: 9 });
  });
}

describe('a slip beside a label', () => {
  it('is told by its rows of items where no word says what it is', async () => {
    const seen = await rest((d) => {
      items(d, 40, 540);
    });
    expect(seen).toMatchObject({ name: undefined, items: 3, others: false });
    expect(isSlip(seen)).toBe(true);
  });

  it('may call itself a bill, but is none without rows of items, and no receipt or list', async () => {
    const called = async (name: string, rows: boolean): Promise<boolean> =>
      isSlip(
        await rest((d) => {
          if (rows) items(d, 40, 540, name);
          else d.text(40, 540, name, { size: 16 }).text(40, 600, 'Thank you for coming by.', { size: 9 });
        }),
      );
    expect(await called('Invoice', true)).toBe(true);
    expect(await called('Invoice', false)).toBe(false);
    expect(await called('Packing slip', false)).toBe(true);
    expect(await called('Pick list', true)).toBe(false);
    expect(await called('Receipt', true)).toBe(false);
  });

  it('is none where a code stands in it and no word says what it is', async () => {
    const seen = await rest((d) => {
      items(d, 40, 540);
      d.bars(code128('SAMPLE-000001'), 200, 680, 1.2, 40);
    });
    expect(isSlip(seen)).toBe(false);
  });

  it('has its side of the label to itself where what stands elsewhere explains itself; that is told', async () => {
    const steps = (d: Drawing, x: number): unknown =>
      d.text(x, 80, 'How to send', { size: 11 }).text(x, 96, '1. Cut it out.', { size: 9 }).text(x, 110, '2. Stick it on.', { size: 9 });
    const seen = await rest((d) => {
      items(d, 40, 540);
      steps(d, 380);
      d.frame(370, 200, 200, 120, 1).text(390, 240, 'Ten off, 4 to 7 June', { size: 14 });
      d.text(380, 400, 'Terms: goods stay ours until they are paid for, clause 1204.', { size: 6 });
    });
    expect(seen).toMatchObject({ items: 3, others: true });
    expect(seen.box?.y).toBeGreaterThan(500);
    expect((seen.box?.x ?? 0) + (seen.box?.width ?? 0)).toBeLessThan(400);
  });

  it.each<[string, (d: Drawing) => unknown]>([
    ['a message', (d) => d.text(380, 100, 'Happy birthday, dear Anna!', { size: 11 }).text(380, 200, 'From all of us.', { size: 11 })],
    ['an address', (d) => d.text(380, 100, '12 Example Street', { size: 10 })],
    [
      'more items',
      (d) =>
        d
          .text(380, 100, '2', { size: 7 })
          .text(420, 100, 'Ledami', { size: 7 })
          .text(380, 112, '4', { size: 7 })
          .text(420, 112, 'Movara', { size: 7 }),
    ],
    ['ink that is no writing', (d) => d.rect(380, 100, 60, 60)],
  ])('has no side to itself where elsewhere stands %s', async (_, draw) => {
    const seen = await rest((d) => {
      items(d, 40, 540);
      draw(d);
    });
    expect(seen.box).toBeUndefined();
    expect(isSlip(seen)).toBe(false);
  });
});
