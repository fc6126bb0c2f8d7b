import { describe, expect, it } from 'vitest';
import type { Box } from '../../src/geometry/box.js';
import { inkBlobs } from '../../src/locating/ink-blobs.js';
import { restOf, type Rest } from '../../src/locating/rest.js';
import { phrasesOf } from '../../src/reading/word-lines.js';
import { drawnPage } from '../reading/drawn-page.js';
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
