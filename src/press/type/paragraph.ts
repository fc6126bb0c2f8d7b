import { createRequire } from 'node:module';
import type { Bidi } from 'bidi-js';
import { breaksOf, type Breaks } from './breaks.js';
import { WITHOUT_INK } from './clean.js';
import type { Cluster, Face, Weight } from './face.js';
import { faceFor } from './faces.js';
import type { Han } from './han.js';
import { outlineOf } from './outline.js';

/** How a text is set. */
export interface Style {
  /** pt */
  readonly size: number;
  readonly weight: Weight;
}

/** One line of type, ready to be drawn. Lengths in pt. */
export interface SetLine {
  readonly clusters: readonly Cluster[];
  readonly style: Style;
  readonly width: number;
  /** How far the line reaches above and below its baseline, ink and usual distance: lines set below each other by this never touch. */
  readonly up: number;
  readonly down: number;
  /** Whether it belongs to the right edge. */
  readonly rtl: boolean;
  /** What it says, in reading order. */
  readonly text: string;
}

export type Direction = 'ltr' | 'rtl';

const require = createRequire(import.meta.url);
const bidi = (require('bidi-js') as () => Bidi)();
const graphemes = new Intl.Segmenter('en', { granularity: 'grapheme' });

/** Usual reach of a line above and below the baseline, em: together the distance from line to line. */
const UP = 0.94;
const DOWN = 0.28;

const RIGHT_TO_LEFT = /[\p{Script=Arabic}\p{Script=Hebrew}]/u;
const STRONG = /[\p{L}]/u;
/** Characters below Hebrew: none of them runs to the left or turns others round. */
const LEFT_TO_RIGHT = /^[\u0020-\u058f]*$/;

/** What is kept apart has no say in the direction of what it stands in. */
const APART = /[\u2066-\u2068][^\u2069]*\u2069/g;

/** A name inside a sentence in another language: what runs to the left turns nothing else of the sentence round (UAX #9, FSI and PDI). */
export const apart = (text: string): string => (RIGHT_TO_LEFT.test(text) ? `\u2068${text}\u2069` : text);

/** The direction of a text by its first letter (UAX #9 P2, P3); undefined where it has none. */
export function directionOf(text: string): Direction | undefined {
  const letter = STRONG.exec(text.replace(APART, ''))?.[0];
  if (letter === undefined) return undefined;
  return RIGHT_TO_LEFT.test(letter) ? 'rtl' : 'ltr';
}

/**
 * Breaks a paragraph into lines no wider than `width` (pt): where the script allows (UAX #14; between Thai words), within a word only where the word alone is
 * wider. A text without ink gives no line.
 * @param text as `cleanText` gives it
 * @param otherwise the direction of a text without letters
 */
export function setParagraph(
  text: string,
  style: Style,
  width: number,
  han: readonly Han[],
  otherwise: Direction = 'ltr',
  breaks: Breaks = 'allowed',
): readonly SetLine[] {
  const paragraph = text.trim();
  if (paragraph === '') return [];
  const setter = new Setter(paragraph, style, han, directionOf(paragraph) ?? otherwise, breaks);
  const lines: SetLine[] = [];
  let from = 0;
  while (from < paragraph.length) {
    const to = setter.lineEnd(from, width);
    const line = setter.line(from, to);
    if (line.clusters.length > 0) lines.push(line);
    from = to;
  }
  return lines;
}

/** The width of a text set in one line, pt. */
export function lineWidth(text: string, style: Style, han: readonly Han[]): number {
  const paragraph = text.trim();
  return paragraph === '' ? 0 : new Setter(paragraph, style, han, directionOf(paragraph) ?? 'ltr', 'words').line(0, paragraph.length).width;
}

/** A part of one face and one direction, without a break in it. */
interface Piece {
  readonly from: number;
  readonly to: number;
  readonly face: Face;
  readonly level: number;
}

class Setter {
  private readonly levels: Uint8Array;
  private readonly pieces: readonly Piece[];
  private readonly breaks: readonly number[];
  private readonly widths: ReadonlyMap<number, number>;

