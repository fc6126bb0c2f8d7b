import { bottom, contains, right, union, type Box } from '../geometry/box.js';
import { mmToPt } from '../geometry/length.js';
import { framesOf, linesOf } from '../reading/frames.js';
import type { SourcePage } from '../reading/source.js';
import type { Candidate } from './candidate.js';
import type { IsOther } from './whole-answers.js';
import { fillsSize, isLabelSized, LONG_SIDE, SHORT_SIDE } from './label-sizes.js';
import { pageDividers } from './page-dividers.js';
import { CLEAR, NEXT_LINE, WIDER, WITHIN, widestWhite } from './white.js';

/** Rules of one label begin and end at the same places, to this much, pt (1 mm). */
const ALIKE = mmToPt(1);
/** A banner is no higher, pt (20 mm). */
const BANNER = mmToPt(20);
/** Rules nearer than this (pt, 15 mm) to one another are a table's head, not two parts of a label. */
const LEAST_SPAN = mmToPt(15);
/** A line of small print is no higher, pt (3.5 mm). */
const LINE = mmToPt(3.5);
/** White of this and less parts lines and blocks of one label, pt (6 mm); what is wider than any between its rules, and than this, may part labels. */
const USUAL = mmToPt(6);

/** A label without a frame, and how the rules run that divide it from side to side. */
export type RuledStack = Required<Pick<Candidate, 'box' | 'ruled' | 'closed'>>;

/**
 * Labels without a frame whose parts are divided by rules and banners from side to side: all of one length, one beside the other. What stands in their
 * column beyond the outermost one belongs to the label up to the widest white, a line to fold along or ink that keeps to no column. Where that isn't
 * clear there is more than one answer. Pt.
 * @param isOther whether a part of the page is no label by its words
 */
export function ruledStacks(page: SourcePage, blobs: readonly Box[], isOther: IsOther): readonly RuledStack[] {
  const dividers = pageDividers(page);
  const ink = blobs.filter((blob) => !dividers.some((line) => contains(line, blob, 4)));
  return [true, false].flatMap((level): readonly RuledStack[] => {
    const turned = (box: Box): Box => (level ? box : transposed(box));
    const rules = [
      ...linesOf(page).flatMap((line) => (line.level === level && !line.dashed ? [turned(line.box)] : [])),
      ...ink.map(turned).filter(({ height }) => height <= BANNER),
    ].filter(({ width }) => width >= SHORT_SIDE.least && width <= LONG_SIDE.most);
    const ruled = level ? 'level' : 'upright';
    const around = { ink: ink.map(turned), stops: dividers.map(turned), isOther: (part: Box) => isOther(turned(part), ruled) };
    const frames = framesOf(page).map(({ box }) => turned(box));
    const isFrames = (family: readonly Box[]): boolean => frames.some((frame) => family.every((rule) => contains(frame, rule, WITHIN)));
    return families(rules)
      .filter((family) => !isFrames(family))
      .flatMap((family) => answersOf(family, around).map(({ box, closed }) => ({ box: turned(box), ruled, closed })));
  });
}

const transposed = ({ x, y, width, height }: Box): Box => ({ x: y, y: x, width: height, height: width });

/** Rules with the same ends, from the top. */
function families(rules: readonly Box[]): readonly (readonly Box[])[] {
  const groups: Box[][] = [];
  for (const rule of [...rules].sort((a, b) => a.y - b.y)) {
    const group = groups.find(([first]) => first && Math.abs(first.x - rule.x) <= ALIKE && Math.abs(right(first) - right(rule)) <= ALIKE);
    if (group) group.push(rule);
    else groups.push([rule]);
  }
  return groups.filter((group) => (group.at(-1)?.y ?? 0) - (group[0]?.y ?? 0) >= LEAST_SPAN);
}

interface Around {
  readonly ink: readonly Box[];
  readonly stops: readonly Box[];
  readonly isOther: (part: Box) => boolean;
}

