import { placeOnLine, type PlaceOnLine } from '../reading/place-on-line.js';
import type { Phrase } from '../reading/word-lines.js';

/** Lines of one address begin, end or are centred within this share of their type … */
const ALIGNED = 0.4;
/** … and follow each other within this many times the larger type. */
const LEADING = 2.2;
const LEAST_LINES = 2;
/** Street and town are no further apart in an address, lines. */
const NEAR = 3;
/** A line with more digits has a number of another kind in it. */
const MOST_DIGITS = 10;

/** A line with a name in it: two letters in a row, of any script. */
const NAME = /\p{L}{2}|[\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}\p{Script=Hangul}]/u;
/**
 * A house's number at either end of a street, with its floor or the quarter after a comma, behind a flat's number, or in a line of digits and ideographs.
 */
const STREET =
  /\p{L}{2}[.,]?\s+(?:n[o°º.]\.?\s*)?\d{1,4}(?:[-/][\dIVX]{1,4})?\s?[a-z]?(?:,\s*[\p{L}\d.ºª]{1,9}(?:\s[\p{L}\d.ºª]{1,14}){0,2}|-[IVX]{1,3})$|^\p{L}{2,9}\.?\s\d{1,4}[a-z]?,\s*\d{1,5}[a-z]?\s\p{L}{2}|^\p{L}{0,2}\.?\s?\d{1,5}(?:[-/]\d{1,4})?[a-z]?[,.]?\s+(?:[NESW]\.?\s+)?\p{L}{2}|\p{L}[.,]?\s+(?:n[o°º.]\.?\s*)?\d{1,4}(?:\s?[-/]\s?\d{1,4})?\s?(?:[a-z]|bis|ter|quater)?[.,]?$|[\p{Script=Han}\p{Script=Hangul}].*\d/iu;
/** Three to nine digits, perhaps in two groups, more than five of them with no letters before, or letters and digits as some countries mix them; with the name of a town, or alone. */
const POSTCODE =
  /(?<![\d.,:/-])(?:\d{3,5}|(?<!\p{L})\d{6,7}|\d{2,5}[ -]\d{2,4}|[A-Z]{1,2}\d[A-Z\d]? ?\d[A-Z]{2}|[A-Z]\d[A-Z] ?\d[A-Z]\d|[AC-FHKNPRTV-Y]\d[\dW] [\dAC-FHKNPRTV-Y]{4})(?![\d.,:/-]*\d)/u;
/** Postcodes of letters and digits, as Britain, Ireland and Canada have them: they are nothing else, wherever they stand. */
const MIXED_POSTCODE = /(?:^|\s)(?:[A-Z]{1,2}\d[A-Z\d]? ?\d[A-Z]{2}|[A-Z]\d[A-Z] ?\d[A-Z]\d|[AC-FHKNPRTV-Y]\d[\dW] [\dAC-FHKNPRTV-Y]{4})$/u;
/** What stands between the parts of an address in one line: "Atelier Example, Sample Street 4, 00187 Sampleton". */
const PARTS = /\s*[,;·•|]\s*|\s[-–—]\s/u;
const LEAST_PARTS = 3;

export interface AddressBlock {
  readonly lines: readonly Phrase[];
}

interface Line extends PlaceOnLine {
  readonly phrase: Phrase;
}

/** The addresses in some writing, by their shape and in any language: lines below each other, one with a house's number, one after it or before it with a postcode; or all of that in one line. */
export function addressBlocks(phrases: readonly Phrase[]): readonly AddressBlock[] {
  return ([0, 90, 180, 270] as const).flatMap((turn) => {
    const lines = phrases
      .filter((phrase) => phrase.turn === turn)
      .map((phrase): Line => ({ phrase, ...placeOnLine(phrase.box, turn) }))
      .sort((a, b) => a.foot - b.foot);
    const blocks: Line[][] = [];
    for (const line of lines) {
      const open = blocks.find((block) => follows(block.at(-1), line));
      if (open) open.push(line);
      else blocks.push([line]);
    }
    const found = blocks.flatMap((block) => addressesIn(block.map(({ phrase }) => phrase)));
    const single = lines.filter(({ phrase }) => !found.some((block) => block.lines.includes(phrase)) && isInOneLine(phrase.text));
    return [...found, ...single.map(({ phrase }) => ({ lines: [phrase] }))];
  });
}

/** Sender and receiver may stand below each other with no more than a line's gap between them: a block ends where it and what follows are an address each. */
function addressesIn(lines: readonly Phrase[]): readonly AddressBlock[] {
  const end = lines.findIndex((_, at) => isAddress({ lines: lines.slice(0, at) }) && isAddress({ lines: lines.slice(at) }));
  if (end > 0) return [{ lines: lines.slice(0, end) }, ...addressesIn(lines.slice(end))];
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

/** A name, then an address, all in one line. */
function isInOneLine(text: string): boolean {
  const parts = text.split(PARTS).filter((part) => part !== '');
  const [name = ''] = parts;
  return parts.length >= LEAST_PARTS && NAME.test(name) && digitsIn(name) === 0 && areAddress(parts);
}

const isAddress = ({ lines }: AddressBlock): boolean => lines.length >= LEAST_LINES && areAddress(lines.map(({ text }) => text.trim()));

function areAddress(texts: readonly string[]): boolean {
  const towns = texts.flatMap((text, at) => (POSTCODE.test(text) && digitsIn(text) <= MOST_DIGITS ? [at] : []));
  if (!texts.some((text) => NAME.test(text))) return false;
  return towns.some(
    (at) =>
      texts.some((text, other) => other !== at && Math.abs(other - at) <= NEAR && STREET.test(text)) || isRural(texts.slice(0, at + 1)),
  );
}

/** Two names and a town with a postcode that is nothing else, without a house's number: farms, villages, post boxes. */
function isRural(texts: readonly string[]): boolean {
  const [town = '', ...above] = texts.toReversed();
  return (
    ((NAME.test(town) && digitsIn(town) >= 5) || MIXED_POSTCODE.test(town)) &&
    above.length >= 2 &&
    above.slice(0, 2).every((text) => NAME.test(text) && digitsIn(text) === 0)
  );
}

const digitsIn = (text: string): number => text.replaceAll(/\D/g, '').length;
