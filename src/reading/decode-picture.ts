import type { Metadata, Sharp, SharpOptions } from 'sharp';
import type { Picture } from './source.js';

type SharpModule = (input: Uint8Array, options?: SharpOptions) => Sharp;
let loaded: Promise<SharpModule> | undefined;

/** Loaded only when a picture comes: a run over PDFs never pays for it. */
function sharp(): Promise<SharpModule> {
  loaded ??= import('sharp').then((module) => {
    // The batch has its own workers; a second level of threads and a cache across documents only cost memory.
    module.default.cache(false);
    module.default.concurrency(1);
    return module.default;
  });
  return loaded;
}

/** Damage is an error; a mere oddity of the writer, such as an unknown TIFF tag, is not. */
const OPTIONS: SharpOptions = { failOn: 'error', sequentialRead: true };

export type PictureHeader = Pick<Metadata, 'format' | 'width' | 'height' | 'density' | 'pages' | 'space' | 'hasAlpha'>;

/** What the header of one page (from 0) says. Throws the decoder's errors. */
export async function readHeader(bytes: Uint8Array, page: number): Promise<PictureHeader> {
  return (await sharp())(bytes, { ...OPTIONS, page, limitInputPixels: false }).metadata();
}

/**
 * Decodes one page (from 0): turned as its EXIF or TIFF orientation says, in sRGB or grey, 8 bits a sample, transparent parts
 * on white. Throws the decoder's errors. The caller has checked the size in the header; `limit` (pixels) is the second lock.
 */
export async function decodePicture(bytes: Uint8Array, page: number, header: PictureHeader, limit: number): Promise<Picture> {
  // Asked for grey, the decoder drops the transparency of a grey picture with one, and what is under it shows.
  const grey = (header.space === 'b-w' || header.space === 'grey16') && !header.hasAlpha;
  const pipeline = (await sharp())(bytes, { ...OPTIONS, page, limitInputPixels: limit }).autoOrient();
  const { data, info } = await pipeline
    .toColourspace(grey ? 'b-w' : 'srgb')
    .raw({ depth: 'uchar' })
    .toBuffer({ resolveWithObject: true });
  return onPaper(data, info.width, info.height, info.channels);
}

/** Samples of one colour may differ by this much and still be grey: lossy pictures round. */
const GREY_TOLERANCE = 2;

/** Lays samples with or without transparency on white paper, and tells grey and two-level pictures for what they are. */
export function onPaper(samples: Uint8Array, width: number, height: number, channels: number): Picture {
  const hasAlpha = channels % 2 === 0;
  const colours = hasAlpha ? channels - 1 : channels;
  if (hasAlpha) layOnWhite(samples, channels);
  const count = width * height;
  const grey = channels === 1 ? samples : asGrey(samples, channels, colours, count);
  if (grey) return { width, height, channels: 1, data: grey, bilevel: isBilevel(grey) };
  return { width, height, channels: 3, data: hasAlpha ? withoutAlpha(samples, count) : samples, bilevel: false };
}

function layOnWhite(samples: Uint8Array, channels: number): void {
  const alphaAt = channels - 1;
  for (let i = 0; i < samples.length; i += channels) {
    const alpha = samples[i + alphaAt] ?? 255;
    if (alpha === 255) continue;
    for (let c = i; c < i + alphaAt; c++) samples[c] = Math.round(((samples[c] ?? 0) * alpha + 255 * (255 - alpha)) / 255);
  }
}

/** The grey of a picture that has no colour in it, or undefined at the first coloured pixel. */
function asGrey(samples: Uint8Array, channels: number, colours: number, count: number): Uint8Array | undefined {
  const out = new Uint8Array(count);
  const toGreen = colours === 3 ? 1 : 0;
  const toBlue = colours === 3 ? 2 : 0;
  for (let i = 0, from = 0; i < count; i++, from += channels) {
    const red = samples[from] ?? 0;
    const green = samples[from + toGreen] ?? 0;
    const blue = samples[from + toBlue] ?? 0;
    if (red !== green || blue !== green) {
      if (Math.abs(red - green) > GREY_TOLERANCE || Math.abs(blue - green) > GREY_TOLERANCE) return undefined;
    }
    out[i] = green;
  }
  return out;
}

function withoutAlpha(samples: Uint8Array, count: number): Uint8Array {
  const out = new Uint8Array(count * 3);
  for (let i = 0, from = 0, to = 0; i < count; i++, from += 4) {
    out[to++] = samples[from] ?? 0;
    out[to++] = samples[from + 1] ?? 0;
    out[to++] = samples[from + 2] ?? 0;
  }
  return out;
}

function isBilevel(data: Uint8Array): boolean {
  for (let i = 0; i < data.length; i++) if ((((data[i] ?? 0) + 1) & 0xff) > 1) return false;
  return true;
}
