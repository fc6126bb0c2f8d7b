/** The highest bit of each of four bytes, shifted to their lowest. */
const ONES = 0x01010101;

/** Each value of a grey raster as a driver for vector pages makes it at half grey: 0 below 128, otherwise 255. One byte a pixel. */
export function blackAndWhite(grey: Uint8Array): Uint8Array {
  const result = new Uint8Array(grey.length);
  const words = grey.byteOffset % 4 === 0 ? grey.length >> 2 : 0;
  const [from, to] = [new Int32Array(grey.buffer, words > 0 ? grey.byteOffset : 0, words), new Int32Array(result.buffer, 0, words)];
  // Four pixels at once: a byte that is 0 or 1, times 255.
  for (let at = 0; at < words; at++) to[at] = (((from[at] as number) >>> 7) & ONES) * 255;
  for (let at = words << 2; at < grey.length; at++) result[at] = -((grey[at] as number) >> 7);
  return result;
}
