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
    for (const { x, y } of answers) {
      expect(await darkIn(plain, { x, y, width: 25, height: 30 })).toBe(0);
      // The digit's black ground, less its white dots.
      expect(await darkIn(numbered, { x, y, width: 25, height: 30 })).toBeGreaterThan(500);
    }
    const [one, two] = await Promise.all(answers.map(({ x, y }) => darkIn(numbered, { x: x + 3, y: y + 3, width: 24, height: 28 })));
    expect(one).not.toBe(two);
    expect(await darkIn(numbered, { x: 150, y: 130, width: 200, height: 150 })).toBe(0);
  });
});
