import { textOf } from '../reading/code-text.js';
import type { Code } from '../reading/source.js';
import { alphanumericCheckDigit, gs1CheckDigit, mod11CheckDigit, s10CheckDigit } from './check-digits.js';
import { gs1Elements } from './gs1-elements.js';
import { isLinear } from './linear.js';

/**
 * What a number is for. Only a `tracking` number is a parcel's own; a `reference` is an order's, a consignment's or a shipment's,
 * on several parcels. `unknown`: a number of no published scheme, long enough to be a parcel's own. `other`: nothing of these.
 */
export const CODE_ROLES = ['tracking', 'routing', 'product', 'reference', 'unknown', 'other'] as const;
export type CodeRole = (typeof CODE_ROLES)[number];

/** A number that a published scheme knows. */
export interface KnownNumber {
  readonly role: CodeRole;
  /** The number alone, however a code frames it: the same in two symbols that carry it. */
  readonly number: string;
}

/** How numbers of one kind are known. */
export interface Scheme {
  readonly role: CodeRole;
  readonly source: string;
  /** How far the source was seen; `common practice` has none. */
  readonly trust: 'primary' | 'secondary' | 'common practice';
  /** The number in `text`, or undefined when it is none of this scheme. */
  readonly numberIn: (text: string, symbology: Code['symbology']) => string | undefined;
}

const matched = (pattern: RegExp, isWhole: (match: RegExpExecArray) => boolean) => (text: string) => {
  const match = pattern.exec(text);
  return match && isWhole(match) ? match[0] : undefined;
};
const hasGs1Check = (digits: string): boolean => /^\d+$/.test(digits) && gs1CheckDigit(digits.slice(0, -1)) === Number(digits.slice(-1));

/** Numbers that fill a code without identifiers. The first scheme that fits decides. */
const PLAIN: readonly Scheme[] = [
  {
    role: 'tracking',
    source: 'UPU S10-12, handbook section 4.3',
    trust: 'secondary',
    numberIn: matched(/^[A-Z]{2}(\d{8})(\d)[A-Z]{2}$/, ([, serial = '', check]) => s10CheckDigit(serial) === Number(check)),
  },
  {
    role: 'tracking',
    source: '18 characters from 1Z, handbook section 4.1',
    trust: 'secondary',
    numberIn: matched(/^1Z([0-9A-Z]{15})(\d)$/, ([, characters = '', check]) => alphanumericCheckDigit(characters) === Number(check)),
  },
  {
    role: 'tracking',
    source: '34 digits with the package number at 21 to 34, handbook section 4.2',
    trust: 'secondary',
    numberIn: matched(/^\d{34}$/, ([text]) => mod11CheckDigit(text.slice(20, 33)) === Number(text.slice(33))),
  },
  {
    role: 'routing',
    source: 'a postcode behind 420 without the mark of GS1 data',
    trust: 'common practice',
    numberIn: matched(/^420\d{5}(?:\d{4})?$/, () => true),
  },
  {
    role: 'product',
    source: 'GTIN-14 in ITF, handbook section 4.4',
    trust: 'secondary',
    numberIn: (text, symbology) => (symbology === 'ITF' && text.length === 14 && hasGs1Check(text) ? text : undefined),
  },
];

/** Element strings of GS1 data, identifier and value; the GS1 syntax dictionary by way of handbook section 2.2. */
const ELEMENTS: readonly Scheme[] = [
  {
    role: 'tracking',
    source: 'SSCC (AI 00) with its check digit, handbook section 2.2',
    trust: 'primary',
    numberIn: matched(/^00\d{18}$/, ([text]) => hasGs1Check(text.slice(2))),
  },
  {
    role: 'tracking',
    source: 'package number of 22 or 26 digits from 92 to 95, check digit over all: USPS Publication 199',
    trust: 'secondary',
    numberIn: matched(/^9[2-5](?:\d{20}|\d{24})$/, ([text]) => hasGs1Check(text)),
  },
  {
    // Longer than a postcode may be: the separator in front of the package number is missing.
    role: 'tracking',
    source: 'the same right behind the postcode',
    trust: 'common practice',
    numberIn: (text) => {
      const number = /^420(?:\d{5}|\d{9})(9[2-5](?:\d{20}|\d{24}))$/.exec(text)?.[1];
      return number !== undefined && hasGs1Check(number) ? number : undefined;
    },
  },
  {
    role: 'routing',
    source: 'AI 403, 410 to 417, 420, 421: GS1 syntax dictionary',
    trust: 'primary',
    numberIn: matched(/^4(?:03|1\d|2[01]).+$/, () => true),
  },
  { role: 'product', source: 'AI 01, 02: GS1 syntax dictionary', trust: 'primary', numberIn: matched(/^0[12].+$/, () => true) },
  { role: 'reference', source: 'AI 400 to 402: GS1 syntax dictionary', trust: 'primary', numberIn: matched(/^40[0-2].+$/, () => true) },
];

/** The identifiers of GS1 data: GS1-128, GS1 DataMatrix, GS1 QR Code, Aztec with GS1 data, GS1 DataBar. */
export const GS1_IDENTIFIERS: readonly string[] = [']C1', ']d2', ']Q3', ']z1', ']e0'];
/** Every scheme. */
export const NUMBER_SCHEMES: readonly Scheme[] = [...PLAIN, ...ELEMENTS];

/** What a published scheme says of a code; undefined for a number of none. Of several numbers in one code a tracking number decides. */
export function knownNumber(code: Code): KnownNumber | undefined {
  const text = textOf(code);
  if (!GS1_IDENTIFIERS.includes(code.identifier)) return isLinear(code) ? first(PLAIN, text, code) : undefined;
  const known = gs1Elements(text).flatMap(({ ai, value }) => first(ELEMENTS, ai + value, code) ?? []);
  return known.find(({ role }) => role === 'tracking') ?? known[0];
}

function first(schemes: readonly Scheme[], text: string, { symbology }: Code): KnownNumber | undefined {
  for (const { role, numberIn } of schemes) {
    const number = numberIn(text, symbology);
    if (number !== undefined) return { role, number };
  }
  return undefined;
}
