import { fold, foldedLine, tokensOf, type FoldedLine, type Token } from './fold.js';
import type { LabelCode } from './label-facts.js';
import { announcesOrder, isBetween, isOrderWord } from './order-words.js';

/** An order number with fewer letters and digits, or of digits alone and shorter than `digits`, may stand on a label by chance. */
const BY_CHANCE = { characters: 5, digits: 9 };
/** The same for a code that holds nothing else, where less stands by chance; five digits may be a postcode. */
const ALONE_IN_CODE = { characters: 4, digits: 6 };
/** The same in the name of a file. */
const IN_FILE_NAME = { characters: 4, digits: 4 };

interface Known<T> {
  /** As printed, folded, without `#` in front. */
  readonly text: string;
  /** Letters and digits alone: their number, and whether all are digits. */
  readonly characters: number;
  readonly allDigits: boolean;
  readonly values: T[];
}

interface Hit<T> {
  readonly known: Known<T>;
  /** Tokens from `first` to before `behind`. */
  readonly first: number;
  readonly behind: number;
}

/** Order number for comparing: folded, without `#` in front. */
export const orderNumberKey = (number: string): string => fold(number).replace(/^#\s*/, '');

/**
 * Finds known order numbers in what a label and its file say: always whole words, never a part of a longer number, of numbers within each
 * other the longest. A number that may stand there by chance (under five characters, or under nine digits and nothing else) counts only
 * behind a word such as order, ref or Bestellung, in its line or ending the line above; a code that holds nothing else than the number
 * needs no word from four characters, of digits alone from six.
 */
export class OrderNumbers<T> {
  readonly #known = new Map<string, Known<T>[]>();
  /** How many tokens numbers have that begin with a token: all that need to be looked at. */
  readonly #lengths = new Map<string, Set<number>>();

  add(number: string, value: T): void {
    const text = orderNumberKey(number);
    const tokens = tokensOf(text);
    if (tokens.length === 0) return;
    const key = wordsKey(tokens, 0, tokens.length);
    const characters = tokens.reduce((sum, token) => sum + token.text.length, 0);
    const alike = this.#known.get(key) ?? [];
    const same = alike.find((each) => each.text === text);
    if (same) same.values.push(value);
    else alike.push({ text, characters, allDigits: tokens.every((token) => /^\d+$/.test(token.text)), values: [value] });
    this.#known.set(key, alike);
    const first = tokens[0]?.text ?? '';
    const lengths = this.#lengths.get(first);
    if (lengths) lengths.add(tokens.length);
    else this.#lengths.set(first, new Set([tokens.length]));
  }

  /** Those with exactly this number. */
  get(number: string): readonly T[] {
    const text = orderNumberKey(number);
    const tokens = tokensOf(text);
    return this.#known.get(wordsKey(tokens, 0, tokens.length))?.find((each) => each.text === text)?.values ?? [];
  }

  /** Those whose number is printed on a label. */
  inLines(lines: readonly FoldedLine[]): ReadonlySet<T> {
    const found = new Set<T>();
    let above: readonly Token[] = [];
    for (const line of lines) {
      const { tokens } = line;
      for (const hit of this.#inText(line)) {
        const { known, first } = hit;
        const words = tokens.slice(Math.max(0, first - 3), first).map(({ text }) => text);
        const isSure = !mayBeChance(known, BY_CHANCE) || announcesOrder(words) || (first === 0 && announcesAlone(above));
        if (isSure) for (const value of known.values) found.add(value);
      }
      above = tokens;
    }
    return found;
  }

  /** Those whose number a code holds, alone or as a word of its text. */
  inCodes(codes: readonly LabelCode[]): ReadonlySet<T> {
    const found = new Set<T>();
    for (const { text } of codes) {
      const line = foldedLine(text.replace(/[\x00-\x1f]/g, ' '));
      for (const value of this.inLines([line])) found.add(value);
      const alone = orderNumberKey(line.text);
      const tokens = tokensOf(alone);
      const known = this.#known.get(wordsKey(tokens, 0, tokens.length))?.find((each) => each.text === alone);
      if (known && !mayBeChance(known, ALONE_IN_CODE)) for (const value of known.values) found.add(value);
    }
    return found;
  }

  /**
   * Those whose number stands in a file's name (without folder and ending). Any sign may stand for another: file names hold no `/`. What
   * looks like a year or a date counts only behind a word.
   */
  inFileName(stem: string): ReadonlySet<T> {
    const folded = fold(stem);
    const tokens = tokensOf(folded);
    const found = new Set<T>();
    for (const { known, first, behind } of this.#longest(tokens)) {
      const words = tokens.slice(Math.max(0, first - 3), first).map(({ text }) => text);
      const announced = announcesOrder(words);
      if (!announced && (mayBeChance(known, IN_FILE_NAME) || (known.allDigits && isDateLike(known.text)))) continue;
      if (!announced && isPrefixed(folded, tokens, first)) continue;
      if (isContinued(folded, tokens, behind)) continue;
      for (const value of known.values) found.add(value);
    }
    return found;
  }

  #inText({ text: line, tokens }: FoldedLine): readonly Hit<T>[] {
    return this.#longest(tokens, (known, first, behind) => {
      const start = tokens[first]?.start ?? 0;
      const end = start + known.text.length;
      if (line.slice(start, end) !== known.text || (tokens[behind - 1]?.end ?? 0) > end) return false;
      return !joinsBefore(line, tokens, first) && !/^(?:[-_]|[./](?=\d))[\p{L}\p{N}]/u.test(line.slice(end));
    });
  }

  /** Of numbers that lie within each other the longest. */
  #longest(tokens: readonly Token[], fits: (known: Known<T>, first: number, behind: number) => boolean = () => true): readonly Hit<T>[] {
    const hits: Hit<T>[] = [];
    for (let first = 0; first < tokens.length; first++) {
      for (const length of this.#lengths.get(tokens[first]?.text ?? '') ?? []) {
        if (first + length > tokens.length) continue;
        for (const known of this.#known.get(wordsKey(tokens, first, first + length)) ?? [])
          if (fits(known, first, first + length)) hits.push({ known, first, behind: first + length });
      }
    }
    if (hits.length < 2) return hits;
    return hits.filter(
      (hit) =>
        !hits.some(
          (other) => other.first <= hit.first && other.behind >= hit.behind && other.behind - other.first > hit.behind - hit.first,
        ),
    );
  }
}

