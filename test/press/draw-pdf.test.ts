import { PDFDocument, PDFName, PDFRawStream } from '../../src/reading/pdf-library.js';
import { describe, expect, it } from 'vitest';
import { gridOf } from '../../src/geometry/grid.js';
import { TURNS, turnedSize } from '../../src/geometry/placement.js';
import { pressDocument, type Pressed } from '../../src/press/press-document.js';
import { visiblePage } from '../../src/press/visible-page.js';
import { pageSheet, type Sheet } from '../../src/sheet/sheet.js';
import { shareDifferent, showPage, type Shown } from './pdfium-page.js';
import { pdfWith, sourceDouble, type PageEntries } from './source-double.js';

const grid = gridOf('203dpi');

/** Marks without any symmetry around (x, y): a turn, a mirror or a shift changes the picture. */
const marksAt = (x: number, y: number): string =>
  `0 g ${x} ${y} 40 12 re f ${x} ${y} 10 60 re f ${x + 60} ${y + 70} 20 20 re f ${x + 100} ${y + 20} 6 6 re f 0.5 g ${x + 20} ${y + 90} 30 10 re f`;

async function pressWhole(bytes: Uint8Array, change: Partial<Sheet> = {}): Promise<Pressed & { width: number; height: number }> {
  const pdf = await PDFDocument.load(bytes, { updateMetadata: false });
  const visible = visiblePage(pdf.getPage(0).node);
  if (!visible) throw new Error('nothing to see');
  const { width, height } = visible;
  const source = sourceDouble([{ width, height, press: { kind: 'pdf', pdf } }]);
  const sheet = { ...pageSheet(1, width, height), ...change };
  const size = turnedSize(sheet.box.width * sheet.scale, sheet.box.height * sheet.scale, sheet.turn);
  const pressed = await pressDocument(source, [sheet], { name: 'exact', ...size }, grid);
  return { ...pressed, ...size };
}

const only = (pressed: Pressed): Uint8Array => {
  expect(pressed.undrawn).toEqual([]);
  if (!pressed.bytes) throw new Error('nothing was pressed');
  return pressed.bytes;
};

// The rule is ISO 32000-2's by way of handbook section 7.1; the expected picture is what PDFium makes of the source itself.
const PAGES: Record<string, PageEntries & { width: number; height: number; at: readonly [number, number] }> = {
  plain: { mediaBox: [0, 0, 200, 150], width: 200, height: 150, at: [20, 20] },
  'turned 90': { mediaBox: [0, 0, 200, 150], rotate: 90, width: 150, height: 200, at: [20, 20] },
  'turned 180': { mediaBox: [0, 0, 200, 150], rotate: 180, width: 200, height: 150, at: [20, 20] },
  'turned 270': { mediaBox: [0, 0, 200, 150], rotate: 270, width: 150, height: 200, at: [20, 20] },
  'turned -90': { mediaBox: [0, 0, 200, 150], rotate: -90, width: 150, height: 200, at: [20, 20] },
  'turned 450': { mediaBox: [0, 0, 200, 150], rotate: 450, width: 150, height: 200, at: [20, 20] },
  'origin elsewhere': { mediaBox: [100, -50, 300, 100], width: 200, height: 150, at: [120, -30] },
  'negative origin, turned': { mediaBox: [-200, -300, 0, -150], rotate: 90, width: 150, height: 200, at: [-180, -280] },
  'swapped corners': { mediaBox: [200, 150, 0, 0], rotate: 270, width: 150, height: 200, at: [20, 20] },
  'crop inside': { mediaBox: [0, 0, 400, 400], cropBox: [50, 60, 250, 210], width: 200, height: 150, at: [70, 80] },
  'crop inside, turned': { mediaBox: [0, 0, 400, 400], cropBox: [50, 60, 250, 210], rotate: 90, width: 150, height: 200, at: [70, 80] },
  'crop swapped, turned': { mediaBox: [0, 0, 400, 400], cropBox: [250, 210, 50, 60], rotate: 180, width: 200, height: 150, at: [70, 80] },
  'crop larger than media': { mediaBox: [0, 0, 200, 150], cropBox: [-50, -50, 180, 500], width: 180, height: 150, at: [20, 20] },
  inherited: {
    mediaBox: [10, 20, 210, 170],
    cropBox: [20, 30, 200, 160],
    rotate: 90,
    inherit: true,
    width: 130,
    height: 180,
    at: [30, 35],
  },
  'user unit 2': { mediaBox: [0, 0, 200, 150], userUnit: 2, width: 400, height: 300, at: [20, 20] },
  'user unit 2, turned': { mediaBox: [50, 50, 250, 200], rotate: 90, userUnit: 2, width: 300, height: 400, at: [70, 70] },
};

