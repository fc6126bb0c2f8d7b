import { contains, type Box } from '../geometry/box.js';
import type { Phrase } from '../reading/word-lines.js';
import type { CodeLikeArea } from '../reading/code-like.js';
import type { Candidate, Judged } from './candidate.js';
import { LEAST } from './choose.js';
import { codesIn } from './gather.js';
import { isLabelSized } from './label-sizes.js';
import { addressesOn, FROM_TO } from './address-block.js';

/** Ink may stand over a box by so much, pt. */
const OVER = 2;

/** What is on a page around its answers. */
interface Around {
  readonly phrases: readonly Phrase[];
  /** All ink of each part of the page that is known to hold one thing: paper no larger than A5, what lines to cut along divide. Pt. */
  readonly wholes: readonly Box[];
  /** Whether a part of the page calls itself something else than a label. */
  readonly isOther: (part: Box) => boolean;
}

/**
 * Sender and receiver tell how far a label without an edge goes. Ink that lacks one of them is a part of a label where all ink of its paper, or of its part of the page, is a likely one and has
 * both.
 */
export function withBothAddresses(judged: readonly Judged[], { phrases, wholes, isOther }: Around): readonly Judged[] {
  const inks = judged.filter(({ edge, score }) => edge === 'ink' && score >= LEAST);
  const both = inks.filter(({ box }) => addressesOn(box, phrases) >= FROM_TO);
  if (both.length === 0) return judged;
  const full = both.filter(({ box }) => wholes.some((whole) => contains(box, whole, OVER) && contains(whole, box, OVER)) && !isOther(box));
  const isPart = (each: Judged): boolean => !both.includes(each) && full.some((whole) => contains(whole.box, each.box, OVER));
  return judged.filter((each) => each.edge !== 'ink' || !isPart(each));
}

/** Whether all ink of a part of the page has sender, receiver and bars, and no ink found in it has all of them: then they stand farther apart than the parts of a label do. */
export function isCellOfLabel(cell: Box, found: readonly Candidate[], codes: readonly CodeLikeArea[], phrases: readonly Phrase[]): boolean {
  const own = codesIn(codes, cell);
  return (
    isLabelSized(cell) &&
    own.some(({ kind }) => kind === 'linear') &&
    addressesOn(cell, phrases) >= FROM_TO &&
    !found.some(({ box, codes: some }) => contains(cell, box, OVER) && some.length === own.length && addressesOn(box, phrases) >= FROM_TO)
  );
}
