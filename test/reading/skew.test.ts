import { PDFDocument, rgb, StandardFonts, TextRenderingMode, setTextRenderingMode, degrees as turnedBy } from 'pdf-lib';
import { describe, expect, it } from 'vitest';
import { takeCounts } from '../../src/reading/counters.js';
import { openImage } from '../../src/reading/open-image.js';
import { openPdf } from '../../src/reading/open-pdf.js';
import { isSlanted, straightenedWords } from '../../src/reading/skew.js';
import type { SourceDocument, SourcePage } from '../../src/reading/source.js';
import { LAYOUTS } from '../samples/layouts.js';
import { QUARTER_TURNS, sample, type Sample } from '../samples/sample.js';
import { scanAsPdf, scanned, type Scan } from './scanned.js';

async function open(opening: ReturnType<typeof openPdf>): Promise<SourceDocument> {
  const document = await opening;
  if ('refused' in document) throw new Error(document.refused.message);
  return document;
}

async function named(name: string): Promise<Sample> {
  const layout = LAYOUTS.find((each) => each.name === name);
  if (!layout) throw new Error(name);
  return sample(layout, 'vector', 0);
}

async function scan(degrees: number, name = 'letter-ruled-cells'): Promise<Scan> {
  const from = await named(name);
  const [page] = from.expected.pages;
  if (!page) throw new Error('no page');
  return scanned(from.bytes, page, { dpi: 150, degrees, seed: `${name} ${degrees}` });
}

/** The page of a PDF that shows a scan, and what else `draw` puts there. */
async function scanWith(made: Scan, draw: (pdf: PDFDocument) => void | Promise<void>): Promise<SourcePage> {
  const pdf = await PDFDocument.load(await scanAsPdf(made));
  await draw(pdf);
  return (await open(openPdf(await pdf.save()))).page(1);
}

const whole = (page: SourcePage) => ({ x: 0, y: 0, width: page.width, height: page.height });

describe('a straight page is left as it is', () => {
  it('a vector page is not even drawn', async () => {
    const document = await open(openPdf((await named('letter-ruled-cells')).bytes));
    takeCounts();
    const page = document.page(1);
    expect([page.skew, page.slant]).toEqual([0, { degrees: 0, sure: true }]);
    expect(takeCounts().sourceRasters).toBe(0);
  });

  const RASTERS = LAYOUTS.filter(({ traits }) =>
    traits.some((trait) => ['whole-page-picture', 'picture-file', 'label-size-page'].includes(trait)),
  );
  const kinds = RASTERS.flatMap((layout) =>
    layout.kinds.filter((kind) => kind !== 'vector').map((kind) => [layout.name, kind, layout] as const),
  );
  it.each(kinds)('%s as %s, in each turn: sure, and pixel for dot', async (_name, kind, layout) => {
    for (const turn of QUARTER_TURNS) {
      const { bytes } = await sample(layout, kind, turn);
      const document = await open(bytes[0] === 0x25 ? openPdf(bytes) : openImage(bytes));
      const page = document.page(1);
      expect([turn, page.skew, page.slant.sure]).toEqual([turn, 0, true]);
      expect(page.pictureUnder(whole(page))).toBeDefined();
      document.close();
    }
  });

  it.each([0, 0.08, -0.08])('a scan turned by %f degrees: nobody sees it, and turning it would cost sharp edges', async (degrees) => {
    const page = (await open(openPdf(await scanAsPdf(await scan(degrees))))).page(1);
    expect([page.skew, page.slant.sure, isSlanted(page), straightenedWords(page)]).toEqual([0, true, false, undefined]);
    expect(page.pictureUnder(whole(page))).toBeDefined();
  });
});

describe('a crooked page', () => {
  it.each(['pdf', 'picture'] as const)('%s: ink and codes are where the straight page has them, its pixels on no grid', async (as) => {
    const made = await scan(2.3);
    const document = await open(as === 'pdf' ? openPdf(await scanAsPdf(made)) : openImage(made.jpeg));
    const page = document.page(1);
    expect(straightenedWords(page)).toBe('straightened by 2.3 degrees');
    expect(isSlanted(page)).toBe(false);
    expect(page.pictureUnder(whole(page))).toBeUndefined();
    expect(page.images()).toMatchObject([{ turn: undefined }]);
    expect(document.page(1)).toBe(page);
    const expected = (await named('letter-ruled-cells')).expected.pages[0]?.labels[0]?.codes ?? [];
    const codes = await page.codes(whole(page), 400 / 72, { thorough: true });
    for (const { bytes, box } of expected) {
      const code = codes.find((each) => each.bytes === bytes);
      const middle = (b: typeof box) => [b.x + b.width / 2, b.y + b.height / 2];
      const [x = 0, y = 0] = middle(box);
      expect(code && middle(code.box)).toEqual([expect.closeTo(x, -1), expect.closeTo(y, -1)]);
    }
    expect(codes).toHaveLength(expected.length);
    document.close();
  });

  it('beyond three degrees is left, and says so', async () => {
    const page = (await open(openPdf(await scanAsPdf(await scan(-4))))).page(1);
    expect([page.skew, isSlanted(page), Math.abs(page.slant.degrees + 4) < 0.1]).toEqual([0, true, true]);
  });

  it('words that the scanner laid over its picture stay words, level or turned with the writing', async () => {
    const lay = (rotated: number) => async (pdf: PDFDocument) => {
      const font = await pdf.embedFont(StandardFonts.Helvetica);
      const page = pdf.getPage(0);
      page.pushOperators(setTextRenderingMode(TextRenderingMode.Invisible));
      page.drawText('Sender', { x: 306, y: 396, size: 12, font, rotate: turnedBy(rotated) });
    };
    for (const rotated of [0, -2.8]) {
      const page = await scanWith(await scan(2.8), lay(rotated));
      expect(page.skew).toBeCloseTo(2.8, 0);
      const [word] = page.words();
      expect([word?.text, word?.turn]).toEqual(['Sender', 0]);
      // It begins in the middle of the page, which stays where it is.
      expect([word?.box.x, (word?.box.y ?? 0) + (word?.box.height ?? 0)]).toEqual([expect.closeTo(306, -1), expect.closeTo(396, -1)]);
    }
  });

  it('with a white area under or beside the picture is still a scan', async () => {
    const page = await scanWith(await scan(1.5), (pdf) =>
      pdf.getPage(0).drawRectangle({ x: 0, y: 0, width: 9, height: 9, color: rgb(1, 1, 1) }),
    );
    expect(page.skew).toBeCloseTo(1.5, 0);
  });

  it('is taken as drawn where anything else is drawn with the picture', async () => {
    const marks: ((pdf: PDFDocument) => void)[] = [
      (pdf) => pdf.getPage(0).drawRectangle({ x: 50, y: 50, width: 90, height: 9, color: rgb(0.4, 0.4, 0.4) }),
      (pdf) => pdf.getPage(0).drawLine({ start: { x: 50, y: 50 }, end: { x: 500, y: 50 } }),
      (pdf) => pdf.getPage(0).drawText('Printed over it', { x: 50, y: 50 }),
    ];
    for (const mark of marks) {
      const page = await scanWith(await scan(1.5), mark);
      expect([page.skew, page.slant]).toEqual([0, { degrees: 0, sure: true }]);
    }
  });
});