describe('a page of a PDF is drawn as a viewer shows it', () => {
  it.each(Object.entries(PAGES))('%s', async (_, page) => {
    const bytes = await pdfWith(page, marksAt(...page.at));
    const pressed = await pressWhole(bytes);
    expect(pressed.width).toBeCloseTo(page.width, 6);
    expect(pressed.height).toBeCloseTo(page.height, 6);
    const [pixelWidth, pixelHeight] = [page.width * 2, page.height * 2];
    const expected = await showPage(bytes, 1, pixelWidth, pixelHeight);
    const drawn = await showPage(only(pressed), 1, pixelWidth, pixelHeight);
    expect(expected.data.filter((value) => value < 128).length).toBeGreaterThan(1000);
    expect(shareDifferent(expected, drawn)).toBeLessThan(0.0005);
  });

  it('has a page of exactly the media, from (0, 0), not turned, without a unit', async () => {
    const pressed = await pressWhole(await pdfWith({ mediaBox: [50, 50, 250, 200], rotate: 90, userUnit: 2 }, marksAt(70, 70)));
    const page = (await PDFDocument.load(only(pressed), { updateMetadata: false })).getPage(0).node;
    expect(page.MediaBox().asRectangle()).toEqual({ x: 0, y: 0, width: 300, height: 400 });
    expect(page.CropBox()?.asRectangle()).toEqual({ x: 0, y: 0, width: 300, height: 400 });
    expect(page.get(PDFName.of('Rotate'))).toBeUndefined();
    expect(page.get(PDFName.of('UserUnit'))).toBeUndefined();
  });
});

/** A region of a picture, turned clockwise. */
function turnedPart(shown: Shown, x0: number, y0: number, width: number, height: number, turn: 0 | 90 | 180 | 270): Shown {
  const size = turnedSize(width, height, turn);
  const data = new Uint8Array(width * height);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const value = shown.data[(y0 + y) * shown.width + x0 + x] ?? 0;
      const [tx, ty] =
        turn === 0 ? [x, y] : turn === 90 ? [height - 1 - y, x] : turn === 180 ? [width - 1 - x, height - 1 - y] : [y, width - 1 - x];
      data[ty * size.width + tx] = value;
    }
  }
  return { ...size, data };
}