  constructor(
    private readonly text: string,
    private readonly style: Style,
    private readonly han: readonly Han[],
    private readonly base: Direction,
    breaks: Breaks,
  ) {
    this.levels = base === 'ltr' && LEFT_TO_RIGHT.test(text) ? new Uint8Array(text.length) : bidi.getEmbeddingLevels(text, base).levels;
    this.breaks = breaksOf(text, breaks);
    this.pieces = this.piecesOf();
    this.widths = this.widthsOf();
  }

  /** Where a line that begins at `from` ends: behind the last break that still fits, at least one character on. */
  lineEnd(from: number, width: number): number {
    const { text, breaks } = this;
    const fits = (to: number): boolean => this.width(from, to) <= width + ROUNDING;
    const first = breaks.findIndex((each) => each > from);
    const next = breaks[first] ?? text.length;
    if (next - from > LONGEST_WORD || !fits(next)) return this.wordEnd(from, next, width, fits);
    let end = next;
    for (const each of breaks.slice(first + 1)) {
      if (!fits(each)) break;
      end = each;
    }
    return end;
  }

  /** Where a word that is too long for a line is cut: between two characters as people see them. */
  private wordEnd(from: number, to: number, width: number, fits: (to: number) => boolean): number {
    // Characters one by one are about as wide as together: only near the end is it asked whether they fit.
    const ends: number[] = [];
    let sum = 0;
    for (const { index, segment } of graphemes.segment(this.text.slice(from, to))) {
      const end = from + index + segment.length;
      sum += this.shapedPieces(end - segment.length, end).reduce((total, { shaped }) => total + shaped.width, 0);
      ends.push(end);
      if ((sum * this.style.size) / 1000 > NEARLY * width) break;
    }
    while (ends.length > 1 && !fits(ends.at(-1) ?? to)) ends.pop();
    const end = ends.at(-1) ?? to;
    return end < to ? (ends.findLast((each) => AFTER.test(this.text[each - 1] ?? '')) ?? end) : end;
  }

  private width(from: number, to: number): number {
    const end = from + this.text.slice(from, to).trimEnd().length;
    const [before, after] = [this.widths.get(from), this.widths.get(end)];
    const sum =
      before !== undefined && after !== undefined
        ? after - before
        : this.shapedPieces(from, end).reduce((total, { shaped }) => total + shaped.width, 0);
    return (sum * this.style.size) / 1000;
  }

  /** What stands before each place between two pieces, 1/1000 em. */
  private widthsOf(): ReadonlyMap<number, number> {
    const widths = new Map([[0, 0]]);
    let sum = 0;
    for (const { face, from, to, level } of this.pieces) {
      widths.set(from, sum);
      sum += shapedPart(face, level, this.text.slice(from, to)).width;
      widths.set(to, sum);
    }
    return widths;
  }

  line(from: number, to: number): SetLine {
    const { text, style } = this;
    const end = from + text.slice(from, to).trimEnd().length;
    const shown = inOrder(this.shapedPieces(from, end));
    const sum = (of: (shaped: Shaped) => number): number => shown.reduce((total, { shaped }) => total + of(shaped), 0);
    const most = (of: (shaped: Shaped) => number, least: number): number =>
      shown.reduce((largest, { shaped }) => Math.max(largest, of(shaped)), least);
    const pt = style.size / 1000;
    return {
      clusters: shown.flatMap(({ shaped }) => shaped.clusters),
      style,
      width: sum((shaped) => shaped.width) * pt,
      up: most(({ up }) => up, UP * 1000) * pt,
      down: most(({ down }) => down, DOWN * 1000) * pt,
      rtl: this.base === 'rtl',
      text: text.slice(from, end),
    };
  }

  private shapedPieces(from: number, to: number): readonly { level: number; shaped: Shaped }[] {
    const found: { level: number; shaped: Shaped }[] = [];
    for (const piece of this.pieces) {
      if (piece.to <= from) continue;
      if (piece.from >= to) break;
      const part = this.text.slice(Math.max(from, piece.from), Math.min(to, piece.to));
      found.push({ level: piece.level, shaped: shapedPart(piece.face, piece.level, part) });
    }
    return found;
  }

