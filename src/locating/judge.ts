import { area, bottom, contains, grow, right, sameSize, type Box } from '../geometry/box.js';
import { formatSize, mmToPt, ptToMm } from '../geometry/length.js';
import type { CodeLikeArea } from '../reading/code-like.js';
import type { Word } from '../reading/source.js';
import type { Candidate, Judged } from './candidate.js';
import { fillsHalf, fillsPaper, isLabelSized, isWholeFrame, nearestSize, nearestSizeOfInk } from './label-sizes.js';

/** What the parts of the score weigh; together 1. */
const WEIGHT = { size: 0.35, gutter: 0.25, edge: 0.2, direction: 0.2 };
/** Ink alone shows an edge but vaguely; rules from side to side show two of four, and so do labels of one sheet each other's. */
const [LOOSE, SHOWN] = [0.6, 0.8];
/** Labels of one sheet are so likely to have a size, whatever it is: they share it. Small ones are told by their addresses instead. */
const ALIKE = 0.85;
/** White around a label beyond this (pt, 8 mm) makes it no surer. */
const AMPLE = mmToPt(8);
/** Where a matrix code takes more than this share of it, there is no room for an address. */
const ALL_CODE = 0.6;
/** A code outside, this near (pt, 12 mm), is likelier the label's own than another's. */
const NEAR_CODE = mmToPt(12);
/** Boxes of one label stand no farther from each other, pt (4 mm). */
const APART = mmToPt(4);

export interface Surroundings {
  readonly blobs: readonly Box[];
  readonly codes: readonly CodeLikeArea[];
  readonly words: readonly Word[];
  /** Frames and pictures as large as labels: a code inside one is its own, however near to what is beside it. */
  readonly owners?: readonly Box[];
  /** Ink as large as labels: one of the same size beside a candidate is another label of the sheet, and has its own codes. */
  readonly inks?: readonly Box[];
  /** Frames of any size: what stands in one a little way off is not of a label that has its own edges. */
  readonly frames?: readonly Box[];
  /** Whether the page speaks to its reader: that is none of the blobs. */
  readonly speaks?: boolean;
  /** The page's own size, where a label may fill it. */
  readonly paper?: Pick<Box, 'width' | 'height'>;
}

/** Judges one candidate by its size, the white around it, its kind of edge and the direction of its words; undefined when it can't be a label at all. */
export function judge(candidate: Candidate, around: Surroundings): Judged | undefined {
  const { box, edge, codes } = candidate;
  // A page of the media's own size is what it is; whether a label must have a code is for split-pages and verify to say.
  const { paper } = around;
  const halving = edge === 'frame' && paper !== undefined && fillsHalf(box, paper);
  const filling = halving || ((edge === 'frame' || edge === 'ink') && paper !== undefined && fillsPaper(box, paper));
  if (edge !== 'page' && (codes.length === 0 || !(isLabelSized(box) || filling || candidate.small))) return undefined;

  if (codes.some((code) => code.kind === 'matrix' && area(code.box) > ALL_CODE * area(box))) return undefined;

  const likeness = filling ? 1 : (edge === 'ink' ? nearestSizeOfInk(box.width, box.height) : nearestSize(box.width, box.height)).likeness;
  const size = candidate.alike || candidate.small ? Math.max(likeness, ALIKE) : likeness;
  const clear = edge === 'page' ? undefined : clearSpace(box, around.blobs);
  const gutter = clear?.space ?? AMPLE;
  const direction = uniformity(box, around.words);
  const owners = (around.owners ?? []).filter((owner) => distance(owner, box) > 0);
  const frames = edge === 'ink' ? [] : (around.frames ?? []).filter((frame) => distance(frame, box) > APART);
  const twins = edge === 'ink' ? (around.inks ?? []).filter((ink) => distance(ink, box) > 0 && sameSize(ink, box, ONE_SIZE)) : [];
  const isOwned = (code: CodeLikeArea): boolean =>
    twins.some((twin) => contains(twin, code.box, 6)) ||
    owners.some((owner) => contains(owner, code.box, 6)) ||
    frames.some((frame) => contains(frame, code.box, 2));
  const isAside = ({ box: code }: CodeLikeArea): boolean =>
    candidate.ruled === 'level'
      ? code.x >= right(box) || right(code) <= box.x
      : candidate.ruled === 'upright' && (code.y >= bottom(box) || bottom(code) <= box.y);
  const isAdverts = ({ kind }: CodeLikeArea): boolean => kind === 'matrix' && isWholeFrame(candidate);
  const strays = around.codes.filter(
    (code) => !contains(box, code.box, 6) && distance(box, code.box) < NEAR_CODE && !isOwned(code) && !isAside(code) && !isAdverts(code),
  );
  const score =
    WEIGHT.size * size +
    WEIGHT.gutter * Math.min(1, Math.max(0, gutter) / AMPLE) +
    WEIGHT.edge * (edge === 'ink' ? (candidate.ruled || candidate.alike ? SHOWN : LOOSE) : 1) +
    WEIGHT.direction * direction -
    0.25 * Math.min(1, strays.length);
  const nothing = around.speaks ? 'nothing else on the page but what it says to its reader' : 'nothing else on the page';
  const evidence = [
    `${EDGE_WORDS[edge]} ${formatSize(box.width, box.height)} around ${codes.length} code${codes.length === 1 ? '' : 's'}`,
    edge === 'page' ? 'the page has the size of the media' : clearWords(clear, nothing),
    ...(candidate.ruled ? ['rules from side to side'] : []),
    ...(candidate.alike ? [`one of ${candidate.alike.toFixed(0)} places alike, and ${nothing}`] : []),
    ...(filling ? [`it fills ${halving ? 'half of its page' : 'its page'}, as labels on A5 do`] : []),
    ...(strays.length > 0 ? ['a code just outside it'] : []),
  ];
  return { ...candidate, score, evidence, ...(clear ? { clear: clear.space } : {}), ...(filling ? { fillsPaper: true } : {}) };
}

