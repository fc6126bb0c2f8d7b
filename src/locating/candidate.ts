import type { Box } from '../geometry/box.js';
import { formatSize } from '../geometry/length.js';
import type { CodeLikeArea } from '../reading/code-like.js';

/** What gives a candidate its edge. */
export const EDGES = ['page', 'frame', 'picture', 'ink'] as const;
export type Edge = (typeof EDGES)[number];

/** A box that may be a label, before it is judged. Pt on the visible page. */
export interface Candidate {
  readonly box: Box;
  readonly edge: Edge;
  /** What looks like a code inside it. */
  readonly codes: readonly CodeLikeArea[];
  /** Set where rules from side to side divide it, all of one length, and how they run: they show two of its sides, as a frame does. */
  readonly ruled?: 'level' | 'upright';
  /** Whether such rules are its first and its last ink, too. */
  readonly closed?: boolean;
  /** Set where it is one of so many labels of a sheet that holds nothing else: `alikePlaces`. */
  readonly alike?: number;
  /** Set where it is smaller than other labels, and one by what is written on it: `isSmallLabel`. */
  readonly small?: true;
}

/** A judged candidate. */
export interface Judged extends Candidate {
  /** 1: a known size, a real edge, alone on white, words one way; below 0 only for what is nothing like a label. */
  readonly score: number;
  /** One short phrase for each part of the score, for people. */
  readonly evidence: readonly string[];
  /** White up to the nearest other ink, pt; negative where ink crosses its edge, undefined where there is no other. */
  readonly clear?: number;
  /** Whether it is larger than other labels, and a label only as it fills its small paper, or half of a larger one. */
  readonly fillsPaper?: boolean;
}

/** An answer in words: "frame 6.00×4.00 in". */
export const sizeOf = ({ edge, box }: Candidate): string => `${edge} ${formatSize(box.width, box.height)}`;

/** Of answers that can't be told apart the first three. */
export const severalAnswers = (answers: readonly Candidate[]): string =>
  `more than one answer: ${answers.slice(0, 3).map(sizeOf).join(' or ')}`;
