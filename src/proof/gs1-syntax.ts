import { gs1CheckDigit } from './check-digits.js';
import { readGs1, type Gs1Element } from './gs1-elements.js';

/** What is wrong with GS1 data, as the end of a sentence about the code, and whether there can be no doubt. */
export interface SyntaxFault {
  readonly kind: 'form' | 'check digit';
  readonly what: string;
  readonly certain: boolean;
}

interface Row {
  /** Of the value, without the identifier. */
  readonly form: RegExp;
  readonly words: string;
  /** The value's last digit is a GS1 mod-10 check digit over the others. */
  readonly checked?: boolean;
  /** Identifiers that must be on the same unit, and such as must not. */
  readonly needs?: readonly string[];
  readonly not?: readonly string[];
}

/** Characters of values marked X: from memory narrower than this, so that nothing right is refused. */
const X = '[\\x21-\\x7e]';
const upTo = (most: number): Row => ({ form: new RegExp(`^${X}{1,${most}}$`), words: `1 to ${most} characters` });
const digits = (count: number): Row => ({ form: new RegExp(`^\\d{${count}}$`), words: `${count} digits`, checked: true });

/**
 * The rows of the GS1 syntax dictionary that handbook section 2.2 quotes (primary). Other identifiers are taken as they come. 411 to 417
 * are global location numbers as 410 is (from memory, and their form alone is the same).
 */
const ROWS: readonly (readonly [ai: RegExp, row: Row])[] = [
  [/^00$/, digits(18)],
  [/^01$/, digits(14)],
  [/^02$/, { ...digits(14), needs: ['37'] }],
  [/^37$/, { form: /^\d{1,8}$/, words: '1 to 8 digits', needs: ['00', '02'] }],
  [/^401$/, upTo(30)],
  [/^402$/, digits(17)],
  [/^403$/, { ...upTo(30), needs: ['00'] }],
  [/^41[0-7]$/, digits(13)],
  [/^420$/, { ...upTo(20), not: ['421'] }],
  [/^421$/, { form: new RegExp(`^\\d{3}${X}{1,9}$`), words: '3 digits and 1 to 9 characters', not: ['4307'] }],
  [/^90$/, upTo(30)],
  [/^9[1-9]$/, upTo(90)],
];

const rowOf = (ai: string): Row | undefined => ROWS.find(([pattern]) => pattern.test(ai))?.[1];

/** What is wrong with the data of one code by itself. */
export function syntaxFaults(text: string): readonly SyntaxFault[] {
  const { elements, rest } = readGs1(text);
  const faults = elements.flatMap((element) => elementFault(element) ?? []);
  // An identifier that is not in the list from memory may be a new one.
  if (rest !== '') faults.push({ kind: 'form', what: 'holds characters that are no element string', certain: !/^\d{2}/.test(rest) });
  return faults;
}

function elementFault({ ai, value }: Gs1Element): SyntaxFault | undefined {
  const row = rowOf(ai);
  if (!row) return undefined;
  if (!row.form.test(value)) return { kind: 'form', what: `has a value behind (${ai}) that is not ${row.words}`, certain: true };
  const due = row.checked ? gs1CheckDigit(value.slice(0, -1)) : undefined;
  if (due === undefined || due === Number(value.slice(-1))) return undefined;
  return { kind: 'check digit', what: `ends (${ai}) with check digit ${value.slice(-1)} where ${due} is due`, certain: true };
}

/**
 * Which identifiers of one unit lack their companions, or must not stand together. A unit may carry them on several codes, and on ones
 * that were not read: never certain.
 */
export function unitFaults(texts: readonly string[]): readonly SyntaxFault[] {
  const present = new Set(texts.flatMap((text) => readGs1(text).elements.map(({ ai }) => ai)));
  return [...present].sort().flatMap((ai) => {
    const { needs = [], not = [] } = rowOf(ai) ?? {};
    const lacks = needs.filter((other) => !present.has(other)).map((other) => `(${ai}) without (${other})`);
    const beside = not.filter((other) => present.has(other)).map((other) => `(${ai}) beside (${other})`);
    return [...lacks, ...beside].map((what): SyntaxFault => ({ kind: 'form', what, certain: false }));
  });
}

/** GS1-128 encodes no more, identifiers and separators counted, start, check and stop not (GS1 General Specifications 5.4.4.3, primary). */
const MOST_CHARACTERS = 48;
export const isTooLong = (text: string): boolean => text.replace(/^\x1d/, '').length > MOST_CHARACTERS;
