import type { FourthDesign } from '../designs/fourth-labels-a.js';
import { brindlewick, colisandre, dornwald, tamberline } from '../designs/fourth-labels-a.js';
import { correvaz, ostervang, przesylnik, trevolto, veltbode } from '../designs/fourth-labels-b.js';
import type { Document, Edge, Page } from '../kit/page.js';
import { SIZES } from '../kit/page.js';

/** Upright labels of this part and what their edge is. */
export const UPRIGHT: readonly (readonly [FourthDesign, Edge])[] = [
  [brindlewick, 'frame'],
  [dornwald, 'frame'],
  [tamberline, 'ink'],
  [ostervang, 'frame'],
  [colisandre, 'frame'],
  [veltbode, 'ink'],
  [trevolto, 'frame'],
  [przesylnik, 'ink'],
  [correvaz, 'frame'],
];
/** 4x6 in less a printer's margin; 4x6 in whole; for A6 and 100x150 mm. */
export const INNER = { width: 272, height: 414 };
export const WHOLE = { width: 288, height: 432 };
export const SMALL = { width: 266, height: 402 };
export const { a4, letter, legal, a5, a6 } = SIZES;

/** Pages as two documents, or as many as there are producers. */
export function documents(name: string, pages: readonly Page[], ...makers: readonly Omit<Document, 'name' | 'pages'>[]): Document[] {
  const each = Math.ceil(pages.length / makers.length);
  return makers.map((maker, k) => ({ ...maker, name: `${name}-${k + 1}`, pages: pages.slice(k * each, (k + 1) * each) }));
}
