import { PDFRawStream } from 'pdf-lib';
import { expect, it } from 'vitest';
import { toGroup4 } from '../../src/press/group4.js';
import { addPage, newDocument, saveDocument } from '../../src/press/output.js';
import { showPage } from './pdfium-page.js';

type Paint = (x: number, y: number) => boolean;

/** What the PDF engine decodes: everything that is encoded, a pixel a pt. */
async function decoded(width: number, height: number, burned: Paint): Promise<{ width: number; height: number; data: Uint8Array }> {
  const data = new Uint8Array(width * height);
  for (let y = 0; y < height; y++) for (let x = 0; x < width; x++) data[y * width + x] = burned(x, y) ? 0 : 255;
  const { bytes, columns, rows } = await toGroup4({ width, height, data });
  const document = await newDocument();
  const dict = document.context.obj({
    Type: 'XObject',
    Subtype: 'Image',
    Width: columns,
    Height: rows,
    ColorSpace: 'DeviceGray',
    BitsPerComponent: 1,
    Filter: 'CCITTFaxDecode',
    DecodeParms: { K: -1, Columns: columns, Rows: rows, BlackIs1: true },
  });
  const D = document.context.register(PDFRawStream.of(dict, bytes));
  addPage(document, { name: 'dots', width: columns, height: rows }, `${String(columns)} 0 0 ${String(rows)} 0 0 cm /D Do`, {
    XObject: { D },
  });
  return showPage(await saveDocument(document), 1, columns, rows);
}

let state = 99;
const noise = (): boolean => ((state = (Math.imul(state, 1103515245) + 12345) & 0x7fffffff) >> 16) % 2 === 0;
const PAINTS: Readonly<Record<string, Paint>> = {
  white: () => false,
  black: () => true,
  bars: (x) => x % 5 < 2,
  comb: (x) => x % 2 === 0,
  'one dot in each corner': (x, y) => (x === 0 || x === 811) && (y === 0 || y === 1217),
};

it.each(Object.entries(PAINTS))('every dot comes back: %s', async (_, burned) => {
  const { width, data } = await decoded(812, 1218, burned);
  let wrong = 0;
  for (let y = 0; y < 1218; y++) for (let x = 0; x < 812; x++) if (data[y * width + x] !== (burned(x, y) ? 0 : 255)) wrong += 1;
  expect(wrong).toBe(0);
});

it('every dot of noise comes back', async () => {
  const dots = Array.from({ length: 203 * 101 }, noise);
  const { width, data } = await decoded(203, 101, (x, y) => dots[y * 203 + x] ?? false);
  expect(dots.findIndex((burned, at) => data[Math.floor(at / 203) * width + (at % 203)] !== (burned ? 0 : 255))).toBe(-1);
});

it.each([
  [1, 1],
  [16, 16],
  [17, 15],
  [812, 1218],
  [1219, 1828],
])('what is filled up around black of %i × %i dots is white', async (wide, high) => {
  const { width, height, data } = await decoded(wide, high, () => true);
  expect([width % 16, height % 16]).toEqual([0, 0]);
  const black = data.reduce((count, value) => count + (value === 0 ? 1 : 0), 0);
  expect([black, data.reduce((count, value) => count + (value === 255 ? 1 : 0), 0)]).toEqual([wide * high, width * height - wide * high]);
});
