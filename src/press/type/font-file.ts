import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Font, PathCommand } from '@cantoo/fontkit';
import { PER_EM } from './truetype.js';

/** A glyph at its place in a run. Lengths in 1/1000 em, y up. */
export interface Glyph {
  readonly id: number;
  /** What the shaper says that it stands for: not always right, and empty for some. */
  readonly text: string;
  readonly advance: number;
  readonly x: number;
  readonly y: number;
}

/** A font file in one weight. It is opened when asked for something, and closed again when others were asked since. */
export interface FontFile {
  readonly key: string;
  has(codePoint: number): boolean;
  /** The glyphs of a run of one direction, in the order in which they are seen from left to right. */
  layOut(text: string, rtl: boolean): readonly Glyph[];
  /** A glyph's lines and curves, 1/1000 em. */
  path(id: number): readonly PathCommand[];
}

/** What is used of a font beyond its public interface; the library is pinned, and tests look at what comes of it. */
type OpenFont = Font & { variationCoords?: number[]; _glyphs: Record<number, unknown> };

/** Most recently used last. The East Asian typefaces have 900 files, of which one takes half a megabyte when open. */
const open = new Map<string, OpenFont>();
const MOST_OPEN = 60;

const require = createRequire(import.meta.url);

/**
 * @param key tells the file and weight from all others
 * @param path a TTF or a WOFF2 of 1000 units per em, checked on opening
 * @param weight for a variable font, on its weight axis (OpenType `wght`, 100 to 900)
 */
export function fontFile(key: string, path: string, weight?: number): FontFile {
  const font = (): OpenFont => {
    const kept = open.get(key) ?? openFont(path, weight);
    open.delete(key);
    open.set(key, kept);
    const [oldest] = open.keys();
    if (open.size > MOST_OPEN && oldest !== undefined) open.delete(oldest);
    return kept;
  };
  return {
    key,
    has: (codePoint) => font().hasGlyphForCodePoint(codePoint),
    layOut: (text, rtl) => {
      const used = font();
      forgetGlyphs(used);
      const { glyphs, positions } = used.layout(text, undefined, undefined, undefined, rtl ? 'rtl' : 'ltr');
      return glyphs.map(({ id, codePoints }, at) => ({
        id,
        text: String.fromCodePoint(...codePoints),
        advance: Math.round(positions?.[at]?.xAdvance ?? 0),
        x: Math.round(positions?.[at]?.xOffset ?? 0),
        y: Math.round(positions?.[at]?.yOffset ?? 0),
      }));
    },
    path: (id) => font().getGlyph(id)?.path.commands ?? [],
  };
}

/**
 * A glyph that the library keeps also keeps the characters that it first stood for, or none where it was a part of another, as an o is of an ö: shaping
 * would go by those, and so would whoever copies text from a page.
 */
export function forgetGlyphs(font: Font): void {
  (font as OpenFont)._glyphs = {};
}

function openFont(path: string, weight: number | undefined): OpenFont {
  // A third of a second to load, and most documents set no type.
  const { create } = require('@cantoo/fontkit') as typeof import('@cantoo/fontkit');
  const font = create(new Uint8Array(readFileSync(path))) as OpenFont;
  if (font.unitsPerEm !== PER_EM) throw new Error(`font: ${path} has ${font.unitsPerEm} units per em`);
  // The public way to an instance of a variable font opens its bytes as a plain TTF, which a WOFF2 is not.
  if (weight !== undefined) font.variationCoords = [weight];
  return font;
}
