import type { DiagnosticCode } from '../diagnostics/codes.js';
import type { Code } from '../reading/source.js';
import type { Reason } from '../sheet/sheet.js';
import { alphanumericCheckDigit, gs1CheckDigit, mod11CheckDigit, s10CheckDigit } from './check-digits.js';
import { isTooLong, syntaxFaults, unitFaults, type SyntaxFault } from './gs1-syntax.js';
import { isLinear } from './linear.js';
import { textOf } from '../reading/code-text.js';
import { GS1_IDENTIFIERS } from './number-schemes.js';

/** Something that a code of the source says and can not be right, whoever reads it. */
export interface ContentFault extends Reason {
  /** Whether its form leaves no doubt which rule it breaks; what isn't certain may be another scheme's right number. */
  readonly certain: boolean;
}

/**
 * What is wrong with what the codes of one label say: element strings against the GS1 syntax dictionary, check digits of published
 * schemes whose form is clear. All of it is the source's: nothing here is changed or completed. Each kind of fault once, in the order of
 * the codes; no message holds a number.
 */
export function contentFaults(codes: readonly Code[]): readonly ContentFault[] {
  const found: ContentFault[] = [];
  for (const code of codes) {
    const text = textOf(code);
    const isGs1 = GS1_IDENTIFIERS.includes(code.identifier);
    const joined = isGs1 || isLinear(code) ? joinedFault(text.replace(/^\x1d/, ''), code, isGs1) : undefined;
    if (joined) found.push(...joined);
    else if (isGs1) found.push(...gs1Faults(text, code));
    else if (isLinear(code)) found.push(...plainFaults(text, code));
  }
  const units = unitFaults(codes.filter(({ identifier }) => GS1_IDENTIFIERS.includes(identifier)).map(textOf));
  for (const { what } of units) found.push(fault('verify/element-strings', `the label's GS1 codes hold ${what}`, false));
  const seen = new Set<string>();
  return found.filter(({ message }) => !seen.has(message) && seen.add(message));
}

function gs1Faults(text: string, code: Code): ContentFault[] {
  const faults = syntaxFaults(text).map(({ kind, what, certain }: SyntaxFault) =>
    fault(kind === 'form' ? 'verify/element-strings' : 'verify/check-digit', `${name(code)} ${what}`, certain),
  );
  if (code.symbology === 'Code 128' && isTooLong(text))
    faults.push(fault('verify/element-strings', `${name(code)} holds more than the 48 characters of GS1-128`, true));
  const [, zip, id] = PACKAGE.exec(text.replace(/^\x1d/, '')) ?? [];
  if (id !== undefined && !endsRight(id)) faults.push(wrongDigit(code, 'the package number', zip !== undefined));
  return faults;
}

/** A package number of 22 or 26 digits (USPS Publication 199, secondary); behind a postcode there is no doubt of it. */
const PACKAGE = /^(420(?:\d{5}|\d{9})\x1d)?(9[2-5](?:\d{20}|\d{24}))$/;
const isPackage = (digits: string): boolean => /^9[2-5](?:\d{20}|\d{24})$/.test(digits);
const endsRight = (digits: string): boolean => gs1CheckDigit(digits.slice(0, -1)) === Number(digits.slice(-1));

/**
 * Postcode and package number without the separator between them: of 31 digits behind 420 nobody knows whether 9 or 5 are the postcode
 * (handbook section 3.1). The split whose number has its check digit is the right one; of two such neither is taken.
 * @returns undefined when the text is nothing of the kind, an empty list when nothing is wrong with it
 */
function joinedFault(text: string, code: Code, isGs1: boolean): readonly ContentFault[] | undefined {
  const digits = /^420(\d{27}|\d{31}|\d{35})$/.exec(text)?.[1];
  const ids = digits === undefined ? [] : [5, 9].map((zip) => digits.slice(zip)).filter(isPackage);
  if (ids.length === 0) return undefined;
  const right = ids.filter(endsRight);
  if (right.length === 0) return [wrongDigit(code, 'the package number behind the postcode', false)];
  if (right.length > 1) {
    const message = `${name(code)} can be split into postcode and package number in two ways, and both check digits are right`;
    return [fault('verify/ambiguous-number', message, false)];
  }
  return isGs1 ? [fault('verify/element-strings', `${name(code)} lacks the separator behind the postcode (420)`, false)] : [];
}

/** Numbers that fill a code and whose form leaves no doubt, with their check digits: handbook sections 4.1 to 4.3 (secondary). */
const PLAIN: readonly (readonly [form: RegExp, what: string, due: (digits: string) => number | undefined, certain: boolean])[] = [
  [/^[A-Z]{2}(\d{8})(\d)[A-Z]{2}$/, 'the S10 number', s10CheckDigit, true],
  [/^1Z([0-9A-Z]{15})(\d)$/, 'the number from 1Z', alphanumericCheckDigit, true],
  [/^(?:1\d|96)\d{18}(\d{13})(\d)$/, 'the package number in its 34 digits', mod11CheckDigit, false],
];

function plainFaults(text: string, code: Code): ContentFault[] {
  for (const [form, what, due, certain] of PLAIN) {
    const [, digits = '', check] = form.exec(text) ?? [];
    if (check !== undefined) return due(digits) === Number(check) ? [] : [wrongDigit(code, what, certain)];
  }
  return [];
}

const wrongDigit = (code: Code, what: string, certain: boolean): ContentFault =>
  fault('verify/check-digit', `${what} in ${name(code)} has a wrong check digit`, certain);

const fault = (code: DiagnosticCode, message: string, certain: boolean): ContentFault => ({ code, message, remedy: REMEDY, certain });

const REMEDY = 'It is so in the source: ask the channel for a new label; until then print it only if the carrier takes it as it is.';

/** Kinds only, never what they say. */
const name = ({ symbology }: Code): string => `${/^[AI]/.test(symbology) ? 'an' : 'a'} ${symbology} code`;
