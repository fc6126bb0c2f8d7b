import { describe, expect, it } from 'vitest';
import { openSource } from '../../src/batch/open-source.js';
import { findBullseyes } from '../../src/reading/bullseye.js';
import { maxiCodeScale } from '../../src/reading/maxicode.js';
import type { SourceDocument } from '../../src/reading/source.js';
import { LAYOUTS } from '../samples/layouts.js';
import { QUARTER_TURNS } from '../samples/sample.js';
import { sample, type Sample } from '../samples/sample.js';

const opened = async ({ bytes }: Sample): Promise<SourceDocument> => {
  const source = await openSource(bytes);
  if ('refused' in source) throw new Error(source.refused.message);
  return source;
};
const wholePage = (page: { width: number; height: number }) => ({ x: 0, y: 0, width: page.width, height: page.height });
const WITH = 'letter-right-half-frameless';

describe('MaxiCode', () => {
  it.each(QUARTER_TURNS.flatMap((turn) => (['vector', 'bilevel', 'grey'] as const).map((kind) => [kind, turn] as const)))(
    'is found by its rings and read, the right way up: %s, turned %i°',
    async (kind, turn) => {
      const layout = LAYOUTS.find(({ name }) => name === WITH);
      if (!layout) throw new Error(`no layout ${WITH}`);
      const made = await sample(layout, kind, turn);
      const source = await opened(made);
      const page = source.page(1);
      const wanted = made.expected.pages[0]?.labels[0]?.codes.find(({ symbology }) => symbology === 'MaxiCode');
      expect(findBullseyes(page.ink(), wholePage(page))).toHaveLength(1);
      const read = (await page.codes(wholePage(page), 406 / 72)).filter(({ symbology }) => symbology === 'MaxiCode');
      expect(read.map(({ identifier, bytes, turn: lies }) => ({ identifier, bytes, lies }))).toEqual([
        { identifier: ']U0', bytes: wanted?.bytes, lies: turn },
      ]);
      // Within the window that the standard allows for its one size (handbook section 4.4, secondary).
      expect(read.map(maxiCodeScale)[0]).toBeGreaterThan(0.94);
      expect(read.map(maxiCodeScale)[0]).toBeLessThan(1.06);
      source.close();
    },
  );

  it('is seen nowhere on the samples that have none', async () => {
    for (const layout of LAYOUTS.filter(({ name }) => name !== WITH)) {
      const source = await opened(await sample(layout, layout.kinds[0] ?? 'vector', 0));
      for (let number = 1; number <= source.pageCount; number++) {
        const page = source.page(number);
        expect(findBullseyes(page.ink(), wholePage(page)), `${layout.name}, page ${number}`).toEqual([]);
      }
      source.close();
    }
  });
});
