import { contains, type Box } from '../geometry/box.js';
import { mmToPt } from '../geometry/length.js';
import type { GreyRaster } from '../reading/source.js';

/** Boxes to tick are so large, pt (2 to 6 mm; common practice, no source). */
const SIDE = { least: mmToPt(2), most: mmToPt(6) };
/** Sides of a square differ by less than this share. */
const SQUARE = 0.15;
/** Darker than this is ink, lighter is paper; in between is the soft edge of a line. */
const INK = 150;
/** A side is a line when this share of it is inked; letters are round or open somewhere. */
const LINE = 0.9;
/** The middle part of a box that must be white. */
const INSIDE = 0.5;

/** The empty squares within `box` that stand by themselves, as forms have them to be ticked; no letter and no part of a code is one. */
export function tickBoxes(raster: GreyRaster, blobs: readonly Box[], box: Box): readonly Box[] {
  return blobs.filter(
    (blob) =>
      contains(box, blob) &&
      Math.min(blob.width, blob.height) >= SIDE.least &&
      Math.max(blob.width, blob.height) <= SIDE.most &&
      Math.abs(blob.width / blob.height - 1) < SQUARE &&
      isEmptySquare(raster, blob),
  );
}

function isEmptySquare({ data, width, pixelsPerPt: k, origin }: GreyRaster, blob: Box): boolean {
  const x0 = Math.round((blob.x - origin.x) * k);
  const y0 = Math.round((blob.y - origin.y) * k);
  const x1 = Math.round((blob.x + blob.width - origin.x) * k) - 1;
  const y1 = Math.round((blob.y + blob.height - origin.y) * k) - 1;
  const isInk = (x: number, y: number): boolean => (data[y * width + x] ?? 255) < INK;
  // A soft line may lie on the row of pixels next to the outermost.
  const share = (count: number, at: (index: number, inset: number) => boolean): number => {
    let inked = 0;
    for (let index = 0; index < count; index++) if (at(index, 0) || at(index, 1)) inked += 1;
    return inked / count;
  };
  const [columns, rows] = [x1 - x0 + 1, y1 - y0 + 1];
  const isFramed =
    share(columns, (index, inset) => isInk(x0 + index, y0 + inset)) >= LINE &&
    share(columns, (index, inset) => isInk(x0 + index, y1 - inset)) >= LINE &&
    share(rows, (index, inset) => isInk(x0 + inset, y0 + index)) >= LINE &&
    share(rows, (index, inset) => isInk(x1 - inset, y0 + index)) >= LINE;
  if (!isFramed) return false;
  const [padX, padY] = [Math.ceil((columns * (1 - INSIDE)) / 2), Math.ceil((rows * (1 - INSIDE)) / 2)];
  for (let y = y0 + padY; y <= y1 - padY; y++) for (let x = x0 + padX; x <= x1 - padX; x++) if (isInk(x, y)) return false;
  return true;
}
