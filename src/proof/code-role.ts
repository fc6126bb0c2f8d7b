import { area } from '../geometry/box.js';
import type { Code } from '../reading/source.js';
import { alphanumericCheckDigit, gs1CheckDigit, mod11CheckDigit, s10CheckDigit } from './check-digits.js';

/**
 * What a code on a label is for. Only a `tracking` code is a parcel's own: routing, product and consignment numbers stand on
 * many parcels.
 */
export const CODE_ROLES = ['tracking', 'routing', 'product', 'consignment', 'other'] as const;
export type CodeRole = (typeof CODE_ROLES)[number];

const LINEAR: readonly string[] = ['Code 128', 'Code 39', 'ITF'];
/** A number of one's own scheme is at least this long; order and routing numbers are shorter (common practice, no source). */
const OWN_SCHEME = { characters: 8, digits: 6 };
const GS = '\x1d';

/**
 * The role of each code of one label, in their order: by published number schemes first. On a label without such a number the
 * longest linear code is taken for its tracking code, of equal ones the largest (common practice, no source).
 */
export function codeRoles(codes: readonly Code[]): readonly CodeRole[] {
  const roles = codes.map(publishedRole);
  if (roles.includes('tracking')) return roles.map((role) => role ?? 'other');
  const own = codes
    .filter((code, index) => roles[index] === undefined && LINEAR.includes(code.symbology) && isOwnScheme(textOf(code)))
    .sort((a, b) => textOf(b).length - textOf(a).length || area(b.box) - area(a.box))[0];
  return codes.map((code, index) => (code === own ? 'tracking' : (roles[index] ?? 'other')));
}

const textOf = ({ bytes }: Code): string => Buffer.from(bytes, 'hex').toString('latin1');
const isOwnScheme = (text: string): boolean =>
  text.length >= OWN_SCHEME.characters && text.replaceAll(/\D/g, '').length >= OWN_SCHEME.digits;

/** The role by a published scheme; undefined for a number of no known scheme. */
function publishedRole(code: Code): CodeRole | undefined {
  const text = textOf(code);
  if (code.identifier === ']C1' || code.identifier === ']d2' || code.identifier === ']Q3') return gs1Role(text);
  if (!LINEAR.includes(code.symbology)) return undefined;
  if (isTrackingNumber(text)) return 'tracking';
  // GTIN-14 in ITF, GS1 General Specifications (handbook section 4.4, secondary).
  return code.symbology === 'ITF' && text.length === 14 && hasGs1Check(text) ? 'product' : undefined;
}

const hasGs1Check = (digits: string): boolean => /^\d+$/.test(digits) && gs1CheckDigit(digits.slice(0, -1)) === Number(digits.slice(-1));

function isTrackingNumber(text: string): boolean {
  // UPU S10-12, handbook section 4.3 (secondary).
  const s10 = /^[A-Z]{2}(\d{8})(\d)[A-Z]{2}$/.exec(text);
  if (s10) return s10CheckDigit(s10[1] ?? '') === Number(s10[2]);
  // Handbook section 4.1 (secondary).
  const ofEighteen = /^1Z([0-9A-Z]{15})(\d)$/.exec(text);
  if (ofEighteen) return alphanumericCheckDigit(ofEighteen[1] ?? '') === Number(ofEighteen[2]);
  // Handbook section 4.2 (secondary): 34 digits, the last ones being a number with its check digit.
  return /^\d{34}$/.test(text) && mod11CheckDigit(text.slice(20, 33)) === Number(text.slice(33));
}

/** Fixed lengths of GS1 element strings; all others end with a separator (GS1 syntax dictionary, primary; handbook section 2.2). */
const FIXED: Readonly<Record<string, number>> = {
  '00': 18,
  '01': 14,
  '02': 14,
  '402': 17,
  '410': 13,
  '411': 13,
  '412': 13,
  '413': 13,
  '414': 13,
};
const ROLE_OF: readonly (readonly [ai: RegExp, role: CodeRole])[] = [
  [/^0[12]$/, 'product'],
  // One consignment, one shipment: several parcels.
  [/^40[12]$/, 'consignment'],
  [/^(?:403|41\d|42[01])$/, 'routing'],
];

function gs1Role(text: string): CodeRole | undefined {
  const roles = elementsOf(text).map(([ai, value]): CodeRole | undefined => {
    if (ai === '00') return hasGs1Check(value) ? 'tracking' : undefined;
    // Package numbers of USPS Publication 199 behind 420 and the postcode: 22 or 26 digits from 9, mod 10 over all (secondary).
    if (/^9[2-5]$/.test(ai)) return /^(?:\d{22}|\d{26})$/.test(ai + value) && hasGs1Check(ai + value) ? 'tracking' : undefined;
    return ROLE_OF.find(([pattern]) => pattern.test(ai))?.[1];
  });
  return roles.includes('tracking') ? 'tracking' : roles.find((role) => role !== undefined);
}

/** Element strings of GS1 data. What doesn't begin with a known identifier ends the list. */
function elementsOf(text: string): readonly (readonly [ai: string, value: string])[] {
  const elements: [string, string][] = [];
  let rest = text.startsWith(GS) ? text.slice(1) : text;
  while (rest !== '') {
    const ai = /^(?:0[0-2]|9\d|4[0-3]\d|37|1[0-7]|2[01])/.exec(rest)?.[0];
    if (ai === undefined) break;
    const fixed = FIXED[ai];
    const body = rest.slice(ai.length);
    const end = fixed ?? (body.includes(GS) ? body.indexOf(GS) : body.length);
    elements.push([ai, body.slice(0, end)]);
    rest = body.slice(end);
    if (rest.startsWith(GS)) rest = rest.slice(1);
  }
  return elements;
}
