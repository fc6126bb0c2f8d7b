import type { Outline } from './outline.js';

/** A glyph of a font to be written. */
export interface FontGlyph {
  readonly outline: Outline;
  /** Font units. */
  readonly advance: number;
}

/** Units per em of every font that is written here. */
export const PER_EM = 1000;

/** Highest and lowest reach of the line, in font units: above and below the baseline. */
export interface Reach {
  readonly up: number;
  readonly down: number;
}

/**
 * A TrueType font file with the tables that a PDF asks of an embedded CIDFontType2 (ISO 32000-2 9.9: glyf, head, hhea, hmtx, loca, maxp; from memory), glyph
 * after glyph as given. Glyph 0 is the one shown for what is missing.
 */
export function writeTrueType(glyphs: readonly FontGlyph[], reach: Reach): Uint8Array {
  const inked = glyphs.map(({ outline }) => outline).filter(({ points }) => points > 0);
  const most = (of: (outline: Outline) => number): number => inked.reduce((largest, each) => Math.max(largest, of(each)), 0);
  const widest = glyphs.reduce((largest, { advance }) => Math.max(largest, advance), 0);
  const tables: [string, Uint8Array][] = [
    ['glyf', joined(glyphs.map(({ outline }) => outline.bytes))],
    ['head', head(inked)],
    ['hhea', words([0x00010000], [reach.up, -reach.down, 0, widest, 0, 0, widest, 1, 0, 0, 0, 0, 0, 0, 0, glyphs.length])],
    [
      'hmtx',
      words(
        [],
        glyphs.flatMap(({ advance, outline }) => [advance, outline.x0]),
      ),
    ],
    ['loca', words(offsets(glyphs.map(({ outline }) => outline.bytes.length)), [])],
    [
      'maxp',
      words([0x00010000], [glyphs.length, most(({ points }) => points), most(({ contours }) => contours), 0, 0, 2, 0, 0, 0, 0, 0, 0, 0, 0]),
    ],
  ];
  return withDirectory(tables);
}

function head(inked: readonly Outline[]): Uint8Array {
  const [x0, y0] = [inked.reduce((a, b) => Math.min(a, b.x0), 0), inked.reduce((a, b) => Math.min(a, b.y0), 0)];
  const [x1, y1] = [inked.reduce((a, b) => Math.max(a, b.x1), 0), inked.reduce((a, b) => Math.max(a, b.y1), 0)];
  const bytes = new Uint8Array(54);
  const view = new DataView(bytes.buffer);
  view.setUint32(0, 0x00010000);
  view.setUint32(4, 0x00010000);
  view.setUint32(12, 0x5f0f3cf5);
  // Baseline at y = 0; no dates, which would differ from run to run.
  view.setUint16(16, 1);
  view.setUint16(18, PER_EM);
  [x0, y0, x1, y1].forEach((value, at) => {
    view.setInt16(36 + 2 * at, value);
  });
  view.setUint16(46, 3);
  view.setInt16(48, 2);
  // Long offsets in loca.
  view.setInt16(50, 1);
  return bytes;
}

/** 32-bit numbers, then 16-bit ones. */
function words(long: readonly number[], short: readonly number[]): Uint8Array {
  const bytes = new Uint8Array(4 * long.length + 2 * short.length);
  const view = new DataView(bytes.buffer);
  long.forEach((value, at) => {
    view.setUint32(4 * at, value);
  });
  short.forEach((value, at) => {
    view.setInt16(4 * long.length + 2 * at, value);
  });
  return bytes;
}

function offsets(lengths: readonly number[]): readonly number[] {
  let at = 0;
  return [0, ...lengths.map((length) => (at += length))];
}

function joined(parts: readonly Uint8Array[]): Uint8Array {
  const bytes = new Uint8Array(parts.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const part of parts) {
    bytes.set(part, at);
    at += part.length;
  }
  return bytes;
}

const padded = (length: number): number => Math.ceil(length / 4) * 4;

/** The table directory (OpenType 1.9) before the tables, with their checksums. */
function withDirectory(tables: readonly [string, Uint8Array][]): Uint8Array {
  const power = Math.floor(Math.log2(tables.length));
  const start = 12 + 16 * tables.length;
  const bytes = new Uint8Array(tables.reduce((sum, [, { length }]) => sum + padded(length), start));
  const view = new DataView(bytes.buffer);
  view.setUint32(0, 0x00010000);
  [tables.length, 16 * 2 ** power, power, 16 * (tables.length - 2 ** power)].forEach((value, at) => {
    view.setUint16(4 + 2 * at, value);
  });
  let at = start;
  tables.forEach(([tag, table], index) => {
    const entry = 12 + 16 * index;
    bytes.set(Buffer.from(tag, 'latin1'), entry);
    bytes.set(table, at);
    view.setUint32(entry + 4, checksum(view, at, at + padded(table.length)));
    view.setUint32(entry + 8, at);
    view.setUint32(entry + 12, table.length);
    at += padded(table.length);
  });
  const headAt = view.getUint32(12 + 16 * tables.findIndex(([tag]) => tag === 'head') + 8);
  view.setUint32(headAt + 8, (0xb1b0afba - checksum(view, 0, bytes.length)) >>> 0);
  return bytes;
}

function checksum(view: DataView, from: number, to: number): number {
  let sum = 0;
  for (let at = from; at < to; at += 4) sum = (sum + view.getUint32(at)) >>> 0;
  return sum;
}
