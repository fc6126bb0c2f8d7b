import { area, contains, intersection, union, type Box } from '../geometry/box.js';
import { mmToPt } from '../geometry/length.js';
import { TURNS, type Turn } from '../geometry/placement.js';
import { ON_LINE, placeOnLine } from '../reading/place-on-line.js';
import type { SourcePage } from '../reading/source.js';
import { phrasesOf, type Phrase } from '../reading/word-lines.js';
import { addressesIn, addressesOn, FROM_TO } from './address-block.js';
import type { Judged } from './candidate.js';
import { HAIR } from './gather.js';
import { isKnownSize } from './label-sizes.js';
import { mostTurn } from './most-turn.js';
import { countsPage, isPagesLine, isSentence } from './speaks-to-reader.js';
import { NEXT_LINE } from './white.js';

/** What is written for the page stands farther from a label than this, pt (7 mm; common practice, no source) … */
const APART = mmToPt(7);
/** … and what no label says, but a page does, this far (5 mm). */
const NEAR = mmToPt(5);
/** … and a head that may be the page's so many times as far as any parts of the rest from each other. */
const HEAD_WIDER = 1.4;

/** Ink side by side, and where it begins and ends, pt, inwards from a side. */
interface Row {
  readonly blobs: readonly Box[];
  readonly from: number;
  readonly to: number;
}

/** A part at one side of a label, and what is left without it, pt. */
export interface Part {
  readonly why: string;
  readonly rest: Box;
}

/**
 * What is at one side of a label without an edge, apart from the rest of it, and may be the page's: writing as pages have it, or a head that is clearly farther from the rest than any parts of the
 * rest are from each other, or counts parcels. Undefined where nothing is, where it has a code or (a head) an address, and on a label's own paper.
 * @param blobs ink that isn't the page's own
 */
export function lonePart(label: Judged, page: SourcePage, blobs: readonly Box[]): Part | undefined {
  if (label.edge !== 'ink' || isKnownSize(page)) return undefined;
  const phrases = phrasesOf(page.words()).filter(({ box }) => contains(label.box, box, 2));
  const own = blobs.filter((blob) => contains(label.box, blob, 2));
  const head = mostTurn(phrases);
  const title = head === undefined ? undefined : linesAtHead(label, phrases, head, own);
  if (title) return title;
  const saidIn = (part: Box): readonly Phrase[] => phrases.filter((phrase) => contains(part, phrase.box, 2));
  const saysSentence = (part: Box): boolean => {
    const addressed = addressesIn(part, phrases).flatMap(({ lines }) => lines);
    return saidIn(part).some((phrase) => isSentence(phrase.text) && !addressed.includes(phrase));
  };
  for (const side of TURNS) {
    const rows = rowsOf(own, side);
    const near = partedAt(rows, NEAR, label);
    const apart = partedAt(rows, APART, label);
    const isPages = near && saidIn(near.part).some(({ text }) => isPagesLine(text));
    const written = isPages ? near : apart && saysSentence(apart.part) ? apart : undefined;
    if (written && !hasOnlyTogether(written, phrases)) return { why: "has writing at its edge that may be the page's", rest: written.rest };
  }
  const top = head === undefined ? undefined : partedAt(rowsOf(own, head), APART, label);
  const isHead = top?.beyond.every((white) => top.white >= HEAD_WIDER * white) === true && area(top.part) < area(top.rest);
  return isHead && addressesIn(top.part, phrases).length === 0 && !saidIn(top.part).some(({ text }) => WEIGHT.test(text))
    ? { why: "has a head far from the rest that may be the page's", rest: top.rest }
    : undefined;
}

/** Whether neither side has sender and receiver, but both together have: then both are the label's. */
function hasOnlyTogether({ part, rest }: Parted, phrases: readonly Phrase[]): boolean {
  const [inPart, inRest] = [addressesOn(part, phrases), addressesOn(rest, phrases)];
  return inPart > 0 && inRest > 0 && inRest < FROM_TO;
}

/** What some rows begin with before white as wide as this (pt), that white, the other whites beyond it, and all beyond it; undefined where there is none, or a code before it. */
function partedAt(rows: readonly Row[], least: number, { codes }: Judged): Parted | undefined {
  const whites = rows.slice(1).map(({ from }, at) => from - (rows[at]?.to ?? from));
  const end = whites.findIndex((white) => white >= least);
  const [part, rest] = [rows.slice(0, end + 1), rows.slice(end + 1)].map((each) => union(each.flatMap(({ blobs }) => blobs)));
  const [white = 0, ...beyond] = whites.slice(end);
  return end < 0 || !part || !rest || codes.some(({ box }) => intersection(box, part)) ? undefined : { part, rest, white, beyond };
}

/** Ink in rows, from the side that is the top of writing with this turn. */
function rowsOf(blobs: readonly Box[], side: Turn): readonly Row[] {
  return blobs
    .map((blob): Row => {
      const { top, foot } = placeOnLine(blob, side);
      return { blobs: [blob], from: top, to: foot };
    })
    .sort((a, b) => a.from - b.from)
    .reduce<Row[]>((rows, next) => {
      const row = rows.at(-1);
      if (!row || next.from > row.to + HAIR) return [...rows, next];
      return [...rows.slice(0, -1), { ...row, blobs: [...row.blobs, ...next.blobs], to: Math.max(row.to, next.to) }];
    }, []);
}

/** What a label says of its parcel, and no title of a page. */
const WEIGHT = /(?<![\p{L}\d])\d+(?:[.,]\d+)?\s?(?:kg|lbs?|oz)(?!\p{L})/iu;

interface Parted {
  readonly part: Box;
  readonly rest: Box;
  readonly white: number;
  readonly beyond: readonly number[];
}

/** The first lines of a label, however near they stand, where the first of them counts parcels or sheets, or says which order the label is for. */
function linesAtHead(label: Judged, phrases: readonly Phrase[], turn: Turn, blobs: readonly Box[]): Part | undefined {
  const lines = partedAt(rowsOf(blobs, turn), NEXT_LINE, label);
  if (!lines) return undefined;
  const own = phrases.filter((phrase) => phrase.turn === turn && contains(lines.part, phrase.box, 2));
  const foot = ({ box }: Phrase): number => placeOnLine(box, turn).foot;
  const first = Math.min(...own.map(foot));
  const counts = own.length > 0 && own.every((phrase) => foot(phrase) - first > ON_LINE || countsPage(phrase.text));
  return counts ? { why: "has a line at its head that may be the page's", rest: lines.rest } : undefined;
}
