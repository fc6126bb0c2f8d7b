import { deflateSync } from 'node:zlib';
import { StandardFonts } from 'pdf-lib';
import { PDFDocument, PDFName, PDFRawStream } from '../../src/reading/pdf-library.js';
import { describe, expect, it } from 'vitest';
import { openPdf } from '../../src/reading/open-pdf.js';
import { hasBrokenObjectStream, inflatesWhole } from '../../src/reading/pdf-inflate.js';

async function letter(useObjectStreams: boolean): Promise<Buffer> {
  const pdf = await PDFDocument.create({ updateMetadata: false });
  const font = await pdf.embedFont(StandardFonts.Helvetica);
  const page = pdf.addPage([288, 432]);
  for (let line = 0; line < 12; line++)
    page.drawText(`Sample line ${line} of ${line * 7919}`, { x: 20, y: 400 - 14 * line, size: 9, font });
  return Buffer.from(await pdf.save({ useObjectStreams }));
}

/** Where the deflated data of a file's streams lie. */
function deflated(file: Buffer): { from: number; to: number; objects: boolean }[] {
  const text = file.toString('latin1');
  return [...text.matchAll(/<<[^>]*\/FlateDecode[^>]*>>\s*stream\r?\n/g)].flatMap((match) => {
    if (match[0].includes('/XRef')) return [];
    const from = match.index + match[0].length;
    return [{ from, to: text.indexOf('endstream', from) - 1, objects: match[0].includes('/ObjStm') }];
  });
}

async function openedAs(bytes: Buffer): Promise<string> {
  const document = await openPdf(bytes);
  if ('refused' in document) return document.refused.code;
  const { unfit } = document.page(1);
  document.close();
  return unfit?.code ?? 'fit';
}

describe('one damaged byte inside a stream', () => {
  it.each([
    ['of the page’s content: address lines were printed without a word', false],
    ['of its objects: the parser reads on as far as it understands', true],
  ])('%s', async (_, useObjectStreams) => {
    const whole = await letter(useObjectStreams);
    expect(await openedAs(whole)).toBe('fit');
    const streams = deflated(whole).filter((each) => each.objects === useObjectStreams);
    expect(streams.length).toBeGreaterThan(0);
    for (const { from, to } of streams) {
      for (let at = from + 2; at < to; at += Math.max(1, Math.floor((to - from) / 8))) {
        const damaged = Buffer.from(whole);
        damaged[at] = (whole[at] as number) ^ 0x55;
        expect(await openedAs(damaged), `byte ${at - from}`).toBe('reading/damaged');
      }
    }
  });
});

describe('inflatesWhole', () => {
  const DATA = Buffer.from('some words, some words, and some more words');
  const stream = async (filter: string | readonly string[], data: Uint8Array): Promise<PDFRawStream> => {
    const { context } = await PDFDocument.create({ updateMetadata: false });
    const dict = context.obj({});
    dict.set(PDFName.of('Filter'), context.obj(filter as string));
    return PDFRawStream.of(dict, data);
  };
  const whole = deflateSync(DATA);
  const altered = Buffer.from(whole);
  altered[whole.length - 1] = (whole.at(-1) as number) ^ 1;
  const inHex = (data: Uint8Array): Buffer => Buffer.from(`${Buffer.from(data).toString('hex')}>`);

  it.each([
    ['deflated', 'FlateDecode', whole, true],
    ['deflated, in a list of filters', ['FlateDecode'], whole, true],
    ['deflated, a wrong checksum', 'FlateDecode', altered, false],
    ['deflated, then put into letters', ['ASCIIHexDecode', 'FlateDecode'], inHex(whole), true],
    ['deflated, then put into letters, a wrong checksum', ['ASCIIHexDecode', 'FlateDecode'], inHex(altered), false],
    ['a JPEG, which has no checksum', 'DCTDecode', Buffer.from('ffd8', 'hex'), true],
  ] as const)('%s', async (_, filter, data, expected) => {
    expect(inflatesWhole(await stream(filter, data))).toBe(expected);
  });

  it('a checksum that ends like a line, which the parser took for one', async () => {
    // Its low 16 bits are one more than the sum of all bytes.
    const odd = deflateSync(Uint8Array.of(9));
    expect(odd.at(-1)).toBe(10);
    expect(inflatesWhole(await stream('FlateDecode', odd.subarray(0, -1)))).toBe(true);
  });
});

it('what only looks like an object stream is none', () => {
  expect(hasBrokenObjectStream(Buffer.from('<< /Length 9 >>\nstream\n /Type /ObjStm stream\nendstream'))).toBe(false);
});
