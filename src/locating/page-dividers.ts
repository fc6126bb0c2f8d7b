import { bottom, centre, contains, near, right, union, type Box } from '../geometry/box.js';
import { mmToPt } from '../geometry/length.js';
import { sum } from '../geometry/sum.js';
import { framesOf, linesOf } from '../reading/frames.js';
import { paleLines } from '../reading/pale-lines.js';
import type { RuledLine } from '../reading/ruled.js';
import type { SourcePage } from '../reading/source.js';
import { inkBlobs } from './ink-blobs.js';
import { isSmallPaper } from './label-sizes.js';
import { runningLines } from './running-lines.js';
import { titleDividers } from './title-dividers.js';

/** A page with a side shorter than this (pt) is a label's own paper. */
const LARGER = mmToPt(140);
/** On one with a side longer than this (pt, 165 mm) a dashed line across parts a label from what is to be torn off. */
const LONGER = mmToPt(165);
/** A rule from edge to edge divides a page; this near (pt) to both edges. */
const EDGE_TO_EDGE = mmToPt(12);
/** A dashed line is one to cut or fold along when it goes this share of the way across the page … */
const ACROSS = 0.8;
/** … and so much of it is drawn: words may stand in it. */
const DRAWN = 0.6;
/** Parts of one line lie on it to this much (pt); so do scissors and words, which are no higher (pt) and end no farther beyond it. */
const ON_LINE = 3;
/** Words that touch it stand on it, their middle no farther off than this, pt. */
const TOUCHING = 7;
const SIGN = { high: 24, beyond: 30 };

/** A line reaches the paper's edge to this much, pt (2 mm). */
const AT_EDGE = mmToPt(2);

const cache = new WeakMap<SourcePage, readonly Box[]>();

/**
 * The rules that divide a page larger than any label: cut and fold lines from edge to edge, or dashed and nearly so, with the scissors and the words
 * that stand in them (a frame's own lines are none, however far they reach), and those where a tab is torn off long label paper; and the lines that a
 * browser prints at its head and foot. Pt. Each page is looked at once.
 */
export function pageDividers(page: SourcePage): readonly Box[] {
  let dividers = cache.get(page);
  if (!dividers) cache.set(page, (dividers = findDividers(page)));
  return dividers;
}

function findDividers(page: SourcePage): readonly Box[] {
  const isLabelPaper = Math.min(page.width, page.height) < LARGER;
  if (isLabelPaper && Math.max(page.width, page.height) < LONGER) return [];
  const frames = framesOf(page).filter(({ dashed }) => !dashed);
  const isFrames = ({ box, dashed }: RuledLine): boolean => !dashed && frames.some((frame) => contains(frame.box, box, 2));
  const lines = linesOf(page).filter((line) => (isLabelPaper ? line.dashed && line.level === page.height > page.width : !isFrames(line)));
  const isWhole = ({ box, level }: RuledLine): boolean =>
    level
      ? box.x <= EDGE_TO_EDGE && right(box) >= page.width - EDGE_TO_EDGE
      : box.y <= EDGE_TO_EDGE && bottom(box) >= page.height - EDGE_TO_EDGE;
  const whole = withoutOwnRules(lines.filter(isWhole), linesOf(page), page);
  const stepped = page.skew === 0 ? [] : joined(lines.filter((line) => !line.dashed && !whole.includes(line))).filter(isWhole);
  const dashed = [true, false].flatMap((level) =>
    inLine(lines.filter((line) => line.dashed && line.level === level && !whole.includes(line))).flatMap((parts) => {
      const box = union(parts.map((part) => part.box));
      const length = ({ width, height }: Box): number => (level ? width : height);
      const drawn = sum(parts.map((part) => length(part.box)));
      return box && length(box) >= ACROSS * (level ? page.width : page.height) && drawn >= DRAWN * length(box) ? [{ box, level }] : [];
    }),
  );
  const seen = [...linesOf(page), ...stepped, ...dashed];
  const pale = (isLabelPaper ? [] : paleLines(page.ink())).filter(
    (line) => isWhole(line) && !seen.some(({ box, level }) => level === line.level && near(box, line.box, ON_LINE)),
  );
  return [
    ...[...whole, ...stepped, ...dashed, ...pale].map(({ box, level }) => withSigns(box, level, page)),
    ...runningLines(page),
    ...(isLabelPaper || isSmallPaper(page) ? [] : titleDividers(page)),
  ];
}

