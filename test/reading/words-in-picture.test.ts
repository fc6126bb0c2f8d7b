import { describe, expect, it } from 'vitest';
import { contains, intersection } from '../../src/geometry/box.js';
import { TURNS, type Turn } from '../../src/geometry/placement.js';
import { wordsInPicture } from '../../src/reading/words-in-picture.js';
import { uprightTurn } from '../../src/locating/upright.js';
import { openSource } from '../../src/batch/open-source.js';
import { LAYOUTS } from '../samples/layouts.js';
import { sample, type Layout } from '../samples/sample.js';

function ruled(): Layout {
  const layout = LAYOUTS.find(({ name }) => name === 'letter-ruled-cells');
  return layout ?? expect.fail('no such layout');
}

async function pictureLabel(turn: Turn) {
  const made = await sample(ruled(), 'bilevel', turn);
  const document = await openSource(made.bytes);
  const label = made.expected.pages[0]?.labels[0];
  if ('refused' in document || !label) throw new Error(made.name);
  return { document, page: document.page(1), label };
}

describe('words in a picture', () => {
  it('are read the right way up, and next to none of them any other way', { timeout: 60_000 }, async () => {
    const { document, page, label } = await pictureLabel(180);
    const raster = page.render(label.box, 150 / 72);
    const codes = label.codes.map(({ box }) => box);
    const right = await wordsInPicture(raster, codes, label.turn);
    expect(right.sure).toBeGreaterThan(50);
    expect(right.unsure).toBeLessThan(right.sure / 4);
    for (const turn of TURNS.filter((each) => each !== label.turn))
      expect((await wordsInPicture(raster, codes, turn)).sure).toBeLessThan(right.sure / 4);
    document.close();
  });

  it.each(TURNS)('stand where they are on a page turned by %d°, and run as they do', { timeout: 60_000 }, async (turn) => {
    const { document, page, label } = await pictureLabel(turn);
    const vector = await openSource((await sample(ruled(), 'vector', turn)).bytes);
    if ('refused' in vector) throw new Error('vector');
    const { words } = await wordsInPicture(page.render(label.box, 150 / 72), [], label.turn);
    const drawn = vector.page(1).words();
    const long = words.filter(({ text }) => text.length > 5 && drawn.some((own) => own.text === text));
    expect(long.length).toBeGreaterThan(5);
    for (const read of long) {
      const own = drawn.filter(({ text, box }) => text === read.text && intersection(read.box, box) !== undefined);
      expect(
        own.map((each) => each.turn),
        read.text,
      ).toContain(read.turn);
    }
    document.close();
    vector.close();
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
