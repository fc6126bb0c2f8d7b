import { contains, intersection, union, type Box } from '../geometry/box.js';
import { mmToPt } from '../geometry/length.js';
import { TURNS, type Turn } from '../geometry/placement.js';
import { placeOnLine } from '../reading/place-on-line.js';
import type { SourcePage } from '../reading/source.js';
import { phrasesOf, type Phrase } from '../reading/word-lines.js';
import { addressesIn } from './address-block.js';
import type { Judged } from './candidate.js';
import { HAIR } from './gather.js';
import { isKnownSize } from './label-sizes.js';
import { isPagesLine } from './speaks-to-reader.js';

/** What is written for the page stands farther from a label than this, pt (7 mm; common practice, no source) … */
const APART = mmToPt(7);
/** … and a head that may be the page's so many times as far as any parts of the rest from each other. */
const WIDER = 1.4;

/** Ink side by side, and where it begins and ends, pt, inwards from a side. */
interface Row {
  readonly blobs: readonly Box[];
  readonly from: number;
  readonly to: number;
}

/** A part at one side of a label, and what is left without it, pt. */
interface Part {
  readonly why: string;
  readonly rest: Box;
}

/**
 * What is at one side of a label without an edge, apart from the rest of it, and may be the page's: writing as pages have it, or a head that is clearly farther from the rest than any parts of the
 * rest are from each other, in a label that doesn't fill a known size with it. Undefined where nothing is, or has a code or (a head) an address.
 * @param blobs ink that isn't the page's own
 */
export function lonePart(label: Judged, page: SourcePage, blobs: readonly Box[]): Part | undefined {
  if (label.edge !== 'ink' || isKnownSize(page)) return undefined;
  const phrases = phrasesOf(page.words()).filter(({ box }) => contains(label.box, box, 2));
  const head = mostTurn(phrases);
  for (const side of TURNS) {
    const rows = rowsOf(
      blobs.filter((blob) => contains(label.box, blob, 2)),
      side,
    );
    const whites = rows.slice(1).map(({ from }, at) => from - (rows[at]?.to ?? from));
    const end = whites.findIndex((white) => white >= APART);
    const part = union(rows.slice(0, end + 1).flatMap((row) => row.blobs));
    const rest = union(rows.slice(end + 1).flatMap((row) => row.blobs));
    if (end < 0 || !part || !rest || label.codes.some(({ box }) => intersection(box, part))) continue;
    const addresses = addressesIn(part, phrases);
    const isOfAddress = (phrase: Phrase): boolean => addresses.some(({ lines }) => lines.includes(phrase));
    if (phrases.some((phrase) => contains(part, phrase.box, 2) && isPagesLine(phrase.text) && !isOfAddress(phrase)))
      return { why: "has writing at its edge that may be the page's", rest };
    const [white = 0, ...others] = whites.slice(end);
    if (side === head && others.every((other) => white >= WIDER * other) && addresses.length === 0)
      return { why: "has a head far from the rest that may be the page's", rest };
  }
  return undefined;
}

/** Ink in rows, from the side that is the top of writing with this turn. */
function rowsOf(blobs: readonly Box[], side: Turn): readonly Row[] {
  return blobs
    .map((blob): Row => {
      const { foot } = placeOnLine(blob, side);
      return { blobs: [blob], from: foot - (side % 180 === 0 ? blob.height : blob.width), to: foot };
    })
    .sort((a, b) => a.from - b.from)
    .reduce<Row[]>((rows, next) => {
      const row = rows.at(-1);
      if (!row || next.from > row.to + HAIR) return [...rows, next];
      return [...rows.slice(0, -1), { ...row, blobs: [...row.blobs, ...next.blobs], to: Math.max(row.to, next.to) }];
    }, []);
}

/**
 * Writing outside a label without an edge that stands as its own does and otherwise than most of what is around it, on the way along the label: it is likely the label's. Undefined where there
 * is none. Pt.
 * @param others the page's other labels
 */
export function writingBeside(label: Judged, page: SourcePage, others: readonly Box[]): Box | undefined {
  if (label.edge !== 'ink') return undefined;
  const phrases = phrasesOf(page.words());
  const own = mostTurn(phrases.filter(({ box }) => contains(label.box, box, 2)));
  const around = phrases.filter(({ box }) => ![label.box, ...others].some((each) => intersection(each, box)));
  if (own === undefined || mostTurn(around) === own) return undefined;
  const { x, y, width, height } = label.box;
  const bands = [
    { x: 0, y, width: page.width, height },
    { x, y: 0, width, height: page.height },
  ];
  return union(around.flatMap(({ box, turn }) => (turn === own && bands.some((band) => contains(band, box, 2)) ? [box] : [])));
}

/** Which way most characters stand. */
function mostTurn(phrases: readonly Phrase[]): Turn | undefined {
  const count = new Map<Turn, number>();
  for (const { text, turn } of phrases) count.set(turn, (count.get(turn) ?? 0) + text.length);
  return [...count].sort(([, a], [, b]) => b - a)[0]?.[0];
}
