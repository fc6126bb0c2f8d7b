import { bottom, contains, intersection, near, right, union, type Box } from '../geometry/box.js';
import { codeLikeAreas } from './code-like.js';
import { INK_LEVEL } from './ink.js';
import { openFrames } from './open-frames.js';
import { ruledLines, type RuledLine } from './ruled.js';
import type { GreyRaster, SourcePage } from './source.js';

/** A rectangle made of ruled lines, closed or drawn with round corners or gaps; its inner rules belong to it. */
export interface Frame {
  /** Outer edge of the lines, pt, to about 0.25 mm. */
  readonly box: Box;
  readonly dashed: boolean;
}

/** Lines whose ends are this near (pt) meet. */
const MEET = 4;
/** Share of each side of a frame that must be ruled. */
const CLOSED = 0.88;
/** … and of one side that is parted for a name to stand in it. */
const PARTED = 0.5;
/** … and of one side with scissors at a corner. */
const SIGNED = 0.8;

const cache = new WeakMap<SourcePage, readonly Frame[]>();

/** The frames of a page: outer ones only once each, nested ones apart where they don't touch. Each page is looked at once. */
export function framesOf(page: SourcePage): readonly Frame[] {
  let frames = cache.get(page);
  if (!frames) cache.set(page, (frames = findFrames(linesOf(page), page.ink())));
  return frames;
}

const lineCache = new WeakMap<SourcePage, readonly RuledLine[]>();

/** Ruled lines of a page; the bars of codes are none, nor is type so small that its letters run together as dashes do. */
export function linesOf(page: SourcePage): readonly RuledLine[] {
  let lines = lineCache.get(page);
  if (!lines) {
    const codes = codeLikeAreas(page);
    lines = ruledLines(page.ink()).filter((line) => !codes.some((code) => contains(code.box, line.box, 6)) && !isType(line, page));
    lineCache.set(page, lines);
  }
  return lines;
}

/** Whether a dashed line is drawn by the words of the text layer for most of its length. */
function isType({ box, level, dashed }: RuledLine, page: SourcePage): boolean {
  if (!dashed) return false;
  const spans = page.words().flatMap(({ text, box: word }): [number, number][] => {
    const both = /[\p{L}\p{N}]/u.test(text) ? intersection(word, box) : undefined;
    return both ? [level ? [both.x, right(both)] : [both.y, bottom(both)]] : [];
  });
  return covered(spans) >= TYPE * (level ? box.width : box.height);
}
/** Share of it; blanks are between words. */
const TYPE = 0.6;

/**
 * Groups lines that meet, and keeps the groups whose outer four sides are ruled, or filled: a banner's edge closes a frame, too. Besides,
 * what is drawn by straight parts that don't all meet.
 */
export function findFrames(lines: readonly RuledLine[], ink?: GreyRaster): readonly Frame[] {
  const frames: Frame[] = [];
  for (const group of meetingGroups(lines)) {
    const box = union(group.map((line) => line.box));
    if (!box || box.width < 36 || box.height < 36) continue;
    if (sidesClosed(box, group, ink)) frames.push({ box, dashed: group.filter((line) => line.dashed).length > group.length / 2 });
  }
  const isKnown = (box: Box): boolean => frames.some((frame) => contains(frame.box, box, MEET) && contains(box, frame.box, MEET));
  for (const box of openFrames(lines)) if (!isKnown(box)) frames.push({ box, dashed: false });
  return frames;
}

function meetingGroups(lines: readonly RuledLine[]): RuledLine[][] {
  const groupOf = lines.map((_, index) => index);
  const root = (index: number): number => {
    let at = index;
    while (groupOf[at] !== at) at = groupOf[at] ?? at;
    return at;
  };
  lines.forEach((a, i) => {
    lines.forEach((b, j) => {
      if (j > i && near(a.box, b.box, MEET)) groupOf[root(j)] = root(i);
    });
  });
  const groups = new Map<number, RuledLine[]>();
  lines.forEach((line, index) => {
    const key = root(index);
    groups.set(key, [...(groups.get(key) ?? []), line]);
  });
  return [...groups.values()];
}

