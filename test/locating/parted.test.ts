import { describe, expect, it } from 'vitest';
import { inkBlobs } from '../../src/locating/ink-blobs.js';
import { parted } from '../../src/locating/parted.js';
import { codeLikeAreas } from '../../src/reading/code-like.js';
import { phrasesOf } from '../../src/reading/word-lines.js';
import { drawnPage } from '../reading/drawn-page.js';
import { code128 } from '../samples/code-art.js';
import { Drawing } from '../samples/drawing.js';

const TO = ['Ada Invented', '14 Sample Lane', 'Larch Halt', 'EX1 2AB'];
const FROM = ['Thistle & Tin', '3 Example Street', 'Sampleton EX1 9ZZ'];

/** Labels without a frame at these places (pt from the left and the top), 250 pt wide and 180 high. */
async function partsOf(places: readonly (readonly [number, number])[], from = FROM): Promise<readonly string[]> {
  const d = new Drawing(612, 792);
  for (const [at, [x, y]] of places.entries()) {
    d.rect(x, y, 250, 3);
    d.block(x + 2, y + 20, TO, { size: 11 });
    d.block(x + 150, y + 20, from, { size: 8 });
    d.bars(code128(`RX40118882${at}ZZ`), x + 125, y + 120, 0.95, 45).text(x, y + 178, 'SAMPLE, NOT VALID FOR CARRIAGE', { size: 7 });
  }
  const page = await drawnPage(d);
  const blobs = inkBlobs(page.ink());
  const box = { x: 30, y: 30, width: 560, height: 730 };
  return parted({ box, edge: 'ink', codes: codeLikeAreas(page) }, blobs, phrasesOf(page.words()))
    .map((part) => `${Math.round(part.box.x / 10)} ${Math.round(part.box.y / 10)} ${part.codes.length}`)
    .sort();
}

describe('parted', () => {
  it('two labels below each other, or side by side, are two', async () => {
    expect(
      await partsOf([
        [40, 40],
        [40, 300],
      ]),
    ).toEqual(['4 30 1', '4 4 1']);
    expect(
      await partsOf([
        [40, 40],
        [320, 40],
      ]),
    ).toEqual(['32 4 1', '4 4 1']);
  });

  it('three are three, whichever is parted first', async () => {
    expect(
      await partsOf([
        [40, 40],
        [40, 300],
        [320, 40],
      ]),
    ).toEqual(['32 4 1', '4 30 1', '4 4 1']);
    expect(
      await partsOf([
        [40, 40],
        [40, 300],
        [40, 560],
      ]),
    ).toEqual(['4 30 1', '4 4 1', '4 56 1']);
  });

  it('one, and two with a line between them, stay as they are', async () => {
    expect(await partsOf([[40, 40]])).toEqual(['3 3 1']);
    expect(
      await partsOf([
        [40, 40],
        [40, 226],
      ]),
    ).toEqual(['3 3 2']);
    expect(
      await partsOf(
        [
          [40, 40],
          [40, 300],
        ],
        [],
      ),
    ).toEqual(['3 3 2']);
  });
});
