import { describe, expect, it } from 'vitest';
import { codeLikeAreas } from '../../src/reading/code-like.js';
import { findCodeLike } from '../../src/reading/textured-areas.js';
import { fullBlack } from '../../src/reading/full-black.js';
import { code128 } from '../samples/code-art.js';
import { Drawing } from '../samples/drawing.js';
import { drawnPage, rasterWith } from './drawn-page.js';

const page = () => drawnPage(new Drawing(420, 300).bars(code128('SAMPLE-000001'), 210, 150, 1.06, 60).text(40, 60, 'SAMPLE', { size: 14 }));

describe('fullBlack', () => {
  it.each([130, 165])('shows bars of grey %i again', async (grey) => {
    const drawn = await page();
    expect(codeLikeAreas(drawn)).toHaveLength(1);
    const ink = drawn.ink();
    const faint = { ...ink, data: ink.data.map((value) => 245 - ((255 - value) * (245 - grey)) / 255) };
    expect(findCodeLike(fullBlack(faint))).toHaveLength(1);
    expect(fullBlack(faint).data.reduce((least, value) => Math.min(least, value))).toBeLessThan(60);
  });

  it('leaves a page with black ink as it is, and one with nothing but dirt', async () => {
    const ink = (await page()).ink();
    expect(fullBlack(ink) === ink).toBe(true);
    const dirt = rasterWith(600, 800, [[100, 100, 3, 3]], 150);
    expect(fullBlack(dirt) === dirt).toBe(true);
  });
});
