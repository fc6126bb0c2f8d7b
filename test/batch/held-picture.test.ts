import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import { heldPicture } from '../../src/batch/held-picture.js';
import { Drawing } from '../samples/drawing.js';
import { drawnPage } from '../reading/drawn-page.js';

/** Dark pixels of a picture inside a box given in pt. */
async function darkIn(png: Uint8Array, box: { x: number; y: number; width: number; height: number }): Promise<number> {
  const k = 100 / 72;
  const { data } = await sharp(png)
    .extract({
      left: Math.round(box.x * k),
      top: Math.round(box.y * k),
      width: Math.round(box.width * k),
      height: Math.round(box.height * k),
    })
    .greyscale()
    .raw()
    .toBuffer({ resolveWithObject: true });
  return data.filter((grey) => grey < 128).length;
}

describe('the picture of a held item', () => {
  it('numbers the answers on the page, each in its own corner', async () => {
    const page = await drawnPage(new Drawing(612, 792).text(20, 780, 'SAMPLE', { size: 8 }));
    const answers = [
      { x: 100, y: 100, width: 288, height: 200 },
      { x: 100, y: 400, width: 288, height: 200 },
    ];
    const plain = await heldPicture(page, { x: 0, y: 0, width: 612, height: 792 });
    const numbered = await heldPicture(page, { x: 0, y: 0, width: 612, height: 792 }, answers);
    const corners = [
      { x: 100, y: 100, width: 25, height: 30 },
      { x: 363, y: 400, width: 25, height: 30 },
    ];
    const dark = await Promise.all(corners.map((corner) => darkIn(numbered, corner)));
    for (const corner of corners) expect(await darkIn(plain, corner)).toBe(0);
    // A digit's black ground, less its white dots.
    expect(Math.min(...dark)).toBeGreaterThan(500);
    expect(dark[0]).not.toBe(dark[1]);
    expect(await darkIn(numbered, { x: 150, y: 130, width: 200, height: 150 })).toBe(0);
  });
});
