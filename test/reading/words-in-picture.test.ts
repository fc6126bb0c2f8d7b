import { describe, expect, it } from 'vitest';
import { contains } from '../../src/geometry/box.js';
import type { Turn } from '../../src/geometry/placement.js';
import { charactersByTurn } from '../../src/reading/words-in-picture.js';
import { uprightTurn } from '../../src/locating/upright.js';
import { openSource } from '../../src/batch/open-source.js';
import { LAYOUTS } from '../samples/layouts.js';
import { sample } from '../samples/sample.js';

async function pictureLabel(turn: Turn) {
  const layout = LAYOUTS.find(({ name }) => name === 'letter-ruled-cells');
  if (!layout) throw new Error('no such layout');
  const made = await sample(layout, 'bilevel', turn);
  const document = await openSource(made.bytes);
  const label = made.expected.pages[0]?.labels[0];
  if ('refused' in document || !label) throw new Error(made.name);
  return { document, page: document.page(1), label };
}

describe('words in a picture', () => {
  it('are read the right way up, and next to none of them any other way', { timeout: 60_000 }, async () => {
    const { document, page, label } = await pictureLabel(180);
    const raster = page.render(label.box, 150 / 72);
    const characters = await charactersByTurn(
      raster,
      label.codes.map(({ box }) => box),
    );
    const right = characters.get(label.turn) ?? 0;
    expect(right).toBeGreaterThan(50);
    for (const [turn, read] of characters) if (turn !== label.turn) expect(read).toBeLessThan(right / 4);
    document.close();
  });

  it('tell which way is up where no code does', { timeout: 60_000 }, async () => {
    const { document, page, label } = await pictureLabel(90);
    expect(page.words().filter(({ box }) => contains(label.box, box))).toEqual([]);
    const upright = await uprightTurn(page, label.box, () => Promise.resolve([]));
    expect(upright).toMatchObject({ kind: 'sure', turn: label.turn });
    document.close();
  });

  it('that nobody can read leave it open', { timeout: 60_000 }, async () => {
    const { document, page } = await pictureLabel(0);
    const paper = { x: 5, y: 5, width: 20, height: 20 };
    const upright = await uprightTurn(page, paper, () => Promise.resolve([]));
    expect(upright).toEqual({
      kind: 'doubtful',
      why: 'there is no text and no code could be read, and no words could be read in its picture',
    });
    document.close();
  });
});
