import { PDFDocument, PDFName, PDFRawStream } from '../../src/reading/pdf-library.js';
import { describe, expect, it } from 'vitest';
import { gridOf, type GridName } from '../../src/geometry/grid.js';
import { parseMedia, type Media } from '../../src/geometry/media.js';
import { TURNS, type Turn } from '../../src/geometry/placement.js';
import { pixelForDotScale } from '../../src/press/place.js';
import { pressDocument } from '../../src/press/press-document.js';
import type { Picture } from '../../src/reading/source.js';
import { pageSheet, type Sheet } from '../../src/sheet/sheet.js';
import { showOnGrid, type Shown } from './pdfium-page.js';
import { pictureSource } from './source-double.js';

/** Black and white noise, always the same: the one pattern in which every lost, doubled or moved pixel shows. */
function noise(width: number, height: number): Picture {
  const data = new Uint8Array(width * height);
  let state = 12345;
  for (let index = 0; index < data.length; index++) {
    state = (Math.imul(state, 1103515245) + 12345) & 0x7fffffff;
    data[index] = (state >> 16) & 1 ? 255 : 0;
  }
  return { width, height, channels: 1, data, bilevel: true };
}

const media = (name: string): Media => {
  const found = parseMedia(name);
  if (!found) throw new Error(name);
  return found;
};

async function printed(
  picture: Picture,
  width: number,
  height: number,
  gridName: GridName,
  change: Partial<Sheet>,
  on = media('4x6in'),
): Promise<Shown> {
  const grid = gridOf(gridName);
  const sheet = { ...pageSheet(1, width, height), ...change };
  const pressed = await pressDocument(pictureSource(picture, width, height), [sheet], on, grid);
  expect(pressed.undrawn).toEqual([]);
  expect(pressed.placements[0]?.pixelForDot).toBe(true);
  if (!pressed.bytes) throw new Error('nothing was pressed');
  // A page drawn over whole dots: stretching 812.8 dots to 812 would be the viewer's doing, not the press's.
  return showOnGrid(pressed.bytes, 1, on.width, on.height, grid);
}

/** Where the picture's pixel (0, 0) lies after a turn, and how many of its pixels come out exactly, for `dots` dots a pixel. */
function exactPixels(picture: Picture, shown: Shown, turn: Turn, left: number, top: number, dots = 1): number {
  let exact = 0;
  const { width, height } = picture;
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const [px, py] =
        turn === 0 ? [x, y] : turn === 90 ? [height - 1 - y, x] : turn === 180 ? [width - 1 - x, height - 1 - y] : [y, width - 1 - x];
      let same = true;
      for (let dy = 0; dy < dots; dy++) {
        for (let dx = 0; dx < dots; dx++) {
          const at = (top + py * dots + dy) * shown.width + left + px * dots + dx;
          same &&= (shown.data[at] ?? -1) >= 128 === (picture.data[y * width + x] ?? 0) >= 128;
        }
      }
      if (same) exact += 1;
    }
  }
  return exact;
}

