import type { Code, GreyRaster } from '../reading/source.js';
import { evenLines, type Edges, type EvenLines } from './even-lines.js';

/** Where the modules of a matrix or stacked code lie in a raster: the lines between them, pixels from its top-left corner. */
export interface MatrixGrid {
  /** Across the page. In PDF417 one direction counts modules, the other rows of bars. */
  readonly x: EvenLines;
  /** Down the page. */
  readonly y: EvenLines;
}

/** A reader's corners may be off by so much of a side, and so many pixels. */
const CORNERS_OFF = { share: 0.01, pixels: 2 };
/** The outermost modules of a side are ink for more than this share of it, paper beside it for less. */
const INKED = 0.04;
/** A row of PDF417 differs from the next one in more than this share of its length. */
const ANOTHER_ROW = 0.06;
/** Share of the best that counts as good. */
const AS_GOOD = 0.9;
/** Changes from row to row that stand closer than this, in modules, are one: drawn softly, it goes over several pixels. */
const LEAST_ROW = 1.2;
/** PDF417 is 17 k + 1 modules long: start, row indicators and 1 to 30 codewords of 17, a stop of 18 or 1 (ISO/IEC 15438, from memory; tested by an independent writer). */
const PDF417 = { codeword: 17, least: 3, most: 34 };

/** One direction of a raster: from where to where, how long the raster is, and from one pixel to the next in its data. */
interface Axis {
  readonly from: number;
  readonly to: number;
  readonly size: number;
  readonly step: number;
}

/**
 * Finds the lines between the modules of a QR, Data Matrix, Aztec or PDF417 code from the edges between ink and paper. Undefined for other codes, for
 * slanted ones, and where edges keep to no even lines.
 */
export function matrixGrid(raster: GreyRaster, code: Code): MatrixGrid | undefined {
  const { turn, symbology, modules, box } = code;
  const stacked = symbology === 'PDF417';
  if (turn === undefined || (!stacked && modules === undefined)) return undefined;
  const level = turn % 180 === 0;
  const pixel = (pt: number): number => Math.round(pt * raster.pixelsPerPt);
  const [x0, y0] = [pixel(box.x - raster.origin.x), pixel(box.y - raster.origin.y)];
  const across = onRaster({ from: x0, to: x0 + pixel(box.width), size: raster.width, step: 1 });
  const down = onRaster({ from: y0, to: y0 + pixel(box.height), size: raster.height, step: raster.width });
  const { columns = 0, rows = 0 } = modules ?? {};
  if (!stacked) {
    const [x, y] = level ? [columns, rows] : [rows, columns];
    return both(
      linesOf(raster.data, across, down, () => x),
      linesOf(raster.data, down, across, () => y),
    );
  }
  const backwards = turn >= 180;
  const [along, over] = level ? [across, down] : [down, across];
  const long = linesOf(raster.data, along, over, (edges, first, last) =>
    backwards ? stackedLength(edges.ends, last, first) : stackedLength(edges.begins, first, last),
  );
  const least = LEAST_ROW * (long?.module ?? 0);
  const high = linesOf(raster.data, over, along, (_, first, last) => rowsBetween(raster.data, over, along, first, last, least));
  return level ? both(long, high) : both(high, long);
}

const both = (x: EvenLines | undefined, y: EvenLines | undefined): MatrixGrid | undefined => (x && y ? { x, y } : undefined);
const onRaster = (axis: Axis): Axis => ({ ...axis, from: Math.max(0, axis.from), to: Math.min(axis.size, axis.to) });

