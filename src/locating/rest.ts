import { centre, contains, intersection, union, type Box } from '../geometry/box.js';
import { codeLikeAreas } from '../reading/code-like.js';
import type { SourcePage } from '../reading/source.js';
import type { Phrase } from '../reading/word-lines.js';
import { closedUnits } from './closed-units.js';
import { itemRows } from './item-rows.js';
import { said, saidIn, type SaidName } from './kind-of-words.js';
import { pageDividers } from './page-dividers.js';
import { pageReturn } from './titled-return.js';
import { BESIDE, sideOf } from './slip-beside.js';
import { folded } from './vocabulary.js';

/** What a page has beside its labels. */
export interface Rest {
  /** What it calls itself; undefined when it doesn't, or there is nothing. */
  readonly name: SaidName | undefined;
  /** Its words, where it says that the label is a return label. */
  readonly returns: string | undefined;
  /** How many different words of a label stand there, where nothing says that it is something else. */
  readonly labelWords: number;
  /** Rows of a table of items there; 0 where there is none, or something with a code of its own that doesn't call itself a bill. */
  readonly items: number;
  /** One rectangle with all of its ink and nothing of a label, pt; undefined when there is none or no such rectangle. */
  readonly box: Box | undefined;
  /** Whether something is left outside `box` that is not of the slip or form there. */
  readonly others: boolean;
}

/** What may go along with a label. */
const PAPERS: readonly SaidName['kind'][] = ['packing-slip', 'customs-form', 'invoice'];

/** Whether what stands beside a label is its packing slip: it says so, or it is a table of items, called a bill or nothing at all. */
export const isSlip = ({ name, items, box }: Rest): boolean =>
  name?.kind === 'packing-slip' || (items > 0 && box !== undefined && (name === undefined || name.kind === 'invoice'));

/** Looks at everything on a page outside `labels`. */
export function restOf(page: SourcePage, labels: readonly Box[], blobs: readonly Box[], phrases: readonly Phrase[]): Rest {
  const outside = (box: Box): boolean => labels.every((label) => !contains(label, { ...centre(box), width: 0, height: 0 }));
  const dividers = pageDividers(page);
  const ink = blobs.filter((blob) => outside(blob) && !dividers.some((line) => contains(line, blob, 4)));
  const beside = phrases.filter((phrase) => outside(phrase.box));
  const { names, labelWords } = said(beside);
  const paper = names.find(({ kind }) => PAPERS.includes(kind));
  const rows = itemRows(beside);
  const whole = besideLabels(ink, labels);
  const [label, ...more] = labels;
  const heading = paper && beside.find(({ text }) => folded(text).includes(paper.words));
  const anchors = [...(heading ? [heading.box] : []), ...(rows ? [rows.box] : [])];
  const around = label && more.length === 0 ? { page, label, ink, phrases: beside, units: closedUnits(page, blobs) } : undefined;
  const side = whole ? undefined : around && sideOf(around, anchors);
  const box = whole ?? side;
  const name = (side ? saidIn(beside, side).names : names).find(({ kind }) => kind !== 'return-label');
  const hasCode = box !== undefined && codeLikeAreas(page).some((code) => intersection(code.box, box) !== undefined);
  return {
    name,
    labelWords: name ? 0 : labelWords,
    returns: pageReturn(labels, beside, names, rows?.box),
    items: rows && (name !== undefined || !hasCode) ? rows.count : 0,
    box,
    others: side !== undefined,
  };
}

function besideLabels(ink: readonly Box[], labels: readonly Box[]): Box | undefined {
  const box = union(ink);
  if (!box) return undefined;
  const isBeside = (label: Box): boolean => {
    const shared = intersection(label, box);
    return !shared || Math.min(shared.width, shared.height) <= BESIDE;
  };
  return labels.every(isBeside) ? box : undefined;
}
