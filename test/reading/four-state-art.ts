import { PDFDocument, degrees, rgb } from 'pdf-lib';
import sharp from 'sharp';
import { openImage } from '../../src/reading/open-image.js';
import type { SourceDocument } from '../../src/reading/source.js';
import { opened } from './risky-pages.js';

/** Sizes in inches: about the middle of USPS-B-3200 (handbook section 3.2). */
const PITCH = 1 / 21.5;
const WIDTH = 0.02;
const [FULL, HALF, TRACKER] = [0.145, 0.097, 0.049];

interface Rectangle {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** The bars of a row of T, A, D and F from (0.4, 1) in on, in inches, y down. */
export function barsOf(letters: string, scale = 1, pitch = PITCH): readonly Rectangle[] {
  return Array.from(letters, (letter, index) => {
    const top = letter === 'A' || letter === 'F' ? 0 : HALF - TRACKER;
    const bottom = letter === 'D' || letter === 'F' ? FULL : HALF;
    return { x: 0.4 + index * pitch * scale, y: 1 + top * scale, width: WIDTH * scale, height: (bottom - top) * scale };
  });
}

type Turn = 0 | 90 | 180 | 270;

/** A 4×6 in page with these bars and some words' worth of other ink. */
export async function vectorPage(bars: readonly Rectangle[], turn: Turn = 0): Promise<SourceDocument> {
  const pdf = await PDFDocument.create({ updateMetadata: false });
  const page = pdf.addPage([288, 432]);
  page.setRotation(degrees(turn));
  for (const { x, y, width, height } of bars) {
    page.drawRectangle({ x: x * 72, y: 432 - (y + height) * 72, width: width * 72, height: height * 72, color: rgb(0, 0, 0) });
  }
  page.drawText('Sample, 12 Example Street', { x: 28, y: 300, size: 11 });
  return opened(await pdf.save());
}

export async function picturePage(bars: readonly Rectangle[], dpi: number, turn: Turn = 0): Promise<SourceDocument> {
  const rectangles = bars.map(({ x, y, width, height }) => `<rect x="${x}" y="${y}" width="${width}" height="${height}"/>`).join('');
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="${4 * dpi}" height="${6 * dpi}" viewBox="0 0 4 6"><rect width="4" height="6" fill="white"/>${rectangles}</svg>`;
  const png = await sharp(Buffer.from(svg)).flatten({ background: 'white' }).rotate(turn).withMetadata({ density: dpi }).png().toBuffer();
  const source = await openImage(new Uint8Array(png));
  if ('refused' in source) throw new Error(source.refused.message);
  return source;
}

/** How a row's letters are told on a page turned clockwise. */
export function lettersTurned(letters: string, turn: Turn): string {
  const swapped = (text: string): string => text.replace(/[AD]/g, (letter) => (letter === 'A' ? 'D' : 'A'));
  const reversed = (text: string): string => Array.from(text).reverse().join('');
  if (turn === 0) return letters;
  if (turn === 90) return swapped(letters);
  return turn === 180 ? reversed(swapped(letters)) : reversed(letters);
}
