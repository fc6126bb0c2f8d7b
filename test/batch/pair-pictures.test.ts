import { expect, it } from 'vitest';
import { withPairPictures } from '../../src/batch/pair-pictures.js';
import type { EndedDocument } from '../../src/batch/work-through.js';
import { Scratch } from '../../src/files/scratch.js';
import type { ItemResult } from '../../src/recipe/outcome.js';
import { reason } from './fakes.js';

it('a disk that does not give back what was put away ends the run with a reason', async () => {
  const ready = { id: 'p1', page: 1, state: { kind: 'ready' }, pressedPage: 1 } as ItemResult;
  // Put away beyond what is kept in memory, in a file that is gone.
  const document = { items: [ready], pictures: new Map(), pressed: { at: 0, length: 10 } } as unknown as EndedDocument;
  const held = [[{ ...ready, state: { kind: 'held', ...reason } } as ItemResult]];
  const ended = await withPairPictures([document], { items: held, pairs: [] }, new Scratch('/nowhere/at/all', 0));
  expect(ended).toMatchObject({ reason: { code: 'files/missing-folder' } });
});
