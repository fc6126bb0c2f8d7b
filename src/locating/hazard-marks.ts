import type { Box } from '../geometry/box.js';
import type { SourcePage } from '../reading/source.js';
import { findDiamonds } from './diamonds.js';
import { findHatchedFrames } from './hatched-marks.js';
import { hazardWords } from './hazard-words.js';

/** A sign that the parcel carries a mark whose size rules fix (handbook section 6). */
export interface HazardMark {
  readonly kind: 'diamond' | 'hatched' | 'words';
  /** pt on the visible page. */
  readonly box: Box;
  /** What it is, for people: a kind of mark or of wording, never the page's own words. */
  readonly what: string;
}

/**
 * Signs of hazard marks inside a box (pt) of a page: squares on their point, frames of slanted stripes, and words. A label with one must
 * never come out smaller than it is (49 CFR 172.315, ADR 3.4.7, by way of handbook section 6; secondary). Which mark it is, and whether
 * it is right, is not judged: that is for people who know the parcel. Shapes from the page's coarse ink, so a mark under 10 mm a side or
 * drawn in a pale colour isn't found; words only where the page has a text layer.
 */
export function hazardMarks(page: SourcePage, box: Box): readonly HazardMark[] {
  const ink = page.ink();
  return [
    ...findDiamonds(ink, box).map((diamond): HazardMark => ({
      kind: 'diamond',
      box: diamond.box,
      what: diamond.hasBlackCorners ? 'limited-quantity mark' : 'square on its point',
    })),
    ...findHatchedFrames(ink, box).map((frame): HazardMark => ({ kind: 'hatched', box: frame, what: 'frame of slanted stripes' })),
    ...hazardWords(page.words(), box).map((words): HazardMark => ({ kind: 'words', box: words.box, what: words.what })),
  ];
}
