import type { GreyRaster } from './source.js';

/** A grey raster as PNG bytes; the same raster gives the same bytes. */
export async function encodePng(raster: GreyRaster): Promise<Uint8Array> {
  // Loaded when the first picture is wanted: most runs hold nothing.
  const { default: sharp } = await import('sharp');
  const { width, height } = raster;
  return sharp(raster.data, { raw: { width, height, channels: 1 } })
    .png({ compressionLevel: 6, palette: false })
    .toBuffer();
}
