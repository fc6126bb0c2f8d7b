import { encodePng } from '../reading/png.js';
import type { GreyRaster } from '../reading/source.js';

/** Grey between two pictures, pixels. */
const BETWEEN = 24;
const GREY = 160;
/** pt of a picture at 100 dpi, pixels per pt of the type. */
const CAPTION = { height: 18, fontSize: 9, pixelsPerPt: 100 / 72 };

/** One page of a PDF of ours in grey. @param number from 1 */
export async function drawnPage(pdf: Uint8Array, number: number, pixelsPerPt: number): Promise<GreyRaster> {
  // Takes a while to load, and most runs hold nothing that wants it.
  const { openPdf } = await import('../reading/open-pdf.js');
  const opened = await openPdf(pdf, { as: 'output' });
  if ('refused' in opened) throw new Error(`captioned: the press's own document does not open (${opened.refused.code})`);
  try {
    const page = opened.page(number);
    const drawn = page.render({ x: 0, y: 0, width: page.width, height: page.height }, pixelsPerPt);
    return { ...drawn, data: drawn.data.slice() };
  } finally {
    opened.close();
  }
}

/** A picture under one line that says what it is, as wide as the picture. */
export async function underCaption(caption: string, picture: GreyRaster): Promise<GreyRaster> {
  const { pressCaptions } = await import('../press/caption.js');
  const strip = { name: 'caption', width: picture.width / CAPTION.pixelsPerPt, height: CAPTION.height };
  return joined([await drawnPage(await pressCaptions([caption], strip, CAPTION.fontSize), 1, CAPTION.pixelsPerPt), picture], 'down', 0);
}

/** Two pictures as one, grey between them. */
export const sideBySide = (left: GreyRaster, right: GreyRaster): GreyRaster => joined([left, right], 'across', BETWEEN);

/** Two drawings of one region as PNG, side by side, each under its caption. */
export async function captionedPair(pair: readonly [GreyRaster, GreyRaster], captions: readonly [string, string]): Promise<Uint8Array> {
  return encodePng(sideBySide(await underCaption(captions[0], pair[0]), await underCaption(captions[1], pair[1])));
}

function joined([first, second]: readonly [GreyRaster, GreyRaster], how: 'across' | 'down', between: number): GreyRaster {
  const at = how === 'across' ? { x: first.width + between, y: 0 } : { x: 0, y: first.height + between };
  const width = Math.max(first.width, at.x + second.width);
  const height = Math.max(first.height, at.y + second.height);
  const data = new Uint8Array(width * height).fill(GREY);
  const paste = (from: GreyRaster, x: number, y: number): void => {
    for (let row = 0; row < from.height; row++) {
      data.set(from.data.subarray(row * from.width, (row + 1) * from.width), (y + row) * width + x);
    }
  };
  paste(first, 0, 0);
  paste(second, at.x, at.y);
  return { ...first, width, height, data };
}
