import { contains, type Box } from '../geometry/box.js';
import { mmToPt } from '../geometry/length.js';
import type { Phrase } from '../reading/word-lines.js';
import { addressBlocks } from './address-block.js';
import type { Candidate } from './candidate.js';
import { distance } from './judge.js';
import { isKnownSize, isLabelSized, isSmallLabelSized } from './label-sizes.js';
import { NEXT_LINE } from './white.js';

/** What is larger across and of no known size is a form as likely, pt. */
const MOST = mmToPt(75);

/** What is on a page beside a frame. */
interface Beside {
  readonly page: Pick<Box, 'width' | 'height'>;
  /** Ink that isn't the page's own. */
  readonly blobs: readonly Box[];
  readonly phrases: readonly Phrase[];
  readonly others: readonly Candidate[];
}

/**
 * Whether a frame smaller than other labels is one of a letter or a packet: a code in it, sender and receiver, one of them on lines of their own, and white all around, on paper that is no
 * label's itself and in nothing else with an edge. Ink as large is often a part of a label, or two of them.
 */
export function isSmallLabel({ box, edge, codes }: Candidate, { page, blobs, phrases, others }: Beside): boolean {
  if (edge !== 'frame' || codes.length === 0 || isKnownSize(box) || isKnownSize(page)) return false;
  if (!isSmallLabelSized(box) || Math.min(box.width, box.height) > MOST) return false;
  if (others.some((other) => other.edge !== 'ink' && isLabelSized(other.box) && contains(other.box, box, 2))) return false;
  if (blobs.some((blob) => !contains(box, blob, 2) && !contains(blob, box) && distance(box, blob) < NEXT_LINE)) return false;
  const addresses = addressBlocks(phrases.filter((phrase) => contains(box, phrase.box, 2)));
  return addresses.length >= 2 && addresses.some(({ lines }) => lines.length > 1);
}
