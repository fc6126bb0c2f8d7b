import { fold, isDense, tokensOf, type FoldedLine } from './fold.js';

/** Titles and forms of address, folded: not part of a name. */
const TITLES: ReadonlySet<string> = new Set(
  'mr mrs ms miss mx dr prof herr frau mme mlle sr sra srta sig sra dhr mevr pan pani 様 先生 御中 收 氏 님'.split(' '),
);

/** A buyer's name for comparing. */
export interface PersonName {
  /** Its parts, folded, without titles. */
  readonly parts: readonly string[];
  readonly joined: string;
  /** The longest part, of equal ones the first by code. */
  readonly longest: string;
  /** Whether it is written without spaces (Han, kana, Hangul, Thai, Lao, Khmer). */
  readonly dense: boolean;
}

/** Undefined for a name without letters, or of one letter. */
export function personName(name: string): PersonName | undefined {
  const parts = tokensOf(fold(name))
    .map(({ text }) => text)
    .filter((part) => !TITLES.has(part) && /\p{L}/u.test(part));
  const joined = parts.join('');
  const longest = parts.reduce(
    (best, part) => (part.length > best.length || (part.length === best.length && part < best) ? part : best),
    '',
  );
  return longest.length < 2 && joined.length < 2 ? undefined : { parts, joined, longest, dense: isDense(joined) };
}

/** A line of a label for comparing with names. */
export interface NameLine {
  readonly words: readonly string[];
  readonly joined: string;
}

export function nameLine({ tokens }: FoldedLine): NameLine {
  const words = tokens.map(({ text }) => text);
  return { words, joined: words.join('') };
}

/** Words in front of an addressee, folded. */
const TO: ReadonlySet<string> = new Set(
  'ship deliver delivery to recipient an lieferadresse empfanger destinataire livrer a para destinatario aan mottagare till 收件人 お届け先'.split(
    ' ',
  ),
);

/**
 * Whether a line holds the name: all its parts as words, in any order, beside whatever else. A part of four letters or more may have one
 * edit (a letter more, less, another, or two exchanged), shorter ones none; the first letter of one part only. One part may be an initial; of
 * three parts or more one may be missing instead, but never the longest. A name of one part is the line's only word. Names without
 * spaces are found inside the line's letters, from three characters.
 */
export function holdsName({ words, joined }: NameLine, name: PersonName): boolean {
  if (joined === name.joined) return true;
  if (name.dense) return name.joined.length >= 3 ? joined.includes(name.joined) : withoutTitles(words).join('') === name.joined;
  if (name.parts.length === 1) {
    const rest = withoutTitles(words);
    return rest.length === 1 && isAlike(rest[0] ?? '', name.longest);
  }
  const left = [...words];
  const missing: string[] = [];
  let found = 0;
  let otherFirstLetter = 0;
  for (const part of name.parts) {
    const exact = left.indexOf(part);
    const at = exact >= 0 ? exact : left.findIndex((word) => isAlike(word, part));
    if (at < 0) {
      missing.push(part);
      continue;
    }
    const [word = ''] = left.splice(at, 1);
    if (word[0] !== part[0]) otherFirstLetter += 1;
    if (part.length > 1) found += 1;
  }
  const [first, ...more] = missing;
  if (found === 0 || more.length > 0 || otherFirstLetter > 1) return false;
  return first === undefined || isInitial(left, first) || (name.parts.length >= 3 && first !== name.longest);
}

const withoutTitles = (words: readonly string[]): readonly string[] => words.filter((word) => !TITLES.has(word) && !TO.has(word));

const isInitial = (words: readonly string[], part: string): boolean =>
  words.some((word) => (word.length === 1 || part.length === 1) && word[0] === part[0]);

/** Equal, or one edit apart when both have four letters or more. */
export function isAlike(a: string, b: string): boolean {
  if (a === b) return true;
  if (Math.min(a.length, b.length) < 4 || Math.abs(a.length - b.length) > 1) return false;
  let from = 0;
  while (from < a.length && a[from] === b[from]) from++;
  if (endAlike(a, from + 1, b, from + 1) || endAlike(a, from + 1, b, from) || endAlike(a, from, b, from + 1)) return true;
  return a[from] === b[from + 1] && a[from + 1] === b[from] && endAlike(a, from + 2, b, from + 2);
}

/** Whether two words are the same from these places on. Nothing is cut out: ten thousand names of one postcode are compared with each other. */
function endAlike(a: string, fromA: number, b: string, fromB: number): boolean {
  const length = a.length - fromA;
  if (length !== b.length - fromB) return false;
  for (let at = 0; at < length; at++) if (a[fromA + at] !== b[fromB + at]) return false;
  return true;
}

/** Keys that two parts share when they are alike: the part, and from four letters the part with each one letter left out. */
export function likenessKeys(part: string): readonly string[] {
  const keys = new Set([part]);
  if (part.length >= 4) for (let at = 0; at < part.length; at++) keys.add(part.slice(0, at) + part.slice(at + 1));
  return [...keys];
}