function wordsKey(tokens: readonly Token[], first: number, behind: number): string {
  if (behind - first === 1) return tokens[first]?.text ?? '';
  let key = '';
  for (let i = first; i < behind; i++) key += `${tokens[i]?.text ?? ''} `;
  return key;
}

const mayBeChance = ({ characters, allDigits }: Known<unknown>, least: { readonly characters: number; readonly digits: number }): boolean =>
  characters < (allDigits ? Math.max(least.digits, least.characters) : least.characters);

/** Whether the token before touches by a sign that joins numbers; an order word before it joins nothing. */
function joinsBefore(line: string, tokens: readonly Token[], first: number): boolean {
  const start = tokens[first]?.start ?? 0;
  if (!/[\p{L}\p{N}](?:[-_]|(?<=\d)[./])$/u.test(line.slice(Math.max(0, start - 3), start))) return false;
  const before = tokens[first - 1]?.text ?? '';
  return !isOrderWord(before) && !isBetween(before);
}

/** Whether a line is such a word and nothing else, so that the line below it is what it announces. */
const announcesAlone = (tokens: readonly Token[]): boolean =>
  tokens.length > 0 && tokens.length <= 4 && announcesOrder(tokens.map(({ text }) => text));

/** In a file's name: `kr-1001` may be another number than 1001, `label-1001` is not. */
function isPrefixed(stem: string, tokens: readonly Token[], first: number): boolean {
  const [before, own] = [tokens[first - 1], tokens[first]];
  return before !== undefined && stem.slice(before.end, own?.start) === '-' && !/^\p{L}{4,}$/u.test(before.text);
}

function isContinued(stem: string, tokens: readonly Token[], behind: number): boolean {
  const [own, next] = [tokens[behind - 1], tokens[behind]];
  return next !== undefined && stem.slice(own?.end, next.start) === '-' && !/^\p{L}{3,}$/u.test(next.text);
}

const isDateLike = (digits: string): boolean =>
  /^(?:19|20)\d{2}$/.test(digits) || /^(?:19|20)\d{2}(?:0[1-9]|1[0-2])(?:0[1-9]|[12]\d|3[01])$/.test(digits);
