import type { Box } from '../geometry/box.js';
import { mmToPt } from '../geometry/length.js';
import type { GreyRaster } from '../reading/source.js';

/** Darker than this is ink. */
const INK = 150;
/** Sides, mm. The least mark that rules know is 25 mm (handbook section 6); a page that was shrunk to fit shows it smaller. */
const LEAST_SIDE = 10;
/** The outline is at least so thick, mm: a mark's line is 1 mm or more. Thinner ones are ornaments. */
const LEAST_LINE = 0.5;
/** Rows between two looks, pixels: every side crosses several. */
const STEP = 8;
/** An edge is looked at so far up and down (pixels) before it is followed. */
const REACH = 5;
/** An edge may be off its line by so much: pixels, and a share of the half diagonal for pages that lie a little askew. */
const OFF = { pixels: 2, share: 0.045 };
/** Each side is seen in so much of its length. */
const SEEN = 0.88;
/** Inside, so much is light: a solid square is an ornament. */
const LEAST_LIGHT = 0.06;
/** The corners that are black on a limited-quantity mark begin at this share of the way from the middle; they are so full. */
const CORNER = { from: 0.66, full: 0.85, others: 0.75 };

/** A square on its point with a closed, thick outline. */
export interface Diamond {
  /** The box around its four corners, pt. */
  readonly box: Box;
  /** Whether two opposite corners are black and the others are not: the mark of limited quantities. */
  readonly hasBlackCorners: boolean;
}

interface Centre {
  readonly x: number;
  readonly y: number;
  /** Half of the diagonal. */
  readonly half: number;
}

/** The diamonds on a raster, from the top; all in pixels until the end. */
export function findDiamonds(raster: GreyRaster, region: Box): readonly Diamond[] {
  const { pixelsPerPt: perPt, origin } = raster;
  const pixel = (pt: number, from: number, most: number): number => Math.min(most, Math.max(0, Math.round((pt - from) * perPt)));
  const x1 = pixel(region.x + region.width, origin.x, raster.width);
  const y1 = pixel(region.y + region.height, origin.y, raster.height);
  const x0 = pixel(region.x, origin.x, raster.width);
  const y0 = pixel(region.y, origin.y, raster.height);
  const image = new Ink(raster, x0, y0, x1, y1);
  const least = mmToPt(LEAST_SIDE) * Math.SQRT1_2 * perPt;
  const line = mmToPt(LEAST_LINE) * Math.SQRT2 * perPt;
  const found: Centre[] = [];
  for (let y = y0 + REACH; y < y1 - REACH; y += STEP) {
    for (const x of image.startsOfInk(y)) {
      const edge = image.isRising(x, y) ? image.risingEdge(x, y) : undefined;
      if (!edge || edge.rows < least * 0.9) continue;
      const centre = { x: edge.top.x, y: edge.bottom.y, half: edge.rows };
      const known = found.some((other) => Math.hypot(other.x - centre.x, other.y - centre.y) < 0.2 * other.half);
      if (!known && centre.half >= least && image.isOutlined(centre, line) && image.isOpen(centre)) found.push(centre);
    }
  }
  return found
    .map((centre) => {
      const { x, y, half } = centre;
      const box = {
        x: origin.x + (x - half) / perPt,
        y: origin.y + (y - half) / perPt,
        width: (2 * half + 1) / perPt,
        height: (2 * half + 1) / perPt,
      };
      return { box, hasBlackCorners: image.hasBlackCorners(centre) };
    })
    .sort((a, b) => a.box.y - b.box.y || a.box.x - b.box.x);
}

/** Ink of the part of a raster that is looked at; white around it. */
class Ink {
  readonly #raster: GreyRaster;
  readonly #bounds: readonly [x0: number, y0: number, x1: number, y1: number];

  constructor(raster: GreyRaster, x0: number, y0: number, x1: number, y1: number) {
    this.#raster = raster;
    this.#bounds = [x0, y0, x1, y1];
  }

