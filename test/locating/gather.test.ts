import { describe, expect, it } from 'vitest';
import type { Box } from '../../src/geometry/box.js';
import type { Edge } from '../../src/locating/candidate.js';
import { gatherCandidates } from '../../src/locating/gather.js';
import { inkBlobs } from '../../src/locating/ink-blobs.js';
import type { SourcePage } from '../../src/reading/source.js';
import { drawnPage } from '../reading/drawn-page.js';
import { Drawing } from '../samples/drawing.js';
import { mediaNamed, opened } from '../steps/on-sample.js';

const whole = (page: SourcePage): Box => ({ x: 0, y: 0, width: page.width, height: page.height });

async function gathered(layout: string, edges: readonly Edge[], region?: (page: SourcePage) => Box, kind: 'vector' | 'grey' = 'vector') {
  const { document, sample } = await opened(layout, kind);
  const page = document.page(1);
  const candidates = gatherCandidates(page, region?.(page) ?? whole(page), edges, mediaNamed('4x6in'), inkBlobs(page.ink()));
  document.close();
  return { candidates, label: sample.expected.pages[0]?.labels[0]?.box as Box };
}

const isNear = (a: Box, b: Box): boolean =>
  [a.x - b.x, a.y - b.y, a.width - b.width, a.height - b.height].every((difference) => Math.abs(difference) < 3);

describe('gatherCandidates', () => {
  it.each<[Edge, string, 'vector' | 'grey']>([
    ['page', 'page-4x6', 'vector'],
    ['frame', 'letter-upper-sideways', 'vector'],
    ['frame', 'letter-cut-line', 'vector'],
    ['picture', 'letter-upper-sideways', 'grey'],
    ['ink', 'letter-upper-sideways-frameless', 'vector'],
  ])('offers the label by its %s on %s, with the codes in it', async (edge, layout, kind) => {
    const { candidates, label } = await gathered(layout, [edge], undefined, kind);
    expect(candidates.every((each) => each.edge === edge)).toBe(true);
    const found = candidates.filter(({ box }) => isNear(box, label));
    expect(found).toHaveLength(1);
    expect(found[0]?.codes.length).toBeGreaterThan(0);
  });

  it('offers nothing by edges that are not allowed, or outside the region', async () => {
    expect((await gathered('letter-upper-sideways', ['page', 'picture'])).candidates).toEqual([]);
    const lower = (page: SourcePage): Box => ({ ...whole(page), y: page.height / 2, height: page.height / 2 });
    const { candidates } = await gathered('letter-upper-sideways', ['frame', 'ink'], lower);
    expect(candidates.filter(({ codes }) => codes.length > 0)).toEqual([]);
  });

  it('takes the page itself only for the media that it has the size of', async () => {
    expect((await gathered('page-a6', ['page'])).candidates).toEqual([]);
  });

  it("offers all ink of a label's own paper, however far its parts are apart, and not that of other paper", async () => {
    const offers = async (width: number, height: number): Promise<boolean> => {
      const page = await drawnPage(new Drawing(width, height).rect(20, 20, 240, 60).rect(20, 340, 240, 60));
      const all = { x: 20, y: 20, width: 240, height: 380 };
      return gatherCandidates(page, whole(page), ['ink'], mediaNamed('4x6in'), inkBlobs(page.ink())).some(({ box }) => isNear(box, all));
    };
    expect(await offers(283, 425)).toBe(true);
    expect(await offers(595, 842)).toBe(false);
  });

  it('offers what four corner marks frame, but not on a picture as large as a label', async () => {
    const d = new Drawing(612, 792);
    for (const [x, y] of [
      [60, 60],
      [478, 60],
      [60, 334],
      [478, 334],
    ] as const)
      d.rect(x, y === 60 ? 60 : 346, 14, 2).rect(x === 60 ? 60 : 490, y, 2, 14);
    const page = await drawnPage(d);
    const frames = (images: readonly Box[]) =>
      gatherCandidates(
        { width: 612, height: 792, ink: () => page.ink(), words: () => [], images: () => images.map((box) => ({ box })) } as never,
        whole(page),
        ['frame'],
        mediaNamed('4x6in'),
        inkBlobs(page.ink()),
      );
    expect(frames([]).map(({ box }) => isNear(box, { x: 60, y: 60, width: 432, height: 288 }))).toEqual([true]);
    expect(frames([{ x: 54, y: 54, width: 446, height: 302 }])).toEqual([]);
    // A scan of the whole page is no label's own picture.
    expect(frames([{ x: 0, y: 0, width: 612, height: 792 }])).toHaveLength(1);
  });
});
