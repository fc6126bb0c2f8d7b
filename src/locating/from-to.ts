import { contains } from '../geometry/box.js';
import { mmToPt } from '../geometry/length.js';
import { plainText, textOf } from '../reading/code-text.js';
import { LINEAR } from '../reading/codes.js';
import { isNumberLike } from '../reading/number-like.js';
import type { Code } from '../reading/source.js';
import type { Phrase } from '../reading/word-lines.js';
import { hasItems, listsItems } from './item-rows.js';
import { isKnownSize, isLabelSized, isWholeLabel } from './label-sizes.js';
import type { SaidCandidate } from './page-facts.js';
import { addressesOn, FROM_TO } from './address-block.js';
import { hasMainBars, isLongNumber, isTrackingLike } from './strength.js';

/** Bars that say a parcel's number are at least this long and high, pt (28 × 9 mm), however finely they are drawn (common practice, no source). */
const BARS = { long: mmToPt(28), high: mmToPt(9) };
/** What a matrix code says is several things in a row; the parcel's number is the one that is written below it, too, and so long. */
const NUMBER = /[A-Z0-9]{10,}/g;

const barsSay = (read: readonly Code[] | undefined, isNumber: (code: Code) => boolean): boolean =>
  (read ?? []).some((code) => LINEAR.includes(code.symbology) && isNumber(code));

/**
 * Whether a candidate is a parcel's by all but its words, in whatever language they are: a frame or a picture of a label's size, a small label's, a frame with a second code in it, or anything with a label's
 * leading bars and one of its words or rules from side to side; sender and receiver, bars that say a number longer than those of orders, no name of something else and no items.
 */
export function isParcels(label: SaidCandidate, read: readonly Code[] | undefined, phrases: readonly Phrase[]): boolean {
  const { edge, codes } = label;
  return (
    (((edge === 'frame' || edge === 'picture') && isWholeLabel(label)) ||
      label.small === true ||
      (edge === 'frame' && isLabelSized(label.box) && (codes.length > 1 || (read ?? []).length > 1)) ||
      ((label.said.labelWords > 0 || label.ruled !== undefined) && hasMainBars(label))) &&
    codes.some(({ kind, box: { width, height } }) => {
      const [high, long] = [Math.min(width, height), Math.max(width, height)];
      return kind === 'linear' && long >= BARS.long && high >= BARS.high;
    }) &&
    barsSay(read, isLongNumber) &&
    goesFromTo(label, phrases)
  );
}

/** Whether bars say a number longer than those of orders, or any that may be a parcel's inside an edge of its own, beside sender and receiver, and nothing else is said. */
export const isAddressedNumber = (label: SaidCandidate, read: readonly Code[] | undefined, phrases: readonly Phrase[]): boolean =>
  barsSay(read, label.edge === 'ink' ? isLongNumber : isTrackingLike) && goesFromTo(label, phrases);

/** The same of a matrix code without bars: one of a label's words, and the number that it says is written on it. */
export function isParcelsMatrix(label: SaidCandidate, read: readonly Code[] | undefined, phrases: readonly Phrase[]): boolean {
  const written = phrases.filter(({ box }) => contains(label.box, box, 2)).map(({ text }) => plainText(text));
  const isWritten = (code: Code): boolean =>
    isLongNumber(code) && (textOf(code).toUpperCase().match(NUMBER) ?? []).some((number) => written.some((text) => text.includes(number)));
  return label.said.labelWords > 0 && (read ?? []).some(isWritten) && goesFromTo(label, phrases);
}

/** Whether it has a sender and a receiver, no name of something else, and no items but those of its declaration. */
const goesFromTo = ({ box, said, declares }: SaidCandidate, phrases: readonly Phrase[]): boolean =>
  said.names.every(({ kind }) => kind === 'return-label') &&
  addressesOn(box, phrases) >= FROM_TO &&
  (declares === true || !(hasItems(box, phrases) || listsItems(box, phrases)));

/** Whether something that stands by itself on a page of another name has all of a label but a long number: leading bars, three of its words, sender and receiver. */
export const isApartFrom = (label: SaidCandidate, read: readonly Code[] | undefined, phrases: readonly Phrase[]): boolean =>
  (label.edge !== 'ink' || label.ruled !== undefined) &&
  label.said.labelWords >= 3 &&
  hasMainBars(label) &&
  barsSay(read, isNumberLike) &&
  goesFromTo(label, phrases);

/**
 * Whether a frame has all of a label but its words and a long number, as labels of small carriers do: its size, leading bars that say a number, sender and receiver. On a page that calls itself something else
 * only one of a known size.
 */
export const isAddressedFrame = (
  label: SaidCandidate,
  read: readonly Code[] | undefined,
  phrases: readonly Phrase[],
  onOther: boolean,
): boolean =>
  label.edge === 'frame' &&
  (onOther ? isKnownSize(label.box) : isLabelSized(label.box)) &&
  hasMainBars(label) &&
  barsSay(read, isNumberLike) &&
  goesFromTo(label, phrases);
