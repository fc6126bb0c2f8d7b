import { degrees, PDFDocument, rgb } from 'pdf-lib';
import { describe, expect, it } from 'vitest';
import { gridOf } from '../../src/geometry/grid.js';
import { contains, type Box } from '../../src/geometry/box.js';
import { pressDocument } from '../../src/press/press-document.js';
import { proveDocument } from '../../src/proof/prove.js';
import { pageSheet, type Sheet } from '../../src/sheet/sheet.js';
import { code128, dataMatrix, pdf417, qr, type CodeArt } from '../samples/code-art.js';
import { ANY_BARS, media4x6, openSource, verdictOf } from './prove-sample.js';

const PAGE = { width: 612, height: 792 };

/** A letter page with codes on it: x, y and module width in pt; linear ones are 60 pt high. */
async function pageWith(...codes: readonly (readonly [CodeArt, number, number, number])[]): Promise<{ bytes: Uint8Array; boxes: Box[] }> {
  const pdf = await PDFDocument.create({ updateMetadata: false });
  const page = pdf.addPage([PAGE.width, PAGE.height]);
  const boxes = codes.map(([art, x, y, module]): Box => {
    const row = art.rows === 1 ? 60 : module * art.modulesPerRow;
    for (const [column, line, width, height] of art.rects) {
      const top = y + line * row;
      page.drawRectangle({
        x: x + column * module,
        y: PAGE.height - top - height * row,
        width: width * module,
        height: height * row,
        color: rgb(0, 0, 0),
      });
    }
    return { x, y, width: art.columns * module, height: art.rows * row };
  });
  return { bytes: await pdf.save(), boxes };
}

async function verdicts(bytes: Uint8Array, crops: readonly Box[]): Promise<string[]> {
  const source = await openSource(bytes);
  const grid = gridOf('203dpi');
  const found: string[] = [];
  for (const box of crops) {
    const sheet: Sheet = { ...pageSheet(1, PAGE.width, PAGE.height), role: 'label', box, proof: ANY_BARS };
    const { bytes: pressed, placements } = await pressDocument(source, [sheet], media4x6, grid);
    const [proof] = await proveDocument(source, pressed ?? new Uint8Array(), [sheet], placements, media4x6, grid);
    found.push(verdictOf(proof));
  }
  source.close();
  return found;
}

describe('a code cut by the box beside one that is whole: it was printed, for the whole one read', () => {
  it.each([
    ['a QR code', qr('SAMPLE QR 12345'), 2.5],
    ['a Data Matrix', dataMatrix('SAMPLE DM 1234567890'), 2.5],
    ['a PDF417', pdf417('SAMPLE-0042-7788-99 SOME MORE DATA HERE', 6), 1],
  ] as const)('%s, from a little to nearly all of it', async (_, art, module) => {
    const { bytes, boxes } = await pageWith([art, 40, 60, module], [code128('SAMPLE-0042-7788'), 40, 200, 1]);
    const [cut] = boxes as [Box, Box];
    const crops = [0.06, 0.25, 0.5, 0.75, 0.94].map((share) => ({ x: 20, y: cut.y + share * cut.height, width: 280, height: 300 }));
    expect(await verdicts(bytes, crops)).toEqual(crops.map(() => 'verify/cut'));
  });

  it('a Code 128, by 2 pt and more, along its row', async () => {
    const { bytes, boxes } = await pageWith([qr('SAMPLE QR 12345'), 40, 60, 2.5], [code128('SAMPLE-0042-7788'), 40, 200, 1]);
    const [, { x, width }] = boxes as [Box, Box];
    const crops = [2, 3, 6, 14, 60, 120].map((by) => ({ x: 20, y: 40, width: x + width - by - 20, height: 300 }));
    expect(await verdicts(bytes, crops)).toEqual(crops.map(() => 'verify/cut'));
  });

  it('a Code 128, by 3 pt (1 mm) and more of its height, upright and as a ladder', async () => {
    const { bytes, boxes } = await pageWith([qr('SAMPLE QR 12345'), 40, 60, 2.5], [code128('SAMPLE-0042-7788'), 40, 200, 1]);
    const [, { y, height }] = boxes as [Box, Box];
    const cuts = [3, 4, 12, 30, 48, 56];
    const below = cuts.map((by) => ({ x: 20, y: 40, width: 280, height: y + height - by - 40 }));
    expect(await verdicts(bytes, below)).toEqual(below.map(() => 'verify/cut'));
    // The page's corners stay where they are: a ladder's height runs along x.
    const lying = await PDFDocument.load(bytes, { updateMetadata: false });
    lying.getPage(0).setRotation(degrees(90));
    const left = PAGE.height - (y + height);
    const beside = cuts.map((by) => ({ x: left + by, y: 20, width: 280, height: 300 }));
    expect(await verdicts(await lying.save(), beside)).toEqual(beside.map(() => 'verify/cut'));
  });

  it('bars that cannot be read, across the edge', async () => {
    const { bytes, boxes } = await pageWith([qr('SAMPLE QR 12345'), 40, 60, 2.5], [code128('SAMPLE-0042-7788'), 40, 200, 1]);
    const [, bars] = boxes as [Box, Box];
    const pdf = await PDFDocument.load(bytes, { updateMetadata: false });
    for (let x = bars.x + 8; x < bars.x + bars.width; x += 11)
      pdf.getPage(0).drawRectangle({ x, y: PAGE.height - bars.y - bars.height, width: 2.4, height: bars.height, color: rgb(0, 0, 0) });
    const crop = { x: 20, y: 40, width: bars.width / 2 + 20, height: 300 };
    expect(await verdicts(await pdf.save(), [crop])).toEqual(['verify/cut']);
  });
});

it('codes as near to the edge as may be are not held', async () => {
  const { bytes, boxes } = await pageWith([qr('SAMPLE QR 12345'), 40, 60, 2.5], [code128('SAMPLE-0042-7788'), 40, 200, 1]);
  const x0 = Math.min(...boxes.map(({ x }) => x));
  const x1 = Math.max(...boxes.map(({ x, width }) => x + width));
  const y1 = Math.max(...boxes.map(({ y, height }) => y + height));
  const crop = { x: x0, y: 60, width: x1 - x0, height: y1 - 60 };
  expect(boxes.every((box) => contains(crop, box, 1e-6))).toBe(true);
  expect(await verdicts(bytes, [crop])).toEqual(['proved']);
});
