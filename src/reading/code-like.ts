import { intersection, type Box } from '../geometry/box.js';
import { denseAreas, hasPattern } from './dense-areas.js';
import type { SourcePage } from './source.js';
import { fromTop, memo, texturedAreas, type CodeLikeArea } from './textured-areas.js';

export type { CodeLikeArea } from './textured-areas.js';

const areasOf = new WeakMap<SourcePage, readonly CodeLikeArea[]>();

/** The code-like areas of a page, from the top, by their texture or, with modules too large for that, by their finder patterns; each page is looked at once. */
export function codeLikeAreas(page: SourcePage): readonly CodeLikeArea[] {
  return memo(areasOf, page, () => {
    const areas = texturedAreas(page);
    const isKnown = (box: Box): boolean => areas.some((area) => intersection(area.box, box) !== undefined);
    const coarse = denseAreas(page).filter((box) => !isKnown(box) && hasPattern(page, box));
    return [...areas, ...coarse.map((box): CodeLikeArea => ({ box, kind: 'matrix', run: undefined }))].sort(fromTop);
  });
}
