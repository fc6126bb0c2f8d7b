import { area, contains, type Box } from '../geometry/box.js';
import { mmToPt } from '../geometry/length.js';
import type { RuledLine } from '../reading/ruled.js';
import type { Phrase } from '../reading/word-lines.js';
import type { Candidate } from './candidate.js';
import { distance } from './judge.js';
import { isKnownSize, isLabelSized, isSmallLabelSized } from './label-sizes.js';
import { addressesIn, addressesOn, FROM_TO } from './address-block.js';
import { NEXT_LINE, PARTED, WIDER, widestWhite } from './white.js';

/** What is larger across and of no known size is a form as likely, pt. */
const MOST = mmToPt(75);

/** What is on a page beside a candidate. */
interface Beside {
  readonly page: Pick<Box, 'width' | 'height'>;
  /** Ink that isn't the page's own. */
  readonly blobs: readonly Box[];
  readonly phrases: readonly Phrase[];
  readonly lines: readonly RuledLine[];
  readonly others: readonly Candidate[];
}

/**
 * Whether a frame or ink smaller than other labels is one of a letter or a packet: a code in it, sender and receiver, one of them on lines of their own, and white all around, on paper that is no
 * label's itself and in nothing else with an edge. Ink as small is often a part of a label: the white around it is clearly wider than any in it, no ink as large as a label
 * goes on from it with more addresses, and no frame is in it; larger ink is told by its size.
 */
export function isSmallLabel({ box, edge, codes }: Candidate, { page, blobs, phrases, lines, others }: Beside): boolean {
  if ((edge !== 'frame' && edge !== 'ink') || codes.length === 0 || isKnownSize(box) || isKnownSize(page)) return false;
  if (!isSmallLabelSized(box) || Math.min(box.width, box.height) > MOST) return false;
  if (others.some((other) => other.edge !== 'ink' && isLabelSized(other.box) && contains(other.box, box, 2))) return false;
  const inside = blobs.filter((blob) => contains(box, blob, 1));
  const white = edge === 'frame' ? NEXT_LINE : Math.max(PARTED, ...[true, false].map((alongY) => WIDER * widestWhite(inside, alongY)));
  if (blobs.some((blob) => !contains(box, blob, 2) && !contains(blob, box) && distance(box, blob) < white)) return false;
  const addresses = addressesIn(box, phrases);
  if (addresses.length < FROM_TO || addresses.every(({ lines }) => lines.length === 1)) return false;
  if (edge === 'frame') return true;
  if (isLabelSized(box)) return false;
  const isOthers = others.some(
    (other) =>
      other.codes.length === codes.length &&
      (isEdgeIn(other, box) || (isWholeOf(other, box) && addressesOn(other.box, phrases) > addresses.length)),
  );
  return !isOthers && ![true, false].every((level) => hasRule(box, lines, level));
}

/** Whether a rule runs along most of ink: with one the other way they are what can be seen of a frame. */
const hasRule = (ink: Box, lines: readonly RuledLine[], along: boolean): boolean =>
  lines.some(
    ({ box, level, dashed }) =>
      level === along && !dashed && contains(ink, box, 2) && (level ? box.width >= RULE * ink.width : box.height >= RULE * ink.height),
  );
const RULE = 0.85;

const isEdgeIn = ({ edge, box }: Candidate, ink: Box): boolean => edge !== 'ink' && contains(ink, box, 2);

/** Ink as large as a label with this much more than the small one has. */
const isWholeOf = ({ edge, box }: Candidate, part: Box): boolean =>
  edge === 'ink' && isLabelSized(box) && contains(box, part, 2) && area(box) > LARGER * area(part);
const LARGER = 1.05;
