import sharp from 'sharp';
import { Dice } from '../foreign/designs/content.js';
import { svgPage, svgShape } from '../foreign/kit/svg.js';
import { place, type Family, type Shape } from '../foreign/kit/shapes.js';
import { svgOfText } from '../type.js';
import { asTextItem } from './ink.js';
import type { RandomLabel, Scan } from './page.js';

/** `outlines`: type as its outlines, the same on every machine; else faces of the system. */
export type Type = 'outlines' | Partial<Record<Family, string>>;

export interface GreyPicture {
  readonly width: number;
  readonly height: number;
  /** 0 black, row by row from the top. */
  readonly data: Uint8Array;
  readonly bilevel: boolean;
  readonly jpeg: Uint8Array | undefined;
}

function svgOf(size: { width: number; height: number }, shapes: readonly Shape[], type: Type): string {
  if (type !== 'outlines') return svgPage(size, shapes, type);
  const fonts = { sans: '', serif: '', mono: '' };
  const body = shapes
    .map((shape) => (shape.kind === 'text' ? svgOfText(asTextItem(shape), shape.fill) : svgShape(shape, fonts)))
    .join('\n');
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${size.width} ${size.height}" width="${size.width}" height="${size.height}">${body}</svg>`;
}

/** Shapes as grey pixels; the picture is whole pixels, `dpi` exactly. */
async function grey(size: { width: number; height: number }, shapes: readonly Shape[], dpi: number, type: Type): Promise<GreyPicture> {
  const [width, height] = [Math.round((size.width * dpi) / 72), Math.round((size.height * dpi) / 72)];
  const exact = { width: (width * 72) / dpi, height: (height * 72) / dpi };
  const svg = svgOf(exact, shapes, type)
    .replace(/ width="[^"]*"/, ` width="${width}"`)
    .replace(/ height="[^"]*"/, ` height="${height}"`);
  const made = await sharp(Buffer.from(svg), { unlimited: true })
    .flatten({ background: 'white' })
    .greyscale()
    .raw()
    .toBuffer({ resolveWithObject: true });
  return { width: made.info.width, height: made.info.height, data: new Uint8Array(made.data), bilevel: false, jpeg: undefined };
}

const raw = ({ width, height, data }: GreyPicture) => sharp(data, { raw: { width, height, channels: 1 } });
const threshold = (data: Uint8Array, at: number): Uint8Array => data.map((value) => (value < at ? 0 : 255));

/** A label's pixels, turned already where they are stored so. */
export async function labelPixels({ label, turn, picture }: RandomLabel, type: Type): Promise<GreyPicture> {
  if (!picture) throw new Error('no picture');
  const inside = picture.stored ? turn : 0;
  const made = await grey(label.art.bounds(inside), place(label.art.shapes, label.art, { x: 0, y: 0, turn: inside }), picture.dpi, type);
  if (picture.ink === 'bilevel') return { ...made, data: threshold(made.data, 140), bilevel: true };
  return picture.ink === 'grey' ? made : { ...made, jpeg: new Uint8Array(await raw(made).jpeg({ quality: 70 }).toBuffer()) };
}

/** A page as a scanner gives it: askew about its middle, a little blurred, its paper not quite white, noisy. */
export async function scanned(
  size: { width: number; height: number },
  shapes: readonly Shape[],
  how: Scan,
  seed: number,
  type: Type,
): Promise<GreyPicture> {
  const clean = await grey(size, shapes, how.dpi, type);
  const { width, height } = clean;
  const turned = await raw(clean)
    .rotate(how.skew, { background: 'white' })
    .blur(0.6)
    .greyscale()
    .raw()
    .toBuffer({ resolveWithObject: true });
  const [left, top] = [Math.round((turned.info.width - width) / 2), Math.round((turned.info.height - height) / 2)];
  const dice = new Dice(seed);
  const data = new Uint8Array(width * height);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const value = turned.data[((y + top) * turned.info.width + x + left) * turned.info.channels] ?? 255;
      // The sum of three even draws is near enough to a normal one of deviation 0.5.
      const noise = (dice.next() + dice.next() + dice.next() - 1.5) * 2 * how.noise;
      data[y * width + x] = Math.max(0, Math.min(255, 28 + (value * (how.paper - 28)) / 255 + noise));
    }
  }
  const made = { width, height, data, bilevel: false, jpeg: undefined };
  if (how.bilevel) return { ...made, data: threshold(data, 150), bilevel: true };
  return { ...made, jpeg: new Uint8Array(await raw(made).jpeg({ quality: 45 }).toBuffer()) };
}
