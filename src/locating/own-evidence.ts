import { contains, intersection, type Box } from '../geometry/box.js';
import type { CodeLikeArea } from '../reading/code-like.js';
import { LINEAR } from '../reading/codes.js';
import { isNumberLike } from '../reading/number-like.js';
import type { Code } from '../reading/source.js';
import type { Phrase } from '../reading/word-lines.js';
import { closedUnits } from './closed-units.js';
import { hasItems, listsItems } from './item-rows.js';
import { WRITING } from './kind-of-words.js';
import { isKnownSize } from './label-sizes.js';
import type { PageFacts, SaidCandidate } from './page-facts.js';
import { speaksAgainst } from './speaks-against.js';
import { isParcels, isParcelsMatrix } from './from-to.js';
import { hasMainBars, isHollow, isLongNumber, isTrackingLike } from './strength.js';

/**
 * Whether a candidate has something of a label, whatever its size and place say for it: a card, a ticket, a till receipt or a coupon may be as large, stand as free and
 * carry a code as well.
 * @param codes what was read in it; undefined where nothing was
 */
export function isLikeLabel(label: SaidCandidate, codes: readonly Code[] | undefined, facts: PageFacts): boolean {
  return (
    hasOwn(label, codes) &&
    (label.declares !== true || (codes ?? []).some(isTrackingLike)) &&
    (label.codes.length > 0 || (codes ?? []).length > 0) &&
    speaksAgainst(label, facts, codes) === undefined &&
    ((label.said.labelWords >= 2 && (label.edge !== 'ink' || (codes ?? []).some(isLongNumber))) ||
      label.said.characters < WRITING ||
      !isMatrixAlone(label) ||
      isParcelsMatrix(label, codes, facts.phrases)) &&
    (isMoreThanPaper(label, codes, facts.phrases) || !isAlone(label, facts.blobs)) &&
    !(
      (label.fillsPaper === true || (label.edge === 'frame' && !isKnownSize(label.box))) &&
      label.declares !== true &&
      hasItems(label.box, facts.phrases)
    ) &&
    (label.said.labelWords >= 2 || !isHollow(label.box, facts.blobs)) &&
    !saysOther(label, codes, facts)
  );
}

/** Whether a candidate has no row of bars: a code to show at a counter stands below an address, too, but not below two. */
export const isMatrixAlone = ({ codes }: Pick<SaidCandidate, 'codes'>): boolean =>
  codes.length > 0 && codes.every(({ kind }) => kind === 'matrix');

/** Whether a candidate is all that its page holds: then the page's size is no evidence, for whatever is printed on a roll of labels has it. */
const isAlone = ({ box, edge }: SaidCandidate, blobs: readonly Box[]): boolean =>
  edge === 'page' || blobs.every((blob) => contains(box, blob, 2));

/**
 * Whether a candidate that has a roll's paper for itself is a label by more than that: its words, a further code, or a number longer than those of
 * orders. A picture without words can't be asked.
 */
function isMoreThanPaper(
  { said: says, box, declares }: SaidCandidate,
  codes: readonly Code[] | undefined,
  phrases: readonly Phrase[],
): boolean {
  if (says.labelWords >= 2 || says.characters < WRITING || (codes ?? []).length >= 2) return true;
  return (codes ?? []).some(isLongNumber) && (declares === true || !hasItems(box, phrases));
}

/**
 * Whether a candidate is written on, but with none of a label's words, and its codes are no label's leading ones either: no row of bars as large as that,
 * or all of them in a box that is only a part of it, as a coupon below some lines of writing is. A figure of a label in a manual is such a one, and a ticket.
 */
function saysOther(label: SaidCandidate, read: readonly Code[] | undefined, { page, blobs, phrases }: PageFacts): boolean {
  const { said: says, edge, box, codes } = label;
  if (says.characters < WRITING || says.labelWords > 0) return false;
  if (listsItems(box, phrases)) return true;
  if (!hasMainBars(label)) return !isParcels(label, read, phrases);
  if (edge !== 'ink') return false;
  const parts = closedUnits(page, blobs).filter((unit) => !contains(unit, box, 2));
  return codes.every((code) => parts.some((part) => contains(part, code.box, 2)));
}

/** Whether a candidate has more of a label than a size and some codes, as tickets and cards have them: its words, or a number that may be a parcel's. */
export const hasOwn = (label: SaidCandidate, codes: readonly Code[] | undefined): boolean =>
  label.said.labelWords >= 2 ||
  linearFirst(label, codes ?? []).some((code) => isTrackingLike(code) || (hasMainBars(label) && isNumberLike(code)));

/** The rows of bars, where there are any: what a matrix code beside them says is mostly longer than a number. Rows that no carrier's reader knows are an article's. */
function linearFirst({ codes: areas }: SaidCandidate, codes: readonly Code[]): readonly Code[] {
  const linear = codes.filter(({ symbology }) => LINEAR.includes(symbology));
  const isUnread = ({ kind, box }: CodeLikeArea): boolean => kind === 'linear' && !codes.some((code) => intersection(code.box, box));
  return linear.length > 0 || areas.some(isUnread) ? linear : codes;
}