describe('a picture whose pixels are the printer’s dots', () => {
  it.each(TURNS)('is copied dot for pixel, turned by %s', async (turn) => {
    const upright = turn % 180 === 0;
    const picture = upright ? noise(812, 1218) : noise(1218, 812);
    const [width, height] = upright ? [288, 432] : [432, 288];
    const shown = await printed(picture, width, height, '203dpi', { turn });
    expect([shown.width, shown.height]).toEqual([812, 1218]);
    expect(exactPixels(picture, shown, turn, 0, 0)).toBe(812 * 1218);
  });

  it.each(TURNS)('is moved by less than a dot to lie on the dots when it is smaller than the page, turned by %s', async (turn) => {
    const picture = noise(601, 400);
    const scale = 72 / 203;
    const shown = await printed(picture, 601 * scale, 400 * scale, '203dpi', { turn });
    const [across, down] = turn % 180 === 0 ? [601, 400] : [400, 601];
    const near = [Math.floor((812 - across) / 2), Math.ceil((812 - across) / 2)];
    const nearY = [Math.floor((1218 - down) / 2), Math.ceil((1218 - down) / 2)];
    const found = near.flatMap((left) => nearY.map((top) => exactPixels(picture, shown, turn, left, top)));
    expect(Math.max(...found)).toBe(601 * 400);
  });

  it('is copied two dots a pixel on a 600 dpi grid', async () => {
    const picture = noise(300, 200);
    const shown = await printed(picture, 72, 48, '600dpi', {}, { name: 'small', width: 144, height: 144 });
    expect(exactPixels(picture, shown, 0, 300, 400, 2)).toBe(300 * 200);
  });

  it('is cut to the pixels that its box needs', async () => {
    const picture = noise(812, 1218);
    const grid = gridOf('203dpi');
    const perPt = 203 / 72;
    const box = { x: 100 / perPt, y: 200 / perPt, width: 300 / perPt, height: 400 / perPt };
    const pressed = await pressDocument(pictureSource(picture, 288, 432), [{ ...pageSheet(1, 288, 432), box }], media('4x6in'), grid);
    const out = await PDFDocument.load(pressed.bytes ?? new Uint8Array(), { updateMetadata: false });
    const images = out.context
      .enumerateIndirectObjects()
      .flatMap(([, object]) =>
        object instanceof PDFRawStream && object.dict.get(PDFName.of('Subtype')) === PDFName.of('Image') ? [object.dict] : [],
      );
    expect(images).toHaveLength(1);
    const say = (key: string): string | undefined => images[0]?.get(PDFName.of(key))?.toString();
    expect([say('Width'), say('Height'), say('BitsPerComponent'), say('ColorSpace')]).toEqual(['300', '400', '1', '/DeviceGray']);
  });
});

it('keeps grey as 8 bits and colour as RGB', async () => {
  const grey: Picture = { width: 3, height: 2, channels: 1, data: Uint8Array.of(0, 100, 200, 50, 150, 250), bilevel: false };
  const colour: Picture = { width: 1, height: 1, channels: 3, data: Uint8Array.of(250, 10, 20), bilevel: false };
  for (const [picture, expected] of [
    [grey, ['8', '/DeviceGray', [...grey.data]]],
    [colour, ['8', '/DeviceRGB', [...colour.data]]],
  ] as const) {
    const source = pictureSource(picture, picture.width * 10, picture.height * 10);
    const sheet = pageSheet(1, picture.width * 10, picture.height * 10);
    const pressed = await pressDocument(source, [sheet], media('4x6in'), gridOf('203dpi'));
    const out = await PDFDocument.load(pressed.bytes ?? new Uint8Array(), { updateMetadata: false });
    const image = out.context
      .enumerateIndirectObjects()
      .map(([, object]) => object)
      .find((object) => object instanceof PDFRawStream && object.dict.get(PDFName.of('Subtype')) === PDFName.of('Image'));
    if (!(image instanceof PDFRawStream)) throw new Error('no picture in the page');
    const { inflateSync } = await import('node:zlib');
    const say = (key: string): string | undefined => image.dict.get(PDFName.of(key))?.toString();
    expect([say('BitsPerComponent'), say('ColorSpace'), [...inflateSync(image.contents)]]).toEqual(expected);
  }
});

describe('pixelForDotScale', () => {
  const grid = gridOf('203dpi');
  it('is the exact scale near the wanted one', () => {
    // 1200×1800 pixels on 4×6 in are 300 to the inch: no whole number of 203 dpi dots within 2 %.
    expect(pixelForDotScale(300 / 72, grid, 1)).toBeUndefined();
    expect(pixelForDotScale(200 / 72, grid, 1)).toBeCloseTo(200 / 203, 9);
    expect(pixelForDotScale(203 / 72, grid, 1)).toBeCloseTo(1, 9);
    expect(pixelForDotScale(203.2 / 72, grid, 1)).toBeCloseTo(203.2 / 203, 9);
    expect(pixelForDotScale(300 / 72, gridOf('600dpi'), 1)).toBeCloseTo(1, 9);
    expect(pixelForDotScale(600 / 72, gridOf('300dpi'), 1)).toBeCloseTo(1, 9);
    expect(pixelForDotScale(198 / 72, grid, 1)).toBeUndefined();
  });
});