function answersOf(family: readonly Box[], around: Around): readonly Pick<RuledStack, 'box' | 'closed'>[] {
  const span = union(family);
  if (!span) return [];
  const column = { from: span.x - WITHIN, to: right(span) + WITHIN };
  const touching = around.ink.filter((blob) => blob.x < column.to - 2 * WITHIN && right(blob) > column.from + 2 * WITHIN);
  const keeps = (blob: Box): boolean => blob.x >= column.from && right(blob) <= column.to;
  const isBeyond = (blob: Box): boolean => blob.y > bottom(span) || bottom(blob) < span.y;
  const isOfWiderLine = (blob: Box): boolean => around.ink.some((other) => !keeps(other) && isNextWord(blob, other));
  const crossing = [
    ...touching.filter((blob) => !keeps(blob) || (isBeyond(blob) && isOfWiderLine(blob))),
    ...around.stops.filter((line) => line.x < column.to && right(line) > column.from),
  ];
  if (crossing.some((blob) => blob.y < bottom(span) && bottom(blob) > span.y)) return [];
  const own = touching.filter(keeps);
  if (isClosedByThickRules(family, span, touching)) {
    const box = union([span, ...own.filter((blob) => contains(span, blob, 1))]) ?? span;
    if (isLabelSized(box)) return [{ box, closed: true }];
  }
  const downwards = below(span, own, crossing, around.isOther);
  const upwards = below(mirrored(span), own.map(mirrored), crossing.map(mirrored), (part) => around.isOther(mirrored(part)));
  const answers = upwards.flatMap((up) =>
    downwards.flatMap((down): readonly Answer[] => {
      const box = union([span, ...own.filter((blob) => blob.y >= -up.end - 1 && bottom(blob) <= down.end + 1)]);
      return box && isLabelSized(box)
        ? [{ box, isClear: up.isClear && down.isClear, wide: up.wide + down.wide, white: Math.min(up.white, down.white) }]
        : [];
    }),
  );
  const fulls = answers.filter(({ box }) => fillsSize(box.width, box.height));
  const full = fulls.filter(({ wide }) => fulls.every((other) => other.wide >= wide));
  const most = Math.max(...full.map(({ white }) => white));
  const likely = full.length > 0 ? full.filter(({ white }) => white * WIDER >= most) : answers.filter(({ isClear }) => isClear);
  return likely.map(({ box }) => ({
    box: withLinesBeside(box, around.ink),
    closed: box.y >= span.y - 1 && bottom(box) <= bottom(span) + 1,
  }));
}

/** Whether the first and the last rule are the only thick ones, as they are where they close a label, and a line's white is beyond each. */
function isClosedByThickRules(family: readonly Box[], span: Box, ink: readonly Box[]): boolean {
  // A rule may be known twice, as a line and as ink.
  const isAtEnd = (rule: Box): boolean => rule.y < span.y + AT_END || bottom(rule) > bottom(span) - AT_END;
  const inner = family.filter((rule) => !isAtEnd(rule));
  const ends = family.filter(isAtEnd);
  if (inner.length === 0) return false;
  const thin = Math.max(...inner.map(({ height }) => height));
  const isFree = (gap: (blob: Box) => number): boolean => ink.every((blob) => gap(blob) < -1 || gap(blob) > NEXT_LINE);
  return (
    Math.min(...ends.map(({ height }) => height)) >= THICK * thin &&
    isFree((blob) => (blob.y > span.y ? -Infinity : span.y - bottom(blob))) &&
    isFree((blob) => (bottom(blob) < bottom(span) ? -Infinity : blob.y - bottom(span)))
  );
}
/** Rules that close a label are this many times as thick as those in it. */
const THICK = 1.9;
/** No thicker than this (pt), the first and the last. */
const AT_END = 10;

/** Words of one line of type are alike in height and stand on it, with a blank between them. */
function isNextWord(a: Box, b: Box): boolean {
  const high = Math.max(a.height, b.height);
  const gap = Math.max(a.x - right(b), b.x - right(a));
  const isAlike = Math.min(a.height, b.height) >= 0.5 * high && high <= TYPE;
  return isAlike && Math.abs(a.y + a.height / 2 - b.y - b.height / 2) <= 0.3 * high && gap >= 0 && gap <= 0.5 * high;
}
/** Larger type (pt) stands alone. */
const TYPE = 18;

