import { PDFDocument } from 'pdf-lib';
import sharp from 'sharp';
import { seeded } from '../samples/content.js';
import { shots } from '../samples/render.js';

export interface Scan {
  readonly jpeg: Buffer;
  /** Visible size of the page, pt. */
  readonly width: number;
  readonly height: number;
}

export interface Scanning {
  readonly dpi: number;
  /** How the paper lay on the glass, degrees clockwise. */
  readonly degrees: number;
  readonly seed: string;
  /** Grey of the paper, 245 unless said. */
  readonly paper?: number;
}

/**
 * A page as an office scanner gives it: drawn at its resolution, turned about its centre, on paper that is not quite white, with
 * grain, specks and a shadow along one edge of the glass, as JPEG. The same arguments give the same picture.
 */
export async function scanned(pdf: Uint8Array, page: { width: number; height: number }, scanning: Scanning, number = 1): Promise<Scan> {
  const { dpi, degrees, seed, paper = 245 } = scanning;
  const shot = (await shots(pdf, dpi / 72, page.width))[number - 1];
  if (!shot) throw new Error('the sample has no such page');
  const { width, height } = shot;
  const grown = sharp(shot.data, { raw: { width, height, channels: 1 } }).rotate(degrees, { background: 'white' });
  const { data, info } = await grown.greyscale().raw().toBuffer({ resolveWithObject: true });
  const [left, top] = [Math.round((info.width - width) / 2), Math.round((info.height - height) / 2)];
  const pixels = new Uint8Array(width * height);
  const draw = seeded(seed);
  for (let y = 0; y < height; y++) {
    const shadow = y < dpi / 25 ? 60 : 0;
    for (let x = 0; x < width; x++) {
      const grey = data[(y + top) * info.width + x + left] ?? 255;
      pixels[y * width + x] = Math.min(255, Math.max(0, (grey * (paper - 20)) / 255 + 20 - shadow + draw(13) + draw(13) - 12));
    }
  }
  for (let speck = 0; speck < (width * height) / 20_000; speck++) pixels[draw(pixels.length)] = draw(120);
  const jpeg = await sharp(pixels, { raw: { width, height, channels: 1 } })
    .withMetadata({ density: dpi })
    .jpeg({ quality: 82 })
    .toBuffer();
  return { jpeg, width: page.width, height: page.height };
}

/** The scan as the only thing on a PDF page, as an image-to-PDF tool puts it. */
export async function scanAsPdf({ jpeg, width, height }: Scan): Promise<Uint8Array> {
  const document = await PDFDocument.create({ updateMetadata: false });
  const picture = await document.embedJpg(jpeg);
  document.addPage([width, height]).drawImage(picture, { x: 0, y: 0, width, height });
  return document.save();
}
