import type { Box } from '../geometry/box.js';
import { compose, type Matrix, type Turn } from '../geometry/placement.js';
import { visibleBox } from './pdf-geometry.js';
import { direct, floats, withMemory, type Pdfium } from './pdfium.js';
import type { PlacedImage } from './source.js';

const TEXT = 1;
const PATH = 2;
const IMAGE = 3;
const FORM = 5;
/** Forms nested deeper than this are taken as one object. */
const DEEPEST = 12;
const MOST_OBJECTS = 50_000;
/** FPDF_TEXTRENDERMODE_INVISIBLE of fpdf_edit.h: words that a scanner's program laid over its picture. */
const INVISIBLE = 3;
/** From this grey on a filled area is paper: some writers put a white one under each picture. */
const WHITE = 250;

/** What a page draws, in drawing order, seen through its form XObjects. */
export interface PdfObjects {
  readonly images: readonly PlacedImage[];
  /** On a page with pictures: the box of each object beside them that can be seen. */
  readonly others: readonly Box[];
  /** Whether pictures are all that can be seen, and there is one. */
  readonly onlyPictures: boolean;
}

export function readObjects(engine: Pdfium, page: number, toVisible: Matrix): PdfObjects {
  const beside: { object: number; type: number; box: Box }[] = [];
  const images: PlacedImage[] = [];
  const scratch = 32;
  let visited = 0;
  const calls = direct(engine);
  const visit = (object: number, matrix: Matrix, depth: number, pointer: number): void => {
    if (visited >= MOST_OBJECTS) return;
    const type = calls.FPDFPageObj_GetType(object);
    if (type === FORM && depth < DEEPEST) {
      const inner = compose(objectMatrix(engine, object, pointer), matrix);
      const count = engine.FPDFFormObj_CountObjects(object);
      for (let index = 0; index < count; index++) visit(engine.FPDFFormObj_GetObject(object, index), inner, depth + 1, pointer);
      return;
    }
    if (calls.FPDFPageObj_GetBounds(object, pointer, pointer + 4, pointer + 8, pointer + 12) === 0) return;
    const [left = 0, bottom = 0, right = 0, top = 0] = floats(engine, pointer, 4);
    const box = visibleBox(matrix, left, bottom, right, top);
    visited += 1;
    if (type !== IMAGE) beside.push({ object, type, box });
    else {
      const [pixelWidth, pixelHeight] = pixelSize(engine, object, pointer);
      images.push({ box, pixelWidth, pixelHeight, turn: turnOf(compose(objectMatrix(engine, object, pointer), matrix)) });
    }
  };
  const others = withMemory(engine, scratch, (pointer) => {
    const count = engine.FPDFPage_CountObjects(page);
    for (let index = 0; index < count; index++) visit(calls.FPDFPage_GetObject(page, index), toVisible, 0, pointer);
    if (images.length === 0) return [];
    return beside.filter(({ object, type }) => isSeen(engine, object, type, pointer)).map(({ box }) => box);
  });
  return { images, others, onlyPictures: others.length === 0 && images.length > 0 };
}

function isSeen(engine: Pdfium, object: number, type: number, pointer: number): boolean {
  if (type === TEXT) return engine.FPDFTextObj_GetTextRenderMode(object) !== INVISIBLE;
  if (type !== PATH || !engine.FPDFPath_GetDrawMode(object, pointer, pointer + 4)) return true;
  const [filled, stroked] = [engine.pdfium.getValue(pointer, 'i32') !== 0, engine.pdfium.getValue(pointer + 4, 'i32') !== 0];
  if (stroked || !filled) return stroked;
  if (!engine.FPDFPageObj_GetFillColor(object, pointer, pointer + 4, pointer + 8, pointer + 12)) return true;
  return [0, 4, 8].some((colour) => engine.pdfium.getValue(pointer + colour, 'i32') < WHITE);
}

function objectMatrix(engine: Pdfium, object: number, pointer: number): Matrix {
  if (!engine.FPDFPageObj_GetMatrix(object, pointer)) return [1, 0, 0, 1, 0, 0];
  const [a = 1, b = 0, c = 0, d = 1, e = 0, f = 0] = floats(engine, pointer, 6);
  return [a, b, c, d, e, f];
}

function pixelSize(engine: Pdfium, image: number, pointer: number): [number, number] {
  if (!engine.FPDFImageObj_GetImagePixelSize(image, pointer, pointer + 4)) return [0, 0];
  return [engine.pdfium.getValue(pointer, 'i32'), engine.pdfium.getValue(pointer + 4, 'i32')];
}

/** A picture's unit square has y up and is drawn upright by a map with a > 0 and, on the y-down visible page, d < 0. */
function turnOf([a, b, c, d]: Matrix): Turn | undefined {
  const long = Math.max(Math.abs(a), Math.abs(b), Math.abs(c), Math.abs(d));
  const zero = (value: number): boolean => Math.abs(value) < 1e-3 * long;
  if (zero(b) && zero(c)) return a > 0 && d < 0 ? 0 : a < 0 && d > 0 ? 180 : undefined;
  if (zero(a) && zero(d)) return b > 0 && c > 0 ? 90 : b < 0 && c < 0 ? 270 : undefined;
  return undefined;
}
