import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { QUARTER_TURNS } from '../samples/sample.js';
import { foreignFiles, type Half } from '../samples/foreign/load.js';
import { emptyTally, sumOf, tallyOf, type Tally } from '../samples/foreign/tally.js';
import { movedPage, type Move } from './moved-pages.js';

/** Fixed, so that a failure comes again. */
const SEED = 20261129;
const CASES = 14;
/** A page with a shorter side (pt) is a label's own paper: what is drawn on it is not moved. */
const LARGER = 397;

const shift = fc.integer({ min: -30, max: 30 });
const move: fc.Arbitrary<Move> = fc.record({
  scale: fc.integer({ min: 90, max: 110 }).map((percent) => percent / 100),
  right: shift,
  down: shift,
  turn: fc.constantFrom(...QUARTER_TURNS),
  footer: fc.boolean(),
});

const pagesOf = (half: Half) =>
  foreignFiles(half).flatMap((file) =>
    file.truth.pages
      .filter(({ labels, width, height }) => labels.length > 0 && Math.min(width, height) >= LARGER && labels.every(({ skew }) => !skew))
      .map((page) => ({ file, page })),
  );

describe('pages of other producers, moved, scaled, turned and given a footer', () => {
  it.each(['tuning', 'second-sight'] as const)(
    'law: the answer moves along, or the page is held (%s part)',
    { timeout: 120_000 },
    async (half) => {
      const tallies: Tally[] = [];
      for (const [{ file, page }, how] of fc.sample(fc.tuple(fc.constantFrom(...pagesOf(half)), move), { seed: SEED, numRuns: CASES })) {
        const made = (await movedPage(file, page, how)) ?? (await movedPage(file, page, { ...how, scale: 1, right: 0, down: 0 }));
        if (made) tallies.push(await tallyOf(made));
      }
      const sum = tallies.length > 0 ? sumOf(tallies) : emptyTally();
      expect(sum.labels).toBeGreaterThanOrEqual(CASES / 2);
      expect({ wrong: sum.wrong, lost: sum.lost }, sum.notes.join('\n')).toEqual({ wrong: 0, lost: 0 });
      // A label at nine tenths may be held, most must be found.
      expect(sum.found, sum.notes.join('\n')).toBeGreaterThanOrEqual(0.6 * sum.labels);
    },
  );
});
