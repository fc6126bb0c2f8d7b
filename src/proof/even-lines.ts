import { mean } from '../geometry/sum.js';
/** Evenly spaced lines: `count` steps of `module` from `start`, in the edges' unit. */
export interface EvenLines {
  readonly start: number;
  readonly count: number;
  readonly module: number;
  /** By how much ink is wider than its modules, the same everywhere; less than 0 where paper has grown. */
  readonly growth: number;
  /** How far the line that is farthest off lies from its even place, by the mean of the edges next to it. */
  readonly farthestOff: number;
  /** How far an edge lies from its line, in steps, in the mean: 0 on whole dots, a quarter by chance. */
  readonly unevenness: number;
}

/** How many edges lie before pixel 0, 1, 2 …, all rows together: where ink begins, and where it ends. */
export interface Edges {
  readonly begins: Float64Array;
  readonly ends: Float64Array;
}

/** Edges rounded to pixels are off by 0.17 of a step of a pixel and a half, by 0.21 of one of 1.2 pixels; by chance a quarter. */
const MOST_UNEVEN = 0.22;
/** Steps that least squares move by more than this share of themselves were none. */
const MOST_SETTLED = 0.1;

/**
 * The even lines that edges keep to, by least squares: rounding to a pixel cancels out. Undefined where they keep to none.
 * @param first where the first line should be, @param last where the last one
 */
export function evenLines({ begins, ends }: Edges, first: number, last: number, count: number): EvenLines | undefined {
  let lines: EvenLines = { start: first, count, module: (last - first) / count, growth: 0, farthestOff: 0, unevenness: 1 };
  for (let round = 0; round < 3; round++) {
    // Both kinds of edges stand half the growth away from the lines, to either side.
    const near = [nextToLines(begins, lines, -lines.growth / 2), nextToLines(ends, lines, lines.growth / 2)];
    const sides = near.map(({ sums, many }) => {
      const seen = Array.from(many.keys()).filter((line) => (many[line] as number) > 0);
      const places = seen.map((line) => (sums[line] as number) / (many[line] as number));
      const [line, place] = [mean(seen), mean(places)];
      return { seen, places, line, place };
    });
    if (sides.some(({ seen }) => seen.length === 0)) return undefined;
    let [above, below] = [0, 0];
    for (const { seen, places, line, place } of sides) {
      for (const [index, each] of seen.entries()) {
        above += (each - line) * ((places[index] as number) - place);
        below += (each - line) ** 2;
      }
    }
    if (below === 0) return undefined;
    const module = above / below;
    const [begin, end] = sides.map(({ line, place }) => place - line * module) as [number, number];
    const off = sides.flatMap(({ seen, places }, side) =>
      places.map((place, index) => Math.abs(place - (seen[index] as number) * module - (side === 0 ? begin : end))),
    );
    const all = near.reduce((sum, { weight }) => sum + weight, 0);
    const unevenness = near.reduce((sum, { distance }) => sum + distance, 0) / all;
    lines = { start: (begin + end) / 2, count, module, growth: end - begin, farthestOff: Math.max(...off), unevenness };
  }
  const settled = Math.abs((lines.module * count) / (last - first) - 1) < MOST_SETTLED;
  return settled && lines.unevenness < MOST_UNEVEN ? lines : undefined;
}

interface Near {
  /** Of each line, the sum of its edges' places and their number. */
  readonly sums: Float64Array;
  readonly many: Float64Array;
  /** Of all edges, their distances from their lines in steps, and their number. */
  readonly distance: number;
  readonly weight: number;
}

function nextToLines(edges: Float64Array, { start, count, module }: EvenLines, aside: number): Near {
  const [sums, many] = [new Float64Array(count + 1), new Float64Array(count + 1)];
  let [distance, weight] = [0, 0];
  for (let place = 0; place < edges.length; place++) {
    const edge = edges[place] as number;
    if (edge === 0) continue;
    const step = (place - start - aside) / module;
    const line = Math.min(count, Math.max(0, Math.round(step)));
    // Beyond the outermost lines there is what stands beside the symbol.
    if (Math.abs(step - line) > 0.75) continue;
    sums[line] = (sums[line] as number) + edge * place;
    many[line] = (many[line] as number) + edge;
    distance += edge * Math.abs(step - line);
    weight += edge;
  }
  return { sums, many, distance, weight };
}
