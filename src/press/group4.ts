import type { GreyRaster } from '../reading/source.js';

/** A page of dots in CCITT Group 4 (ITU-T T.6), as PDF's CCITTFaxDecode takes it with K −1. */
export interface Group4 {
  readonly bytes: Uint8Array;
  /** What is encoded: the dots, and white to the right and below to whole sixteens. */
  readonly columns: number;
  readonly rows: number;
}

/** TIFF tags (TIFF 6.0). */
const TILE_WIDTH = 322;
const TILE_LENGTH = 323;
const TILE_OFFSETS = 324;
const TILE_BYTES = 325;

const sixteens = (dots: number): number => Math.ceil(dots / 16) * 16;

type Dots = Pick<GreyRaster, 'width' | 'height' | 'data'>;

/** Encodes dots (0 burned, 255 paper) by the picture library's TIFF writer: one tile holds the whole page. */
export async function toGroup4(dots: Dots): Promise<Group4> {
  // Few runs print dots, and every worker would load it before its first document.
  const { default: sharp } = await import('sharp');
  const { width, height, data } = inSixteens(dots);
  const tiff = await sharp(data, { raw: { width, height, channels: 1 } })
    .toColourspace('b-w')
    .tiff({ compression: 'ccittfax4', bitdepth: 1, tile: true, tileWidth: width, tileHeight: height })
    .toBuffer();
  const tags = tagsOf(tiff);
  const [columns, rows, offset, length] = [TILE_WIDTH, TILE_LENGTH, TILE_OFFSETS, TILE_BYTES].map((tag) => tags.get(tag));
  if (columns === undefined || rows === undefined || offset === undefined || length === undefined)
    throw new Error('group4: the TIFF has no single tile');
  return { bytes: new Uint8Array(tiff.subarray(offset, offset + length)), columns, rows };
}

/** What a tile holds. The writer would fill up with black: a line along the edge of a page that ends in part of a dot. */
function inSixteens({ width, height, data }: Dots): Dots {
  const [columns, rows] = [sixteens(width), sixteens(height)];
  const whole = new Uint8Array(columns * rows).fill(255);
  for (let y = 0; y < height; y++) whole.set(data.subarray(y * width, (y + 1) * width), y * columns);
  return { width: columns, height: rows, data: whole };
}

/** The single values of a TIFF's first directory. */
function tagsOf(tiff: Buffer): ReadonlyMap<number, number> {
  const little = tiff.toString('latin1', 0, 2) === 'II';
  const short = (at: number): number => (little ? tiff.readUInt16LE(at) : tiff.readUInt16BE(at));
  const long = (at: number): number => (little ? tiff.readUInt32LE(at) : tiff.readUInt32BE(at));
  const directory = long(4);
  return new Map(
    Array.from({ length: short(directory) }, (_, index) => {
      const entry = directory + 2 + 12 * index;
      const isShort = short(entry + 2) === 3;
      return [short(entry), isShort ? short(entry + 8) : long(entry + 8)] as const;
    }),
  );
}
