import type { FontFile, Glyph } from './font-file.js';
import { contoursOf, type Contours } from './outline.js';

export type Weight = 'regular' | 'bold';

/** What is drawn as one, in a line: a glyph with its marks, or the glyphs that can't be told apart by character. Lengths in 1/1000 em, y up. */
export interface Cluster {
  /** The same for the same shapes and characters, in every process. */
  readonly key: string;
  readonly face: Face;
  /** Glyphs of the face, from the cluster's own origin. */
  readonly parts: readonly { readonly id: number; readonly x: number; readonly y: number }[];
  readonly advance: number;
  /** The characters that it stands for, in the order in which they are seen, from left to right. */
  readonly text: string;
}

/** A font file of one weight: which characters it has, how it joins them, what its glyphs look like. */
export interface Face {
  /** The same for the same file and weight in every process. */
  readonly key: string;
  has(codePoint: number): boolean;
  /** Shapes a run of one direction. The clusters come in the order in which they are seen, from left to right. */
  shape(text: string, rtl: boolean): readonly Cluster[];
  /** In units of 1/1000 em. */
  contours(id: number): Contours;
}

/** @param font its file and weight; opened when something is asked of it */
export function faceOf(font: FontFile): Face {
  const known = new Map<number, Contours>();
  const clusters = new Map<string, Cluster>();
  const face: Face = {
    key: font.key,
    has: (codePoint) => font.has(codePoint),
    shape: (text, rtl) => {
      const seen = font.layOut(text, rtl);
      const groups = grouped(withTexts(rtl ? seen.toReversed() : seen, text)).map((group) => (rtl ? group.toReversed() : group));
      return (rtl ? groups.reverse() : groups).map((group) => {
        const made = clusterOf(group, face, rtl);
        // Thousands of numbers on a list are made of ten digits; kerning moves the pen on differently after one shape.
        const key = `${made.key}/${made.advance}`;
        const kept = clusters.get(key);
        if (!kept) clusters.set(key, made);
        return kept ?? made;
      });
    },
    contours: (id) => {
      const kept = known.get(id);
      if (kept) return kept;
      const made = contoursOf(font.path(id));
      known.set(id, made);
      return made;
    },
  };
  return face;
}

/**
 * Sees to it that the glyphs' characters give the text again: as the shaper says where that adds up, else one each in reading order, as some glyphs change
 * places and some stand for none.
 * @param glyphs in reading order
 */
function withTexts(glyphs: readonly Glyph[], text: string): readonly Glyph[] {
  if (glyphs.map((glyph) => glyph.text).join('') === text) return glyphs;
  const chars = Array.from(text);
  return glyphs.map((glyph, at) => ({ ...glyph, text: at === glyphs.length - 1 ? chars.slice(at).join('') : (chars[at] ?? '') }));
}

/**
 * Each glyph that moves the pen and stands for something, with those behind it that don't: taken out of a PDF, a mark of its own would come out at another place,
 * and a glyph without a character as anything.
 */
function grouped(glyphs: readonly Glyph[]): readonly (readonly Glyph[])[] {
  const groups: Glyph[][] = [];
  for (const glyph of glyphs) {
    const group = groups.at(-1);
    if (group && (glyph.advance <= 0 || glyph.text === '')) group.push(glyph);
    else groups.push([glyph]);
  }
  return groups;
}

/** @param group in the order in which it is seen */
function clusterOf(group: readonly Glyph[], face: Face, rtl: boolean): Cluster {
  let pen = 0;
  const parts = group.map(({ id, x, y, advance }) => {
    const part = { id, x: pen + x, y };
    pen += advance;
    return part;
  });
  // Programs that take text out of a PDF turn runs to the left round character by character, those of one glyph too.
  const text = group.map((glyph) => (rtl ? Array.from(glyph.text).reverse().join('') : glyph.text)).join('');
  const shapes = parts.map(({ id, x, y }) => `${id} ${x} ${y}`).join(' ');
  return { key: `${face.key}/${shapes}/${text}`, face, parts, advance: Math.max(0, pen), text };
}
