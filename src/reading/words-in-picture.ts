import type { Box } from '../geometry/box.js';
import { oppositeTurn, type Turn } from '../geometry/placement.js';
import { INK_LEVEL } from './ink.js';
import { encodePng } from './png.js';
import type { GreyRaster, Word } from './source.js';
import { readLines, type ReadLine, type ReadWord } from './word-reader.js';

/** A word is sure when it is read so, percent; what is read less surely may still show the shape of an address, down to this. */
const SURE = { word: 60, shape: 15 };
/** Bars and rules give short nonsense: only words with three letters in a row say how much could be read. */
const LETTERS = /\p{L}{3,}/u;
const SHAPE = /[\p{L}\p{N}]{2,}/u;

/** What was read in a raster. */
export interface Reading {
  /** Pt on the source page. */
  readonly words: readonly Word[];
  /** Characters of the words that were read surely … */
  readonly sure: number;
  /** … and of those that were not. */
  readonly unsure: number;
}

/**
 * Reads the words in a raster when it is turned clockwise by `turn`. `blank` (pt on the page) is whitened first: what is no writing. Takes half a second and more; for
 * where nothing else tells what stands there.
 */
export async function wordsInPicture(raster: GreyRaster, blank: readonly Box[], turn: Turn): Promise<Reading> {
  const white = whitened(raster, blank);
  if (!white.data.some((grey) => grey < INK_LEVEL)) return { words: [], sure: 0, unsure: 0 };
  const lines = await readLines(await encodePng(turned(white, turn)), Math.round(72 * raster.pixelsPerPt));
  const all = lines.flatMap(({ words }) => words).filter(({ text }) => LETTERS.test(text));
  const characters = (words: readonly ReadWord[]): number => words.reduce((sum, { text }) => sum + text.length, 0);
  return {
    words: lines.flatMap((line) => wordsOf(line, raster, turn)),
    sure: characters(all.filter(({ sure }) => sure >= SURE.word)),
    unsure: characters(all.filter(({ sure }) => sure < SURE.word)),
  };
}

/** All words of a line are as high as the line: those without ascenders are no smaller. */
function wordsOf({ top, bottom, words }: ReadLine, raster: GreyRaster, turn: Turn): readonly Word[] {
  return words
    .filter(({ text, sure }) => sure >= SURE.word || (sure >= SURE.shape && SHAPE.test(text)))
    .map(({ text, left, right }) => ({
      text,
      box: onPage({ left, top, right, bottom }, raster, turn),
      turn: oppositeTurn(turn),
      fontSize: (bottom - top) / raster.pixelsPerPt,
    }));
}

interface Sides {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** From pixels of the turned raster to pt on the page. */
function onPage(box: Sides, { width, height, pixelsPerPt: k, origin }: GreyRaster, turn: Turn): Box {
  const { left, top, right, bottom } = turnedBack(box, width, height, turn);
  return { x: origin.x + left / k, y: origin.y + top / k, width: (right - left) / k, height: (bottom - top) / k };
}

function turnedBack({ left, top, right, bottom }: Sides, width: number, height: number, turn: Turn): Sides {
  switch (turn) {
    case 0:
      return { left, top, right, bottom };
    case 90:
      return { left: top, right: bottom, top: height - right, bottom: height - left };
    case 180:
      return { left: width - right, right: width - left, top: height - bottom, bottom: height - top };
    case 270:
      return { left: width - bottom, right: width - top, top: left, bottom: right };
  }
}

function whitened(raster: GreyRaster, boxes: readonly Box[]): GreyRaster {
  const { width, height, pixelsPerPt: k, origin } = raster;
  const data = raster.data.slice();
  for (const box of boxes) {
    const x0 = Math.max(0, Math.floor((box.x - origin.x) * k));
    const x1 = Math.min(width, Math.ceil((box.x + box.width - origin.x) * k));
    const y1 = Math.min(height, Math.ceil((box.y + box.height - origin.y) * k));
    for (let y = Math.max(0, Math.floor((box.y - origin.y) * k)); y < y1; y++) if (x1 > x0) data.fill(255, y * width + x0, y * width + x1);
  }
  return { ...raster, data };
}

/** The raster turned clockwise; its place on the page is of no meaning then. */
function turned(raster: GreyRaster, turn: Turn): GreyRaster {
  if (turn === 0) return raster;
  const { width, height, data } = raster;
  const [w, h] = turn === 180 ? [width, height] : [height, width];
  const out = new Uint8Array(data.length);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const at = turn === 90 ? x * w + (w - 1 - y) : turn === 180 ? (h - 1 - y) * w + (w - 1 - x) : (h - 1 - x) * w + y;
      out[at] = data[y * width + x] as number;
    }
  }
  return { ...raster, width: w, height: h, data: out };
}
