import { contains, type Box } from '../geometry/box.js';
import type { Phrase } from '../reading/word-lines.js';
import type { CodeLikeArea } from '../reading/code-like.js';
import type { Candidate, Judged } from './candidate.js';
import { LEAST } from './choose.js';
import { codesIn } from './gather.js';
import { isLabelSized, isWholeLabel } from './label-sizes.js';
import { CLEAR, WIDER, WITHIN, widestWhite } from './white.js';
import { addressesOn, FROM_TO } from './address-block.js';

/** Ink may stand over a box by so much, pt. */
const OVER = 2;

/** What is on a page around its answers. */
interface Around {
  readonly phrases: readonly Phrase[];
  readonly blobs: readonly Box[];
  /** All ink of each part of the page that is known to hold one thing: paper no larger than A5, what lines to cut along divide. Pt. */
  readonly wholes: readonly Box[];
  /** Whether a part of the page calls itself something else than a label. */
  readonly isOther: (part: Box) => boolean;
}

/**
 * Sender and receiver tell how far a label without an edge goes. Ink that lacks one of them is a part of a label where all ink of its paper, or of its part of the page, is a likely one and has
 * both. Ink that goes on from both of them and all its codes, over white wider than parts of a label have and clearly wider than any before it, out of their column and to no known size, is more than the label.
 */
export function withBothAddresses(judged: readonly Judged[], { phrases, blobs, wholes, isOther }: Around): readonly Judged[] {
  const inks = judged.filter(({ edge, score }) => edge === 'ink' && score >= LEAST);
  const addresses = new Map(inks.map((each) => [each, addressesOn(each.box, phrases)]));
  const both = inks.filter((each) => (addresses.get(each) ?? 0) >= FROM_TO);
  if (both.length === 0) return judged;
  const full = both.filter(({ box }) => wholes.some((whole) => contains(box, whole, OVER) && contains(whole, box, OVER)) && !isOther(box));
  const isPart = (each: Judged): boolean => !both.includes(each) && full.some((whole) => contains(whole.box, each.box, OVER));
  const goesOn = (each: Judged): boolean =>
    !full.includes(each) &&
    !each.ruled &&
    !isWholeLabel(each) &&
    both.some((part) => addresses.get(part) === addresses.get(each) && isAllOf(each, part, blobs));
  return judged.filter((each) => each.edge !== 'ink' || !(isPart(each) || goesOn(each)));
}

/** Whether what is beyond a part of some ink has no code, stands clear of it, and keeps neither to its width nor to its height. */
function isAllOf(whole: Judged, part: Judged, blobs: readonly Box[]): boolean {
  const clear = part.clear ?? 0;
  const isWider = whole.box.width > part.box.width + WITHIN && whole.box.height > part.box.height + WITHIN;
  if (clear <= CLEAR || !isWider || part.codes.length !== whole.codes.length || !contains(whole.box, part.box, OVER)) return false;
  const inside = blobs.filter((blob) => contains(part.box, blob, OVER));
  return clear >= WIDER * Math.max(widestWhite(inside, true), widestWhite(inside, false));
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
