import { contains, intersection, union, type Box } from '../geometry/box.js';
import { mmToPt } from '../geometry/length.js';
import { ON_LINE, placeOnLine } from '../reading/place-on-line.js';
import type { SourcePage } from '../reading/source.js';
import { phrasesOf, type Phrase } from '../reading/word-lines.js';
import type { Judged } from './candidate.js';
import { isWholeLabel } from './label-sizes.js';
import { mostTurn } from './most-turn.js';
import { countsPage, isPagesLine, isSentence } from './speaks-to-reader.js';

/**
 * Writing outside a label without an edge that stands as its own does and otherwise than most of what is around it, or is a single line that is turned, on the way along the label: it is likely the
 * label's. Undefined where there is none. Pt.
 * @param others the page's other labels
 */
export function writingBeside(label: Judged, page: SourcePage, others: readonly Box[]): Box | undefined {
  if (label.edge !== 'ink') return undefined;
  const phrases = phrasesOf(page.words());
  const own = mostTurn(phrases.filter(({ box }) => contains(label.box, box, 2)));
  const around = phrases.filter(({ box }) => ![label.box, ...others].some((each) => intersection(each, box)));
  if (own === undefined || (mostTurn(around) === own && (own === 0 || around.length > 1))) return undefined;
  const { x, y, width, height } = label.box;
  const bands = [
    { x: 0, y, width: page.width, height },
    { x, y: 0, width, height: page.height },
  ];
  return union(around.flatMap(({ box, turn }) => (turn === own && bands.some((band) => contains(band, box, 2)) ? [box] : [])));
}

/**
 * A line alone in the column of a label without an edge, below its foot, that isn't written as pages write: it may be the label's last. Undefined where there is none. Pt.
 * @param blobs ink that isn't the page's own
 */
export function lineBelow(label: Judged, page: SourcePage, blobs: readonly Box[]): Box | undefined {
  if (label.edge !== 'ink' || isWholeLabel(label)) return undefined;
  const { box } = label;
  const phrases = phrasesOf(page.words());
  const turn = mostTurn(phrases.filter((phrase) => contains(box, phrase.box, 2)));
  if (turn === undefined) return undefined;
  const own = placeOnLine(box, turn);
  const below = phrases.flatMap((phrase): readonly { phrase: Phrase; white: number }[] => {
    const { from, to, top } = placeOnLine(phrase.box, turn);
    const white = top - own.foot;
    const isIn = phrase.turn === turn && white > 0 && white < BELOW + FOLLOWS && from > own.from - ASIDE && to < own.to + ASIDE;
    return isIn && blobs.some((blob) => intersection(blob, phrase.box)) ? [{ phrase, white }] : [];
  });
  const nearest = Math.min(...below.map(({ white }) => white));
  const line = below.filter(({ white }) => white - nearest < ON_LINE);
  const isPages = ({ phrase: { text } }: (typeof line)[number]): boolean => isPagesLine(text) || isSentence(text) || countsPage(text);
  if (nearest > BELOW || below.length > line.length || line.some(isPages)) return undefined;
  return union(line.map(({ phrase }) => phrase.box));
}
/** The last line of a label stands this far below the rest at most where that fills no known size, and nothing follows it for so long, pt (22 and 14 mm; common practice, no source). */
const BELOW = mmToPt(22);
const FOLLOWS = mmToPt(14);
/** What is in a column keeps to it to this much, pt. */
const ASIDE = 4;
