import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import { PICTURE_LIMITS } from '../../src/reading/limits.js';
import { fromGrey, multiPageTiff, pattern, storedFor, withCode128, type Grey } from '../faults/inputs/pictures.js';
import type { Picture } from '../../src/reading/source.js';
import { expectPixels, opened, pictureOf } from './opened-picture.js';

const LABEL = pattern(406, 609);
const GREY_PART = { width: 40, height: 30 };

describe('open-image: lossless kinds come back pixel for pixel', () => {
  const rgba16 = (): Promise<Buffer> => {
    const samples = new Uint16Array(LABEL.data.length * 4);
    // White paper is left fully transparent over black, as drawing programs do.
    LABEL.data.forEach((value, i) => samples.set([0, 0, 0, value === 0 ? 65535 : 0], i * 4));
    return sharp(samples, { raw: { width: LABEL.width, height: LABEL.height, channels: 4 } })
      .toColourspace('rgb16')
      .png()
      .toBuffer();
  };
  const greyAlpha16 = (): Promise<Buffer> => {
    const samples = new Uint16Array(LABEL.data.length * 2);
    LABEL.data.forEach((value, i) => samples.set([0, value === 0 ? 65535 : 0], i * 2));
    return sharp(samples, { raw: { width: LABEL.width, height: LABEL.height, channels: 2 } })
      .toColourspace('grey16')
      .png()
      .toBuffer();
  };
  const transparentPalette = (): Promise<Buffer> => {
    const samples = new Uint8Array(LABEL.data.length * 4);
    LABEL.data.forEach((value, i) => samples.set([0, 0, 0, 255 - value], i * 4));
    return sharp(samples, { raw: { width: LABEL.width, height: LABEL.height, channels: 4 } })
      .png({ palette: true, colours: 2 })
      .toBuffer();
  };
  const kinds: Record<string, () => Promise<Buffer>> = {
    'PNG, grey': () => fromGrey(LABEL).png().toBuffer(),
    'PNG, interlaced': () => fromGrey(LABEL).png({ progressive: true }).toBuffer(),
    'PNG, 1 bit a pixel': () => fromGrey(LABEL).png({ palette: true, colours: 2 }).toBuffer(),
    'PNG, 16-bit grey': () => fromGrey(LABEL).toColourspace('grey16').png().toBuffer(),
    'PNG, 16-bit with transparency': rgba16,
    'PNG, 16-bit grey with transparency': greyAlpha16,
    'PNG, palette with transparency': transparentPalette,
    'GIF with transparency': async () =>
      sharp(await transparentPalette())
        .gif()
        .toBuffer(),
    GIF: () => fromGrey(LABEL).gif({ colours: 2 }).toBuffer(),
    'WebP, lossless': () => fromGrey(LABEL).webp({ lossless: true }).toBuffer(),
    'WebP, lossless with transparency': async () =>
      sharp(await rgba16())
        .toColourspace('srgb')
        .webp({ lossless: true })
        .toBuffer(),
    'TIFF, CCITT group 4': () => fromGrey(LABEL).tiff({ compression: 'ccittfax4', bitdepth: 1 }).toBuffer(),
    'TIFF, CCITT group 4, black is zero': () =>
      fromGrey(LABEL).tiff({ compression: 'ccittfax4', bitdepth: 1, miniswhite: false }).toBuffer(),
    'TIFF, LZW': () => fromGrey(LABEL).tiff({ compression: 'lzw' }).toBuffer(),
    'TIFF, tiled deflate': () => fromGrey(LABEL).tiff({ compression: 'deflate', tile: true }).toBuffer(),
  };
  it.each(Object.entries(kinds))('%s', async (_name, draw) => {
    const document = await opened(await draw());
    expect(document.pageCount).toBe(1);
    expectPixels(pictureOf(document), LABEL);
    document.close();
  });

  it('reads a two-level picture as a picture of 16 bits only where it is one', async () => {
    const header = await sharp(await rgba16()).metadata();
    expect([header.depth, header.hasAlpha]).toEqual(['ushort', true]);
    expect((await sharp(await greyAlpha16()).metadata()).channels).toBe(2);
    expect((await sharp(await transparentPalette()).metadata()).isPalette).toBe(true);
    expect((await sharp(await kinds['TIFF, CCITT group 4']?.()).metadata()).bitsPerSample).toBe(1);
  });
});

