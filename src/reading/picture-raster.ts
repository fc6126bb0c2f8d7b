import { rotationAbout } from '../geometry/placement.js';

/** Grey samples of a whole picture, row by row from the top. */
export interface GreyPixels {
  readonly width: number;
  readonly height: number;
  readonly data: Uint8Array;
}

/** A rectangle in pixels; `x` and `y` may be negative or fractions. */
export interface PixelBox {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

const PAPER = 255;

/** Copies whole pixels; parts beyond the picture are white paper. `box` holds whole numbers. */
export function cropPixels(source: GreyPixels, box: PixelBox): Uint8Array {
  const out = new Uint8Array(box.width * box.height).fill(PAPER);
  const x0 = Math.max(0, box.x);
  const x1 = Math.min(source.width, box.x + box.width);
  if (x1 <= x0) return out;
  for (let y = Math.max(0, box.y); y < Math.min(source.height, box.y + box.height); y++) {
    const row = y * source.width;
    out.set(source.data.subarray(row + x0, row + x1), (y - box.y) * box.width + (x0 - box.x));
  }
  return out;
}

/** The pixel under the centre of each of `width` × `height` samples of `box`: nothing is mixed. */
export function samplePixels(source: GreyPixels, box: PixelBox, width: number, height: number): Uint8Array {
  const out = new Uint8Array(width * height).fill(PAPER);
  const columns = Array.from({ length: width }, (_, i) => Math.floor(box.x + ((i + 0.5) * box.width) / width));
  for (let j = 0; j < height; j++) {
    const y = Math.floor(box.y + ((j + 0.5) * box.height) / height);
    if (y < 0 || y >= source.height) continue;
    for (let i = 0; i < width; i++) {
      const x = columns[i] ?? -1;
      if (x >= 0 && x < source.width) out[j * width + i] = source.data[y * source.width + x] ?? PAPER;
    }
  }
  return out;
}

/** The picture turned clockwise about its centre, its size unchanged; each pixel mixed from the four around its place, paper beyond the edges. */
export function turnedPixels({ width, height, data }: GreyPixels, degrees: number): Uint8Array {
  const out = new Uint8Array(width * height).fill(PAPER);
  const [a, b, c, d, e, f] = rotationAbout(width / 2, height / 2, -degrees);
  const at = (x: number, y: number): number => (x < 0 || y < 0 || x >= width || y >= height ? PAPER : (data[y * width + x] as number));
  for (let y = 0, to = 0; y < height; y++) {
    for (let x = 0; x < width; x++, to++) {
      const fromX = a * (x + 0.5) + c * (y + 0.5) + e - 0.5;
      const fromY = b * (x + 0.5) + d * (y + 0.5) + f - 0.5;
      const [left, top] = [Math.floor(fromX), Math.floor(fromY)];
      if (left < -1 || top < -1 || left >= width || top >= height) continue;
      const [right, low] = [fromX - left, fromY - top];
      const upper = at(left, top) * (1 - right) + at(left + 1, top) * right;
      const lower = at(left, top + 1) * (1 - right) + at(left + 1, top + 1) * right;
      out[to] = Math.round(upper * (1 - low) + lower * low);
    }
  }
  return out;
}

/** Which pixels one sample covers, and how much of each. */
interface Cover {
  readonly first: number;
  readonly weights: Float32Array;
}

function covers(start: number, length: number, count: number): Cover[] {
  const step = length / count;
  return Array.from({ length: count }, (_, i) => {
    const from = start + i * step;
    const to = from + step;
    const first = Math.floor(from);
    const weights = new Float32Array(Math.max(1, Math.ceil(to) - first));
    for (let k = 0; k < weights.length; k++) weights[k] = (Math.min(to, first + k + 1) - Math.max(from, first + k)) / step;
    return { first, weights };
  });
}

/** The mean of the pixels that each of `width` × `height` samples of `box` covers, parts of pixels in proportion. */
export function averagePixels(source: GreyPixels, box: PixelBox, width: number, height: number): Uint8Array {
  const out = new Uint8Array(width * height);
  const columns = covers(box.x, box.width, width);
  const sums = new Float32Array(width);
  covers(box.y, box.height, height).forEach(({ first, weights }, j) => {
    sums.fill(0);
    weights.forEach((weight, k) => addRow(source, first + k, weight, columns, sums));
    for (let i = 0; i < width; i++) out[j * width + i] = Math.round(sums[i] ?? 0);
  });
  return out;
}

function addRow(source: GreyPixels, y: number, weight: number, columns: readonly Cover[], sums: Float32Array): void {
  const { width, data } = source;
  if (y < 0 || y >= source.height) {
    for (let i = 0; i < sums.length; i++) sums[i] = (sums[i] ?? 0) + weight * PAPER;
    return;
  }
  const row = y * width;
  for (let i = 0; i < columns.length; i++) {
    const column = columns[i];
    if (!column) continue;
    const { first, weights } = column;
    let sum = 0;
    for (let k = 0; k < weights.length; k++) {
      const x = first + k;
      sum += (weights[k] ?? 0) * (x >= 0 && x < width ? (data[row + x] ?? PAPER) : PAPER);
    }
    sums[i] = (sums[i] ?? 0) + weight * sum;
  }
}
