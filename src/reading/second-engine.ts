import { createRequire } from 'node:module';
import { dirname, join, sep } from 'node:path';
import type { Box } from '../geometry/box.js';
import { MOST_PIXELS } from '../geometry/grid.js';
import { compose, type Matrix } from '../geometry/placement.js';
import { count } from './counters.js';
import { straightening } from './skew.js';
import type { GreyRaster, SourcePage } from './source.js';

/** Why a second engine drew nothing, as the end of a sentence. */
export interface NotDrawn {
  readonly notDrawn: string;
}

/** A PDF opened once more, by an engine that shares no code with the first (pdf.js against PDFium). */
export interface SecondDocument {
  /**
   * The region (pt on the visible page, as `page` has it: straightened and in true size) in grey, not turned. Never throws for what
   * is in the file. Throws RangeError over `MOST_PIXELS`.
   */
  draw(page: Pick<SourcePage, 'number' | 'width' | 'height' | 'skew'>, region: Box, pixelsPerPt: number): Promise<GreyRaster | NotDrawn>;
  close(): Promise<void>;
}

/** Two engines round a page's size differently, by no more than this share. */
const SAME_SHAPE = 0.005;

/**
 * Opens the file as it was given (encrypted ones with an empty password). Loads the engine on the first call: 1 to 2 s and 60 to 90 MB
 * a thread, so it is to be asked only where there is a reason. Fonts and tables come from the installed package, nothing is fetched.
 */
export async function openSecond(bytes: Uint8Array): Promise<SecondDocument | NotDrawn> {
  const { getDocument } = await import('pdfjs-dist/legacy/build/pdf.mjs');
  const { createCanvas } = await import('@napi-rs/canvas');
  const task = getDocument({
    // It takes the bytes for itself.
    data: new Uint8Array(bytes),
    ...packagedFiles(),
    cMapPacked: true,
    useSystemFonts: false,
    disableFontFace: true,
    isEvalSupported: false,
    useWorkerFetch: false,
    isOffscreenCanvasSupported: false,
    verbosity: 0,
  });
  const close = (): Promise<void> => task.destroy();
  const document = await quietly(() => task.promise);
  if (!document) {
    await close();
    return { notDrawn: 'the document does not open in it' };
  }
  return {
    close,
    draw: async (source, region, pixelsPerPt) => {
      const width = Math.max(1, Math.floor(region.width * pixelsPerPt + 1e-6));
      const height = Math.max(1, Math.floor(region.height * pixelsPerPt + 1e-6));
      if (width * height > MOST_PIXELS) throw new RangeError(`a raster of ${width}×${height} pixels is too large`);
      const page = source.number <= document.numPages ? await quietly(() => document.getPage(source.number)) : undefined;
      if (!page) return { notDrawn: 'it finds no such page' };
      const visible = page.getViewport({ scale: 1 });
      // A page may have been given its true size: its shape is the same all the same.
      const scale = source.width / visible.width;
      if (Math.abs((scale * visible.height) / source.height - 1) > SAME_SHAPE) return { notDrawn: 'it sees a page of another shape' };
      count('secondRasters');
      const toPixels: Matrix = [pixelsPerPt, 0, 0, pixelsPerPt, -region.x * pixelsPerPt, -region.y * pixelsPerPt];
      const canvas = createCanvas(width, height);
      const context = canvas.getContext('2d');
      const drawn = await quietly(async () => {
        await page.render({
          canvas: null,
          canvasContext: context as never,
          viewport: page.getViewport({ scale }),
          transform: [...compose(straightening(source), toPixels)],
          background: 'white',
        }).promise;
        return true;
      });
      page.cleanup();
      if (drawn === undefined) return { notDrawn: 'it stopped while drawing' };
      const data = greyOf(context.getImageData(0, 0, width, height).data, width * height);
      // Its memory is not the collector's to see.
      canvas.width = 1;
      canvas.height = 1;
      return { width, height, data, pixelsPerPt, origin: { x: region.x, y: region.y } };
    },
  };
}

/** The engine tells bad input by throwing, in words of its own. */
async function quietly<T>(work: () => Promise<T>): Promise<T | undefined> {
  try {
    return await work();
  } catch {
    return undefined;
  }
}

/** Where the installed package keeps what it needs beside its code; folders, with a separator at the end. */
function packagedFiles(): Record<'standardFontDataUrl' | 'cMapUrl' | 'wasmUrl' | 'iccUrl', string> {
  const root = dirname(createRequire(import.meta.url).resolve('pdfjs-dist/package.json'));
  const folder = (name: string): string => join(root, name) + sep;
  return { standardFontDataUrl: folder('standard_fonts'), cMapUrl: folder('cmaps'), wasmUrl: folder('wasm'), iccUrl: folder('iccs') };
}

/** Luminance by the weights that PDF gives to device colours (ISO 32000, conversion from RGB to grey). */
function greyOf(rgba: Uint8ClampedArray, pixels: number): Uint8Array {
  const grey = new Uint8Array(pixels);
  for (let index = 0, at = 0; index < pixels; index++, at += 4) {
    grey[index] = Math.round(0.3 * (rgba[at] as number) + 0.59 * (rgba[at + 1] as number) + 0.11 * (rgba[at + 2] as number));
  }
  return grey;
}
