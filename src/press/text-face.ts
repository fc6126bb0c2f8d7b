import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Font } from '@cantoo/fontkit';
import type { PDFDocument, PDFFont } from '../reading/pdf-library.js';
import { forgetGlyphs } from './type/font-file.js';

/** How far a line's baseline lies under its top: room for accents on capitals above, for descenders below. */
export const BASELINE = 0.94;

/** Distance from one line to the next, as a factor of the font size. */
export const LINE_HEIGHT = 1.2;

const FONT_FILE = '@expo-google-fonts/noto-sans/400Regular/NotoSans_400Regular.ttf';

interface Face {
  readonly bytes: Uint8Array;
  readonly font: Font;
  readonly perEm: number;
}

let loaded: Face | undefined;

const require = createRequire(import.meta.url);

function face(): Face {
  if (loaded) return loaded;
  // A third of a second to load, and most commands and documents set no type.
  const { create } = require('@cantoo/fontkit') as typeof import('@cantoo/fontkit');
  const bytes = new Uint8Array(readFileSync(require.resolve(FONT_FILE)));
  const font = create(bytes) as Font;
  loaded = { bytes, font, perEm: font.unitsPerEm };
  return loaded;
}

/**
 * Advance widths in thousandths of an em of what numbers are made of: a worker that only asks how large a number may become need not load the face
 * for it. A test holds them against the face.
 */
export const NUMBER_WIDTHS: ReadonlyMap<string, number> = new Map([
  ...Array.from('0123456789', (digit): [string, number] => [digit, 572]),
  ['/', 372],
  [' ', 260],
  ['·', 268],
  ['W', 930],
]);

/** Width of one line as it will be set (no kerning), pt. */
export function measureLine(text: string, fontSize: number): number {
  const known = Array.from(text, (char) => NUMBER_WIDTHS.get(char) ?? NaN).reduce((sum, width) => sum + width, 0);
  if (!Number.isNaN(known)) return (known / 1000) * fontSize;
  const { font, perEm } = face();
  let width = 0;
  for (const glyph of font.layout(settable(text)).glyphs) width += glyph.advanceWidth;
  return (width / perEm) * fontSize;
}

/** Size of a block of lines, pt: the widest line × the lines' height. */
export function measureText(lines: readonly string[], fontSize: number): { width: number; height: number } {
  const width = lines.reduce((widest, line) => Math.max(widest, measureLine(line, fontSize)), 0);
  return { width, height: lines.length * fontSize * LINE_HEIGHT };
}

/** The characters of `text` that the press's font lacks, each once; line ends and tabs don't count. */
export function missingGlyphs(text: string): readonly string[] {
  const { font } = face();
  const missing = new Set<string>();
  for (const char of settable(text)) {
    if (char !== ' ' && !font.hasGlyphForCodePoint(char.codePointAt(0) ?? 0)) missing.add(char);
  }
  return [...missing];
}

/** What is set: composed characters, as the font places no combining marks here; controls would be drawn as boxes. */
export const settable = (line: string): string => line.normalize('NFC').replace(/\s/gu, ' ');

/** Embeds the press's font, only the glyphs that will be used. Parses the file once a process. */
export async function embedFace(document: PDFDocument): Promise<PDFFont> {
  const { bytes, font } = face();
  forgetGlyphs(font);
  document.registerFontkit({ create: () => font });
  return document.embedFont(bytes, { subset: true });
}
