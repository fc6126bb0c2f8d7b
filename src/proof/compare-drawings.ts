import { near, union, type Box } from '../geometry/box.js';
import type { GreyRaster } from '../reading/source.js';
import { unmatchedInk } from './unmatched-ink.js';

/** Side of the cells in which unmatched dots are counted, pt (1.5 mm). */
const CELL = 4.25;
/** So much unmatched ink in three by three cells is a shape of its own, square pt: half a small letter. */
const SHAPE = 1.6;
/** Greys are compared by cells: the mean of three by three may differ by so much of black. */
const TONE = 0.25;
/** Unmatched cells so close (pt) are shown as one place. */
const TOGETHER = 9;

/** Where two drawings of the same region differ, pt on the page, and the share of the region's ink that has no match. */
export interface DrawingsCompared {
  readonly where: readonly Box[];
  readonly share: number;
}

/**
 * Compares two drawings of one region on one grid in more than edges: ink of one that is more than a dot (of large shapes more) from
 * any ink of the other, and greys that differ as a whole. Softened edges, a shift of a dot and another cut of the same typeface make
 * no difference; a missing or another letter, picture or line does.
 */
export function compareDrawings(first: GreyRaster, second: GreyRaster): DrawingsCompared {
  if (first.width !== second.width || first.height !== second.height) throw new Error('compare-drawings: the drawings differ in size');
  const cells = new Cells(first);
  const inks = [unmatchedInk(first, second, cells.add), unmatchedInk(second, first, cells.add)];
  const ink = Math.max(1, ...inks);
  const { differ, dots } = cells.judged(first, second);
  return { where: joined(differ), share: Math.min(1, dots / ink) };
}

class Cells {
  readonly #raster: GreyRaster;
  readonly #side: number;
  readonly #columns: number;
  readonly #rows: number;
  readonly #unmatched: Uint32Array;

  constructor(raster: GreyRaster) {
    this.#raster = raster;
    this.#side = Math.max(2, Math.round(CELL * raster.pixelsPerPt));
    this.#columns = Math.ceil(raster.width / this.#side);
    this.#rows = Math.ceil(raster.height / this.#side);
    this.#unmatched = new Uint32Array(this.#columns * this.#rows);
  }

  readonly add = (x: number, y: number): void => {
    const cell = Math.floor(y / this.#side) * this.#columns + Math.floor(x / this.#side);
    this.#unmatched[cell] = (this.#unmatched[cell] as number) + 1;
  };

  /** Cells around which the drawings differ, pt, and how many dots are unmatched there. */
  judged(first: GreyRaster, second: GreyRaster): { readonly differ: readonly Box[]; readonly dots: number } {
    const [a, b] = [this.#means(first), this.#means(second)];
    const { pixelsPerPt: perPt, origin } = this.#raster;
    const enough = SHAPE * perPt * perPt;
    const differ: Box[] = [];
    let dots = 0;
    for (let row = 0; row < this.#rows; row++) {
      for (let column = 0; column < this.#columns; column++) {
        let [around, dark, cells] = [0, 0, 0];
        for (let y = Math.max(0, row - 1); y <= Math.min(this.#rows - 1, row + 1); y++) {
          for (let x = Math.max(0, column - 1); x <= Math.min(this.#columns - 1, column + 1); x++) {
            const cell = y * this.#columns + x;
            around += this.#unmatched[cell] as number;
            dark += (a[cell] as number) - (b[cell] as number);
            cells += 1;
          }
        }
        const own = this.#unmatched[row * this.#columns + column] as number;
        const toned = Math.abs(dark / cells);
        if (!(own > 0 && around >= enough) && toned < TONE) continue;
        dots += own;
        const side = this.#side / perPt;
        differ.push({ x: origin.x + column * side, y: origin.y + row * side, width: side, height: side });
      }
    }
    return { differ, dots };
  }

  /** Darkness of each cell, 0 to 1. */
  #means({ width, height, data }: GreyRaster): Float64Array {
    const side = this.#side;
    const sums = new Float64Array(this.#columns * this.#rows);
    for (let y = 0, at = 0; y < height; y++) {
      const row = Math.floor(y / side) * this.#columns;
      for (let column = 0, x = 0; column < this.#columns; column++) {
        let sum = 0;
        for (const end = Math.min(width, x + side); x < end; x++, at++) sum += 255 - (data[at] as number);
        sums[row + column] = (sums[row + column] as number) + sum;
      }
    }
    return sums.map((sum) => sum / (255 * side * side));
  }
}

function joined(boxes: readonly Box[]): readonly Box[] {
  const places: Box[] = [];
  for (const box of boxes) {
    let place = box;
    for (let index = places.length - 1; index >= 0; index--) {
      const other = places[index] as Box;
      if (!near(other, place, TOGETHER)) continue;
      place = union([other, place]) ?? place;
      places.splice(index, 1);
    }
    places.push(place);
  }
  return places.toSorted((one, other) => one.y - other.y || one.x - other.x);
}
