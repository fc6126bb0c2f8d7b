import sharp, { type Sharp } from 'sharp';
import { describe, expect, it } from 'vitest';
import { openImage } from '../../src/reading/open-image.js';
import { pixelShape } from '../../src/reading/pixel-shape.js';

const white = (): Sharp => sharp({ create: { width: 816, height: 588, channels: 3, background: 'white' } });
const tiff = (across: number, down: number): Promise<Buffer> =>
  white()
    .tiff({ xres: across / 25.4, yres: down / 25.4, compression: 'lzw' })
    .toBuffer();

/** A PNG or JPEG with its two resolutions set to these. */
async function png(across: number, down: number): Promise<Buffer> {
  const bytes = await white().withMetadata({ density: 200 }).png().toBuffer();
  const at = bytes.indexOf('pHYs') + 4;
  bytes.writeUInt32BE(across, at);
  bytes.writeUInt32BE(down, at + 4);
  return bytes;
}

async function jpeg(across: number, down: number): Promise<Buffer> {
  const bytes = await white().withMetadata({ density: 200 }).jpeg().toBuffer();
  // The encoder may put an EXIF part first; a JFIF part stands at the start here.
  const jfif = Buffer.from('ffd8ffe000104a46494600010101000000000000', 'hex');
  jfif.writeUInt16BE(across, 14);
  jfif.writeUInt16BE(down, 16);
  return Buffer.concat([jfif, bytes.subarray(2)]);
}

describe('pixelShape', () => {
  it.each([
    ['a fax', () => tiff(204, 98), 2.08],
    ['a fine fax', () => tiff(204, 196), 1.04],
    ['an even TIFF', () => tiff(300, 300), 1],
    ['a PNG', () => png(8000, 4000), 2],
    ['an even PNG', () => png(8000, 8000), 1],
    ['a JPEG', () => jpeg(100, 200), 0.5],
    ['a JPEG that says nothing', () => jpeg(0, 0), 1],
    ['a PNG that says nothing', () => white().png().toBuffer(), 1],
    ['something that cannot be', () => png(1, 8000), 1],
    ['bytes that end', () => Promise.resolve(Buffer.from('49492a00ffffff7f', 'hex')), 1],
  ])('%s', async (_, make, expected) => {
    expect(pixelShape(await make(), 0)).toBeCloseTo(expected, 1);
  });
});

it('a fax is refused in one clear line: it was taken for half as high as it is', async () => {
  const opened = await openImage(await tiff(204, 98));
  expect(opened).toMatchObject({ refused: { code: 'reading/picture-not-square' } });
  const even = await openImage(await tiff(204, 204));
  expect('refused' in even).toBe(false);
});
