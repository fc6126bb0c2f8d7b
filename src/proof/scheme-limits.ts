import type { Code } from '../reading/source.js';
import { gs1CheckDigit, s10CheckDigit } from './check-digits.js';
import { LEAST_MODULE, type Limit } from './limits.js';
import { isLinear } from './linear.js';
import { textOf } from '../reading/code-text.js';

/** What is published of the size of a linear code that carries a certain number. A figure that is left out was not found. */
export interface SchemeLimits {
  /** For people: the number, or the codes that the row is for. */
  readonly what: string;
  /** Width of a module. */
  readonly least: Limit;
  readonly most?: Limit;
  /** Height of the bars. */
  readonly height?: Limit;
  /** Height of the bars as a share of their length; `isAdvice`: the standard says "should". */
  readonly heightShare?: Limit & { readonly isAdvice?: true };
  /**
   * Whom the row is for. `number`: whatever carries the number. `tracking`: only the code by which the parcel is known, for other codes need
   * not be read by a carrier. `nobody-sure`: the same, but whether the number's owner follows the standard is not known: told only.
   */
  readonly judged: 'number' | 'tracking' | 'nobody-sure';
}

const mm = (value: number, source: string, trust: Limit['trust'] = 'secondary'): Limit => ({ value, unit: 'mm', source, trust });

/** ISO 15394:2017 Annex A. */
const ISO = 'ISO 15394';
const ISO_HEIGHT = mm(12.7, ISO);
const ISO_SHARE = { value: 0.15, unit: 'share', source: ISO, trust: 'secondary', isAdvice: true } as const;
const USPS = 'USPS Publication 199';
/** Section 8. */
const UPU = 'UPU S10';
const UNREAD = "the carrier's guide";

/**
 * The published sizes by scheme, handbook sections 2.2, 3.1, 4.1 and 4.3: one row for each, in the order of the search. All were seen in texts that
 * cite the standard, or are from memory; none in the standard's own text.
 */
export const SCHEME_LIMITS = {
  /** The lower end of ISO 15394 is 0.50; the GS1 General Specifications have 0.495, which is what software draws. Their 31.75 mm are what to draw by default. */
  sscc: {
    what: 'an SSCC',
    least: mm(0.495, 'GS1 and ISO 15394'),
    most: mm(0.81, ISO),
    height: ISO_HEIGHT,
    heightShare: ISO_SHARE,
    judged: 'number',
  },
  /** 13 to 21 mil; 0.75 in, by exception 0.5 in: who has it granted sets the limit aside. */
  package: { what: 'a package number', least: mm(0.3302, USPS), most: mm(0.5334, USPS), height: mm(19.05, USPS), judged: 'number' },
  s10: {
    what: 'an S10 number',
    least: mm(0.33, UPU),
    most: mm(0.51, UPU),
    height: mm(12.5, UPU),
    heightShare: { value: 0.15, unit: 'share', source: UPU, trust: 'secondary' },
    judged: 'number',
  },
  gs1: { what: 'GS1-128', least: mm(0.25, ISO), most: mm(0.81, ISO), height: ISO_HEIGHT, heightShare: ISO_SHARE, judged: 'tracking' },
  alphanumeric: {
    what: 'a number from 1Z',
    least: mm(0.25, ISO),
    most: mm(0.43, ISO),
    height: mm(25.4, UNREAD, 'from memory'),
    judged: 'number',
  },
  plain: {
    what: 'Code 128 and Code 39',
    least: mm(0.25, ISO),
    most: mm(0.43, ISO),
    height: ISO_HEIGHT,
    heightShare: ISO_SHARE,
    judged: 'nobody-sure',
  },
  /** Of ITF only the least that holds for any linear code was found. */
  itf: { what: 'any linear code', least: mm(LEAST_MODULE.value, ISO), height: ISO_HEIGHT, judged: 'nobody-sure' },
} as const satisfies Record<string, SchemeLimits>;

export type SchemeName = keyof typeof SCHEME_LIMITS;

/** Which row holds for a code, by its symbology and its number; undefined for matrix and stacked codes. A check digit that is wrong makes it no number of the scheme. */
export function schemeOf(code: Pick<Code, 'symbology' | 'identifier' | 'bytes'>): SchemeName | undefined {
  if (!isLinear(code)) return undefined;
  if (code.symbology === 'ITF') return 'itf';
  const text = textOf(code);
  if (code.identifier === ']C1') return /^00\d{18}$/.test(text) ? 'sscc' : isPackage(text) ? 'package' : 'gs1';
  if (code.symbology !== 'Code 128') return 'plain';
  const [, serial, check] = /^[A-Z]{2}(\d{8})(\d)[A-Z]{2}$/.exec(text) ?? [];
  if (serial !== undefined && s10CheckDigit(serial) === Number(check)) return 's10';
  return /^1Z[0-9A-Z]{15}\d$/.test(text) ? 'alphanumeric' : 'plain';
}

/** Handbook section 3.1: 22 or 26 digits from 92, 93, 94 or 95, alone or behind 420 and the postcode. */
function isPackage(text: string): boolean {
  const [, id] = /^(?:420(?:\d{5}|\d{9})\x1d?)?(9[2-5](?:\d{20}|\d{24}))$/.exec(text) ?? [];
  return id !== undefined && gs1CheckDigit(id.slice(0, -1)) === Number(id.slice(-1));
}
