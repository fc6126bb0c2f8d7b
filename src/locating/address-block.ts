import { contains, type Box } from '../geometry/box.js';
import { placeOnLine, type PlaceOnLine } from '../reading/place-on-line.js';
import type { Phrase } from '../reading/word-lines.js';
import { captionIn, isCaptioned } from './address-caption.js';
import { digitsIn, hasName, isAddressLine, isNamedPostcode, isStreet, isStreetAndMore, isTown, isWholeAddress } from './address-lines.js';
import { withoutSteps } from './list-of-steps.js';

/** Lines of one address begin, end or are centred within this share of their type … */
const ALIGNED = 0.4;
/** … and follow each other within this many times the larger type. */
const LEADING = 2.2;
const LEAST_LINES = 2;
/** Street and town are no further apart in an address, lines. */
const NEAR = 3;
/** A caption beside an address or set out above it begins at most this many times the type before it. */
const SET_OUT = 15;

export interface AddressBlock {
  readonly lines: readonly Phrase[];
}

interface Line extends PlaceOnLine {
  readonly phrase: Phrase;
}

/**
 * The addresses in some writing, by their shape and in any language: lines below each other, one with a house's number, one after it or before it with a postcode. Where a
 * caption says whose address follows, names will do.
 */
export function addressBlocks(phrases: readonly Phrase[]): readonly AddressBlock[] {
  const written = withoutSteps(phrases);
  return ([0, 90, 180, 270] as const).flatMap((turn) => {
    const lines = written
      .filter((phrase) => phrase.turn === turn)
      .map((phrase): Line => ({ phrase, ...placeOnLine(phrase.box, turn) }))
      .sort((a, b) => a.foot - b.foot);
    const blocks: Line[][] = [];
    for (const line of lines) {
      const open = blocks.find((block) => follows(block.at(-1), line));
      if (open) open.push(line);
      else blocks.push([line]);
    }
    const captions = lines.filter(({ phrase }) => captionIn(phrase.text) !== undefined);
    const found = blocks.flatMap((block) => {
      const [first] = block;
      const caption = first && captions.find((each) => !block.includes(each) && isCaptionOf(each, first));
      return partedIn([...(caption ? [caption] : []), ...block].map(({ phrase }) => phrase));
    });
    const single = lines.filter(({ phrase }) => !found.some((block) => block.lines.includes(phrase)) && isInOneLine(phrase.text));
    return [...found, ...single.map(({ phrase }) => ({ lines: [phrase] }))];
  });
}

/** A label has so many, its sender's and its receiver's. */
export const FROM_TO = 2;

/** The addresses that stand in a box (pt). */
export const addressesIn = (box: Box, phrases: readonly Phrase[]): readonly AddressBlock[] =>
  addressBlocks(phrases.filter((phrase) => contains(box, phrase.box, 2)));

/** How many addresses stand in a box. */
export const addressesOn = (box: Box, phrases: readonly Phrase[]): number => addressesIn(box, phrases).length;

/**
 * Sender and receiver may stand below each other with no more than a line's gap between them: a block ends where it and what follows are an address each, and before and after a sender in
 * one line.
 */
function partedIn(lines: readonly Phrase[]): readonly AddressBlock[] {
  const single = lines.findIndex(({ text }) => isInOneLine(text));
  const line = lines[single];
  const parts = [lines.slice(0, Math.max(0, single)), lines.slice(single + 1)];
  if (line && parts.some((part) => isAddress({ lines: part }))) return [{ lines: [line] }, ...parts.flatMap((part) => partedIn(part))];
  const end = lines.findIndex((line, at) => {
    const [above, below] = [{ lines: lines.slice(0, at) }, { lines: lines.slice(at) }];
    return isAddress(above) && isAddress(below) && (hasShape(above) || captionIn(line.text) !== undefined);
  });
  if (end > 0) return [{ lines: lines.slice(0, end) }, ...partedIn(lines.slice(end))];
  return isAddress({ lines }) ? [{ lines }] : [];
}

function follows(above: Line | undefined, line: Line): boolean {
  if (!above) return false;
  const size = Math.max(above.phrase.fontSize, line.phrase.fontSize);
  const near = ALIGNED * size;
  const gap = line.foot - above.foot;
  return (
    gap > 0.5 * Math.min(above.phrase.fontSize, line.phrase.fontSize) &&
    gap < LEADING * size &&
    (Math.abs(line.from - above.from) < near ||
      Math.abs(line.to - above.to) < near ||
      Math.abs(line.from + line.to - above.from - above.to) < 2 * near)
  );
}

/** Whether a caption stands before the first line of an address, or above it and set out. */
function isCaptionOf(caption: Line, line: Line): boolean {
  const size = Math.max(caption.phrase.fontSize, line.phrase.fontSize);
  const [before, above] = [line.from - caption.from, line.foot - caption.foot];
  return before > -ALIGNED * size && before < SET_OUT * size && above > -ALIGNED * size && above < LEADING * size;
}

const isAddress = (block: AddressBlock): boolean =>
  hasShape(block) || (block.lines.length >= LEAST_LINES && isCaptioned(block.lines.map(({ text }) => text.trim())));

function hasShape({ lines }: AddressBlock): boolean {
  if (lines.length < LEAST_LINES) return false;
  const texts = lines.map(({ text }) => text.trim());
  return (
    texts.some(isWholeAddress) || areLinesOfOne(texts) || texts.some((text, at) => isNameAlone(texts[at - 1]) && isStreetWithTown(text))
  );
}

/** "Street 4, 00187 Town". */
function isStreetWithTown(text: string): boolean {
  const parts = text.split(PARTS).filter((part) => hasName(part));
  return parts.length > 1 && isAddressLine(text) && !isInOneLine(text) && areLinesOfOne(parts);
}

const isNameAlone = (text = ''): boolean => hasName(text) && digitsIn(text) === 0;

/** A name, a street and a town in one line, as senders are set: "Name, Street 4, 00187 Town". */
function isInOneLine(text: string): boolean {
  const parts = text.split(PARTS).filter((part) => part !== '');
  const [name = ''] = parts;
  return parts.length >= LEAST_PARTS && isNameAlone(name) && areLinesOfOne(parts);
}
const PARTS = /\s*[,;·•|]\s*|\s[-–—]\s/u;
const LEAST_PARTS = 3;

function areLinesOfOne(texts: readonly string[]): boolean {
  if (!texts.some(hasName)) return false;
  const towns = texts.flatMap((text, at) => (isTown(text) ? [at] : []));
  return towns.some(
    (at) =>
      texts.some(
        (text, other) => other !== at && Math.abs(other - at) <= NEAR && (isStreet(text) || (other < at && isStreetAndMore(text))),
      ) || isRural(texts.slice(0, at + 1)),
  );
}

/** Two names and a town with a long postcode, or one that is nothing else, without a house's number: farms, villages, post boxes. */
function isRural(texts: readonly string[]): boolean {
  const [town = '', ...above] = texts.toReversed();
  return (
    hasName(town) &&
    (digitsIn(town) >= 5 || isNamedPostcode(town)) &&
    above.length >= 2 &&
    above.slice(0, 2).every((text) => hasName(text) && digitsIn(text) === 0)
  );
}
