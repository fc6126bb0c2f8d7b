import type { Box } from '../geometry/box.js';
import type { GreyRaster, SourcePage } from './source.js';

/** An area that looks like a code by its texture, found on the coarse ink raster without decoding. */
export interface CodeLikeArea {
  /** Pt on the visible page; to about 2 mm. */
  readonly box: Box;
  readonly kind: 'linear' | 'matrix';
  /** For linear areas, which way the row of bars runs: along x (`level`) or along y (`upright`, a ladder). */
  readonly run: 'level' | 'upright' | undefined;
}

/** Side of a texture cell in pixels of the ink raster: 8 px are 5.3 pt or 1.9 mm. */
const CELL = 8;
/** Mean step of grey between neighbouring pixels from which a cell counts as busy: text stays below in one direction or is patchy. */
const BUSY = 26;
/** In a linear code the steps along the bars are this much weaker than across. */
const ALONG = 0.34;
/** Smallest linear area: 20 mm long, 5 mm high (a trade label's shortest code is longer). */
const LINEAR_CELLS = { long: 8, high: 2 };
/** Smallest matrix area: 3 × 3 cells, about 6 mm. */
const MATRIX_CELLS = 3;
/** Share of a matrix area's cells that must be busy: lines of text leave white rows between them. */
const MATRIX_FILL = 0.8;

type Kind = 'level' | 'upright' | 'matrix';

const cache = new WeakMap<SourcePage, readonly CodeLikeArea[]>();

/** The code-like areas of a page, from the top; each page is looked at once. */
export function codeLikeAreas(page: SourcePage): readonly CodeLikeArea[] {
  let areas = cache.get(page);
  if (!areas) cache.set(page, (areas = findCodeLike(page.ink())));
  return areas;
}

/** The same for any coarse raster (about 108 dpi). */
export function findCodeLike(raster: GreyRaster): readonly CodeLikeArea[] {
  const grid = textureOf(raster);
  const areas: CodeLikeArea[] = [];
  for (const kind of ['level', 'upright', 'matrix'] as const) {
    for (const { x0, y0, x1, y1, cells } of components(grid, kind)) {
      const w = x1 - x0 + 1;
      const h = y1 - y0 + 1;
      if (kind === 'matrix') {
        if (Math.min(w, h) < MATRIX_CELLS || cells < MATRIX_FILL * w * h) continue;
      } else {
        const [long, high] = kind === 'level' ? [w, h] : [h, w];
        if (long < LINEAR_CELLS.long || high < LINEAR_CELLS.high || cells < 0.6 * w * h) continue;
      }
      areas.push({
        box: toPt(raster, x0, y0, x1 + 1, y1 + 1),
        kind: kind === 'matrix' ? 'matrix' : 'linear',
        run: kind === 'matrix' ? undefined : kind,
      });
    }
  }
  return areas.sort((a, b) => a.box.y - b.box.y || a.box.x - b.box.x);
}

interface Texture {
  readonly columns: number;
  readonly rows: number;
  readonly kinds: readonly (Kind | undefined)[];
}

function textureOf({ width, height, data }: GreyRaster): Texture {
  const columns = Math.floor(width / CELL);
  const rows = Math.floor(height / CELL);
  const kinds: (Kind | undefined)[] = new Array<Kind | undefined>(columns * rows);
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++) {
      let across = 0;
      let down = 0;
      for (let y = row * CELL; y < row * CELL + CELL; y++) {
        const start = y * width + column * CELL;
        for (let at = start; at < start + CELL; at++) {
          const here = data[at] ?? 255;
          across += Math.abs(here - (data[at + 1] ?? here));
          down += Math.abs(here - (data[at + width] ?? here));
        }
      }
      const mean = CELL * CELL;
      const busyX = across / mean >= BUSY;
      const busyY = down / mean >= BUSY;
      if (busyX && down < ALONG * across) kinds[row * columns + column] = 'level';
      else if (busyY && across < ALONG * down) kinds[row * columns + column] = 'upright';
      else if (busyX && busyY) kinds[row * columns + column] = 'matrix';
    }
  }
  return { columns, rows, kinds };
}

interface Component {
  x0: number;
  y0: number;
  x1: number;
  y1: number;
  cells: number;
}

/** Groups of cells of one kind that touch by a side; in bar codes one quiet cell may be jumped along the row. */
function components({ columns, rows, kinds }: Texture, kind: Kind): Component[] {
  const seen = new Uint8Array(columns * rows);
  const found: Component[] = [];
  const jumpX = kind === 'level' ? 2 : 1;
  const jumpY = kind === 'upright' ? 2 : 1;
  for (let start = 0; start < kinds.length; start++) {
    if (kinds[start] !== kind || seen[start]) continue;
    const component: Component = { x0: columns, y0: rows, x1: 0, y1: 0, cells: 0 };
    const stack = [start];
    seen[start] = 1;
    for (let cell = stack.pop(); cell !== undefined; cell = stack.pop()) {
      const x = cell % columns;
      const y = Math.floor(cell / columns);
      component.x0 = Math.min(component.x0, x);
      component.x1 = Math.max(component.x1, x);
      component.y0 = Math.min(component.y0, y);
      component.y1 = Math.max(component.y1, y);
      component.cells += 1;
      const visit = (nx: number, ny: number): void => {
        if (nx < 0 || ny < 0 || nx >= columns || ny >= rows) return;
        const next = ny * columns + nx;
        if (kinds[next] !== kind || seen[next]) return;
        seen[next] = 1;
        stack.push(next);
      };
      for (let step = 1; step <= jumpX; step++) {
        visit(x - step, y);
        visit(x + step, y);
      }
      for (let step = 1; step <= jumpY; step++) {
        visit(x, y - step);
        visit(x, y + step);
      }
    }
    found.push(component);
  }
  return found;
}

function toPt({ pixelsPerPt, origin }: GreyRaster, x0: number, y0: number, x1: number, y1: number): Box {
  const k = CELL / pixelsPerPt;
  return { x: origin.x + x0 * k, y: origin.y + y0 * k, width: (x1 - x0) * k, height: (y1 - y0) * k };
}
