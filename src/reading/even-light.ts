import type { GreyRaster } from './source.js';

/** Side of a block in pixels: wider than a row of bars' dark parts, far smaller than a shadow. */
const BLOCK = 32;
/** Of a block's pixels this share is darker than what is taken for its paper; noise lies on both sides of it. */
const PAPER = 0.75;
/** Paper this light (grey) everywhere needs no help. */
const LIGHT = 235;
/** Darker than this it is no paper. */
const DARKEST = 80;
/** A block whose paper is off the surface by more (grey) shows something else: a filled area, a picture, the scanner's lid … */
const OFF = 12;
/** … and so many of the blocks must show paper, and lie this near to the surface (grey, mean), for it to be light on paper. */
const SHOWS_PAPER = 0.6;
const NEAR = 5;
/** Terms of a surface of the second degree. */
const TERMS = 6;

/**
 * A scan or a photograph is lit unevenly: its paper darkens towards a corner or an edge, and there all of it would count as ink. Where the
 * paper of a page follows one smooth surface, every pixel is taken as a share of the light at its place; any other raster is
 * given back as it is, one with white paper too.
 */
export function evenLight(raster: GreyRaster): GreyRaster {
  const blocks = papers(raster);
  const surface = blocks.every(({ paper }) => paper >= LIGHT) ? undefined : surfaceOf(blocks);
  if (!surface || PLACES.every(([u, v]) => at(surface, u, v) >= LIGHT)) return raster;
  const { width, height, data } = raster;
  const out = new Uint8Array(data.length);
  const [c0, c1, c2, c3, c4, c5] = surface;
  for (let y = 0, at = 0; y < height; y++) {
    const v = (2 * y) / height - 1;
    const [constant, linear] = [c0 + c2 * v + c5 * v * v, c1 + c4 * v];
    for (let x = 0; x < width; x++, at++) {
      const u = (2 * x) / width - 1;
      const light = constant + linear * u + c3 * u * u;
      const share = ((data[at] as number) * 255) / light;
      out[at] = share >= 255 ? 255 : share;
    }
  }
  return { ...raster, data: out };
}

interface Block {
  /** Its middle, -1 to 1 across the raster. */
  readonly u: number;
  readonly v: number;
  readonly paper: number;
}

function papers({ width, height, data }: GreyRaster): readonly Block[] {
  const blocks: Block[] = [];
  const histogram = new Uint16Array(256);
  for (let top = 0; top + BLOCK <= height; top += BLOCK) {
    for (let left = 0; left + BLOCK <= width; left += BLOCK) {
      histogram.fill(0);
      for (let y = top; y < top + BLOCK; y += 2) {
        for (let at = y * width + left, end = at + BLOCK; at < end; at += 2) {
          const grey = data[at] as number;
          histogram[grey] = (histogram[grey] as number) + 1;
        }
      }
      const lighter = (1 - PAPER) * (BLOCK / 2) ** 2;
      let paper = 255;
      for (let seen = histogram[255] as number; seen < lighter && paper > 0; seen += histogram[paper] as number) paper -= 1;
      blocks.push({ u: (2 * (left + BLOCK / 2)) / width - 1, v: (2 * (top + BLOCK / 2)) / height - 1, paper });
    }
  }
  return blocks;
}

type Surface = readonly [number, number, number, number, number, number];

/** The surface that the paper of the blocks follows; undefined where it follows none, or one too dark or light all over. */
function surfaceOf(blocks: readonly Block[]): Surface | undefined {
  let shown = blocks;
  for (let pass = 0; pass < 8; pass++) {
    const surface = fitted(shown);
    if (!surface) return undefined;
    const off = ({ u, v, paper }: Block): number => Math.abs(paper - at(surface, u, v));
    const mean = shown.reduce((sum, block) => sum + off(block), 0) / shown.length;
    const kept = blocks.filter((block) => off(block) <= Math.max(OFF, 1.5 * mean));
    const isSettled = kept.length === shown.length && mean <= NEAR;
    shown = kept;
    if (shown.length < SHOWS_PAPER * blocks.length) return undefined;
    if (isSettled) return PLACES.every(([u, v]) => at(surface, u, v) >= DARKEST) ? surface : undefined;
  }
  return undefined;
}

/** Corners, middles of the edges and the centre. */
const PLACES = [-1, 0, 1].flatMap((u) => [-1, 0, 1].map((v) => [u, v] as const));

const at = ([c0, c1, c2, c3, c4, c5]: Surface, u: number, v: number): number => c0 + c1 * u + c2 * v + c3 * u * u + c4 * u * v + c5 * v * v;

/** Least squares by the normal equations. */
function fitted(blocks: readonly Block[]): Surface | undefined {
  const rows = Array.from({ length: TERMS }, () => new Float64Array(TERMS + 1));
  for (const { u, v, paper } of blocks) {
    const terms = [1, u, v, u * u, u * v, v * v, paper];
    rows.forEach((row, i) => {
      for (let j = 0; j <= TERMS; j++) row[j] = (row[j] as number) + (terms[i] as number) * (terms[j] as number);
    });
  }
  for (let i = 0; i < TERMS; i++) {
    const pivot = rows.slice(i).reduce((best, row) => (Math.abs(row[i] as number) > Math.abs(best[i] as number) ? row : best));
    if (Math.abs(pivot[i] as number) < 1e-9) return undefined;
    rows[rows.indexOf(pivot)] = rows[i] as Float64Array<ArrayBuffer>;
    rows[i] = pivot;
    for (const row of rows) {
      if (row === pivot) continue;
      const factor = (row[i] as number) / (pivot[i] as number);
      for (let j = i; j <= TERMS; j++) row[j] = (row[j] as number) - factor * (pivot[j] as number);
    }
  }
  return rows.map((row, i) => (row[TERMS] as number) / (row[i] as number)) as unknown as Surface;
}
