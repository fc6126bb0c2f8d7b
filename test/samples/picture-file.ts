import sharp from 'sharp';
import type { QuarterTurn } from './pdf.js';
import { turnPixels, type Pixels } from './raster.js';

/** The EXIF orientation that tells a viewer to turn the stored pixels clockwise by this. */
const ORIENTATION: Readonly<Record<QuarterTurn, number>> = { 0: 1, 90: 6, 180: 3, 270: 8 };

/**
 * A label as a picture file that shows it turned clockwise by `turn`: 1-bit pixels as PNG, grey ones as JPEG. Resolution data
 * is right, missing or wrong (72), as channels have it; a JPEG turned upside down or to the left is so by EXIF alone.
 */
export async function pictureFile(pixels: Pixels, turn: QuarterTurn): Promise<{ bytes: Uint8Array; ending: 'png' | 'jpg' }> {
  const byExif = !pixels.bilevel && turn >= 180;
  const shown = turnPixels(pixels, byExif ? 0 : turn);
  const image = sharp(shown.data, { raw: { width: shown.width, height: shown.height, channels: 1 } }).toColourspace('b-w');
  const density = turn === 0 ? pixels.dpi : turn === 90 ? undefined : 72;
  const meta = { ...(density === undefined ? {} : { density }), ...(byExif ? { orientation: ORIENTATION[turn] } : {}) };
  const described = Object.keys(meta).length === 0 ? image : image.withMetadata(meta);
  const out = pixels.bilevel ? described.png({ palette: true, colours: 2 }) : described.jpeg({ quality: 90 });
  return { bytes: new Uint8Array(await out.toBuffer()), ending: pixels.bilevel ? 'png' : 'jpg' };
}
