import { openPdf } from '../../src/reading/open-pdf.js';
import type { GreyRaster, SourcePage } from '../../src/reading/source.js';
import type { Drawing } from '../samples/drawing.js';
import { layout, other } from '../samples/layout.js';
import { sample, type QuarterTurn } from '../samples/sample.js';

/** A page that shows a drawing, turned clockwise; its document stays open as long as the test. */
export async function drawnPage(drawing: Drawing, turn: QuarterTurn = 0): Promise<SourcePage> {
  const { width, height } = drawing;
  const made = layout({
    name: 'drawn',
    about: 'One drawing.',
    traits: [],
    pages: () => [{ width, height, regions: [other(drawing, 0, 0)] }],
  });
  const document = await openPdf((await sample(made, 'vector', turn)).bytes);
  if ('refused' in document) throw new Error(document.refused.message);
  return document.page(1);
}

/** A white raster at the resolution of `SourcePage.ink`, with black (or `grey`) rectangles in pixels: x, y, width, height. */
export function rasterWith(
  width: number,
  height: number,
  rects: readonly (readonly [number, number, number, number])[],
  grey = 0,
): GreyRaster {
  const data = new Uint8Array(width * height).fill(255);
  for (const [x, y, w, h] of rects) for (let row = y; row < y + h; row++) data.fill(grey, row * width + x, row * width + x + w);
  return { width, height, data, pixelsPerPt: 1.5, origin: { x: 0, y: 0 } };
}