describe('a region of a page', () => {
  it.each(TURNS)('is cut out and turned by %s', async (turn) => {
    const bytes = await pdfWith({ mediaBox: [0, 0, 200, 150], rotate: 90 }, marksAt(20, 20));
    const pressed = await pressWhole(bytes, { box: { x: 10, y: 5, width: 100, height: 120 }, turn });
    const whole = await showPage(bytes, 1, 300, 400);
    const expected = turnedPart(whole, 20, 10, 200, 240, turn);
    const drawn = await showPage(only(pressed), 1, expected.width, expected.height);
    expect(shareDifferent(expected, drawn)).toBeLessThan(0.0005);
  });

  it('is clipped to its box, with nothing of its neighbours', async () => {
    const bytes = await pdfWith({ mediaBox: [0, 0, 200, 150] }, '0 g 0 0 200 150 re f');
    const pdf = await PDFDocument.load(bytes, { updateMetadata: false });
    const source = sourceDouble([{ width: 200, height: 150, press: { kind: 'pdf', pdf } }]);
    const sheet: Sheet = { ...pageSheet(1, 200, 150), box: { x: 50, y: 50, width: 40, height: 20 } };
    const pressed = await pressDocument(source, [sheet], { name: 'm', width: 100, height: 100 }, grid);
    const drawn = await showPage(only(pressed), 1, 200, 200);
    const dark = drawn.data.filter((value) => value < 128).length;
    expect(dark).toBe(80 * 40);
    expect(pressed.placements[0]?.drawnBox).toEqual({ x: 30, y: 40, width: 40, height: 20 });
  });

  it('shares one form with the other regions of its page, and leaves no second copy of the content', async () => {
    const bytes = await pdfWith({ mediaBox: [0, 0, 200, 150] }, [marksAt(20, 20), marksAt(60, 20)]);
    const pdf = await PDFDocument.load(bytes, { updateMetadata: false });
    const source = sourceDouble([{ width: 200, height: 150, press: { kind: 'pdf', pdf } }]);
    const half = { ...pageSheet(1, 200, 150), box: { x: 0, y: 0, width: 100, height: 150 } };
    const sheets = [half, { ...half, id: 'p1.2', box: { ...half.box, x: 100 } }];
    const pressed = await pressDocument(source, sheets, { name: 'm', width: 100, height: 150 }, grid);
    const out = await PDFDocument.load(only(pressed), { updateMetadata: false });
    const streams = out.context.enumerateIndirectObjects().filter(([, object]) => object instanceof PDFRawStream);
    expect(out.getPageCount()).toBe(2);
    // One form and the two pages' own contents.
    expect(streams).toHaveLength(3);
  });
});

describe('what a page hides or blends', () => {
  it('keeps the group of a page with transparency, standing alone', async () => {
    const bytes = await pdfWith({ mediaBox: [0, 0, 100, 100] }, '0 g 10 10 20 20 re f');
    const pdf = await PDFDocument.load(bytes, { updateMetadata: false });
    pdf.getPage(0).node.set(PDFName.of('Group'), pdf.context.obj({ S: 'Transparency', CS: 'DeviceRGB' }));
    const source = sourceDouble([{ width: 100, height: 100, press: { kind: 'pdf', pdf } }]);
    const pressed = await pressDocument(source, [pageSheet(1, 100, 100)], { name: 'm', width: 100, height: 100 }, grid);
    const out = await PDFDocument.load(only(pressed), { updateMetadata: false });
    const groups = out.context
      .enumerateIndirectObjects()
      .flatMap(([, object]) =>
        object instanceof PDFRawStream ? [object.dict.get(PDFName.of('Group'))?.toString().replace(/\s+/g, ' ')] : [],
      );
    expect(groups.filter((each) => each !== undefined)).toEqual(['<< /S /Transparency /CS /DeviceRGB /I true >>']);
    expect(pdf.getPage(0).node.get(PDFName.of('Group'))?.toString()).not.toContain('/I');
  });

  it('keeps a hidden layer hidden', async () => {
    const content = '0 g 10 10 20 20 re f /OC /Shy BDC 50 50 40 40 re f EMC';
    const bytes = await pdfWith({ mediaBox: [0, 0, 100, 100] }, content);
    const pdf = await PDFDocument.load(bytes, { updateMetadata: false });
    const { context } = pdf;
    const layer = context.register(context.obj({ Type: 'OCG', Name: 'Shy' }));
    pdf.getPage(0).node.set(PDFName.of('Resources'), context.obj({ Properties: { Shy: layer } }));
    pdf.catalog.set(PDFName.of('OCProperties'), context.obj({ OCGs: [layer], D: { OFF: [layer], Order: [layer] } }));
    const source = sourceDouble([{ width: 100, height: 100, press: { kind: 'pdf', pdf } }]);
    const pressed = await pressDocument(source, [pageSheet(1, 100, 100)], { name: 'm', width: 100, height: 100 }, grid);
    const drawn = await showPage(only(pressed), 1, 100, 100);
    expect(drawn.data.filter((value) => value < 128)).toHaveLength(400);
  });
});

it('gives the same bytes for the same input', async () => {
  const bytes = await pdfWith({ mediaBox: [0, 0, 200, 150] }, marksAt(20, 20));
  const [first, second] = [await pressWhole(bytes), await pressWhole(bytes)];
  expect(Buffer.compare(only(first), only(second))).toBe(0);
});
