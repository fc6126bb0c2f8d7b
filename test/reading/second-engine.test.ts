import { PDFDocument, PDFName, PDFNumber } from 'pdf-lib';
import { describe, expect, it } from 'vitest';
import { compareDrawings } from '../../src/proof/compare-drawings.js';
import { openSecond, type SecondDocument } from '../../src/reading/second-engine.js';
import { opened, pageOf } from './risky-pages.js';

interface Entries {
  readonly media: readonly number[];
  readonly crop?: readonly number[];
  readonly rotate?: number;
  readonly userUnit?: number;
}

/** A page with a bar and a square, alike in no turn. */
async function pageWith({ media, crop, rotate, userUnit }: Entries): Promise<Uint8Array> {
  const pdf = await PDFDocument.create({ updateMetadata: false });
  const { node } = pdf.addPage([100, 100]);
  node.set(PDFName.of('MediaBox'), pdf.context.obj([...media]));
  if (crop) node.set(PDFName.of('CropBox'), pdf.context.obj([...crop]));
  if (rotate !== undefined) node.set(PDFName.of('Rotate'), PDFNumber.of(rotate));
  if (userUnit !== undefined) node.set(PDFName.of('UserUnit'), PDFNumber.of(userUnit));
  node.set(
    PDFName.of('Contents'),
    pdf.context.register(pdf.context.flateStream('60 70 100 12 re f 70 150 30 30 re f 0.5 g 150 120 40 60 re f')),
  );
  return pdf.save({ useObjectStreams: false });
}

async function second(bytes: Uint8Array): Promise<SecondDocument> {
  const document = await openSecond(bytes);
  if ('notDrawn' in document) throw new Error(document.notDrawn);
  return document;
}

describe('a second engine draws the same region in the same place', () => {
  it.each<[string, Entries]>([
    ['plain', { media: [0, 0, 288, 432] }],
    ['an origin that is not 0, and a CropBox', { media: [-36, -20, 400, 500], crop: [20, 40, 300, 450] }],
    ['a quarter turn', { media: [0, 0, 288, 432], rotate: 90 }],
    ['a half turn, cropped', { media: [0, 0, 288, 432], crop: [10, 20, 280, 300], rotate: 180 }],
    ['three quarter turns', { media: [0, 0, 288, 432], rotate: 270 }],
    ['UserUnit', { media: [0, 0, 288, 300], userUnit: 1.5 }],
  ])('%s', async (_, entries) => {
    const bytes = await pageWith(entries);
    const source = await opened(bytes);
    const document = await second(bytes);
    const page = source.page(1);
    for (const region of [
      { x: 0, y: 0, width: page.width, height: page.height },
      { x: 20.3, y: 41.7, width: 0.8 * page.width, height: 0.75 * page.height },
    ]) {
      const [one, other] = [page.render(region, 203 / 72), await document.draw(page, region, 203 / 72)];
      if ('notDrawn' in other) throw new Error(other.notDrawn);
      expect([other.width, other.height, other.origin, other.pixelsPerPt]).toEqual([one.width, one.height, one.origin, one.pixelsPerPt]);
      expect(one.data.some((grey) => grey < 140)).toBe(true);
      expect(compareDrawings(one, other).where).toEqual([]);
      // Solid areas are equal to a step of grey, and nearly all of the page is solid.
      const unequal = one.data.filter((grey, index) => Math.abs(grey - (other.data[index] ?? 0)) > 2).length;
      expect(unequal).toBeLessThan(0.02 * one.data.length);
    }
    await document.close();
    source.close();
  });
});

describe('what it can not draw it says', () => {
  it('bytes that are no PDF', async () => {
    expect(await openSecond(new TextEncoder().encode('%PDF-1.7 and nothing more'))).toEqual({
      notDrawn: 'the document does not open in it',
    });
  });

  it('a page that it does not find, and one of another shape; the next one is drawn all the same', async () => {
    const document = await second(await pageOf(() => ({})));
    const page = { number: 1, width: 288, height: 432, skew: 0 };
    const region = { x: 0, y: 0, width: 10, height: 10 };
    expect(await document.draw({ ...page, number: 2 }, region, 1)).toEqual({ notDrawn: 'it finds no such page' });
    expect(await document.draw({ ...page, height: 400 }, region, 1)).toEqual({ notDrawn: 'it sees a page of another shape' });
    expect(await document.draw(page, region, 1)).toMatchObject({ width: 10, height: 10, data: new Uint8Array(100).fill(255) });
    await document.close();
  });

  it('more pixels than any page needs are a bug of the caller', async () => {
    const document = await second(await pageOf(() => ({})));
    const huge = { x: 0, y: 0, width: 1e5, height: 1e5 };
    await expect(document.draw({ number: 1, width: 288, height: 432, skew: 0 }, huge, 1)).rejects.toThrow(RangeError);
    await document.close();
  });
});

it('takes the bytes as they are and leaves them so', async () => {
  const bytes = await pageOf(() => ({}));
  const before = bytes.slice();
  await (await second(bytes)).close();
  expect(bytes).toEqual(before);
});
