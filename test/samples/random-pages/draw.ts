import { askew } from '../foreign/kit/measure.js';
import type { LabelTruth, PageTruth, Truth } from '../foreign/kit/page.js';
import { place, type Box, type Shape, type Turn } from '../foreign/kit/shapes.js';
import { directPdf } from './direct.js';
import { boundsOf } from './ink.js';
import type { RandomLabel, RandomPage } from './page.js';
import { labelPixels, scanned, type GreyPicture, type Type } from './pixels.js';

/** A label as shapes on the page, or the picture that it is there. */
export function shapesOf(label: RandomLabel, file: string): readonly Shape[] {
  const { art } = label.label;
  const { x, y, turn, scale, picture } = label;
  if (!picture) return place(art.shapes, art, { x, y, turn, scale });
  return [{ kind: 'picture', x, y, ...art.bounds(turn, scale), file, turn: picture.stored ? 0 : turn }];
}

/** Where a box on the page lies after the page was turned clockwise. */
function turned({ x, y, width: w, height: h }: Box, page: { width: number; height: number }, turn: Turn): Box {
  if (turn === 90) return { x: page.height - y - h, y: x, width: h, height: w };
  if (turn === 180) return { x: page.width - x - w, y: page.height - y - h, width: w, height: h };
  if (turn === 270) return { x: y, y: page.width - x - w, width: h, height: w };
  return { x, y, width: w, height: h };
}

/** What is to be found on a page. `ink`: bounds of a label's ink on the page before its turn, where no line says them. */
export function truthOf(page: RandomPage, ink: (label: RandomLabel) => Box): PageTruth {
  const { width, height, rotate, scan, kind } = page;
  const shown = rotate % 180 === 0 ? { width, height } : { width: height, height: width };
  const labels = page.labels.map((label): LabelTruth => {
    const box = turned(label.box ?? ink(label), page, rotate);
    const turn = ((720 - label.turn - rotate) % 360) as Turn;
    const where = scan && scan.skew !== 0 ? { skew: scan.skew, ...askew(box, shown, scan.skew) } : { box };
    return { ...where, turn, edge: label.edge, role: 'label', codes: [] };
  });
  return { page: 1, kind, ...shown, labels };
}

export interface DrawnPage {
  readonly bytes: Uint8Array;
  readonly truth: Truth;
}

const asTruth = (page: PageTruth): Truth => ({ producer: 'pixels', layout: 'random', half: 'tuning', pages: [page] });

/** Draws a page without any program but this one; the same page gives the same bytes and the same truth. */
export async function drawDirect(page: RandomPage, type: Type = 'outlines'): Promise<DrawnPage> {
  const pictures = new Map<string, GreyPicture>();
  for (const [index, label] of page.labels.entries()) if (label.picture) pictures.set(String(index), await labelPixels(label, type));
  let shapes = [...page.others, ...page.labels.flatMap((label, index) => shapesOf(label, String(index)))];
  if (page.scan) {
    pictures.set('scan', await scanned(page, shapes, page.scan, page.seed, type));
    shapes = [{ kind: 'picture', x: 0, y: 0, width: page.width, height: page.height, file: 'scan', turn: 0 }];
  }
  const bytes = await directPdf(page, shapes, pictures, page.rotate);
  return { bytes, truth: asTruth(truthOf(page, (label) => boundsOf(shapesOf(label, '')))) };
}
