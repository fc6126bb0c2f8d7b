import type { Box } from '../geometry/box.js';
import type { Media } from '../geometry/media.js';
import { codeLikeAreas } from '../reading/code-like.js';
import type { SourcePage } from '../reading/source.js';
import type { Edge } from './candidate.js';
import { choose, type Choice } from './choose.js';
import { gatherCandidates } from './gather.js';
import { inkBlobs } from './ink-groups.js';
import { judge } from './judge.js';

/** Finds the labels on a region of a page by the edges that the recipe allows: gather, judge, choose. */
export function locate(page: SourcePage, region: Box, edges: readonly Edge[], media: Media): Choice {
  const blobs = inkBlobs(page.ink());
  const around = { blobs, codes: codeLikeAreas(page), words: page.words() };
  const judged = gatherCandidates(page, region, edges, media, blobs).flatMap((candidate) => judge(candidate, around) ?? []);
  const pages = judged.filter((each) => each.edge === 'page');
  return choose(pages.length > 0 ? pages : judged);
}
