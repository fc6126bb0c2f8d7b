import { PDFDocument, rgb, StandardFonts } from 'pdf-lib';
import { describe, expect, it } from 'vitest';
import { printedDots } from '../../src/press/printed-dots.js';
import type { Proof } from '../../src/proof/prove.js';
import { pageSheet, type Sheet } from '../../src/sheet/sheet.js';
import { code128 } from '../samples/code-art.js';
import { ANY_BARS, openSource, pressAndProve, verdictOf } from './prove-sample.js';

const SHEET: Sheet = { ...pageSheet(1, 288, 432), role: 'label', proof: ANY_BARS };

/** A 4×6 in label: a code, and an address on a panel of this grey, if there is one. */
async function label(panel: number | undefined): Promise<Uint8Array> {
  const pdf = await PDFDocument.create({ updateMetadata: false });
  const font = await pdf.embedFont(StandardFonts.Helvetica);
  const page = pdf.addPage([288, 432]);
  if (panel !== undefined) page.drawRectangle({ x: 10, y: 300, width: 268, height: 120, color: rgb(panel, panel, panel) });
  for (let line = 0; line < 6; line++)
    page.drawText(`Sample, not valid for carriage ${line}`, { x: 20, y: 396 - 14 * line, size: 9, font });
  for (const [x, , width] of code128('SAMPLE-0042-7788').rects)
    page.drawRectangle({ x: 30 + x, y: 160, width, height: 60, color: rgb(0, 0, 0) });
  return pdf.save();
}

async function proved(bytes: Uint8Array, sheet: Sheet = SHEET): Promise<Proof | undefined> {
  const source = await openSource(bytes);
  const { proofs } = await pressAndProve(source, [sheet], '203dpi');
  source.close();
  return proofs[0];
}

describe('grey', () => {
  it.each([undefined, 0.95, 0.85, 0.6, 0.3])('a panel of grey %s behind the address holds no label', async (panel) => {
    expect(verdictOf(await proved(await label(panel)))).toBe('proved');
  });
});

describe('a label page without ink', () => {
  const blank = async (grey: number): Promise<Uint8Array> => {
    const pdf = await PDFDocument.create({ updateMetadata: false });
    pdf.addPage([288, 432]).drawRectangle({ x: 20, y: 20, width: 200, height: 300, color: rgb(grey, grey, grey) });
    return pdf.save();
  };

  it.each([
    ['white', 1],
    ['too pale to be printed', 0.8],
  ])('%s: it was ready, as its channel has no codes', async (_, grey) => {
    const proof = await proved(await blank(grey), { ...SHEET, proof: { codes: 'none' } });
    expect(verdictOf(proof)).toBe('verify/blank');
  });
});

it('cells hold their darkness and their burned dots', () => {
  const data = new Uint8Array(8 * 4).fill(255);
  data.fill(100, 0, 4);
  data[8] = 200;
  data[7] = 0;
  const { burned, darkness } = printedDots({ width: 8, height: 4, data, pixelsPerPt: 1, origin: { x: 0, y: 0 } });
  expect([...burned]).toEqual([4, 1]);
  expect([...darkness]).toEqual([4 * 155 + 55, 255]);
});
