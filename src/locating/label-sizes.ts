import type { Box } from '../geometry/box.js';
import { mmToPt } from '../geometry/length.js';
import { parseMedia } from '../geometry/media.js';
import type { Candidate } from './candidate.js';

/**
 * Sizes that labels come in, short side first, pt. The named ones: geometry/media.ts; 4×6.75 in is a 4×6 label with a
 * tear-off strip (common practice, no source).
 */
const SIZES: readonly { readonly name: string; readonly short: number; readonly long: number }[] = [
  ...['4x6in', '100x150mm', 'a6', '4x8in', '4x6.75in'].flatMap((name) => {
    const media = parseMedia(name);
    return media ? [{ name, short: media.width, long: media.height }] : [];
  }),
];

/** Outside these (pt) nothing is taken for a label: half a label's height, and more than its double width (common practice). */
export const SHORT_SIDE = { least: mmToPt(55), most: mmToPt(122) };
export const LONG_SIDE = { least: mmToPt(80), most: mmToPt(218) };

/** Whether a box is no smaller than the smallest label and no larger than the largest. */
export function isLabelSized({ width, height }: Pick<Box, 'width' | 'height'>): boolean {
  const [short, long] = [Math.min(width, height), Math.max(width, height)];
  return short >= SHORT_SIDE.least && short <= SHORT_SIDE.most && long >= LONG_SIDE.least && long <= LONG_SIDE.most;
}

/** Labels of letters and packets are this large at least, pt (common practice, no source). */
const SMALL = { short: mmToPt(45), long: mmToPt(75) };

/** Whether a box is no smaller than the labels of letters and packets. */
export const isSmallLabelSized = ({ width, height }: Pick<Box, 'width' | 'height'>): boolean =>
  Math.min(width, height) >= SMALL.short && Math.max(width, height) >= SMALL.long;

/** Paper that a label fills by itself in many countries: A5 and half a letter page, with what cutting and rounding may add, pt (common practice, no source). */
const SMALL_PAPER = { short: mmToPt(150), long: mmToPt(218) };

/** Whether something is no larger than A5 or half a letter page. */
export const isSmallPaper = ({ width, height }: Pick<Box, 'width' | 'height'>): boolean =>
  Math.min(width, height) <= SMALL_PAPER.short && Math.max(width, height) <= SMALL_PAPER.long;

/** A label fills this much of its paper's area or more: white borders of 10 mm leave 78 % of A5, and its ink may end some lines before one. */
const FILLED = { paper: 0.65, half: 0.7 };

/** Whether a box larger than labels are elsewhere is one that fills its paper, no larger than A5 or half a letter page. */
export function fillsPaper({ width, height }: Pick<Box, 'width' | 'height'>, paper: Pick<Box, 'width' | 'height'>): boolean {
  return isSmallPaper(paper) && Math.min(width, height) > SHORT_SIDE.most && width * height >= FILLED.paper * paper.width * paper.height;
}

/** Paper of which a half is small paper: A4, letter and legal, pt. */
const WHOLE_PAPER = { short: mmToPt(217), long: mmToPt(357) };

/** Whether a box larger than labels are elsewhere fills one half of its paper, A4 to legal, as labels of A5 and half a letter page do. */
export function fillsHalf(box: Box, paper: Pick<Box, 'width' | 'height'>): boolean {
  const [short, long] = [Math.min(paper.width, paper.height), Math.max(paper.width, paper.height)];
  if (short < SMALL_PAPER.short || short > WHOLE_PAPER.short || long > WHOLE_PAPER.long) return false;
  const isTall = paper.height >= paper.width;
  const middle = long / 2;
  const [from, to] = isTall ? [box.y, box.y + box.height] : [box.x, box.x + box.width];
  const isInHalf = to <= middle || from >= middle;
  return isInHalf && Math.min(box.width, box.height) > SHORT_SIDE.most && box.width * box.height >= FILLED.half * short * middle;
}

export interface SizeMatch {
  readonly name: string;
  /** 1: exactly this size; 0: nothing like it. */
  readonly likeness: number;
}