  private piecesOf(): readonly Piece[] {
    const { text, levels, style, han } = this;
    const breaks = new Set(this.breaks);
    const pieces: { from: number; to: number; face: Face; level: number; space: boolean }[] = [];
    for (let at = 0; at < text.length;) {
      const char = String.fromCodePoint(text.codePointAt(at) ?? 0);
      const to = at + char.length;
      const level = levels[at] ?? 0;
      const space = char === ' ';
      const before = pieces.at(-1);
      const open = before?.to === at ? before : undefined;
      const joins = JOINS.test(char);
      const face = joins && open && !open.space && open.face.has(char.codePointAt(0) ?? 0) ? open.face : inkFace(char, style.weight, han);
      if (face && open?.face === face && open.level === level && open.space === space && (joins || !breaks.has(at))) open.to = to;
      else if (face) pieces.push({ from: at, to, face, level, space });
      at = to;
    }
    return pieces;
  }
}

/** Belongs to the character before it, whose face must shape both. */
const JOINS = /[\p{M}\u200c\u200d]/u;

/** Undefined for signs that only order or join what stands around them. */
const inkFace = (char: string, weight: Weight, han: readonly Han[]): Face | undefined =>
  WITHOUT_INK.test(char) ? undefined : faceFor(char, weight, han);

/** Where a number or an address is cut rather than elsewhere. */
const AFTER = /[-/_.,:;]/;

/** Longer words fit no line, characters: not worth measuring as a whole. */
const LONGEST_WORD = 1000;

/** How much wider characters may be alone than in a word. */
const NEARLY = 1.1;

/** What adding up widths may leave, pt. */
const ROUNDING = 1e-6;

/** UAX #9 L2: from the highest level down to the lowest odd one, every sequence at that level or above is turned round. */
function inOrder<T extends { readonly level: number }>(pieces: readonly T[]): readonly T[] {
  const shown = [...pieces];
  const highest = shown.reduce((most, { level }) => Math.max(most, level), 0);
  for (let level = highest; level > 0; level--) {
    for (let from = 0; from < shown.length; from++) {
      if ((shown[from]?.level ?? 0) < level) continue;
      let to = from;
      while ((shown[to]?.level ?? 0) >= level) to += 1;
      shown.splice(from, to - from, ...shown.slice(from, to).reverse());
      from = to;
    }
  }
  return shown;
}

/** Brackets that open to the left in a text that runs to the left (UAX #9 L4). */
const mirrored = (text: string): string => Array.from(text, (char) => bidi.getMirroredCharacter(char) ?? char).join('');

/** A part of a piece, in the direction of its level: odd ones run to the left. */
const shapedPart = (face: Face, level: number, text: string): Shaped =>
  level % 2 === 1 ? shape(face, mirrored(text), true) : shape(face, text, false);

/** Lengths in 1/1000 em. */
interface Shaped {
  readonly clusters: readonly Cluster[];
  readonly width: number;
  readonly up: number;
  readonly down: number;
}

/** Never joined and never kerned (a test holds the faces to that): lists are full of long numbers, each there once. */
const DIGITS = /^[0-9]{2,}$/;

/** Words come back on every slip of a run. */
const words = new Map<string, Shaped>();
const MOST_WORDS = 20_000;

function shape(face: Face, text: string, rtl: boolean): Shaped {
  const key = `${face.key}${rtl ? '<' : '>'}${text}`;
  const known = words.get(key);
  if (known) return known;
  const clusters =
    DIGITS.test(text) && !rtl ? Array.from(text, (digit) => shape(face, digit, false).clusters).flat() : face.shape(text, rtl);
  const made: Shaped = {
    clusters,
    width: clusters.reduce((sum, { advance }) => sum + advance, 0),
    up: clusters.reduce((most, cluster) => Math.max(most, outlineOf(cluster).y1), 0),
    down: clusters.reduce((most, cluster) => Math.max(most, -outlineOf(cluster).y0), 0),
  };
  if (words.size >= MOST_WORDS) words.clear();
  words.set(key, made);
  return made;
}
