import { PDFArray, PDFName, PDFNumber, type PDFPageLeaf } from '../reading/pdf-library.js';
import type { Matrix } from '../geometry/placement.js';
import { inherited } from '../reading/page-tree.js';

/** What a person sees of a PDF page. */
export interface VisiblePage {
  /** True size, pt. */
  readonly width: number;
  readonly height: number;
  /** PDF user space → visible page (pt, y down). */
  readonly fromUserSpace: Matrix;
  /** The visible rectangle in user space: left, bottom, right, top. */
  readonly userBox: UserBox;
}

type UserBox = readonly [left: number, bottom: number, right: number, top: number];

/** What viewers take when a page has no usable MediaBox. ISO 32000 requires one, so no standard says. */
const NO_MEDIA_BOX: UserBox = [0, 0, 612, 792];

/**
 * The visible page: CropBox within MediaBox, turned by Rotate, times UserUnit (ISO 32000-2 page entries, via the Arlington
 * model, secondary; handbook section 7.1). Undefined when the two boxes share nothing.
 */
export function visiblePage(page: PDFPageLeaf): VisiblePage | undefined {
  const mediaBox = readBox(inherited(page, 'MediaBox')) ?? NO_MEDIA_BOX;
  const cropBox = readBox(inherited(page, 'CropBox')) ?? mediaBox;
  const left = Math.max(mediaBox[0], cropBox[0]);
  const bottom = Math.max(mediaBox[1], cropBox[1]);
  const right = Math.min(mediaBox[2], cropBox[2]);
  const top = Math.min(mediaBox[3], cropBox[3]);
  if (right <= left || top <= bottom) return undefined;
  const unit = userUnit(page);
  const quarter = quarterTurns(inherited(page, 'Rotate'));
  const upright = quarter % 2 === 0;
  const width = (right - left) * unit;
  const height = (top - bottom) * unit;
  return {
    width: upright ? width : height,
    height: upright ? height : width,
    fromUserSpace: userToVisible(left, bottom, right, top, unit, quarter),
    userBox: [left, bottom, right, top],
  };
}

function userToVisible(left: number, bottom: number, right: number, top: number, u: number, quarter: number): Matrix {
  switch (quarter) {
    case 1:
      return [0, u, u, 0, -bottom * u, -left * u];
    case 2:
      return [-u, 0, 0, u, right * u, -bottom * u];
    case 3:
      return [0, -u, -u, 0, top * u, right * u];
    default:
      return [u, 0, 0, -u, -left * u, top * u];
  }
}

/** A rectangle with its corners sorted; undefined for anything that encloses no area. */
function readBox(value: unknown): UserBox | undefined {
  if (!(value instanceof PDFArray) || value.size() < 4) return undefined;
  const numbers = [0, 1, 2, 3].map((index) => {
    const each: unknown = value.lookup(index);
    return each instanceof PDFNumber ? each.asNumber() : NaN;
  });
  const [x0 = NaN, y0 = NaN, x1 = NaN, y1 = NaN] = numbers;
  const box: UserBox = [Math.min(x0, x1), Math.min(y0, y1), Math.max(x0, x1), Math.max(y0, y1)];
  return box.every(Number.isFinite) && box[2] > box[0] && box[3] > box[1] ? box : undefined;
}

function userUnit(page: PDFPageLeaf): number {
  const value: unknown = page.lookup(PDFName.of('UserUnit'));
  const unit = value instanceof PDFNumber ? value.asNumber() : 1;
  return unit > 0 && Number.isFinite(unit) ? unit : 1;
}

function quarterTurns(value: unknown): number {
  const degrees = value instanceof PDFNumber ? value.asNumber() : 0;
  return (((Math.trunc(degrees / 90) % 4) + 4) % 4) | 0;
}
