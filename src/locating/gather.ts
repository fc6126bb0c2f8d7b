import { contains, grow, intersection, union, type Box } from '../geometry/box.js';
import { isMediaSize, type Media } from '../geometry/media.js';
import { codeLikeAreas, type CodeLikeArea } from '../reading/code-like.js';
import { framesOf } from '../reading/frames.js';
import type { SourcePage } from '../reading/source.js';
import type { Candidate, Edge } from './candidate.js';
import { cornerFrames } from './corner-frames.js';
import { inkGroups } from './ink-groups.js';
import { isLabelSized, isSmallPaper } from './label-sizes.js';
import { pageDividers } from './page-dividers.js';

/** A frame line or the last row of ink is drawn softly on the coarse raster: so much paper is left around a found box, pt (0.25 mm). */
export const HAIR = 0.7;

/** A candidate may stand over its region's edge by so much, pt. */
export const IN_REGION = 3;

/** Everything on a region of a page that may be a label by one of `edges`; no judgement yet. */
export function gatherCandidates(
  page: SourcePage,
  region: Box,
  edges: readonly Edge[],
  media: Media,
  blobs: readonly Box[],
): readonly Candidate[] {
  const codes = codeLikeAreas(page);
  const whole: Box = { x: 0, y: 0, width: page.width, height: page.height };
  const candidate = (box: Box, edge: Edge): Candidate => ({ box, edge, codes: codesIn(codes, box) });
  const inRegion = (box: Box): boolean => contains(region, box, IN_REGION);
  const candidates: Candidate[] = [];
  if (edges.includes('page') && contains(region, whole, 1) && isMediaSize(media, page.width, page.height))
    candidates.push(candidate(whole, 'page'));
  if (edges.includes('frame')) {
    // Marks inside a placed picture as large as a label are drawn on it: the picture's own edge is the label's.
    const isOnPicture = (box: Box): boolean => page.images().some((image) => isLabelSized(image.box) && contains(image.box, box, 1));
    const corners = cornerFrames(page.ink(), blobs).filter((box) => !isOnPicture(box));
    for (const box of [...framesOf(page).map((frame) => frame.box), ...corners])
      if (inRegion(box)) candidates.push(candidate(clip(grow(box, HAIR), whole), 'frame'));
  }
  if (edges.includes('picture')) {
    for (const image of page.images()) {
      const shown = intersection(image.box, whole);
      if (shown && inRegion(shown)) candidates.push(candidate(shown, 'picture'));
    }
  }
  if (edges.includes('ink')) {
    const inside = blobs.filter(inRegion);
    // On a label's own paper all ink is of it, however far its parts stand from each other.
    const all = (isLabelSized(page) || isSmallPaper(page)) && pageDividers(page).length === 0 ? union(inside) : undefined;
    for (const box of [...inkGroups(page, inside), ...(all ? [all] : [])]) candidates.push(candidate(clip(grow(box, HAIR), whole), 'ink'));
  }
  return candidates;
}

/** What looks like a code inside a box; areas are known to 2 mm. */
export const codesIn = (codes: readonly CodeLikeArea[], box: Box): readonly CodeLikeArea[] =>
  codes.filter((code) => contains(box, code.box, 6));

const clip = (box: Box, page: Box): Box => intersection(box, page) ?? box;
