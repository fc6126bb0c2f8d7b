import { run } from './run.js';
import type { Box } from './shapes.js';

const DPI = 300;
const round = (value: number): number => Math.round(value * 100) / 100;
export const rounded = ({ x, y, width, height }: Box): Box => ({ x: round(x), y: round(y), width: round(width), height: round(height) });

/** Visible sizes of all pages in pt. */
export function pageSizes(pdf: string): { width: number; height: number }[] {
  const info = run('pdfinfo', ['-f', '1', '-l', '9999', pdf]).toString('utf8');
  const sizes = [...info.matchAll(/Page +\d+ size: +([\d.]+) x ([\d.]+)/g)];
  const turns = [...info.matchAll(/Page +\d+ rot: +(\d+)/g)];
  return sizes.map(([, w, h], index) => {
    const lying = Number(turns[index]?.[1] ?? 0) % 180 !== 0;
    return lying ? { width: Number(h), height: Number(w) } : { width: Number(w), height: Number(h) };
  });
}

interface Grey {
  readonly width: number;
  readonly height: number;
  readonly pixels: Buffer;
}

/** One page in 8-bit grey. Throws when poppler gives something else. */
export function renderGrey(pdf: string, page: number, dpi: number): Grey {
  const pgm = run('pdftoppm', ['-cropbox', '-r', String(dpi), '-gray', '-f', String(page), '-l', String(page), pdf]);
  const head = /^P5\s+(\d+)\s+(\d+)\s+255\s/.exec(pgm.toString('latin1', 0, 64));
  if (!head) throw new Error('pdftoppm gave no grey picture');
  return { width: Number(head[1]), height: Number(head[2]), pixels: pgm.subarray(head[0].length) };
}

/** Bounds in pt of everything darker than nearly white; undefined where there is none. */
export function inkBounds(pdf: string, page: number): Box | undefined {
  const { width, height, pixels } = renderGrey(pdf, page, DPI);
  let [left, right, top, bottom] = [width, -1, -1, -1];
  for (let y = 0; y < height; y++) {
    const row = pixels.subarray(y * width, (y + 1) * width);
    const first = row.findIndex((value) => value < 200);
    if (first < 0) continue;
    const last = row.findLastIndex((value) => value < 200);
    if (top < 0) top = y;
    bottom = y;
    left = Math.min(left, first);
    right = Math.max(right, last);
  }
  if (right < 0) return undefined;
  const pt = 72 / DPI;
  return rounded({ x: left * pt, y: top * pt, width: (right + 1 - left) * pt, height: (bottom + 1 - top) * pt });
}

/**
 * The part of a box, 0 to 1, in which two documents show different things. Decides whether a label measured alone lies
 * where it lies among everything else.
 */
export function difference(pdf: string, other: string, page: number, box: Box): number {
  const dpi = 100;
  const [a, b] = [renderGrey(pdf, page, dpi), renderGrey(other, page, dpi)];
  if (a.width !== b.width || a.height !== b.height) return 1;
  const [left, top, right, bottom] = [box.x, box.y, box.x + box.width, box.y + box.height].map((pt) => Math.round((pt * dpi) / 72));
  let [differing, all] = [0, 0];
  for (let y = Math.max(0, top ?? 0); y < Math.min(a.height, bottom ?? 0); y++) {
    for (let x = Math.max(0, left ?? 0); x < Math.min(a.width, right ?? 0); x++) {
      const at = y * a.width + x;
      all++;
      if (Math.abs((a.pixels[at] ?? 0) - (b.pixels[at] ?? 0)) > 64) differing++;
    }
  }
  return all === 0 ? 1 : differing / all;
}

/** Where a label lies when the page's content is turned clockwise about the page's centre, and its bounds then. */
export function askew(box: Box, page: { readonly width: number; readonly height: number }, degrees: number): { box: Box; straight: Box } {
  const angle = (degrees * Math.PI) / 180;
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const [dx, dy] = [box.x + box.width / 2 - page.width / 2, box.y + box.height / 2 - page.height / 2];
  const [cx, cy] = [page.width / 2 + dx * cos - dy * sin, page.height / 2 + dx * sin + dy * cos];
  const width = box.width * cos + box.height * Math.abs(sin);
  const height = box.height * cos + box.width * Math.abs(sin);
  return { box: rounded({ x: cx - width / 2, y: cy - height / 2, width, height }), straight: box };
}
