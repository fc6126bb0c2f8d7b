import type { CodeArt } from '../code-art.js';
import { Drawing } from '../drawing.js';
import { A4, LETTER } from '../layout.js';

/** Anything that a seller's folder may hold and that is no label: a page of its own size. */
export interface Paper {
  readonly name: string;
  readonly draw: () => Drawing;
}

export const SIZES = {
  media: { width: 288, height: 432 },
  mediaLying: { width: 432, height: 288 },
  a6: { width: 297.64, height: 419.53 },
  a5: { width: 419.53, height: 595.28 },
  a4: A4,
  letter: LETTER,
} as const;
export type SizeName = keyof typeof SIZES;

/** So that nobody takes a print of it for more than it is. */
export const MARK = 'Sample, not valid for carriage';

export function sheet(size: SizeName): Drawing {
  const { width, height } = SIZES[size];
  const d = new Drawing(width, height);
  d.text(width / 2, height - 10, MARK, { size: 7, align: 'center' });
  return d;
}

/** Bars with what they say in words below. */
export function barsWithText(d: Drawing, art: CodeArt, text: string, x: number, y: number, module: number, height: number): Drawing {
  return d.bars(art, x, y, module, height).text(x, y + height / 2 + 11, text, { size: 9, align: 'center' });
}
