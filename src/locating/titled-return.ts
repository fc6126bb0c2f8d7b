import { intersection, type Box } from '../geometry/box.js';
import { mmToPt } from '../geometry/length.js';
import { placeOnLine } from '../reading/place-on-line.js';
import type { Phrase } from '../reading/word-lines.js';
import { distance } from './judge.js';
import { said, type SaidName } from './kind-of-words.js';
import { beginsAsReturn, isOnlyReturn, isReturnTitle } from './return-title.js';
import { folded } from './vocabulary.js';

/** A title of a label stands at most this far from it, pt (12 mm) … */
const TITLE = mmToPt(12);
/** … and this many times as far from any other. */
const NEARER = 2;
/** Names of papers that may have a section about sending things back. */
const PAPERS: readonly SaidName['kind'][] = ['packing-slip', 'invoice', 'customs-form', 'receipt', 'instructions'];

/**
 * The words by which a page calls its label a return label: close to it, or further off as the title of the page. A section of a slip, below the slip's title or below
 * its items, says nothing about the label.
 * @param beside what is written outside the labels
 * @param names what `said` reads off it
 * @param items around the rows of items there, pt
 */
export function pageReturn(
  labels: readonly Box[],
  beside: readonly Phrase[],
  names: readonly SaidName[],
  items: Box | undefined,
): string | undefined {
  const name = names.find(({ kind }) => kind === 'return-label');
  const title = name && placed(name, beside);
  if (!title) return undefined;
  if (labels.some((label) => distance(title.box, label) <= TITLE)) return name.words;
  const isAbove = (box: Box): boolean => placeOnLine(box, title.turn).middle < placeOnLine(title.box, title.turn).middle;
  const isSection = names.some((other) => {
    const paper = PAPERS.includes(other.kind) ? placed(other, beside) : undefined;
    return paper !== undefined && (isAbove(paper.box) || paper.fontSize > title.fontSize);
  });
  return isSection || (items && isAbove(items)) ? undefined : name.words;
}

/** The line that gave a name: of those that hold it the largest. */
function placed({ kind, words, heading }: SaidName, phrases: readonly Phrase[]): Phrase | undefined {
  return phrases
    .filter(({ text }) => folded(text).includes(words) && (kind !== 'return-label' || isReturnTitle(words, text, heading)))
    .sort((a, b) => b.fontSize - a.fontSize)[0];
}

/** What the title of one of several labels calls it: the words of a return label that stand close to it and to no other. */
export function titledReturn(label: Box, others: readonly Box[], phrases: readonly Phrase[]): string | undefined {
  const titles = phrases.filter(
    ({ box }) =>
      intersection(box, label) === undefined &&
      distance(box, label) <= TITLE &&
      others.every((other) => intersection(box, other) === undefined),
  );
  const own = titles.filter(({ box }) => others.every((other) => distance(box, other) >= NEARER * Math.max(1, distance(box, label))));
  const named = own.flatMap((title) => said([title]).names).find(({ kind }) => kind === 'return-label');
  return named?.words ?? own.map(({ text }) => text).find((text) => isOnlyReturn(text) || beginsAsReturn(text));
}
