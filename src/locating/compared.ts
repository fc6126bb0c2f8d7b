import type { Box } from '../geometry/box.js';
import { textOf } from '../reading/code-text.js';
import type { Phrase } from '../reading/word-lines.js';
import type { Candidate } from './candidate.js';
import type { Chosen } from './choose.js';
import type { Weighed } from './doubts.js';
import { isAddressedNumber } from './from-to.js';
import { isLargerThanMost } from './label-sizes.js';
import type { SaidCandidate } from './page-facts.js';
import { addressesOn } from './address-block.js';
import { isLongNumber, isTrackingLike } from './strength.js';

type Likely = Chosen<SaidCandidate>;
export type Likeliest = Weighed<SaidCandidate>;

/** Sides of labels on one page differ by less than this share. */
const SIZE_ALIKE = 0.15;

/** A receipt repeats its label's number: of two with the same code the stronger, then the surer, then the larger is the label. */
export function withoutCopies(weighed: readonly Likeliest[]): readonly Likeliest[] {
  const better = (a: Weighed, b: Likeliest): boolean =>
    a.strength - b.strength > 0 || (a.strength === b.strength && a.label.score - b.label.score > 0);
  return weighed.filter((each) => !weighed.some((other) => other !== each && sharesCode(each, other) && better(other, each)));
}

/** Labels of one page are of one kind: one that is weaker and of another size than the strongest may be none, unless all that a parcel's has is on it. */
export function unlikeBest(sure: readonly Likeliest[], phrases: readonly Phrase[]): Likely | undefined {
  const [best] = [...sure].sort((a, b) => b.strength - a.strength || b.label.score - a.label.score);
  const alike = (a: Box, b: Box): boolean => {
    const [w, h] = [Math.min(a.width, a.height) / Math.min(b.width, b.height), Math.max(a.width, a.height) / Math.max(b.width, b.height)];
    return Math.abs(w - 1) < SIZE_ALIKE && Math.abs(h - 1) < SIZE_ALIKE;
  };
  return (
    best &&
    sure.find(
      ({ strength, label, codes }) =>
        strength < best.strength && !alike(label.box, best.label.box) && !isAddressedNumber(label, codes, phrases),
    )?.label
  );
}

/** Whether two have a code of one parcel; where codes were not read, none has. */
export const sharesCode = (a: Weighed, b: Likeliest): boolean =>
  (a.codes ?? []).some((code) => isTrackingLike(code) && b.codes?.some((other) => other.bytes === code.bytes) === true);

/** A weaker candidate beside a label with the same number is a copy; one that has no number of its own is none to worry about. */
export const isExplainedBy = (weak: Weighed, sure: Likeliest): boolean =>
  sharesCode(weak, sure) || weak.codes?.some(isTrackingLike) === false;

/** Two labels have sender and receiver twice; of ink larger than most labels one may go unseen, which on smaller is that of a third, as of a shop that hands the parcel out. */
const ADDRESSES = { larger: 3, any: 4 };

/** Whether ink has so many addresses that it may be two labels: then its codes are read. */
export const mayBeSeveral = ({ edge, box }: Candidate, phrases: readonly Phrase[]): boolean =>
  edge === 'ink' && addressesOn(box, phrases) >= (isLargerThanMost(box) ? ADDRESSES.larger : ADDRESSES.any);

/** Whether ink may be two labels: more addresses than a sender's and a receiver's, and codes of one kind that say more than one parcel's number. */
export function isSeveral({ label, codes }: Likeliest, phrases: readonly Phrase[]): boolean {
  if (!mayBeSeveral(label, phrases)) return false;
  const numbers = (codes ?? []).filter(isLongNumber).map((code) => ({ symbology: code.symbology, text: textOf(code) }));
  return numbers.some((a) => numbers.some((b) => a.symbology === b.symbology && !a.text.includes(b.text) && !b.text.includes(a.text)));
}
