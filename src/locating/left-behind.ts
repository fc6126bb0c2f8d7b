import { area, contains, grow, intersection, type Box } from '../geometry/box.js';
import { codeLikeAreas, type CodeLikeArea } from '../reading/code-like.js';
import { denseAreas } from '../reading/dense-areas.js';
import { plainText, textOf } from '../reading/code-text.js';
import { framesOf } from '../reading/frames.js';
import type { Code, SourcePage } from '../reading/source.js';
import { sizeOf, type Judged } from './candidate.js';
import type { Doubt } from './doubts.js';
import { codesIn, HAIR } from './gather.js';
import { inkGroups } from './ink-groups.js';
import { saidIn, WRITING, type Said } from './kind-of-words.js';
import { isLabelSized, isSmallLabelSized, LONG_SIDE, SHORT_SIDE } from './label-sizes.js';
import { hasItems } from './item-rows.js';
import type { PageFacts } from './page-facts.js';
import { addressesOn, FROM_TO } from './address-block.js';
import { hasMainBars, isTrackingLike } from './strength.js';

/** Ink mostly in a label is the label's. */
const MOSTLY = 0.5;
/** So many different words of a label make writing like one. */
const LIKE_LABEL = 2;
/** Shorter numbers are on many labels, or stand in a longer one by chance. */
const LEAST_COMMON = 8;

/** Ink with codes that no chosen label has, or a picture, as large as a label is at least. */
interface Part {
  readonly box: Box;
  readonly codes: readonly CodeLikeArea[];
  /** Whether it is a picture: its codes may be too coarse to be seen before they are read. */
  readonly isPicture: boolean;
}

/**
 * What is left on a page outside `taken` (its labels, and what may be some) and may be a further label whose edges were not found: ink as large as the
 * smallest label, with codes or as a picture, that carries a parcel's number of the make of a label's own, or that reads or looks like a label and says nothing else. The
 * copy of a label's own number, an order's number on a bill and a coupon's code are no such thing. Codes are read only where the ink could be a label.
 */
export async function leftBehind(taken: readonly Box[], { page, blobs, phrases, readCodes }: PageFacts): Promise<readonly Doubt[]> {
  const parts = partsBeside(taken, page, blobs)
    .map((part) => ({ ...part, said: saidIn(phrases, part.box) }))
    .filter(({ codes, said, isPicture }) => !isOtherPaper(said) && (codes.length > 0 || said.labelWords >= LIKE_LABEL || isPicture));
  if (parts.length === 0) return [];
  const own = (await Promise.all(taken.map(readCodes))).flat();
  const written = phrases.filter(({ box }) => taken.some((label) => contains(label, box, 2))).map(({ text }) => plainText(text));
  const isCopy = (code: Code): boolean =>
    own.some((other) => isSame(textOf(code), textOf(other))) || written.some((line) => holds(line, plainText(textOf(code))));
  const doubts: Doubt[] = [];
  for (const { box, codes, said } of parts) {
    const read = await readCodes(grow(box, HAIR));
    const numbers = read.filter((code) => isTrackingLike(code) && !isCopy(code));
    const part: Judged = {
      box,
      edge: 'ink',
      codes,
      score: 0,
      evidence: [`ink around ${Math.max(codes.length, read.length)} codes that no label beside it has`],
    };
    const hasBoth = addressesOn(box, phrases) >= FROM_TO;
    const isLikeLabel =
      !hasItems(box, phrases) &&
      (said.labelWords >= LIKE_LABEL ||
        hasBoth ||
        (said.characters < WRITING && hasMainBars(part)) ||
        taken.some((label) => isAlike(label, box)));
    if (numbers.some((code) => own.some((other) => isOfOneMake(code, other))))
      doubts.push({ why: `the ${sizeOf(part)} beside the label has a number as a parcel's own`, answers: [part] });
    else if (
      isLikeLabel &&
      !read.some(isCopy) &&
      (numbers.length > 0 || (hasBoth && hasBars(part)) || (codes.length > 0 && read.length === 0))
    )
      doubts.push({ why: `the ${sizeOf(part)} beside the label is like a label, too, but where it ends is not clear`, answers: [part] });
  }
  return doubts;
}

/** Beside sender and receiver a number may be short. */
const hasBars = ({ codes }: Pick<Judged, 'codes'>): boolean => codes.some(({ kind }) => kind === 'linear');

const isOtherPaper = ({ names }: Said): boolean => names.some(({ kind }) => kind !== 'return-label');

/** For each code outside the labels the least ink or frame around it that is as large as a small label, none where all of its ink is smaller; and pictures of a label's size. */
function partsBeside(taken: readonly Box[], page: SourcePage, blobs: readonly Box[]): readonly Part[] {
  const isOutside = (box: Box): boolean => taken.every((label) => area(intersection(label, box) ?? NOTHING) < MOSTLY * area(box));
  const codes = codeLikeAreas(page).filter(({ box }) => isOutside(box));
  const seats = [...codes.map(({ box }) => box), ...denseAreas(page).filter(isOutside)];
  const pictures = page
    .images()
    .map(({ box }) => box)
    .filter((box) => isOutside(box) && isLargeEnough(box) && isLabelSized(box));
  const pictured = pictures.map((box): Part => ({ box, codes: codesIn(codes, box), isPicture: true }));
  if (seats.length === 0) return pictured;
  const groups = inkGroups(page, blobs.filter(isOutside))
    .filter(isSmallLabelSized)
    .sort((a, b) => area(a) - area(b));
  const frames = framesOf(page).flatMap(({ box }) => (isOutside(box) && isSmallLabelSized(box) ? [box] : []));
  const around = (seat: Box, boxes: readonly Box[]): Box | undefined => boxes.find((box) => contains(box, seat, 6));
  const boxes = new Set(seats.flatMap((seat) => around(seat, groups) ?? around(seat, frames) ?? []));
  const free = [...boxes].filter((box) => !pictures.some((picture) => contains(picture, box, 2)));
  return [...pictured, ...free.map((box) => ({ box, codes: codesIn(codes, box), isPicture: false }))];
}

const NOTHING: Box = { x: 0, y: 0, width: 0, height: 0 };

const isLargeEnough = ({ width, height }: Box): boolean =>
  Math.min(width, height) >= SHORT_SIDE.least && Math.max(width, height) >= LONG_SIDE.least;

/** Sides of labels on one sheet, drawn at sizes of their own, differ by less than this share. */
const ALIKE = 0.2;
const isAlike = (a: Box, b: Box): boolean => Math.abs(a.width / b.width - 1) < ALIKE && Math.abs(a.height / b.height - 1) < ALIKE;

/** Whether one of two numbers is, or frames, the other. */
function isSame(a: string, b: string): boolean {
  const [one, other] = [plainText(a), plainText(b)];
  return holds(one, other) || holds(other, one);
}

const holds = (line: string, number: string): boolean => number.length >= LEAST_COMMON && line.includes(number);

/** Whether two codes are of one kind, and letters and figures stand in the same places of them. */
const isOfOneMake = (a: Code, b: Code): boolean => a.symbology === b.symbology && form(a) === form(b);

const form = (code: Code): string =>
  textOf(code)
    .replaceAll(/\d/g, '9')
    .replaceAll(/[A-Za-z]/g, 'A');
