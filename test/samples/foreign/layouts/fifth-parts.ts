import type { FourthDesign } from '../designs/fourth-labels-a.js';
import { brisko, hollowpost, kestrelo, nordvik, rapidelle, vantreck, zwaluw } from '../designs/fifth-labels-a.js';
import { correluz, meridian, poltrasa, svalpost } from '../designs/fifth-labels-b.js';
import { gullhaven, ottermile, postella, quickquill } from '../designs/fifth-labels-c.js';
import { Art } from '../kit/art.js';
import type { Edge, Part } from '../kit/page.js';
import type { Ink } from '../kit/raster.js';
import type { Family, Turn } from '../kit/shapes.js';
import { cycle, pictured } from './parts.js';
import { WORKSPACE } from './workspace.js';
import { posted } from '../designs/fifth-words.js';

export type Styled = readonly [FourthDesign, Edge];
/** Upright labels of this part and what their edge is; most have nothing around them. */
export const OPEN: readonly Styled[] = [
  [hollowpost, 'ink'],
  [kestrelo, 'frame'],
  [vantreck, 'ink'],
  [brisko, 'ink'],
  [zwaluw, 'ink'],
  [nordvik, 'ink'],
  [rapidelle, 'ink'],
  [correluz, 'ink'],
];
/** More of them, drawn after the first had been counted. */
export const MORE: readonly Styled[] = [
  [poltrasa, 'ink'],
  [meridian, 'ink'],
  [quickquill, 'frame'],
  [gullhaven, 'ink'],
  [ottermile, 'ink'],
  [postella, 'frame'],
];
export const BOTH: readonly Styled[] = [0, 1, 2, 3, 4, 5, 6, 7].flatMap((k) => [...MORE.slice(k, k + 1), ...OPEN.slice(k, k + 1)]);
export const POST: Styled = [svalpost, 'ink'];

/** 4x6 in less a margin of 3 mm; the whole; for A6 and 100x150 mm; for a quarter of A4. */
export const INNER = { width: 271, height: 415 };
export const WHOLE = { width: 288, height: 432 };
export const QUARTER = { width: 262, height: 392 };
export const FONTS = {
  liberation: { sans: 'liberation/LiberationSans' },
  lato: { sans: 'lato/Lato' },
  open: { sans: 'open-sans/OpenSans' },
  roboto: { sans: 'roboto/unhinted/RobotoTTF/Roboto' },
} as const;

/** A label of 4x6 in as the picture that a carrier's server gives. */
export function serverPicture(
  styled: Styled,
  seed: number,
  language: number,
  at: { readonly x: number; readonly y: number; readonly turn?: Turn; readonly stored?: boolean },
  options: { readonly dpi: number; readonly ink: Ink; readonly fonts?: Partial<Record<Family, string>> },
): Part {
  const [design] = styled;
  const art = new Art(WHOLE.width, WHOLE.height).put(design(posted(seed, language), { ...INNER, dot: 72 / options.dpi }), 8.5, 8.5);
  return pictured(art, at, styled[1] === 'frame' ? 'frame' : 'picture', WORKSPACE, {
    fonts: { sans: cycle(['Liberation Sans', 'Open Sans', 'Roboto'], seed) },
    ...options,
  });
}
