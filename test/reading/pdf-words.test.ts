import { PDFDocument, StandardFonts } from 'pdf-lib';
import { describe, expect, it } from 'vitest';
import { openPdf } from '../../src/reading/open-pdf.js';
import type { Word } from '../../src/reading/source.js';

async function wordsOf(lines: readonly string[], size = 10): Promise<readonly Word[]> {
  const pdf = await PDFDocument.create({ updateMetadata: false });
  const font = await pdf.embedFont(StandardFonts.Helvetica);
  const page = pdf.addPage([612, 792]);
  lines.forEach((line, index) => page.drawText(line, { x: 20, y: 760 - 1.2 * size * index, size, font }));
  const document = await openPdf(await pdf.save());
  if ('refused' in document) throw new Error(document.refused.message);
  const words = document.page(1).words();
  document.close();
  return words;
}

describe('hyphens', () => {
  it('at the end of a line stay, and the lines stay apart: an article number lost its own', async () => {
    const words = await wordsOf(['Item AB-', '1234 blue mug', 'Anti-', 'slip mat', 'A-B 12-34']);
    expect(words.map(({ text }) => text)).toEqual(['Item', 'AB-', '1234', 'blue', 'mug', 'Anti-', 'slip', 'mat', 'A-B', '12-34']);
    expect(words.every(({ box }) => box.height < 12)).toBe(true);
  });
});

it('a page of small print is read to its end, whatever its length: 20,000 characters were all', async () => {
  const lines = Array.from({ length: 150 }, (_, line) => Array.from({ length: 12 }, (_, word) => `word-${line}.${word}-word`).join(' '));
  const words = await wordsOf(lines, 2.5);
  expect(words.map(({ text }) => text)).toEqual(lines.flatMap((line) => line.split(' ')));
  expect(lines.join('').length).toBeGreaterThan(20_000);
});
