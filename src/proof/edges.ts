import { mean } from '../geometry/sum.js';
import type { GreyRaster } from '../reading/source.js';

/** Half way between black and white. */
const HALF = 128;
const WHITE = 255;

/**
 * Where ink begins and ends along a row of pixels, to a fraction of a pixel: a pixel that an edge crosses is as grey as it is white in part. Positions
 * are pixels from the raster's left; the first is where ink begins, and they come in pairs.
 * @param row pixel row, from 0
 * @param from first pixel, `to` the one after the last
 */
export function edgesAlong({ data, width }: GreyRaster, row: number, from: number, to: number): number[] {
  const edges: number[] = [];
  const start = row * width;
  const at = (x: number): number => (x < 0 || x >= width ? WHITE : (data[start + x] as number));
  let dark = false;
  let before = WHITE;
  for (let x = from; x <= to; x++) {
    const value = x < to ? at(x) : WHITE;
    if (value < HALF !== dark) {
      edges.push(dark ? x - before / WHITE + (WHITE - value) / WHITE : x + value / WHITE - (WHITE - before) / WHITE);
      dark = !dark;
    }
    before = value;
  }
  return edges;
}

/** Widths of bar, space, bar … between edges. */
export function widthsOf(edges: readonly number[]): number[] {
  const widths: number[] = [];
  for (let index = 1; index < edges.length; index++) widths.push((edges[index] as number) - (edges[index - 1] as number));
  return widths;
}

/** A space of more than so many narrow elements lies outside a symbol: no element of a linear code has more than four modules. */
const BREAK = 6;

/** Of the edges along a scan, those of one symbol: the longest row of bars without a wide break. A ruled line or a letter beside the quiet zone is none of it. */
export function symbolEdges(edges: readonly number[]): readonly number[] {
  const widths = widthsOf(edges);
  const narrow = Float64Array.from(widths).sort()[Math.floor(widths.length / 8)];
  if (narrow === undefined) return edges;
  let best: readonly number[] = [];
  let from = 0;
  for (let index = 0; index <= widths.length; index++) {
    const isBreak = index === widths.length || (index % 2 === 1 && (widths[index] ?? 0) > BREAK * narrow);
    if (!isBreak) continue;
    if (index + 1 - from > best.length) best = edges.slice(from, index + 1);
    from = index + 1;
  }
  return best;
}

/** The line through all edges, by least squares: where the first is, and how long a module. Each edge's own rounding to a pixel cancels out. */
export function fitModules(edges: readonly number[], modules: readonly number[]): { readonly start: number; readonly module: number } {
  let at = 0;
  const planned = [0, ...modules.map((each) => (at += each))];
  const [mx, my] = [mean(planned), mean(edges)];
  let [above, below] = [0, 0];
  planned.forEach((x, index) => {
    above += (x - mx) * ((edges[index] ?? my) - my);
    below += (x - mx) ** 2;
  });
  const module = above / below;
  return { start: my - module * mx, module };
}
