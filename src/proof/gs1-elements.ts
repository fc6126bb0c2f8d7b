const GS = '\x1d';

/**
 * Characters of element strings with a predefined length by their first two digits, identifier included: they need no separator
 * behind them. GS1 syntax dictionary (primary, by way of handbook section 2.2) for 00, 01, 02 and 41; the rest is from memory, and
 * wrong lengths could only hide a number, never make one: each is believed by its check digit.
 */
const PREDEFINED: Readonly<Record<string, number>> = {
  '00': 20,
  '01': 16,
  '02': 16,
  '03': 16,
  '04': 18,
  '11': 8,
  '12': 8,
  '13': 8,
  '14': 8,
  '15': 8,
  '16': 8,
  '17': 8,
  '18': 8,
  '19': 8,
  '20': 4,
  '31': 10,
  '32': 10,
  '33': 10,
  '34': 10,
  '35': 10,
  '36': 10,
  '41': 16,
};

/** Identifiers that are longer or shorter than three digits, by their beginning. */
const AI_DIGITS: readonly (readonly [start: RegExp, digits: number])[] = [
  [/^(?:0[0-4]|1\d|2[0-2]|37|9\d)/, 2],
  [/^(?:3[1-69]|43|7[0-7]|8\d)/, 4],
  [/^(?:2[3-5]|4[0-2])/, 3],
];

/** An element string: its application identifier and its value. */
export interface Gs1Element {
  readonly ai: string;
  readonly value: string;
}

/** GS1 data taken apart, and what of it is no element string. */
export interface Gs1Data {
  readonly elements: readonly Gs1Element[];
  /** What is left from the first place on that doesn't begin with a known identifier and a value; empty when all is. */
  readonly rest: string;
}

/**
 * Takes GS1 data apart as a reader transmits it (separators as GS, 29). Lengths and characters are not judged here. An element string of
 * a predefined length that ends too early holds what comes behind it, separator and all.
 */
export function readGs1(text: string): Gs1Data {
  const elements: Gs1Element[] = [];
  let rest = text.startsWith(GS) ? text.slice(1) : text;
  while (rest !== '') {
    const at = rest;
    const digits = AI_DIGITS.find(([start]) => start.test(at))?.[1];
    if (digits === undefined || !/^\d+$/.test(at.slice(0, digits)) || at.length <= digits) break;
    const separator = at.indexOf(GS);
    const end = PREDEFINED[at.slice(0, 2)] ?? (separator < 0 ? at.length : separator);
    elements.push({ ai: at.slice(0, digits), value: at.slice(digits, end) });
    rest = at.slice(end);
    if (rest.startsWith(GS)) rest = rest.slice(1);
  }
  return { elements, rest };
}

/** The element strings of GS1 data. What doesn't begin with a known identifier ends the list. */
export const gs1Elements = (text: string): readonly Gs1Element[] => readGs1(text).elements;
