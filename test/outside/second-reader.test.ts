import { PDFDocument, PDFName, PDFNumber, PDFString } from 'pdf-lib';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { describe, expect, it } from 'vitest';
import { openPdf } from '../../src/reading/open-pdf.js';
import { LAYOUTS } from '../samples/layouts.js';
import { QUARTER_TURNS, sample } from '../samples/sample.js';

/** What pdf.js, an engine of its own, says of a page: its visible size in pt and its words with their place, y down. */
interface SecondLook {
  readonly width: number;
  readonly height: number;
  readonly texts: readonly { readonly text: string; readonly x: number; readonly y: number }[];
}

async function secondLook(bytes: Uint8Array): Promise<readonly SecondLook[]> {
  const task = getDocument({ data: bytes.slice(), useSystemFonts: false, disableFontFace: true, verbosity: 0 });
  const document = await task.promise;
  const pages: SecondLook[] = [];
  for (let number = 1; number <= document.numPages; number++) {
    const page = await document.getPage(number);
    const viewport = page.getViewport({ scale: 1 });
    const { items } = await page.getTextContent();
    pages.push({
      width: viewport.width,
      height: viewport.height,
      texts: items.flatMap((item) => {
        if (!('str' in item) || item.str.trim() === '') return [];
        const [x = 0, y = 0] = viewport.convertToViewportPoint(Number(item.transform[4]), Number(item.transform[5])) as number[];
        return [{ text: item.str.trim(), x, y }];
      }),
    });
  }
  await task.destroy();
  return pages;
}

interface Entries {
  readonly media: readonly number[];
  readonly crop?: readonly number[];
  readonly rotate?: number;
  readonly userUnit?: number;
  readonly inherited?: boolean;
}

/** A page with its boxes as given, on the page itself or on its parent. */
async function pageWith({ media, crop, rotate, userUnit, inherited = false }: Entries): Promise<Uint8Array> {
  const pdf = await PDFDocument.create({ updateMetadata: false });
  const page = pdf.addPage([100, 100]);
  page.drawText('corner', { x: (media[0] ?? 0) + 20, y: (media[1] ?? 0) + 20, size: 10 });
  const { node } = page;
  for (const key of ['MediaBox', 'CropBox', 'Rotate']) node.delete(PDFName.of(key));
  const holder = inherited ? pdf.catalog.Pages() : node;
  holder.set(PDFName.of('MediaBox'), pdf.context.obj([...media]));
  if (crop) holder.set(PDFName.of('CropBox'), pdf.context.obj([...crop]));
  if (rotate !== undefined) holder.set(PDFName.of('Rotate'), PDFNumber.of(rotate));
  if (userUnit !== undefined) node.set(PDFName.of('UserUnit'), PDFNumber.of(userUnit));
  pdf.catalog.set(PDFName.of('Lang'), PDFString.of('en'));
  return pdf.save({ useObjectStreams: false });
}

async function sameSizes(bytes: Uint8Array): Promise<void> {
  const source = await openPdf(bytes);
  if ('refused' in source) throw new Error(source.refused.message);
  const pages = await secondLook(bytes);
  expect(source.pageCount).toBe(pages.length);
  for (const [i, { width, height, texts }] of pages.entries()) {
    const page = source.page(i + 1);
    expect(Math.abs(page.width - width)).toBeLessThan(0.02);
    expect(Math.abs(page.height - height)).toBeLessThan(0.02);
    const words = page.words();
    for (const { text, x, y } of texts) {
      // A run of pdf.js may hold many words; its first one begins where the run does.
      const [first = ''] = text.split(/\s+/);
      const near = words.filter((word) => word.text.startsWith(first) || first.startsWith(word.text));
      const inside = near.some(({ box, fontSize }) => {
        const slack = fontSize * 0.6 + 1;
        return x >= box.x - slack && x <= box.x + box.width + slack && y >= box.y - slack && y <= box.y + box.height + slack;
      });
      expect(inside, `"${first}" at ${x.toFixed(1)}, ${y.toFixed(1)} of page ${i + 1}`).toBe(true);
    }
  }
  source.close();
}

describe('a second PDF reader agrees on the visible page (handbook section 7.1, ISO 32000 via the Arlington model, VERIFIED-S)', () => {
  it.each<[string, Entries]>([
    ['an origin that is not 0', { media: [-36, 50, 576, 842] }],
    ['corners in the other order', { media: [612, 792, 0, 0] }],
    ['a CropBox inside', { media: [0, 0, 612, 792], crop: [10, 10, 400, 500] }],
    ['a CropBox that sticks out', { media: [0, 0, 612, 792], crop: [-50, 10, 700, 500] }],
    ['a quarter turn', { media: [0, 0, 612, 792], rotate: 90 }],
    ['a turn of -90', { media: [0, 0, 612, 792], rotate: -90 }],
    ['a turn of 450', { media: [0, 0, 612, 792], rotate: 450 }],
    ['inherited boxes and turn', { media: [0, 0, 612, 792], crop: [12, 24, 300, 456], rotate: 270, inherited: true }],
    ['UserUnit 2', { media: [0, 0, 306, 396], userUnit: 2 }],
    ['UserUnit 2, turned and cropped', { media: [0, 0, 306, 396], crop: [6, 6, 206, 306], rotate: 90, userUnit: 2 }],
  ])('%s', async (_, entries) => {
    await sameSizes(await pageWith(entries));
  });

  it.each(LAYOUTS.filter(({ kinds }) => kinds.includes('vector')).map(({ name }, i) => [name, QUARTER_TURNS[i % 4] ?? 0] as const))(
    'the sample %s, turned %i: sizes, and every word where it stands',
    async (name, turn) => {
      const layout = LAYOUTS.find((each) => each.name === name);
      if (!layout) throw new Error('the layout is gone');
      await sameSizes((await sample(layout, 'vector', turn)).bytes);
    },
  );
});
