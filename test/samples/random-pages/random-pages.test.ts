import { describe, expect, it } from 'vitest';
import { emptyTally, sumOf, tallyOf, type Tally } from '../foreign/tally.js';
import { drawDirect } from './draw.js';
import { boundsOf } from './ink.js';
import { randomPage } from './page.js';

/** The first seed, and how many pages are drawn: others than those that the search was measured on while it was worked on. */
const FIRST = 50_001;
const COUNT = 48;
const LABELS = 33;
const HELD = 2;

describe('random pages', () => {
  it('the same seed gives the same page, byte for byte', async () => {
    for (const seed of [3, 22]) {
      const [one, other] = [await drawDirect(randomPage(seed)), await drawDirect(randomPage(seed))];
      expect(Buffer.from(one.bytes).equals(Buffer.from(other.bytes))).toBe(true);
      expect(one.truth).toEqual(other.truth);
    }
  });

  it('no label has ink beyond the line around it, and every label lies on its page', () => {
    let lined = 0;
    for (let seed = 1; seed <= 100; seed++) {
      const page = randomPage(seed);
      for (const { label, x, y, turn, scale } of page.labels) {
        const size = label.art.bounds(turn, scale);
        expect(
          [x >= -0.01, y >= -0.01, x + size.width <= page.width + 0.01, y + size.height <= page.height + 0.01],
          `seed ${seed}`,
        ).not.toContain(false);
        if (!label.box) continue;
        lined++;
        const ink = boundsOf(label.art.shapes);
        const over = Math.max(-ink.x, -ink.y, ink.x + ink.width - label.art.width, ink.y + ink.height - label.art.height);
        expect(over, `seed ${seed}`).toBeLessThan(1.5);
      }
    }
    expect(lined).toBeGreaterThan(30);
  });

  it('a page that is called a slip by its heading, but has a whole label between other words, is looked at', async () => {
    const { bytes, truth } = await drawDirect(randomPage(662));
    const { labels, held, lost } = await tallyOf({ file: 'seed 662', bytes, truth });
    expect({ labels, held, lost }).toEqual({ labels: 1, held: 1, lost: 0 });
  });

  it(
    'law: what is no label as it should be is not printed, and no label is passed over, but for the ones counted here',
    { timeout: 120_000 },
    async () => {
      const tallies: Tally[] = [];
      for (let seed = FIRST; seed < FIRST + COUNT; seed++) {
        const { bytes, truth } = await drawDirect(randomPage(seed));
        tallies.push(await tallyOf({ file: `seed ${seed}`, bytes, truth }));
      }
      const { labels, found, held, wrong, lost, pagesWithout, kept, notes } = tallies.length > 0 ? sumOf(tallies) : emptyTally();
      expect({ wrong, lost, mistaken: pagesWithout - kept }, notes.join('\n')).toEqual({ wrong: 0, lost: 0, mistaken: 0 });
      expect({ labels, held }, notes.join('\n')).toEqual({ labels: LABELS, held: HELD });
      expect(found).toBe(labels - held - lost);
    },
  );
});
