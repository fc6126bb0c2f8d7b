import { crc32 } from 'node:zlib';
import bwipjs from 'bwip-js';
import sharp, { type Sharp } from 'sharp';

/** Grey samples, row by row from the top. */
export interface Grey {
  readonly width: number;
  readonly height: number;
  readonly data: Uint8Array;
}

/** White, with a black block that touches the top and left edges and a thin bar near the right: no turn or mirror image of it looks the same. */
export function pattern(width: number, height: number): Grey {
  const data = new Uint8Array(width * height).fill(255);
  const black = (x0: number, y0: number, x1: number, y1: number): void => {
    for (let y = y0; y < y1; y++) data.fill(0, y * width + x0, y * width + x1);
  };
  black(0, 0, width >> 1, height >> 2);
  black(width - 6, height >> 2, width - 4, height - 3);
  return { width, height, data };
}

/** The same seen after a clockwise quarter turn. */
export function turnedClockwise({ width, height, data }: Grey): Grey {
  const out = new Uint8Array(data.length);
  for (let y = 0; y < height; y++) for (let x = 0; x < width; x++) out[x * height + (height - 1 - y)] = data[y * width + x] ?? 0;
  return { width: height, height: width, data: out };
}

export function mirrored({ width, height, data }: Grey): Grey {
  const out = new Uint8Array(data.length);
  for (let y = 0; y < height; y++) for (let x = 0; x < width; x++) out[y * width + (width - 1 - x)] = data[y * width + x] ?? 0;
  return { width, height, data: out };
}

/** What a stored picture looks like so that the given EXIF orientation (1-8) brings it upright (TIFF 6.0, tag 274). */
export function storedFor(orientation: number, upright: Grey): Grey {
  const back = (times: number, grey: Grey): Grey => (times === 0 ? grey : back(times - 1, turnedClockwise(grey)));
  switch (orientation) {
    case 2:
      return mirrored(upright);
    case 3:
      return back(2, upright);
    case 4:
      return mirrored(back(2, upright));
    case 5:
      return mirrored(back(1, upright));
    case 6:
      return back(3, upright);
    case 7:
      return mirrored(back(3, upright));
    case 8:
      return back(1, upright);
    default:
      return upright;
  }
}

/** A picture for any encoder, with no resolution unless one is added. */
export const fromGrey = (grey: Grey): Sharp =>
  sharp(grey.data, { raw: { width: grey.width, height: grey.height, channels: 1 } }).toColourspace('b-w');

/** White except for a Code 128 of `text`, `module` pixels wide bars, at `x`, `y` pixels. */
export function withCode128(size: { width: number; height: number }, text: string, module: number, x: number, y: number): Grey {
  const data = new Uint8Array(size.width * size.height).fill(255);
  const [symbol] = bwipjs.raw({ bcid: 'code128', text });
  if (symbol === undefined || !('sbs' in symbol)) throw new Error('no linear symbol was drawn');
  let at = x;
  symbol.sbs.forEach((modules, index) => {
    if (index % 2 === 0)
      for (let row = y; row < y + 100; row++) data.fill(0, row * size.width + at, row * size.width + at + modules * module);
    at += modules * module;
  });
  return { ...size, data };
}

/** A TIFF of one page each (CCITT group 4, resolution in dots per inch), little-endian, strips taken from pages that were encoded singly. */
export async function multiPageTiff(pages: readonly Grey[], dpi: number): Promise<Uint8Array> {
  const encoded = await Promise.all(
    pages.map((page) =>
      fromGrey(page)
        .tiff({ compression: 'ccittfax4', bitdepth: 1, xres: dpi / 25.4, yres: dpi / 25.4 })
        .toBuffer(),
    ),
  );
  return chainTiffs(encoded);
}

/** Joins single-page little-endian TIFFs by moving every offset and chaining their directories (TIFF 6.0, section 2). */
export function chainTiffs(files: readonly Buffer[]): Uint8Array {
  let base = 0;
  let link = 4;
  const parts = files.map((file) => {
    const part = Buffer.from(file);
    if (part.toString('latin1', 0, 4) !== 'II*\0') throw new Error('not a little-endian TIFF');
    return part;
  });
  const out = Buffer.concat(parts);
  for (const part of parts) {
    const directory = part.readUInt32LE(4);
    out.writeUInt32LE(base + directory, link);
    const entries = part.readUInt16LE(directory);
    for (let i = 0; i < entries; i++) moveOffsets(out, base, base + directory + 2 + i * 12);
    link = base + directory + 2 + entries * 12;
    base += part.length;
  }
  out.writeUInt32LE(0, link);
  return out;
}

const TYPE_SIZES = [0, 1, 1, 2, 4, 8, 1, 1, 2, 4, 8, 4, 8];

function moveOffsets(out: Buffer, base: number, entry: number): void {
  const tag = out.readUInt16LE(entry);
  const type = out.readUInt16LE(entry + 2);
  const count = out.readUInt32LE(entry + 4);
  const inPlace = (TYPE_SIZES[type] ?? 0) * count <= 4;
  if (!inPlace) out.writeUInt32LE(out.readUInt32LE(entry + 8) + base, entry + 8);
  if (tag !== 273) return;
  const values = inPlace ? entry + 8 : out.readUInt32LE(entry + 8);
  for (let k = 0; k < count; k++) {
    if (type === 3) out.writeUInt16LE(out.readUInt16LE(values + 2 * k) + base, values + 2 * k);
    else out.writeUInt32LE(out.readUInt32LE(values + 4 * k) + base, values + 4 * k);
  }
}

/** A PNG that says it is `width` × `height` 1-bit pixels and holds hardly any of them. */
export function pngHeaderOnly(width: number, height: number): Uint8Array {
  const header = Buffer.alloc(13);
  header.writeUInt32BE(width, 0);
  header.writeUInt32BE(height, 4);
  header.set([1, 0, 0, 0, 0], 8);
  return Buffer.concat([
    Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]),
    pngChunk('IHDR', header),
    pngChunk('IDAT', Buffer.from([0x78, 0x9c, 3, 0, 0, 0, 0, 1])),
    pngChunk('IEND', Buffer.alloc(0)),
  ]);
}

function pngChunk(type: string, data: Buffer): Buffer {
  const body = Buffer.concat([Buffer.from(type, 'latin1'), data]);
  const out = Buffer.alloc(body.length + 8);
  out.writeUInt32BE(data.length, 0);
  body.copy(out, 4);
  out.writeUInt32BE(crc32(body), body.length + 4);
  return out;
}
