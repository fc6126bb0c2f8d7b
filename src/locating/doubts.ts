import { bottom, contains, grow, intersection, near, right, sameSize, union, type Box } from '../geometry/box.js';
import { mmToPt } from '../geometry/length.js';
import { linesOf } from '../reading/frames.js';
import type { Code } from '../reading/source.js';
import { severalAnswers, sizeOf, type Judged } from './candidate.js';
import { sameBox, type Chosen } from './choose.js';
import { goesOnWith, type Beside } from './filled-out.js';
import { HAIR } from './gather.js';
import { distance } from './judge.js';
import { isKnownSize, isLargerThanMost, isWholeLabel } from './label-sizes.js';
import { lineBelow, writingBeside } from './line-outside.js';
import { lonePart, type Part } from './lone-part.js';
import { pageDividers } from './page-dividers.js';
import { isTrackingLike } from './strength.js';

/** A part of a page that may be a label, and what isn't sure about it. */
export interface Doubt {
  readonly why: string;
  /** What may be the label, best first; at least one. */
  readonly answers: readonly Judged[];
}

/** A candidate with what speaks for it. */
export interface Weighed<T extends Judged = Judged> {
  readonly label: Chosen<T>;
  /** Points of `strengthOf`. */
  readonly strength: number;
  /** Undefined where they were not read. */
  readonly codes: readonly Code[] | undefined;
}

/** Ink that reaches this far across an edge (pt) is no grain of a scan. */
const CROSSED = 2;
/** Scissors on a line to cut along are no longer, pt (8 mm; common practice, no source). */
const SCISSORS = mmToPt(8);
/** A label is told from a doubtful one beside it by this much white, pt (3 mm). */
const APART = mmToPt(3);
/** Two boxes are of one size when their sides differ by less than this, pt (1 mm). */
const ALIKE = mmToPt(1);
/** Points from which a label beside a doubtful one is sure. */
const SURE = 3;
/** … and how far it must be ahead of any other answer for the same place. */
const AHEAD = 0.08;

/** What is found on a page that may be labels. */
export interface Likely {
  /** What is a label as far as it goes by itself. */
  readonly labels: readonly Judged[];
  /** Other answers, too near to a label to be told apart. */
  readonly rivals: readonly Judged[];
  /** What has something of a label, but too little. */
  readonly unsure: readonly Judged[];
  /** The one among the labels that is weaker and of another size than the best. */
  readonly unlike: Judged | undefined;
  /** What has the number of one of the labels, and sender and receiver as it has. */
  readonly twice: readonly Judged[];
  /** Those among the labels that no word can be read on, but boxes to tick are. */
  readonly ticked: readonly Judged[];
  /** Those among them that may be two. */
  readonly several: readonly Judged[];
}

