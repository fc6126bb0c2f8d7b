import { bottom, contains, right, type Box } from '../geometry/box.js';
import { mmToPt } from '../geometry/length.js';
import { textOf } from '../reading/code-text.js';
import type { CodeLikeArea } from '../reading/code-like.js';
import { isNumberLike } from '../reading/number-like.js';
import type { Code } from '../reading/source.js';
import type { Judged } from './candidate.js';
import type { Said } from './kind-of-words.js';
import { isKnownSize, isScaledSize } from './label-sizes.js';

/** A label's leading bars are at least this long and high, pt (40 × 9 mm; common practice, no source). */
const MAIN_BARS = { long: mmToPt(40), high: mmToPt(9) };
/** More rows of bars than this are no label's but a list's or a sheet of product codes (common practice, no source). */
const MOST_ROWS = 4;

/** Whether one of a candidate's rows of bars is as large as a label's leading one. */
export const hasMainBars = ({ codes }: Pick<Judged, 'codes'>): boolean =>
  codes.some(({ kind, box: { width, height } }) => {
    const [short, long] = [Math.min(width, height), Math.max(width, height)];
    return kind === 'linear' && long >= MAIN_BARS.long && short >= MAIN_BARS.high;
  });

/** Points of `strengthOf` from which a candidate is a label … */
export const LABEL = 2;
/** … and from which it is one although the page around it calls itself something else, or its ink says nothing in words. */
export const LABEL_AMONG_OTHERS = 3;
/** Everything that a label can have before its codes are read: wherever it stands, it is not passed over. */
export const ALL_OF_A_LABEL = 4;

/** How much on a candidate says, apart from its place on the page, that it is a label: a point for each kind of evidence, 0 to 5. */
export function strengthOf(candidate: Judged, said: Said, read: readonly Code[] | undefined): number {
  const { box, codes, edge, fillsPaper } = candidate;
  const points = [
    fillsPaper || candidate.small === true || isKnownSize(box) || (edge !== 'ink' && isScaledSize(box.width, box.height)),
    hasMainBars(candidate),
    said.labelWords >= 2,
    Math.max(codes.filter(isNoTrifle).length, read?.length ?? 0) >= 2 && codes.filter(({ kind }) => kind === 'linear').length <= MOST_ROWS,
    read?.some(isTrackingLike) === true,
  ];
  return points.filter(Boolean).length;
}

/** Ink as dense as a matrix code and smaller than this (pt, 8 mm) may be a single letter: it counts where it was read. */
const TRIFLE = mmToPt(8);
const isNoTrifle = ({ kind, box: { width, height } }: CodeLikeArea): boolean => kind !== 'matrix' || Math.max(width, height) >= TRIFLE;

/** Whether a code may be a parcel's own number; a carrier's own short ones are only `isNumberLike`, and an article's is none. */
export const isTrackingLike = (code: Code): boolean => isNumberLike(code, { characters: 10, digits: 8 }) && !isArticle(code);

/** GS1 data that begin with an article's number: application identifier 01 and 14 digits (GS1 General Specifications, 3.3.2; from memory). */
const isArticle = (code: Code): boolean => GS1_DATA.includes(code.identifier) && /^01\d{14}/.test(textOf(code));
/** Symbology identifiers of GS1 data: GS1-128, GS1 DataMatrix, GS1 QR (ISO/IEC 15424; from memory). */
const GS1_DATA: readonly string[] = [']C1', ']d2', ']Q3'];

/** Order numbers are shorter, mostly (common practice, no source). */
const LONG_NUMBER = { characters: 12, digits: 9 };

/** Whether a code says a number longer than those of orders, mostly. */
export const isLongNumber = (code: Code): boolean => isNumberLike(code, LONG_NUMBER) && !isArticle(code);

/** Ink that reaches over this share of a box is its frame, or a rule through it. */
const THROUGH = 0.8;
/** A label's paper is used: no more than this share of its length is without any ink in one stretch (common practice, no source). */
const MOST_BLANK = 0.42;

/** Whether a box (pt) is for the most part blank, as coupons and adverts are. Rules along it and its frame don't count. */
export function isHollow(box: Box, blobs: readonly Box[]): boolean {
  const isTall = box.height >= box.width;
  const [start, length] = isTall ? [box.y, box.height] : [box.x, box.width];
  const inked = blobs
    .filter((blob) => contains(box, blob, 2))
    .map((blob): readonly [number, number] => (isTall ? [blob.y, bottom(blob)] : [blob.x, right(blob)]))
    .filter(([from, to]) => to - from < THROUGH * length)
    .sort(([a], [b]) => a - b);
  let [end, blank] = [start, 0];
  for (const [from, to] of [...inked, [start + length, start + length] as const]) {
    blank = Math.max(blank, from - end);
    end = Math.max(end, to);
  }
  return blank > MOST_BLANK * length;
}
