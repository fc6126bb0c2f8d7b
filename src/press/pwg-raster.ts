import type { Grid } from '../geometry/grid.js';
import { pwgName, type Media } from '../geometry/media.js';
import type { GreyRaster } from '../reading/source.js';

/** One page of dots: 0 burned, 255 paper. */
export type Dots = Pick<GreyRaster, 'width' | 'height' | 'data'>;

const SYNC = 'RaS2';
const HEADER_BYTES = 1796;
/** Bytes of a text field, with the NUL that ends it. */
const TEXT_BYTES = 64;
/** `Black` of the colour spaces: a 1 bit is a burned dot. */
const BLACK = 3;
/** A line stands for up to so many equal ones, a run or a stretch of bytes for up to so many bytes. */
const MOST_LINES = 256;
const MOST_BYTES = 128;

/**
 * Offsets in the page header. PWG 5102.4-2012 by its second source, the page header of libcups (github.com/OpenPrinting/libcups cups/raster.h and
 * raster-stream.c): VERIFIED-S. Fields that aren't named here are 0: the printer's default.
 */
const AT = {
  pwgRaster: 0,
  resolution: 276,
  copies: 340,
  pageSize: 352,
  width: 372,
  height: 376,
  bitsPerColour: 384,
  bitsPerPixel: 388,
  bytesPerLine: 392,
  colourSpace: 400,
  colours: 420,
  totalPages: 452,
  crossFeedTransform: 456,
  feedTransform: 460,
  imageBoxRight: 472,
  imageBoxBottom: 476,
  alternatePrimary: 480,
  pageSizeName: 1732,
} as const;

/**
 * Pages of dots as PWG raster (PWG 5102.4, `image/pwg-raster`), type `black_1`: every burned dot is a burned dot, nothing is drawn again. In chunks, one a page,
 * so that memory does not grow with the stack; the same pages give the same bytes.
 * @param count how many pages there will be
 * @throws for a grid that is not a whole number of dots an inch, which the format can't name (a bug: the pipeline's check refuses it), and for another number of pages
 */
export async function* pwgRaster(
  pages: Iterable<Dots> | AsyncIterable<Dots>,
  count: number,
  media: Media,
  grid: Grid,
): AsyncGenerator<Uint8Array> {
  if (!Number.isInteger(grid.dpi)) throw new Error(`pwg-raster: ${grid.name} is no whole number of dots an inch`);
  yield Buffer.from(SYNC, 'latin1');
  let written = 0;
  for await (const page of pages) {
    written += 1;
    yield header(page, count, media, grid);
    yield packed(page);
  }
  if (written !== count) throw new Error(`pwg-raster: ${String(written)} pages instead of ${String(count)}`);
}

const bytesPerLine = (page: Dots): number => Math.ceil(page.width / 8);

function header(page: Dots, count: number, media: Media, grid: Grid): Uint8Array {
  const bytes = Buffer.alloc(HEADER_BYTES);
  const text = (value: string, at: number): void => void bytes.write(value.slice(0, TEXT_BYTES - 1), at, 'latin1');
  const numbers = (at: number, ...values: readonly number[]): void => {
    values.forEach((value, index) => bytes.writeUInt32BE(value, at + 4 * index));
  };
  text('PwgRaster', AT.pwgRaster);
  text(pwgName(media), AT.pageSizeName);
  numbers(AT.resolution, grid.dpi, grid.dpi);
  numbers(AT.copies, 1);
  numbers(AT.pageSize, Math.round(media.width), Math.round(media.height));
  numbers(AT.width, page.width);
  numbers(AT.height, page.height);
  numbers(AT.bitsPerColour, 1);
  numbers(AT.bitsPerPixel, 1);
  numbers(AT.bytesPerLine, bytesPerLine(page));
  numbers(AT.colourSpace, BLACK);
  numbers(AT.colours, 1);
  numbers(AT.totalPages, count);
  // Printed on the front only: neither direction is mirrored.
  numbers(AT.crossFeedTransform, 1);
  numbers(AT.feedTransform, 1);
  numbers(AT.imageBoxRight, page.width);
  numbers(AT.imageBoxBottom, page.height);
  numbers(AT.alternatePrimary, 0xffffff);
  return bytes;
}

/** The page's lines, equal ones once with their number, each line in the format's own kind of PackBits. */
function packed(page: Dots): Uint8Array {
  const length = bytesPerLine(page);
  // Never reached: a byte alone, the worst there is, takes two.
  const out = new Uint8Array(page.height * (1 + 2 * length));
  let line = lineOf(page, 0, length);
  let end = 0;
  let repeats = 1;
  for (let y = 1; y <= page.height; y++) {
    const next = y < page.height ? lineOf(page, y, length) : undefined;
    if (next && repeats < MOST_LINES && Buffer.compare(line, next) === 0) {
      repeats += 1;
      continue;
    }
    out[end] = repeats - 1;
    end = packLine(line, out, end + 1);
    if (next) line = next;
    repeats = 1;
  }
  return out.subarray(0, end);
}

/** A line of dots, eight to a byte, leftmost in the highest bit. */
function lineOf({ width, data }: Dots, y: number, length: number): Uint8Array {
  const line = new Uint8Array(length);
  for (let x = 0, at = y * width; x < width; x++, at++)
    if ((data[at] as number) < 128) line[x >> 3] = (line[x >> 3] as number) | (0x80 >> (x & 7));
  return line;
}

/** Writes a packed line at `end` and gives the new end: n − 1 and a byte for n equal ones, 257 − n and the bytes for n that are not. */
function packLine(line: Uint8Array, out: Uint8Array, end: number): number {
  let at = 0;
  while (at < line.length) {
    const equal = runAt(line, at);
    if (equal > 1) {
      out[end] = equal - 1;
      out[end + 1] = line[at] as number;
      end += 2;
      at += equal;
      continue;
    }
    let to = at + 1;
    while (to < line.length && to - at < MOST_BYTES && runAt(line, to) === 1) to += 1;
    const count = to - at;
    // A single byte can't be written as a stretch: it is a run of one.
    out[end] = count === 1 ? 0 : 257 - count;
    out.set(line.subarray(at, to), end + 1);
    end += 1 + count;
    at = to;
  }
  return end;
}

/** How many equal bytes begin at `at`. */
function runAt(line: Uint8Array, at: number): number {
  let to = at + 1;
  while (to < line.length && to - at < MOST_BYTES && line[to] === line[at]) to += 1;
  return to - at;
}