function sidesClosed(box: Box, group: readonly RuledLine[], ink: GreyRaster | undefined): boolean {
  const spansOf = (strip: Box, level: boolean): [number, number][] =>
    group
      .filter((line) => line.level === level)
      .map((line) => intersection(line.box, strip))
      .filter((span) => span !== undefined)
      .map((span): [number, number] => (level ? [span.x, right(span)] : [span.y, bottom(span)]));
  const ruled = (strip: Box, level: boolean): boolean => covered(spansOf(strip, level)) >= CLOSED * (level ? box.width : box.height);
  /** Whether a side is drawn from both corners, with one gap between them for a name, or from one nearly to the other, where scissors stand. */
  const parted = (strip: Box, level: boolean): boolean => {
    const spans = spansOf(strip, level);
    const [start, length] = level ? [box.x, box.width] : [box.y, box.height];
    const [first, last] = [Math.min(...spans.map(([from]) => from)), Math.max(...spans.map(([, to]) => to))];
    const ends = [first <= start + MEET, last >= start + length - MEET].filter(Boolean).length;
    return (
      (spans.length === 2 && ends === 2 && covered(spans) >= PARTED * length) ||
      (spans.length === 1 && ends === 1 && covered(spans) >= SIGNED * length)
    );
  };
  const depth = MEET + 2;
  const sides: readonly (readonly [strip: Box, level: boolean])[] = [
    [{ ...box, height: depth }, true],
    [{ ...box, y: bottom(box) - depth, height: depth }, true],
    [{ ...box, width: depth }, false],
    [{ ...box, x: right(box) - depth, width: depth }, false],
  ];
  const open = sides.filter(([strip, level]) => !ruled(strip, level));
  const isFilled = ([strip, level]: (typeof sides)[number]): boolean => ink !== undefined && filled(strip, level, ink);
  const [first, second, ...more] = open;
  if (!first) return true;
  // Two sides that are no lines at most: four would be a black picture.
  if (more.length > 0) return false;
  if (!second) return parted(...first) || isFilled(first);
  return (isFilled(first) || isFilled(second)) && ink !== undefined && open.every(([strip, level]) => isToned(strip, level, box, ink));
}

/** Whether all along a side of a box its inside is darker than the paper beyond it: a tinted strip up to the edge hides a line as well as a black one. */
function isToned(strip: Box, level: boolean, box: Box, { data, width, height, pixelsPerPt: k, origin }: GreyRaster): boolean {
  const middle = level ? strip.y + strip.height / 2 : strip.x + strip.width / 2;
  const isFirst = level ? middle < box.y + box.height / 2 : middle < box.x + box.width / 2;
  const edge = level ? (isFirst ? box.y : bottom(box)) : isFirst ? box.x : right(box);
  const away = (pt: number): number => Math.round((edge + (isFirst ? -pt : pt) - (level ? origin.y : origin.x)) * k);
  const outside = away(BEYOND_EDGE);
  const inside = INSIDE_EDGE.map((pt) => away(-pt));
  const start = Math.max(0, Math.round(((level ? box.x - origin.x : box.y - origin.y) + BEYOND_EDGE) * k));
  const end = Math.min(level ? width : height, Math.round(((level ? right(box) - origin.x : bottom(box) - origin.y) - BEYOND_EDGE) * k));
  const greyAt = (across: number, along: number): number =>
    across < 0 || across >= (level ? height : width) ? 255 : (data[level ? across * width + along : along * width + across] as number);
  let darker = 0;
  for (let along = start; along < end; along++)
    if (inside.some((across) => greyAt(across, along) <= greyAt(outside, along) - TONE)) darker += 1;
  return end > start && darker >= CLOSED * (end - start);
}

/** So far (pt) outside and inside an edge its two tones are looked at, and they differ by so many steps of grey. */
const BEYOND_EDGE = 3;
const INSIDE_EDGE = [0.5, 1, 2, 3];
const TONE = 16;

/** Whether a row (or a column) of ink runs along a strip from end to end. */
function filled(strip: Box, level: boolean, { data, width, height, pixelsPerPt: k, origin }: GreyRaster): boolean {
  const x0 = Math.max(0, Math.round((strip.x - origin.x) * k));
  const y0 = Math.max(0, Math.round((strip.y - origin.y) * k));
  const x1 = Math.min(width, Math.round((right(strip) - origin.x) * k));
  const y1 = Math.min(height, Math.round((bottom(strip) - origin.y) * k));
  const [from, to, along] = level ? [y0, y1, x1 - x0] : [x0, x1, y1 - y0];
  for (let line = from; line < to; line++) {
    let dark = 0;
    for (let i = 0; i < along; i++) if ((data[level ? line * width + x0 + i : (y0 + i) * width + line] as number) < INK_LEVEL) dark += 1;
    if (along > 0 && dark >= CLOSED * along) return true;
  }
  return false;
}

function covered(spans: [number, number][]): number {
  let sum = 0;
  let end = -Infinity;
  for (const [from, to] of spans.sort((a, b) => a[0] - b[0])) {
    if (to <= end) continue;
    sum += to - Math.max(from, end);
    end = to;
  }
  return sum;
}
