import { describe, expect, it } from 'vitest';
import { grow, type Box } from '../../src/geometry/box.js';
import { edgeShows } from '../../src/locating/edge-shows.js';
import { drawnPage } from '../reading/drawn-page.js';
import { Drawing } from '../samples/drawing.js';

const BOX: Box = { x: 60, y: 80, width: 288, height: 432 };

async function shows(tint: number, paper: number, box: Box = BOX): Promise<boolean> {
  const drawing = new Drawing(612, 792);
  drawing.rect(0, 0, 612, 792, tint);
  drawing.rect(BOX.x, BOX.y, BOX.width, BOX.height, paper);
  drawing.rect(BOX.x + 30, BOX.y + 60, 200, 40);
  return edgeShows(await drawnPage(drawing), box);
}

describe('edgeShows', () => {
  it('is true of white on a pale tint, and of a tint on white', async () => {
    expect(await shows(0.94, 1)).toBe(true);
    expect(await shows(1, 0.94)).toBe(true);
  });

  it('is false of white on white, of a box beside the edge, and of the page itself', async () => {
    expect(await shows(1, 1)).toBe(false);
    expect(await shows(0.9, 1, grow(BOX, 12))).toBe(false);
    expect(await shows(0.9, 1, grow(BOX, -12))).toBe(false);
    expect(await shows(0.9, 1, { x: 0, y: 0, width: 612, height: 792 })).toBe(false);
  });

  it("is true where one edge lies at the paper's own, false where two do", async () => {
    const atLeft = new Drawing(612, 792);
    atLeft.rect(0, 0, 612, 792, 0.9);
    atLeft.rect(0, 80, 288, 432, 1);
    expect(edgeShows(await drawnPage(atLeft), { x: 0, y: 80, width: 288, height: 432 })).toBe(true);
    const inCorner = new Drawing(612, 792);
    inCorner.rect(0, 0, 612, 792, 0.9);
    inCorner.rect(0, 0, 288, 432, 1);
    expect(edgeShows(await drawnPage(inCorner), { x: 0, y: 0, width: 288, height: 432 })).toBe(false);
  });
});