/** Ink that fills a known size on both sides, to a border of 5 mm, leaves nothing to look for. */
export function fillsSize(width: number, height: number): boolean {
  const [short, long] = [Math.min(width, height), Math.max(width, height)];
  const fills = (inner: number, outer: number): boolean => inner <= outer + FULL.over && inner >= outer - FULL.under;
  return SIZES.some((size) => fills(short, size.short) && fills(long, size.long));
}

/** Ink that fills a known size, or that of a label drawn a little smaller: both sides are this share of it or more. */
export const fillsMostOf = (width: number, height: number): boolean =>
  SIZES.some(
    ({ short, long }) =>
      Math.min(width, height) >= MOST * short &&
      Math.max(width, height) >= MOST * long &&
      Math.min(width, height) <= short + FULL.over &&
      Math.max(width, height) <= long + FULL.over,
  );
const MOST = 0.93;

/** Whether a box is larger than 4×6 in and A6, the sizes that most labels have, on either side (common practice, no source). */
export const isLargerThanMost = ({ width, height }: Pick<Box, 'width' | 'height'>): boolean =>
  Math.min(width, height) > MOST_HAVE.short + FULL.over || Math.max(width, height) > MOST_HAVE.long + FULL.over;
const MOST_HAVE = { short: mmToPt(105), long: mmToPt(152.4) };

/** Of a known size, pt: two borders of 5 mm, and what drawing and two soft rows of pixels may be off by. */
const FULL = { under: mmToPt(5), over: mmToPt(1.2) };

/** Whether a box with real edges has a known size at 85 to 115 %: pages are fitted to other paper, and keep their proportions (common practice, no source). */
export function isScaledSize(width: number, height: number): boolean {
  const [short, long] = [Math.min(width, height), Math.max(width, height)];
  return SIZES.some((size) => {
    const [across, along] = [short / size.short, long / size.long];
    return Math.abs(across / along - 1) <= SAME_FACTOR && across >= FITTED.least && across <= FITTED.most;
  });
}
/** Both sides have one factor, to this share: a frame is known to 0.25 mm. */
const SAME_FACTOR = 0.015;
const FITTED = { least: 0.85, most: 1.15 };

/** The known size nearest to a box with real edges (a frame, a picture), in either direction. */
export function nearestSize(width: number, height: number): SizeMatch {
  const short = Math.min(width, height);
  const long = Math.max(width, height);
  const ratio = (a: number, b: number): number => Math.min(a, b) / Math.max(a, b);
  return SIZES.map((size) => ({ name: size.name, likeness: ratio(short, size.short) * ratio(long, size.long) })).reduce((best, each) =>
    each.likeness > best.likeness ? each : best,
  );
}

/** Whether a box with real edges is a whole label by its size: a cut line stands 3 mm outside it, a label may be drawn at 94 %. */
export const isKnownSize = ({ width, height }: Pick<Box, 'width' | 'height'>): boolean => nearestSize(width, height).likeness >= KNOWN;
const KNOWN = 0.88;

/** The same for the bounds of ink, which end somewhere inside the label's own edge: as good as it fills the size. */
export function nearestSizeOfInk(width: number, height: number): SizeMatch {
  const short = Math.min(width, height);
  const long = Math.max(width, height);
  const fill = (inner: number, outer: number): number =>
    inner <= outer * 1.02 ? 0.55 + 0.45 * (inner / outer) : Math.max(0, 1 - 4 * (inner / outer - 1));
  return SIZES.map((size) => ({ name: size.name, likeness: fill(short, size.short) * fill(long, size.long) })).reduce((best, each) =>
    each.likeness > best.likeness ? each : best,
  );
}

/** Whether an answer is a whole label by its size: its edge, or its ink, is that of a known one, perhaps a little smaller or fitted to other paper. */
export function isWholeLabel({ edge, box }: Pick<Candidate, 'edge' | 'box'>): boolean {
  const { width, height } = box;
  return edge === 'ink' ? fillsMostOf(width, height) : isKnownSize(box) || isScaledSize(width, height);
}

/** Whether a frame is a whole label by its size and has a row of bars in it: a matrix code beside it is an advert's or the page's. */
export const isWholeFrame = ({ edge, box, codes }: Candidate): boolean =>
  edge === 'frame' && isKnownSize(box) && codes.some(({ kind }) => kind === 'linear');