/** Labels of one sheet differ in size by no more than this, pt (1 mm). */
export const ONE_SIZE = mmToPt(1);

const EDGE_WORDS = { page: 'page', frame: 'frame', picture: 'picture', ink: 'ink' } as const;

interface Clear {
  /** Pt; negative when ink crosses the edge. */
  readonly space: number;
  readonly side: Side;
}

type Side = 'below' | 'above' | 'on its right' | 'on its left';

/** The way from a box to the nearest ink outside it; undefined when there is none. */
function clearSpace(box: Box, blobs: readonly Box[]): Clear | undefined {
  let nearest: Clear | undefined;
  for (const blob of blobs) {
    if (contains(grow(box, 1.5), blob) || contains(blob, box)) continue;
    const space = distance(box, blob);
    if (space < (nearest?.space ?? Infinity)) nearest = { space, side: sideOf(box, blob) };
  }
  return nearest;
}

function sideOf(box: Box, blob: Box): Side {
  const gaps: [number, Side][] = [
    [blob.y - bottom(box), 'below'],
    [box.y - bottom(blob), 'above'],
    [blob.x - right(box), 'on its right'],
    [box.x - right(blob), 'on its left'],
  ];
  return gaps.reduce((widest, each) => (each[0] > widest[0] ? each : widest))[1];
}

function clearWords(clear: Clear | undefined, nothing: string): string {
  if (!clear) return nothing;
  if (clear.space < 0) return 'other ink crosses its edge';
  return `clear space of ${ptToMm(clear.space).toFixed(0)} mm to what is ${clear.side}`;
}

/** Gap between two boxes, pt; negative when they overlap. */
export function distance(a: Box, b: Box): number {
  const dx = Math.max(a.x - right(b), b.x - right(a));
  const dy = Math.max(a.y - bottom(b), b.y - bottom(a));
  return Math.max(dx, dy);
}

/** Share of the writing in a box that runs the same way; 0.8 where there is no text layer to tell. */
function uniformity(box: Box, words: readonly Word[]): number {
  const byTurn = new Map<number | undefined, number>();
  let all = 0;
  for (const word of words) {
    if (!contains(box, word.box, 2)) continue;
    byTurn.set(word.turn, (byTurn.get(word.turn) ?? 0) + word.text.length);
    all += word.text.length;
  }
  return all < 10 ? 0.8 : Math.max(...byTurn.values()) / all;
}