/** Everything that isn't sure about a page, each place of it once; none when all labels are sure. */
export function doubtsOf(
  { labels, rivals, unsure, unlike, twice, ticked, several }: Likely,
  around: Omit<Beside, 'units'>,
): readonly Doubt[] {
  const cut = labels.filter((label) => label.edge === 'ink' && goesOnWith(label, around, boxesBut(labels, label.box)).length > 0);
  const byRivals = labels.flatMap((label): readonly Doubt[] => {
    const answers = [label, ...rivals.filter((rival) => intersection(label.box, rival.box))];
    return answers.length > 1 ? [{ why: severalAnswers(answers), answers: answers.filter((each) => !cut.includes(each)) }] : [];
  });
  return merged([
    ...byRivals,
    ...ticked.map((each) => ({
      why: `the ${sizeOf(each)} has boxes to tick, as forms have, and no words that can be read`,
      answers: [each],
    })),
    ...several.map((each) => ({
      why: `the ${sizeOf(each)} may be more than one label: it has the numbers and addresses of two`,
      answers: [each],
    })),
    ...twice.map((each) => ({ why: `the ${sizeOf(each)} has sender and receiver and the number of the label beside it`, answers: [each] })),
    ...unsure.map((each) => ({ why: `the ${sizeOf(each)} beside the label may be one, too`, answers: [each] })),
    ...cut.map((label) => {
      const inkBeside = (box: Box): readonly Box[] => goesOnWith({ ...label, box }, around, boxesBut(labels, label.box));
      const whole = { ...label, box: goneOn(label.box, inkBeside, boxesBut(cut, label.box)) };
      // More than most labels have may be taken in: then what was found is offered, too.
      const isTooMuch = isLargerThanMost(whole.box) && !isLargerThanMost(label.box);
      return { why: `the ${sizeOf(label)} may go on: more ink stands in line with it`, answers: isTooMuch ? [whole, label] : [whole] };
    }),
    ...labels
      .filter((each) => isCrossed(each, around))
      .map((each) => ({ why: `other ink crosses the edge of the ${sizeOf(each)}`, answers: [each] })),
    ...labels
      .filter((each) => isCutOut(each, around.page))
      .map((each) => ({ why: `rules go through the ${sizeOf(each)} and on beyond it, as in a form`, answers: [each] })),
    ...labels.flatMap((label): readonly Doubt[] => {
      const turned = writingBeside(label, around.page, boxesBut(labels, label.box));
      const more = turned ?? lineBelow(label, around.page, around.blobs);
      if (!more) return [];
      const why = turned
        ? `writing turned as on the ${sizeOf(label)} stands beside it`
        : `a line below the ${sizeOf(label)} may be its last`;
      return [{ why, answers: [{ ...label, box: union([label.box, more]) ?? more }, label] }];
    }),
    ...labels.flatMap((label): readonly Doubt[] => {
      const [first, ...more] = loneParts(label, around);
      const answers = [first, ...more].flatMap((part) => (part ? [{ ...label, box: part.rest }] : []));
      return first ? [{ why: `the ${sizeOf(label)} ${first.why}`, answers: [label, ...answers] }] : [];
    }),
    ...(unlike && !cut.includes(unlike) ? [{ why: `the ${sizeOf(unlike)} is unlike the label beside it`, answers: [unlike] }] : []),
  ]);
}

/** What may be the page's at the edges of a label: at one, then at one of what is left, and so on. */
function loneParts(label: Judged, around: Omit<Beside, 'units'>): readonly Part[] {
  const part = lonePart(label, around.page, around.blobs);
  return part ? [part, ...loneParts({ ...label, box: part.rest }, around)] : [];
}

/** Whether ink reaches across an edge that isn't the page's. What touches a line to cut or fold is no part of a label. */
function isCrossed({ box, clear }: Judged, { page, blobs }: Omit<Beside, 'units'>): boolean {
  if (clear === undefined || clear > -CROSSED) return false;
  const dividers = pageDividers(page).map((line) => grow(line, CROSSED));
  const dashed = linesOf(page).filter((line) => line.dashed);
  /** Scissors on a dashed side, by themselves or with the frame that they touch. */
  const isScissors = (blob: Box): boolean =>
    (Math.max(blob.width, blob.height) <= SCISSORS || contains(grow(blob, CROSSED), box)) &&
    contains(grow(box, SCISSORS), blob) &&
    dashed.some((line) => near(line.box, blob, CROSSED) && !contains(box, grow(line.box, CROSSED)));
  return blobs.some(
    (blob) =>
      distance(box, blob) < -CROSSED &&
      !contains(grow(box, CROSSED), blob) &&
      !contains(blob, box) &&
      !dividers.some((line) => intersection(line, blob)) &&
      !isScissors(blob),
  );
}