  dark(x: number, y: number): boolean {
    const [x0, y0, x1, y1] = this.#bounds;
    return x >= x0 && x < x1 && y >= y0 && y < y1 && (this.#raster.data[y * this.#raster.width + x] as number) < INK;
  }

  /** Columns at which ink begins along a row. */
  startsOfInk(y: number): readonly number[] {
    const [x0, , x1] = this.#bounds;
    const { data, width } = this.#raster;
    const starts: number[] = [];
    const row = y * width;
    let before = false;
    for (let x = x0; x < x1; x++) {
      const dark = (data[row + x] as number) < INK;
      if (dark && !before) starts.push(x);
      before = dark;
    }
    return starts;
  }

  /** Whether ink begins along the line from here up to the right and down to the left: the upper left side of a diamond. */
  isRising(x: number, y: number): boolean {
    const edge = (dx: number, dy: number): boolean => !this.dark(x + dx - 2, y + dy) && this.dark(x + dx + 2, y + dy);
    return edge(REACH, -REACH) && edge(-REACH, REACH) && edge(2, -2);
  }

  /** Follows that side to both its ends. */
  risingEdge(x: number, y: number): { readonly top: Centre; readonly bottom: Centre; readonly rows: number } {
    const top = this.#follow(x, y, 1);
    const bottom = this.#follow(x, y, -1);
    return { top, bottom, rows: bottom.y - top.y };
  }

  /** @param right 1: up and to the right, -1: down and to the left */
  #follow(x: number, y: number, right: 1 | -1): Centre {
    let [u, v] = [x, y];
    for (;;) {
      const row = v - right;
      const next = [right, 0, 2 * right].map((by) => u + by).find((at) => this.dark(at, row) && !this.dark(at - 1, row));
      if (next === undefined) return { x: u, y: v, half: 0 };
      [u, v] = [next, row];
    }
  }

  /** Whether all four sides are there: light outside, and ink at least `line` pixels thick along a row. */
  isOutlined({ x, y, half }: Centre, line: number): boolean {
    const off = Math.round(OFF.pixels + OFF.share * half);
    const thick = Math.max(2, Math.floor(line));
    // Near the corners, sides run into each other.
    const [from, to] = [Math.ceil(0.08 * half) + thick, Math.floor(0.92 * half)];
    for (const [across, down] of SIDES) {
      let seen = 0;
      for (let along = from; along < to; along++) {
        const row = y + down * (half - along);
        if (this.#isEdge(x + across * along, row, across, off, thick)) seen += 1;
      }
      if (seen < SEEN * (to - from)) return false;
    }
    return true;
  }

  /** Whether, coming from outside, light ends and ink begins within `off` pixels of here. */
  #isEdge(x: number, y: number, across: 1 | -1, off: number, thick: number): boolean {
    let light = 0;
    for (let at = off + 1; at >= -off; at--) {
      const column = x + across * at;
      if (!this.dark(column, y)) {
        light += 1;
        continue;
      }
      if (light === 0) continue;
      for (let inside = 1; inside < thick; inside++) if (!this.dark(column - across * inside, y)) return false;
      return true;
    }
    return false;
  }

  isOpen({ x, y, half }: Centre): boolean {
    let [light, all] = [0, 0];
    const inner = Math.floor(0.95 * half);
    for (let v = -inner; v <= inner; v += 2) {
      for (let u = -(inner - Math.abs(v)); u <= inner - Math.abs(v); u += 2) {
        all += 1;
        if (!this.dark(x + u, y + v)) light += 1;
      }
    }
    return light >= LEAST_LIGHT * all;
  }

  hasBlackCorners(centre: Centre): boolean {
    const [up, right, down, left] = [
      [0, -1],
      [1, 0],
      [0, 1],
      [-1, 0],
    ].map(([u = 0, v = 0]) => this.#cornerInk(centre, u, v)) as [number, number, number, number];
    const black = (one: number, other: number): boolean => Math.min(one, other) >= CORNER.full;
    return (black(up, down) && Math.max(left, right) < CORNER.others) || (black(left, right) && Math.max(up, down) < CORNER.others);
  }

  /** Share of ink in the outermost part of a corner. */
  #cornerInk({ x, y, half }: Centre, u: number, v: number): number {
    let [dark, all] = [0, 0];
    for (let away = Math.ceil(CORNER.from * half); away < 0.94 * half; away++) {
      const wide = half - away - 2;
      for (let beside = -wide; beside <= wide; beside++) {
        all += 1;
        if (this.dark(x + u * away + v * beside, y + v * away + u * beside)) dark += 1;
      }
    }
    return all === 0 ? 0 : dark / all;
  }
}

/** Which way each side lies from the middle. */
const SIDES: readonly (readonly [across: 1 | -1, down: 1 | -1])[] = [
  [-1, -1],
  [1, -1],
  [-1, 1],
  [1, 1],
];