/**
 * Labels as wide as their page have rules from edge to edge of their own: where a line to cut along or one that reaches the paper's edges divides the page, or the page is no
 * larger than A5, those that end together a little way off the edges divide nothing.
 */
function withoutOwnRules(whole: readonly RuledLine[], lines: readonly RuledLine[], page: SourcePage): readonly RuledLine[] {
  const ends = ({ box, level }: RuledLine): readonly [number, number] =>
    level ? [box.x, page.width - right(box)] : [box.y, page.height - bottom(box)];
  const isAtEdges = (line: RuledLine): boolean => ends(line).every((end) => end <= AT_EDGE);
  const parts = lines.filter((line) => isAtEdges(line) || (line.dashed && whole.includes(line)));
  const isAlike = (a: RuledLine, b: RuledLine): boolean =>
    a.level === b.level && ends(a).every((end, at) => Math.abs(end - (ends(b)[at] ?? NaN)) <= ON_LINE);
  const isOwn = (line: RuledLine): boolean =>
    !line.dashed &&
    !isAtEdges(line) &&
    (isSmallPaper(page) || parts.some(({ level }) => level === line.level)) &&
    whole.some((other) => other !== line && !other.dashed && isAlike(line, other));
  return whole.filter((line) => !isOwn(line));
}

/** On a page that was straightened a rule may still go down by a row of pixels here and there: the parts of one that overlap along it as one. */
function joined(lines: readonly RuledLine[]): readonly RuledLine[] {
  return [true, false].flatMap((level) =>
    inLine(lines.filter((line) => line.level === level)).flatMap((parts) => {
      const start = ({ box }: RuledLine): number => (level ? box.x : box.y);
      const end = ({ box }: RuledLine): number => (level ? right(box) : bottom(box));
      const runs: RuledLine[] = [];
      for (const part of [...parts].sort((a, b) => start(a) - start(b))) {
        const run = runs.at(-1);
        const box = run && start(part) <= end(run) ? union([run.box, part.box]) : undefined;
        if (run && box) runs[runs.length - 1] = { ...run, box };
        else runs.push(part);
      }
      return runs;
    }),
  );
}

/** Lines of one direction by the line that they lie on. */
function inLine(lines: readonly RuledLine[]): readonly (readonly RuledLine[])[] {
  const groups: RuledLine[][] = [];
  const place = ({ box, level }: RuledLine): number => (level ? centre(box).y : centre(box).x);
  for (const line of [...lines].sort((a, b) => place(a) - place(b))) {
    const group = groups.at(-1);
    if (group?.[0] && place(line) - place(group[0]) <= ON_LINE) group.push(line);
    else groups.push([line]);
  }
  return groups;
}

function withSigns(line: Box, level: boolean, page: SourcePage): Box {
  const reach = level
    ? { x: line.x - SIGN.beyond, y: line.y - SIGN.high / 2, width: line.width + 2 * SIGN.beyond, height: line.height + SIGN.high }
    : { x: line.x - SIGN.high / 2, y: line.y - SIGN.beyond, width: line.width + SIGN.high, height: line.height + 2 * SIGN.beyond };
  const off = (blob: Box): number => (level ? centre(blob).y - centre(line).y : centre(blob).x - centre(line).x);
  const isOnIt = (blob: Box): boolean => Math.abs(off(blob)) <= (near(blob, line, 0) ? TOUCHING : ON_LINE);
  const signs = inkBlobs(page.ink()).filter((blob) => contains(reach, blob) && isOnIt(blob));
  return union([line, ...signs]) ?? line;
}