/** Lines across `along`, from the edges met between the pixels of `across`. */
function linesOf(
  data: Uint8Array,
  along: Axis,
  across: Axis,
  countOf: (edges: Edges, first: number, last: number) => number,
): EvenLines | undefined {
  const off = Math.ceil(CORNERS_OFF.pixels + CORNERS_OFF.share * (along.to - along.from));
  const inked = (a: number): boolean => {
    if (a < 0 || a >= along.size) return false;
    let dark = 0;
    for (let b = across.from, at = a * along.step + b * across.step; b < across.to; b++, at += across.step) {
      if ((data[at] as number) < 128) dark += 1;
    }
    return dark > INKED * (across.to - across.from);
  };
  const [first, last] = [sideAt(along.from, off, inked, 1), sideAt(along.to, off, inked, -1)];
  if (last - first < 8 || across.to - across.from < 4) return undefined;
  const edges = edgesBetween(data, along, across, first, last);
  return evenLines(edges, first, last, countOf(edges, first, last));
}

/** The place next to `corner` where ink begins, going in the direction of `inwards`; the corner itself where none does. */
function sideAt(corner: number, off: number, inked: (a: number) => boolean, inwards: 1 | -1): number {
  for (let away = 0; away <= off; away++) {
    for (const at of [corner - away * inwards, corner + away * inwards]) {
      const [inside, outside] = inwards === 1 ? [at, at - 1] : [at - 1, at];
      if (inked(inside) && !inked(outside)) return at;
    }
  }
  return corner;
}

function edgesBetween(data: Uint8Array, along: Axis, across: Axis, first: number, last: number): Edges {
  const edges = { begins: new Float64Array(along.size + 1), ends: new Float64Array(along.size + 1) };
  const [from, to] = [Math.max(1, first - 2), Math.min(along.size - 1, last + 2)];
  for (let b = across.from; b < across.to; b++) {
    for (let a = from, at = a * along.step + b * across.step; a <= to; a++, at += along.step) {
      const now = (data[at] as number) < 128;
      if ((data[at - along.step] as number) < 128 === now) continue;
      // An edge of a module goes on beside it; a speck's does not.
      const [above, below] = [at - across.step, at + across.step];
      const goesOn =
        (above >= along.step && (data[above] as number) < 128 === now && (data[above - along.step] as number) < 128 !== now) ||
        (below < data.length && (data[below] as number) < 128 === now && (data[below - along.step] as number) < 128 !== now);
      if (!goesOn) continue;
      const kind = now ? edges.begins : edges.ends;
      kind[a] = (kind[a] as number) + 1;
    }
  }
  return edges;
}

/** How many modules a PDF417 is long: every row has a bar begin at every 17th one; `starts` counts where bars begin in the direction of reading. */
function stackedLength(starts: Float64Array, from: number, to: number): number {
  const tried: { share: number; count: number }[] = [];
  for (let words = PDF417.least; words <= PDF417.most; words++) {
    const count = PDF417.codeword * words + 1;
    const step = (PDF417.codeword * (to - from)) / count;
    if (Math.abs(step) < PDF417.codeword) break;
    let share = 0;
    for (let word = 0; word < words; word++) {
      const place = Math.round(from + word * step);
      for (let at = place - 1; at <= place + 1; at++) share += starts[at] ?? 0;
    }
    tried.push({ share: share / words, count });
  }
  // Half or a third as many meet bars as well: the most that do are all.
  const best = Math.max(...tried.map(({ share }) => share));
  return tried.findLast(({ share }) => share >= AS_GOOD * best)?.count ?? PDF417.codeword * PDF417.least + 1;
}

/** How many rows of bars lie between two places: a row is alike all over, and unlike the next one. */
function rowsBetween(data: Uint8Array, over: Axis, along: Axis, first: number, last: number, least: number): number {
  let [rows, before] = [1, first];
  for (let y = first + 1; y < last - least; y++) {
    let differ = 0;
    for (let a = along.from, at = y * over.step + a * along.step; a < along.to; a++, at += along.step) {
      if ((data[at] as number) < 128 !== (data[at - over.step] as number) < 128) differ += 1;
    }
    if (differ <= ANOTHER_ROW * (along.to - along.from)) continue;
    if (y - before <= least) continue;
    rows += 1;
    before = y;
  }
  return rows;
}