/** Whether two rules or more go through ink from side to side and on beyond both sides: a piece of something larger, whose own frame goes around it. */
function isCutOut({ edge, box }: Judged, page: Beside['page']): boolean {
  if (edge !== 'ink') return false;
  const through = linesOf(page).filter(({ box: line, level, dashed }) => {
    if (dashed) return false;
    const [from, to, at] = level ? [line.x, right(line), line.y] : [line.y, bottom(line), line.x];
    const [start, end, near, far] = level ? [box.x, right(box), box.y, bottom(box)] : [box.y, bottom(box), box.x, right(box)];
    return from < start - CROSSED && to > end + CROSSED && at > near + CROSSED && at < far - CROSSED;
  });
  return through.length >= 2;
}

const boxesBut = (labels: readonly Judged[], box: Box): readonly Box[] => labels.map((each) => each.box).filter((each) => each !== box);

/** A box with all ink that it may go on with, one piece after the other, but for what is nearer to another one that may go on. */
function goneOn(box: Box, inkBeside: (box: Box) => readonly Box[], others: readonly Box[]): Box {
  const own = inkBeside(box).filter((blob) => others.every((other) => distance(box, blob) <= distance(other, blob)));
  const grown = union([box, ...own.map((blob) => grow(blob, HAIR))]) ?? box;
  return grown.width > box.width || grown.height > box.height ? goneOn(grown, inkBeside, others) : box;
}

/** Doubts about one place as one: the first says why, and each answer stands there once. */
function merged(doubts: readonly Doubt[]): readonly Doubt[] {
  const apart: Doubt[] = [];
  for (const each of doubts) {
    const at = apart.findIndex(({ answers }) => answers.some((a) => each.answers.some((b) => intersection(a.box, b.box) !== undefined)));
    const known = apart[at];
    if (!known) apart.push(each);
    else {
      const more = each.answers.filter(({ box }) => !known.answers.some((other) => sameBox(other.box, box)));
      apart[at] = { ...known, answers: [...known.answers, ...more] };
    }
  }
  return apart;
}

/** What is a label by itself, but neither among the sure ones nor in doubt yet: too little shows that it ends where it seems to. */
export function leftOver(labels: readonly Judged[], sure: readonly Judged[], doubts: readonly Doubt[]): readonly Doubt[] {
  const known = [...sure, ...doubts.flatMap(({ answers }) => answers)];
  return labels
    .filter(({ box }) => !known.some((each) => intersection(each.box, box) !== undefined))
    .map((label) => ({ why: `the ${sizeOf(label)} is not sure, either, beside what is doubtful on the page`, answers: [label] }));
}

/**
 * The labels of a page that are sure whatever the doubtful parts of it are: a whole label each, with a number of its own, well ahead of any other answer,
 * apart from everything doubtful and no half of one label with it.
 * @param weighed all that may be a label
 * @param sure those among them that are one, if the page were theirs
 */
export function sureBeside<T extends Judged>(
  sure: readonly Weighed<T>[],
  weighed: readonly Weighed<T>[],
  doubts: readonly Doubt[],
): readonly Weighed<T>[] {
  const doubted = doubts.flatMap(({ answers }) => answers.map(({ box }) => box));
  const isFree = ({ label: { box } }: Weighed): boolean =>
    doubted.every((other) => {
      const both = union([box, other]);
      return !near(box, other, APART) && both !== undefined && !isKnownSize(both);
    });
  const free = sure.filter(
    (each) =>
      each.strength >= SURE &&
      each.label.score - (each.label.next?.score ?? 0) >= AHEAD &&
      hasOwnNumber(
        each,
        weighed.filter((other) => other !== each),
      ) &&
      isFree(each),
  );
  const whole = free.filter(({ label }) => isWholeLabel(label));
  return free.filter((each) => whole.includes(each) || whole.some((other) => sameSize(each.label.box, other.label.box, ALIKE)));
}

/** Whether a label has a number that may be a parcel's, and nothing beside it has the same. */
function hasOwnNumber({ codes }: Weighed, others: readonly Weighed[]): boolean {
  const numbers = (codes ?? []).filter(isTrackingLike).map(({ bytes }) => bytes);
  return numbers.length > 0 && !others.some((other) => other.codes?.some(({ bytes }) => numbers.includes(bytes)));
}