describe('open-image: lossy and coloured kinds', () => {
  const near = (picture: Picture, grey: Grey): number => {
    let worst = 0;
    for (let i = 0; i < grey.data.length; i++)
      worst = Math.max(worst, Math.abs((picture.data[i * picture.channels] ?? 0) - (grey.data[i] ?? 0)));
    return worst;
  };

  it.each([
    ['baseline', { quality: 95 }],
    ['progressive', { quality: 95, progressive: true }],
  ])('JPEG, %s', async (_name, options) => {
    const picture = pictureOf(await opened(await fromGrey(LABEL).jpeg(options).toBuffer()));
    expect([picture.channels, picture.bilevel]).toEqual([1, false]);
    expect(near(picture, LABEL)).toBeLessThan(40);
  });

  it('JPEG in CMYK: paper is white and ink is dark, not the other way round', async () => {
    const bytes = await fromGrey(LABEL).toColourspace('cmyk').jpeg({ quality: 95 }).toBuffer();
    expect((await sharp(bytes).metadata()).space).toBe('cmyk');
    const picture = pictureOf(await opened(bytes));
    expect(near(picture, LABEL)).toBeLessThan(90);
  });

  it('keeps colour where there is colour, and its grey for reading', async () => {
    const bytes = await sharp({ create: { ...GREY_PART, channels: 3, background: { r: 255, g: 0, b: 0 } } })
      .png()
      .toBuffer();
    const document = await opened(bytes);
    expect(pictureOf(document)).toMatchObject({ channels: 3, bilevel: false, width: 40, height: 30 });
    expect([...pictureOf(document).data.subarray(0, 3)]).toEqual([255, 0, 0]);
    // ITU-R BT.601: 0.299 of red.
    expect(document.page(1).render({ x: 0, y: 0, width: 1, height: 1 }, 'own').data[0]).toBe(76);
  });

  it.each([
    ['8 bits', 'srgb'],
    ['8 bits, grey', 'b-w'],
    ['16 bits', 'rgb16'],
    ['16 bits, grey', 'grey16'],
  ])('lays half transparent ink on white paper: %s', async (_name, space) => {
    const background = { r: 0, g: 0, b: 0, alpha: 0.5 };
    const drawn = sharp({ create: { ...GREY_PART, channels: 4, background } }).toColourspace(space);
    const bytes = await drawn.png().toBuffer();
    expect(await sharp(bytes).metadata()).toMatchObject({ hasAlpha: true, space });
    const picture = pictureOf(await opened(bytes));
    expect(picture.channels).toBe(1);
    expect(Math.abs((picture.data[0] ?? 0) - 127)).toBeLessThanOrEqual(1);
  });
});

describe('open-image: orientation', () => {
  it.each([1, 2, 3, 4, 5, 6, 7, 8])('brings a picture with EXIF orientation %i upright', async (orientation) => {
    const stored = storedFor(orientation, LABEL);
    const bytes = await fromGrey(stored).png().withMetadata({ orientation, density: 203 }).toBuffer();
    const document = await opened(bytes);
    expectPixels(pictureOf(document), LABEL);
    expect(document.page(1).width).toBeLessThan(document.page(1).height);
  });

  it('turns a JPEG from a camera too', async () => {
    const bytes = await fromGrey(storedFor(6, LABEL)).jpeg().withMetadata({ orientation: 6 }).toBuffer();
    const picture = pictureOf(await opened(bytes));
    expect([picture.width, picture.height]).toEqual([LABEL.width, LABEL.height]);
    expect(picture.data[5]).toBeLessThan(30);
  });
});

describe('open-image: pages', () => {
  const pages = [pattern(812, 1218), pattern(400, 300), pattern(1218, 812)];

  it('makes a page of each page of a TIFF, in order, each in its own size', async () => {
    const document = await opened(await multiPageTiff(pages, 203));
    expect(document.pageCount).toBe(3);
    pages.forEach((page, i) => expectPixels(pictureOf(document, i + 1), page));
    expect(document.page(1).width).toBeCloseTo(288, 5);
    expect(document.page(3).width).toBeCloseTo(432, 5);
    expect(() => document.page(4)).toThrow(RangeError);
    expect(() => document.page(0)).toThrow(RangeError);
    expect(() => document.pressSource(4)).toThrow(RangeError);
  });

  it('gives the same pixels when pages have to be kept compressed', async () => {
    const document = await opened(await multiPageTiff(pages, 203), { ...PICTURE_LIMITS, keptBytes: 1_000_000 });
    for (const i of [2, 1, 3, 1, 2]) expectPixels(pictureOf(document, i), pages[i - 1] ?? LABEL);
    const raster = document.page(3).render({ x: 0, y: 0, width: 432, height: 288 }, 'own');
    expect(Buffer.compare(raster.data, pages[2]?.data ?? Buffer.alloc(0))).toBe(0);
  });

  it('takes the first picture of an animation and says so', async () => {
    const frames = Buffer.concat([LABEL.data, new Uint8Array(LABEL.data.length)]);
    const animation = await sharp(frames, { raw: { width: LABEL.width, height: LABEL.height * 2, channels: 1, pageHeight: LABEL.height } })
      .gif({ colours: 2 })
      .toBuffer();
    expect((await sharp(animation).metadata()).pages).toBe(2);
    const document = await opened(animation);
    expect(document.pageCount).toBe(1);
    expect(document.notes.join()).toContain('animation of 2');
    expectPixels(pictureOf(document), LABEL);
  });
});

describe('open-image: codes', () => {
  it("reads a code at the picture's own pixels and places it in pt", async () => {
    const grey = withCode128({ width: 812, height: 1218 }, 'SAMPLE-0042', 3, 120, 300);
    const document = await opened(await fromGrey(grey).png().withMetadata({ density: 203 }).toBuffer());
    const page = document.page(1);
    const codes = await page.codes({ x: 0, y: 0, width: page.width, height: page.height }, 2);
    expect(codes.map((code) => [code.symbology, code.identifier, Buffer.from(code.bytes, 'hex').toString()])).toEqual([
      ['Code 128', ']C0', 'SAMPLE-0042'],
    ]);
    expect(codes[0]?.box.x).toBeCloseTo((120 / 203) * 72, 0);
    expect(codes[0]?.turn).toBe(0);
    expect(await page.codes({ x: 0, y: 0, width: page.width, height: 80 }, 2)).toEqual([]);
  });
});
