import type { Box } from '../geometry/box.js';
import type { GreyRaster, SourcePage } from './source.js';
import { components, LEVEL, MATRIX, textureOf, toPt, UPRIGHT, type Texture } from './texture.js';

/** An area that looks like a code by its texture, found on the coarse ink raster without decoding. */
export interface CodeLikeArea {
  /** Pt on the visible page; to about 2 mm. */
  readonly box: Box;
  readonly kind: 'linear' | 'matrix';
  /** For linear areas, which way the row of bars runs: along x (`level`) or along y (`upright`, a ladder). */
  readonly run: 'level' | 'upright' | undefined;
}

/** Smallest linear area: 15 mm long, 5.6 mm high; two cells high would take in large type. */
const LINEAR_CELLS = { long: 8, high: 3 };
/** Smallest matrix area: 3 × 3 cells, about 6 mm. */
const MATRIX_CELLS = 3;
/** Share of a matrix area's cells that must be busy: lines of text leave white rows between them. */
const MATRIX_FILL = 0.8;

const textures = new WeakMap<GreyRaster, Texture>();
const texturedOf = new WeakMap<SourcePage, readonly CodeLikeArea[]>();

export function memo<K extends object, T>(cache: WeakMap<K, T>, of: K, find: () => T): T {
  let known = cache.get(of);
  if (known === undefined) cache.set(of, (known = find()));
  return known;
}

/** Kept no longer than the page's ink. */
export const pageTexture = (page: SourcePage): Texture => memo(textures, page.ink(), () => textureOf(page.ink()));

/** The code-like areas of a page that their texture shows: not the matrix codes with modules as large as a cell. */
export const texturedAreas = (page: SourcePage): readonly CodeLikeArea[] =>
  memo(texturedOf, page, () => findCodeLike(page.ink(), pageTexture(page)));

export const fromTop = (a: CodeLikeArea, b: CodeLikeArea): number => a.box.y - b.box.y || a.box.x - b.box.x;

/** The code-like areas of any coarse raster (about 108 dpi). */
export function findCodeLike(raster: GreyRaster, grid: Texture = textureOf(raster)): readonly CodeLikeArea[] {
  const areas: CodeLikeArea[] = [];
  for (const kind of [LEVEL, UPRIGHT, MATRIX]) {
    for (const { x0, y0, x1, y1, cells } of components(grid, kind)) {
      const w = x1 - x0 + 1;
      const h = y1 - y0 + 1;
      if (kind === MATRIX) {
        if (Math.min(w, h) < MATRIX_CELLS || cells < MATRIX_FILL * w * h) continue;
      } else {
        const [long, high] = kind === LEVEL ? [w, h] : [h, w];
        if (long < LINEAR_CELLS.long || high < LINEAR_CELLS.high || cells < 0.6 * w * h) continue;
      }
      areas.push({
        box: toPt(raster, x0, y0, x1 + 1, y1 + 1),
        kind: kind === MATRIX ? 'matrix' : 'linear',
        run: kind === MATRIX ? undefined : kind === LEVEL ? 'level' : 'upright',
      });
    }
  }
  return areas.sort(fromTop);
}
