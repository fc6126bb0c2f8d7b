import { describe, expect, it } from 'vitest';
import { contains, type Box } from '../../src/geometry/box.js';
import { inkBlobs, inkGroups, pageDividers } from '../../src/locating/ink-groups.js';
import { drawnPage, rasterWith } from '../reading/drawn-page.js';
import { Drawing } from '../samples/drawing.js';

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

/** Two blocks on a letter page with a gap of 20 pt (7 mm) between them. */
const twoBlocks = (): Drawing => new Drawing(612, 792).rect(60, 60, 200, 150).rect(60, 230, 200, 150);
const groupsOf = async (drawing: Drawing): Promise<readonly Box[]> => {
  const page = await drawnPage(drawing);
  return inkGroups(page, inkBlobs(page.ink()));
};
const holdsBoth = (groups: readonly Box[]): boolean => groups.some((box) => contains(box, { x: 60, y: 60, width: 200, height: 320 }, 2));

describe('inkGroups', () => {
  it('offer each block and what they make together', async () => {
    const groups = await groupsOf(twoBlocks());
    expect(groups).toHaveLength(3);
    expect(holdsBoth(groups)).toBe(true);
  });

  it('never reach across a rule that divides the page, and leave the rule out', async () => {
    const drawing = twoBlocks().line(0, 220, 612, 220, 1, 4);
    expect(pageDividers(await drawnPage(drawing))).toHaveLength(1);
    const groups = await groupsOf(drawing);
    expect(groups).toHaveLength(2);
    expect(holdsBoth(groups)).toBe(false);
  });

  it('leave a border around the whole page out', async () => {
    const drawing = new Drawing(612, 792).frame(10, 10, 592, 772, 1).rect(60, 60, 200, 150);
    const groups = await groupsOf(drawing);
    expect(groups.some((box) => box.width > 500)).toBe(false);
  });

  it('a rule from edge to edge of a small page divides nothing: the page is the label', async () => {
    expect(pageDividers(await drawnPage(new Drawing(288, 432).line(0, 200, 288, 200, 1)))).toEqual([]);
  });
});
