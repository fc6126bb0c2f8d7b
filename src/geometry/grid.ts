/** The dots that the print path rasterises on. `203dpi` and the like are drivers' grids; `8dpmm` and the like are heads. */
export const GRID_NAMES = ['203dpi', '300dpi', '600dpi', '8dpmm', '12dpmm', '24dpmm'] as const;
export type GridName = (typeof GRID_NAMES)[number];

export interface Grid {
  readonly name: GridName;
  /** Dots per inch; 8 dots/mm is 203.2 (handbook section 0.2, computed). */
  readonly dpi: number;
}

const DPI: Record<GridName, number> = {
  '203dpi': 203,
  '300dpi': 300,
  '600dpi': 600,
  '8dpmm': 8 * 25.4,
  '12dpmm': 12 * 25.4,
  '24dpmm': 24 * 25.4,
};

/** No raster of a page is ever larger than this. */
export const MOST_PIXELS = 60_000_000;

/** The driver's grid of a head, and the head of a driver's grid: 203 dpi stands for 8 dots/mm in drivers, 300 for 12, 600 for 24 (handbook section 1.3). */
const TWINS: Record<GridName, GridName> = {
  '203dpi': '8dpmm',
  '300dpi': '12dpmm',
  '600dpi': '24dpmm',
  '8dpmm': '203dpi',
  '12dpmm': '300dpi',
  '24dpmm': '600dpi',
};
export const twinOf = (name: GridName): GridName => TWINS[name];

export const gridOf = (name: GridName): Grid => ({ name, dpi: DPI[name] });
export const dotsPerPt = (grid: Grid): number => grid.dpi / 72;

/** Whole dots of a length in pt: floor, so that a page of 4×6 in at 203dpi is 812×1218 and never a dot too large. */
export const wholeDots = (pt: number, grid: Grid): number => Math.floor(pt * dotsPerPt(grid) + 1e-6);
