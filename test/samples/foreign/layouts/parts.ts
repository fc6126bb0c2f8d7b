import type { Art } from '../kit/art.js';
import type { Edge, Kind, Page, Part, Role } from '../kit/page.js';
import type { Ink } from '../kit/raster.js';
import { picture } from '../kit/raster.js';
import type { Family, Rect, Turn } from '../kit/shapes.js';
import { place } from '../kit/shapes.js';

export const TURNS: readonly Turn[] = [0, 90, 180, 270];
export const MM = 72 / 25.4;

interface At {
  readonly x: number;
  readonly y: number;
  readonly turn?: Turn;
  readonly scale?: number;
}

/** A label drawn as vectors. */
export const label = (art: Art, at: At, edge: Edge, role: Role = 'label'): Part => ({
  role,
  shapes: place(art.shapes, art, at),
  edge,
  turn: at.turn ?? 0,
  codes: art.codes,
});

/** A label as a picture in the page. */
export const pictured = (
  art: Art,
  at: At & { readonly stored?: boolean },
  edge: Edge,
  folder: string,
  options: { readonly dpi: number; readonly ink: Ink; readonly fonts?: Partial<Record<Family, string>> },
  role: Role = 'label',
): Part => ({ role, shapes: [picture(art, folder, at, options)], edge, turn: at.turn ?? 0, codes: art.codes });

/** A label with a dashed line to cut along, `gap` pt around it. */
export function cutLabel(art: Art, at: At, gap: number, role: Role = 'label'): Part {
  const { width, height } = art.bounds(at.turn, at.scale);
  const line: Rect = {
    kind: 'rect',
    x: at.x - gap,
    y: at.y - gap,
    width: width + 2 * gap,
    height: height + 2 * gap,
    line: 0.8,
    stroke: '#000000',
    dash: [5, 3],
  };
  return { role, shapes: [...place(art.shapes, art, at), line], edge: 'cut', turn: at.turn ?? 0, codes: art.codes };
}

export const other = (art: Art, at: At): Part => ({ role: 'other', shapes: place(art.shapes, art, at) });
export const slipPart = (art: Art, at: At): Part => ({ role: 'slip', shapes: place(art.shapes, art, at) });

/** Words in the two HTML producers (markup) and in troff (its requests). */
export const flow = (x: number, y: number, width: number, markup: string, role: Role = 'other'): Part => ({
  role,
  shapes: [],
  html: { x, y, width, markup },
});

export const page = (
  kind: Kind,
  size: { readonly width: number; readonly height: number },
  parts: readonly Part[],
  more: Partial<Page> = {},
): Page => ({
  kind,
  width: size.width,
  height: size.height,
  parts,
  ...more,
});
export const range = (count: number): number[] => Array.from({ length: count }, (_, index) => index);
/** The same item of a list again and again. */
export function cycle<T>(list: readonly T[], index: number): T {
  const item = list[index % list.length];
  if (item === undefined) throw new Error('An empty list');
  return item;
}

/** Pages of one size together: a drawing of an office suite has one size for all its pages. */
export function bySize(pages: readonly Page[]): Page[][] {
  const groups = new Map<string, Page[]>();
  for (const each of pages) {
    const key = `${each.width} ${each.height}`;
    groups.set(key, [...(groups.get(key) ?? []), each]);
  }
  return [...groups.values()];
}