/** With a line of small print that runs along a side, nearer to it than lines of type stand apart, and with nothing else as near behind it. */
function withLinesBeside(box: Box, ink: readonly Box[]): Box {
  const alongside = ink.filter((blob) => blob.y >= box.y - WITHIN && bottom(blob) <= bottom(box) + WITHIN);
  const aside = (all: readonly Box[], from: number): readonly Box[] =>
    all.filter((blob) => blob.x >= from - 1 && blob.x - from <= NEXT_LINE);
  const lineRight = (all: readonly Box[], edge: number): readonly Box[] => {
    const line = union(aside(all, edge));
    return line && line.width <= LINE && aside(all, right(line)).length === 0 ? [line] : [];
  };
  const flipped = (blob: Box): Box => ({ ...blob, x: -right(blob) });
  const left = lineRight(alongside.map(flipped), -box.x).map(flipped);
  return union([box, ...lineRight(alongside, right(box)), ...left]) ?? box;
}

interface Answer {
  readonly box: Box;
  readonly isClear: boolean;
  /** How often there is wider white in it, beyond its outermost rules, than between them. */
  readonly wide: number;
  /** The white beyond its ends, pt. */
  readonly white: number;
}

/** The same seen from below. */
const mirrored = (box: Box): Box => ({ ...box, y: -bottom(box) });

interface Place {
  readonly end: number;
  readonly white: number;
  /** How often there is wider white before it than between the rules. */
  readonly wide: number;
  /** Whether nothing else speaks as much for an end elsewhere. */
  readonly isClear: boolean;
}

/** Where a label may end below the last of its rules. */
function below(span: Box, own: readonly Box[], crossing: readonly Box[], isOther: (part: Box) => boolean): readonly Place[] {
  const stop = Math.min(Infinity, ...crossing.filter(({ y }) => y >= bottom(span) - 1).map(({ y }) => y));
  const beyond = own.filter((blob) => bottom(blob) > bottom(span) && bottom(blob) <= stop + 1).sort((a, b) => a.y - b.y);
  const usual = Math.max(
    USUAL,
    widestWhite(
      own.filter((blob) => contains(span, blob, WITHIN)),
      true,
    ),
  );
  const places: Omit<Place, 'isClear'>[] = [];
  let end = bottom(span);
  let isNamed = false;
  const isOtherAt = ({ y, height }: Box): boolean => isOther({ ...span, y: y - 1, height: height + 2 });
  for (const [index, blob] of beyond.entries()) {
    const white = blob.y - end;
    const block = white > NEXT_LINE ? blockFrom(beyond.slice(index)) : [];
    if (white > NEXT_LINE) places.push({ end, white, wide: places.filter((place) => place.white > usual).length });
    isNamed = white > 0 && (isOtherAt(blob) || isNamedFromItsTop(block, isOtherAt));
    if (white > CLEAR || isNamed) break;
    end = Math.max(end, bottom(blob));
  }
  if (places.at(-1)?.end !== end) places.push({ end, white: stop - end, wide: places.filter((place) => place.white > usual).length });
  // The edge of the page says no more than the widest white before it.
  const wide = places.filter((place, index) => place.white > usual || index === places.length - 1);
  const most = Math.max(...wide.map(({ white }) => white).filter(Number.isFinite));
  return places.map((place) => ({
    ...place,
    isClear: isNamed ? place === places.at(-1) : wide.includes(place) && place.white * WIDER >= most,
  }));
}

/** Whether a block as a whole says that it is something else, and nothing stands above what says so. */
function isNamedFromItsTop(block: readonly Box[], isOther: (part: Box) => boolean): boolean {
  const whole = union(block);
  if (!whole || !isOther(whole)) return false;
  const title = block.find(isOther);
  return !title || !block.some((blob) => bottom(blob) <= title.y);
}

/** What stands together from the first of some blobs on, sorted from the top: its lines may run across, so that no blob alone says what it is. */
function blockFrom(blobs: readonly Box[]): readonly Box[] {
  let end = blobs[0]?.y ?? 0;
  const next = blobs.findIndex((blob) => {
    const isApart = blob.y - end > NEXT_LINE;
    end = Math.max(end, bottom(blob));
    return isApart;
  });
  return next < 0 ? blobs : blobs.slice(0, next);
}
