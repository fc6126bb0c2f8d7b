import { describe, expect, it } from 'vitest';
import type { Box } from '../../src/geometry/box.js';
import { inkBlobs } from '../../src/locating/ink-blobs.js';
import { rasterWith } from '../reading/drawn-page.js';

const inPixels = ({ x, y, width, height }: Box) => [x, y, width, height].map((each) => Math.round(each * 1.5));

describe('inkBlobs', () => {
  it('are tight to the pixel, apart where white cells lie between, together where ink is near', () => {
    const raster = rasterWith(200, 200, [
      [10, 10, 30, 20],
      [100, 50, 7, 3],
      [108, 54, 3, 9],
    ]);
    expect(inkBlobs(raster).map(inPixels)).toEqual([
      [10, 10, 30, 20],
      [100, 50, 11, 13],
    ]);
  });

  it('reach to the edge of a raster whose size is no multiple of a cell', () => {
    expect(inkBlobs(rasterWith(101, 99, [[97, 90, 4, 9]])).map(inPixels)).toEqual([[97, 90, 4, 9]]);
  });

  it('are none on white and on light grey', () => {
    expect(inkBlobs(rasterWith(50, 50, []))).toEqual([]);
    expect(inkBlobs(rasterWith(50, 50, [[5, 5, 30, 30]], 230))).toEqual([]);
  });
});
