import { PDFDocument, rgb } from 'pdf-lib';
import { expect, it } from 'vitest';
import type { SourceDocument, SourcePage } from '../../src/reading/source.js';
import { pageSheet, type Sheet } from '../../src/sheet/sheet.js';
import { code128, type CodeArt } from '../samples/code-art.js';
import { ANY_BARS, openSource, pressAndProve, verdictOf } from './prove-sample.js';

const [UPPER, LOWER] = [code128('SAMPLE-UPPER'), code128('SAMPLE-LOWER')];

async function label(): Promise<Uint8Array> {
  const pdf = await PDFDocument.create({ updateMetadata: false });
  const page = pdf.addPage([288, 432]);
  const draw = ({ rects }: CodeArt, y: number): void => {
    for (const [x, , width] of rects) page.drawRectangle({ x: 40 + x, y, width, height: 50, color: rgb(0, 0, 0) });
  };
  draw(UPPER, 300);
  draw(LOWER, 100);
  return pdf.save();
}

/** A document in which the first look sees one code only, and the thorough look another one only. */
function halfSeen(document: SourceDocument, first: CodeArt, thorough: CodeArt): SourceDocument {
  const seen = (page: SourcePage): SourcePage => ({
    number: page.number,
    width: page.width,
    height: page.height,
    skew: page.skew,
    slant: page.slant,
    words: () => page.words(),
    images: () => page.images(),
    render: (...asked) => page.render(...asked),
    coarse: () => page.coarse(),
    ink: () => page.ink(),
    pictureUnder: (region) => page.pictureUnder(region),
    codes: async (region, pixelsPerPt, options) => {
      const wanted = options?.thorough === true ? thorough : first;
      return (await page.codes(region, pixelsPerPt)).filter(({ bytes }) => bytes === wanted.expected.bytes);
    },
  });
  return {
    pageCount: document.pageCount,
    notes: document.notes,
    page: (number) => seen(document.page(number)),
    pressSource: (page) => document.pressSource(page),
    close: () => document.close(),
  };
}

it.each([
  ['the upper, then the lower', UPPER, LOWER],
  ['the lower, then the upper', LOWER, UPPER],
])('what either look at the source saw is in the source: %s', async (_, first, thorough) => {
  const source = halfSeen(await openSource(await label()), first, thorough);
  const sheet: Sheet = { ...pageSheet(1, 288, 432), role: 'label', proof: ANY_BARS };
  const { proofs } = await pressAndProve(source, [sheet], '203dpi');
  expect(verdictOf(proofs[0])).toBe('proved');
  expect(proofs[0]?.codes.map(({ code }) => code.bytes).toSorted()).toEqual([UPPER, LOWER].map((each) => each.expected.bytes).toSorted());
  source.close();
});
