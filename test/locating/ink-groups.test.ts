import { describe, expect, it } from 'vitest';
import { contains, right, type Box } from '../../src/geometry/box.js';
import { inkBlobs } from '../../src/locating/ink-blobs.js';
import { inkGroups } from '../../src/locating/ink-groups.js';
import { pageDividers } from '../../src/locating/page-dividers.js';
import { drawnPage } from '../reading/drawn-page.js';
import { Drawing } from '../samples/drawing.js';

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

  it('leave out a cross of rules between the places of a sheet that ends short of the edges', async () => {
    const drawing = twoBlocks().line(280, 40, 280, 752, 1).line(40, 396, 572, 396, 1);
    const groups = await groupsOf(drawing);
    expect(groups).toHaveLength(3);
    expect(holdsBoth(groups)).toBe(true);
  });

  it('leave out grains of a scan that are far from all other ink', async () => {
    const block = (): Drawing => new Drawing(612, 792).rect(60, 60, 200, 150);
    const reach = async (drawing: Drawing): Promise<number> => Math.max(...(await groupsOf(drawing)).map((box) => right(box)));
    expect(await reach(block().rect(285, 100, 0.6, 0.6).rect(296, 100, 0.6, 0.6))).toBeLessThan(262);
    expect(await reach(block().rect(268, 100, 0.6, 0.6))).toBeLessThan(262);
    expect(await reach(block().rect(264, 100, 0.6, 0.6))).toBeGreaterThan(263);
    expect(await reach(block().rect(285, 100, 4, 4))).toBeGreaterThan(288);
  });
});
