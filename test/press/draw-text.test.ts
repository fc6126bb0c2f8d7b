import { describe, expect, it } from 'vitest';
import { gridOf } from '../../src/geometry/grid.js';
import { pressDocument } from '../../src/press/press-document.js';
import { LINE_HEIGHT, measureLine, measureText, missingGlyphs } from '../../src/press/text-face.js';
import { pageSheet, type Sheet } from '../../src/sheet/sheet.js';
import { showPage, type Shown } from './pdfium-page.js';
import { sourceDouble } from './source-double.js';

const media = { name: '4x6in', width: 288, height: 432 };
const source = sourceDouble([]);
const textSheet = (lines: readonly string[], fontSize: number, margin = 10): Sheet => ({
  ...pageSheet(1, 288, 432),
  role: 'slip',
  content: { kind: 'text', lines, fontSize },
  margin,
});

const press = (sheet: Sheet): ReturnType<typeof pressDocument> => pressDocument(source, [sheet], media, gridOf('203dpi'));

async function shown(sheet: Sheet): Promise<Shown> {
  const { bytes } = await press(sheet);
  if (!bytes) throw new Error('nothing was pressed');
  return showPage(bytes, 1, 288 * 4, 432 * 4);
}

/** Bounds of the ink in pt, y down. */
function inkBounds({ width, data }: Shown): { x0: number; y0: number; x1: number; y1: number } {
  const bounds = { x0: Infinity, y0: Infinity, x1: -Infinity, y1: -Infinity };
  data.forEach((value, index) => {
    if (value >= 128) return;
    bounds.x0 = Math.min(bounds.x0, (index % width) / 4);
    bounds.x1 = Math.max(bounds.x1, ((index % width) + 1) / 4);
    bounds.y0 = Math.min(bounds.y0, Math.floor(index / width) / 4);
    bounds.y1 = Math.max(bounds.y1, (Math.floor(index / width) + 1) / 4);
  });
  return bounds;
}

describe('text set anew', () => {
  // Looked at as pixels: a subset that lost its glyphs still gives its text to whoever extracts it.
  it.each(['Paper star', 'Łódź Čeština ğüş', 'Ωμέγα', 'Привет'])('puts ink where %s was measured', async (line) => {
    const bounds = inkBounds(await shown(textSheet([line], 20)));
    const { width, height } = measureText([line], 20);
    expect(bounds.x0).toBeGreaterThan(9.5);
    expect(bounds.x0).toBeLessThan(13);
    expect(bounds.x1).toBeLessThanOrEqual(10 + width + 0.5);
    expect(bounds.x1).toBeGreaterThan(10 + width - 3);
    expect(bounds.y0).toBeGreaterThanOrEqual(10 - 0.5);
    expect(bounds.y1).toBeLessThanOrEqual(10 + height + 0.5);
  });

  it('keeps accents and descenders inside their own line', async () => {
    const bounds = inkBounds(await shown(textSheet(['ÅÇÉgjpqy'], 50)));
    expect(bounds.y0).toBeGreaterThanOrEqual(10 - 0.5);
    expect(bounds.y1).toBeLessThanOrEqual(10 + 50 * LINE_HEIGHT + 0.5);
  });

  it('sets the second line one line lower', async () => {
    const first = inkBounds(await shown(textSheet(['H', ''], 20)));
    const second = inkBounds(await shown(textSheet(['', 'H'], 20)));
    expect(second.y0 - first.y0).toBeCloseTo(20 * LINE_HEIGHT, 0);
  });

  it('is not pressed when it is wider or higher than the page', async () => {
    const wide = await press(textSheet(['W'.repeat(60)], 12));
    const high = await press(
      textSheet(
        Array.from({ length: 60 }, () => 'W'),
        12,
      ),
    );
    expect([wide.bytes, high.bytes]).toEqual([undefined, undefined]);
    expect([...wide.undrawn, ...high.undrawn].map((each) => each.reason.code)).toEqual(['press/too-large', 'press/too-large']);
  });

  it('is not pressed when the font lacks a character, and does not repeat the text', async () => {
    const pressed = await press(textSheet(['紙の星'], 12));
    expect(pressed.undrawn).toMatchObject([{ sheetId: 'p1', reason: { code: 'press/missing-glyphs' } }]);
    expect(pressed.undrawn[0]?.reason.message).toMatch(/^3 characters/);
  });

  it('is the same bytes each time', async () => {
    const [first, second] = [await press(textSheet(['Paper star'], 12)), await press(textSheet(['Paper star'], 12))];
    expect(Buffer.compare(first.bytes ?? new Uint8Array(), second.bytes ?? new Uint8Array())).toBe(0);
  });
});

describe('measuring', () => {
  it('grows with the size and the text', () => {
    expect(measureLine('ab', 20)).toBeCloseTo(2 * measureLine('ab', 10), 9);
    expect(measureLine('abab', 10)).toBeCloseTo(2 * measureLine('ab', 10), 9);
    expect(measureText(['a', 'aaa'], 10)).toEqual({ width: measureLine('aaa', 10), height: 24 });
  });
  it('knows what the font lacks', () => {
    expect(missingGlyphs('2 × paper star, 12,50 €\tžluťoučký')).toEqual([]);
    expect(missingGlyphs('a紙紙b😀')).toEqual(['紙', '😀']);
  });
});
