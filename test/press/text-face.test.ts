import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { create, type Font } from '@cantoo/fontkit';
import { describe, expect, it } from 'vitest';
import { measureLine, NUMBER_WIDTHS } from '../../src/press/text-face.js';

const FILE = createRequire(import.meta.url).resolve('@expo-google-fonts/noto-sans/400Regular/NotoSans_400Regular.ttf');
const font = create(new Uint8Array(readFileSync(FILE))) as Font;

describe('widths of numbers', () => {
  it.each([...NUMBER_WIDTHS])('%j is %d thousandths of an em wide in the face itself', (char, width) => {
    const [glyph] = font.layout(char).glyphs;
    expect(((glyph?.advanceWidth ?? 0) / font.unitsPerEm) * 1000).toBe(width);
  });

  it('are no narrower or wider in a row than what the face sets', () => {
    const set = (text: string): number =>
      font.layout(text).glyphs.reduce((sum, { advanceWidth }) => sum + advanceWidth, 0) / font.unitsPerEm;
    expect(measureLine('1000/1000 ·WWWW', 10)).toBeCloseTo(10 * set('1000/1000 ·WWWW'), 9);
    // The last four of a tracking number may be any: what the table lacks is measured by the face.
    expect(measureLine('7/41 ·1234X', 10)).toBeCloseTo(10 * set('7/41 ·1234X'), 9);
  });
});
