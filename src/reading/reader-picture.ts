import type { GreyRaster } from './source.js';

/** Which lines of a raster the reader sees, one under the other: rows from the top, or columns from the left, each from the foot up. */
export interface Lines {
  readonly turned: boolean;
  /** One line of so many. */
  readonly every: number;
  readonly width: number;
  readonly height: number;
}

/** @param everyPt a line of pixels in each so many pt, where the run of the bars is known */
export function linesOf({ width, height, pixelsPerPt }: GreyRaster, run: 'level' | 'upright' | undefined, everyPt: number): Lines {
  const every = run === undefined ? 1 : Math.max(1, Math.floor(everyPt * pixelsPerPt));
  const turned = run === 'upright';
  return { turned, every, width: turned ? height : width, height: Math.ceil((turned ? width : height) / every) };
}

/** Columns are copied so many pixels at a time: what is read then stays in the processor's cache. */
const TILE = 32;

/** Writes the lines of a raster into a picture of their width and height. */
export function copyLines({ width, height, data }: GreyRaster, { turned, every, height: count }: Lines, to: Uint8Array): void {
  if (!turned) {
    for (let line = 0; line < count; line++) to.set(data.subarray(line * every * width, (line * every + 1) * width), line * width);
    return;
  }
  for (let top = 0; top < height; top += TILE) {
    const foot = Math.min(height, top + TILE);
    for (let line = 0; line < count; line++) {
      let at = (line + 1) * height - 1 - top;
      for (let y = top, from = top * width + line * every; y < foot; y++, from += width, at--) to[at] = data[from] as number;
    }
  }
}

/** Memory for the picture that the reader gets, kept from one code to the next. */
let spare: ArrayBuffer | undefined;
const MOST_SPARE = 8 * 1024 * 1024;

/** A grey picture in the simplest format (PGM): `bytes` is the file, `pixels` its part to be filled. Give it back when it was read. */
export function borrowPicture(width: number, height: number): { readonly bytes: Uint8Array; readonly pixels: Uint8Array } {
  const header = Buffer.from(`P5\n${width} ${height}\n255\n`, 'latin1');
  const size = header.length + width * height;
  const buffer = spare && spare.byteLength >= size ? spare : new ArrayBuffer(size);
  // Another reading may begin before this one has ended.
  if (buffer === spare) spare = undefined;
  const bytes = new Uint8Array(buffer, 0, size);
  bytes.set(header);
  return { bytes, pixels: bytes.subarray(header.length) };
}

export function giveBack({ bytes: { buffer } }: { readonly bytes: Uint8Array }): void {
  if (!(buffer instanceof ArrayBuffer) || buffer.byteLength > MOST_SPARE) return;
  if (!spare || spare.byteLength < buffer.byteLength) spare = buffer;
}
