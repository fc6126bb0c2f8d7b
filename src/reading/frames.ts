import { bottom, contains, intersection, right, union, type Box } from '../geometry/box.js';
import { codeLikeAreas } from './code-like.js';
import { ruledLines, type RuledLine } from './ruled.js';
import type { SourcePage } from './source.js';

/** A closed rectangle made of ruled lines; its inner rules belong to it. */
export interface Frame {
  /** Outer edge of the lines, pt, to about 0.25 mm. */
  readonly box: Box;
  readonly dashed: boolean;
}

/** Lines whose ends are this near (pt) meet. */
const MEET = 4;
/** Share of each side of a frame that must be ruled. */
const CLOSED = 0.88;

const cache = new WeakMap<SourcePage, readonly Frame[]>();

/** The frames of a page: outer ones only once each, nested ones apart where they don't touch. Each page is looked at once. */
export function framesOf(page: SourcePage): readonly Frame[] {
  let frames = cache.get(page);
  if (!frames) cache.set(page, (frames = findFrames(linesOf(page))));
  return frames;
}

const lineCache = new WeakMap<SourcePage, readonly RuledLine[]>();

/** Ruled lines of a page; the bars of codes are none. */
export function linesOf(page: SourcePage): readonly RuledLine[] {
  let lines = lineCache.get(page);
  if (!lines) {
    const codes = codeLikeAreas(page);
    lines = ruledLines(page.ink()).filter((line) => !codes.some((code) => contains(code.box, line.box, 6)));
    lineCache.set(page, lines);
  }
  return lines;
}

/** Groups lines that meet, and keeps the groups whose outer four sides are ruled. */
export function findFrames(lines: readonly RuledLine[]): readonly Frame[] {
  const frames: Frame[] = [];
  for (const group of meetingGroups(lines)) {
    const box = union(group.map((line) => line.box));
    if (!box || box.width < 36 || box.height < 36) continue;
    if (sidesRuled(box, group)) frames.push({ box, dashed: group.filter((line) => line.dashed).length > group.length / 2 });
  }
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
      if (j > i && touch(a.box, b.box)) groupOf[root(j)] = root(i);
    });
  });
  const groups = new Map<number, RuledLine[]>();
  lines.forEach((line, index) => {
    const key = root(index);
    groups.set(key, [...(groups.get(key) ?? []), line]);
  });
  return [...groups.values()];
}

const touch = (a: Box, b: Box): boolean =>
  a.x <= right(b) + MEET && b.x <= right(a) + MEET && a.y <= bottom(b) + MEET && b.y <= bottom(a) + MEET;

function sidesRuled(box: Box, group: readonly RuledLine[]): boolean {
  const side = (strip: Box, level: boolean): boolean => {
    const spans = group
      .filter((line) => line.level === level)
      .map((line) => intersection(line.box, strip))
      .filter((span) => span !== undefined)
      .map((span): [number, number] => (level ? [span.x, right(span)] : [span.y, bottom(span)]));
    return covered(spans) >= CLOSED * (level ? box.width : box.height);
  };
  const depth = MEET + 2;
  return (
    side({ ...box, height: depth }, true) &&
    side({ ...box, y: bottom(box) - depth, height: depth }, true) &&
    side({ ...box, width: depth }, false) &&
    side({ ...box, x: right(box) - depth, width: depth }, false)
  );
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
