import { boxFromCorners, type Box } from '../geometry/box.js';
import { boundsOf, compose, type Matrix } from '../geometry/placement.js';
import { floats, withMemory, type Pdfium } from './pdfium.js';

/** A page's own geometry: what PDF says of it, and the map from its user space to the visible page. */
export interface PdfPageGeometry {
  /** Visible size in pt, true size (UserUnit applied, sides swapped for a quarter /Rotate). */
  readonly width: number;
  readonly height: number;
  /** User space (y up) → visible page (pt, y down). */
  readonly toVisible: Matrix;
  readonly userUnit: number;
}

/**
 * ISO 32000: the visible page is CropBox ∩ MediaBox, turned clockwise by /Rotate, one unit being UserUnit × 1/72 in
 * (handbook section 7.1). PDFium gives the box and the turn; it ignores UserUnit, which is therefore passed in.
 */
export function pageGeometry(engine: Pdfium, page: number, userUnit: number): PdfPageGeometry {
  const [left = 0, top = 0, right = 0, bottom = 0] = withMemory(engine, 16, (pointer) => {
    // Without its answer the memory holds what an earlier document left there: a page of no size instead.
    return engine.FPDF_GetPageBoundingBox(page, pointer) ? floats(engine, pointer, 4) : [];
  });
  const w = Math.max(0, right - left);
  const h = Math.max(0, top - bottom);
  const toVisible = ((): Matrix => {
    switch (engine.FPDFPage_GetRotation(page) & 3) {
      case 1:
        return [0, 1, 1, 0, -bottom, -left];
      case 2:
        return [-1, 0, 0, 1, right, -bottom];
      case 3:
        return [0, -1, -1, 0, top, right];
      default:
        return [1, 0, 0, -1, -left, top];
    }
  })();
  const sideways = (engine.FPDFPage_GetRotation(page) & 1) === 1;
  return {
    width: (sideways ? h : w) * userUnit,
    height: (sideways ? w : h) * userUnit,
    toVisible: compose(toVisible, [userUnit, 0, 0, userUnit, 0, 0]),
    userUnit,
  };
}

/** The box on the visible page around a rectangle of user space given by any two corners. */
export const visibleBox = (toVisible: Matrix, x0: number, y0: number, x1: number, y1: number): Box =>
  boundsOf(toVisible, boxFromCorners(x0, y0, x1, y1));
