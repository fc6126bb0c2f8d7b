import { patternedAreas } from './dense-areas.js';
import type { SourcePage } from './source.js';
import { fromTop, memo, texturedAreas, type CodeLikeArea } from './textured-areas.js';

export type { CodeLikeArea } from './textured-areas.js';

const areasOf = new WeakMap<SourcePage, readonly CodeLikeArea[]>();

/** The code-like areas of a page, from the top, by their texture or, with modules too large for that, by their finder patterns; each page is looked at once. */
export function codeLikeAreas(page: SourcePage): readonly CodeLikeArea[] {
  return memo(areasOf, page, () => {
    const coarse = patternedAreas(page).map((box): CodeLikeArea => ({ box, kind: 'matrix', run: undefined }));
    return [...texturedAreas(page), ...coarse].sort(fromTop);
  });
}
