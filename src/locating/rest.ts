import { bottom, centre, contains, grow, intersection, right, union, type Box } from '../geometry/box.js';
import type { SourcePage } from '../reading/source.js';
import type { Phrase } from '../reading/word-lines.js';
import { pageDividers } from './page-dividers.js';
import { said, type SaidName } from './kind-of-words.js';
import { folded } from './vocabulary.js';

/** What a page has beside its labels. */
export interface Rest {
  /** What it calls itself; undefined when it doesn't, or there is nothing. */
  readonly name: SaidName | undefined;
  /** Its words, where it says that the label is a return label. */
  readonly returns: string | undefined;
  /** How many different words of a label stand there, where nothing says that it is something else. */
  readonly labelWords: number;
  /** One rectangle with all of its ink and nothing of a label, pt; undefined when there is none or no such rectangle. */
  readonly box: Box | undefined;
}

/** Ink that reaches this far into a label's box (pt) still lies beside it. */
const BESIDE = 3;

/** Looks at everything on a page outside `labels`. */
export function restOf(page: SourcePage, labels: readonly Box[], blobs: readonly Box[], phrases: readonly Phrase[]): Rest {
  const outside = (box: Box): boolean => labels.every((label) => !contains(label, { ...centre(box), width: 0, height: 0 }));
  const dividers = pageDividers(page);
  const ink = blobs.filter((blob) => outside(blob) && !dividers.some((line) => contains(line, blob, 4)));
  const beside = phrases.filter((phrase) => outside(phrase.box));
  const { names, labelWords } = said(beside);
  const name = names.find(({ kind }) => kind !== 'return-label');
  return {
    name,
    labelWords: name ? 0 : labelWords,
    returns: names.find(({ kind }) => kind === 'return-label')?.words,
    box: besideLabels(ink, labels) ?? (name && sideOf(page, labels, ink, beside, name)),
  };
}

/** The ink on that side of the only label where the name stands, when at most a shop's name, one phrase without a digit, is written elsewhere. */
function sideOf(
  page: SourcePage,
  labels: readonly Box[],
  ink: readonly Box[],
  phrases: readonly Phrase[],
  name: SaidName,
): Box | undefined {
  const [label] = labels;
  const heading = phrases.find(({ text }) => folded(text).includes(name.words));
  if (!label || labels.length > 1 || !heading) return undefined;
  const sides: readonly Box[] = [
    { x: 0, y: bottom(label), width: page.width, height: page.height - bottom(label) },
    { x: 0, y: 0, width: page.width, height: label.y },
    { x: right(label), y: 0, width: page.width - right(label), height: page.height },
    { x: 0, y: 0, width: label.x, height: page.height },
  ];
  const side = sides.find((each) => contains(each, heading.box, BESIDE));
  if (!side) return undefined;
  const elsewhere = phrases.filter((phrase) => !contains(side, phrase.box, BESIDE));
  if (elsewhere.length > 1 || elsewhere.some(({ text }) => /\d/.test(text))) return undefined;
  const [shop] = elsewhere;
  const isShop = (blob: Box): boolean => shop !== undefined && contains(grow(shop.box, LOGO), blob);
  if (ink.some((blob) => !contains(side, blob, BESIDE) && !isShop(blob))) return undefined;
  return union(ink.filter((blob) => contains(side, blob, BESIDE)));
}

/** A shop's sign stands at most this far from its name, pt. */
const LOGO = 40;

function besideLabels(ink: readonly Box[], labels: readonly Box[]): Box | undefined {
  const box = union(ink);
  if (!box) return undefined;
  const isBeside = (label: Box): boolean => {
    const shared = intersection(label, box);
    return !shared || Math.min(shared.width, shared.height) <= BESIDE;
  };
  return labels.every(isBeside) ? box : undefined;
}
