import { PDFDocument, StandardFonts, grayscale } from 'pdf-lib';
import { describe, expect, it } from 'vitest';
import { hasVanishingWords } from '../../src/proof/vanishing-words.js';
import type { GreyRaster } from '../../src/reading/source.js';
import { pageSheet, type Sheet } from '../../src/sheet/sheet.js';
import { openSource, pressAndProve } from './prove-sample.js';

/** A 4×6 in page with one line of type; `panel` is the grey (0 black, 1 white) of a field under it, `paper` that of the page, with a black field on it. */
async function page(ink: number, size: number, panel?: number, paper?: number): Promise<Uint8Array> {
  const pdf = await PDFDocument.create({ updateMetadata: false });
  const drawn = pdf.addPage([288, 432]);
  if (paper !== undefined) {
    drawn.drawRectangle({ x: 0, y: 0, width: 288, height: 432, color: grayscale(paper) });
    drawn.drawRectangle({ x: 20, y: 300, width: 240, height: 20, color: grayscale(0) });
  }
  if (panel !== undefined) drawn.drawRectangle({ x: 20, y: 180, width: 240, height: 60, color: grayscale(panel) });
  const font = await pdf.embedFont(StandardFonts.Helvetica);
  drawn.drawText('SAMPLE left at the back door', { x: 30, y: 200, size, font, color: grayscale(ink) });
  return pdf.save();
}

async function provedDots(bytes: Uint8Array): Promise<{ readonly verdict: string; readonly dots: GreyRaster }> {
  const source = await openSource(bytes);
  try {
    const sheet: Sheet = { ...pageSheet(1, 288, 432), role: 'slip' };
    const { proofs } = await pressAndProve(source, [sheet], '203dpi', { asDots: true });
    const [proof] = proofs;
    if (proof?.dots === undefined) throw new Error('no dots');
    return { verdict: proof.verdict === 'proved' ? 'proved' : proof.verdict.code, dots: proof.dots };
  } finally {
    source.close();
  }
}

/** Dots that are different. */
const differing = (a: GreyRaster, b: GreyRaster): number => a.data.reduce((count, value, at) => count + (value === b.data[at] ? 0 : 1), 0);
const burned = (a: GreyRaster): number => a.data.reduce((count, value) => count + (value === 0 ? 1 : 0), 0);

describe('small pale writing on a page of dots', () => {
  it.each([
    [0.5, 8],
    [0.7, 8],
    [0.8, 8],
    [0.85, 7],
  ])('of grey %f and %i pt is printed as black writing is', async (ink, size) => {
    const [pale, black] = [await provedDots(await page(ink, size)), await provedDots(await page(0, size))];
    expect(pale.verdict).toBe('proved');
    expect(burned(black.dots)).toBeGreaterThan(500);
    // Strokes that lie between two dots come out a dot wider or thinner.
    expect(differing(pale.dots, black.dots)).toBeLessThan(0.35 * burned(black.dots));
  });

  it.each([
    [1, 0.75],
    [1, 0.5],
    [0.6, 0.85],
  ])('of grey %f on a panel of grey %f can be read', async (ink, panel) => {
    const { verdict, dots } = await provedDots(await page(ink, 8, panel));
    expect(verdict).toBe('proved');
    const plain = await provedDots(await page(panel, 8, panel));
    expect(differing(dots, plain.dots)).toBeGreaterThan(500);
  });
});

it('white writing on paper that isn’t white would be lost: held', async () => {
  expect((await provedDots(await page(1, 8, undefined, 0.8))).verdict).toBe('verify/text-vanishes');
  expect((await provedDots(await page(0, 8, undefined, 0.8))).verdict).toBe('proved');
});

describe('hasVanishingWords', () => {
  const raster = (value: (x: number) => number): GreyRaster => ({
    width: 40,
    height: 10,
    data: Uint8Array.from({ length: 400 }, (_, at) => value(at % 40)),
    pixelsPerPt: 1,
    origin: { x: 0, y: 0 },
  });
  const word = [{ x: 0, y: 0, width: 20, height: 10 }];
  const writing = raster((x) => (x < 20 && x % 4 === 0 ? 190 : 255));

  it.each([
    ['burned', raster((x) => (x % 4 === 0 ? 0 : 255)), false],
    ['left white', raster((x) => (x < 20 ? 255 : 0)), true],
    ['lost in black', raster((x) => (x < 20 ? 0 : 255)), true],
  ])('looks whether writing is %s', (_, bits, lost) => {
    expect(hasVanishingWords(word, writing, bits)).toBe(lost);
  });

  it('does not miss what nobody sees, nor what lies beyond the page', () => {
    const white = raster(() => 255);
    expect(
      hasVanishingWords(
        word,
        raster((x) => (x % 4 === 0 ? 240 : 255)),
        white,
      ),
    ).toBe(false);
    expect(hasVanishingWords([{ x: 50, y: 50, width: 5, height: 5 }], writing, white)).toBe(false);
  });
});
