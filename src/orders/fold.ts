/** A run of letters and digits in a folded text, with where it stands: UTF-16 units from 0, `end` behind the last one. */
export interface Token {
  readonly text: string;
  readonly start: number;
  readonly end: number;
}

/** Letters that Unicode decomposition leaves as they are, and what they are written as where they are missing. */
const LETTERS: Readonly<Record<string, string>> = {
  ß: 'ss',
  æ: 'ae',
  œ: 'oe',
  ø: 'o',
  ł: 'l',
  đ: 'd',
  ð: 'd',
  þ: 'th',
  ı: 'i',
  ς: 'σ',
  ى: 'ي',
  ة: 'ه',
};

// Vowel signs of Indic scripts and Thai, and the marks of kana are letters to their readers: they stay.
const ACCENTS = /[\u0300-\u036f\u0591-\u05c7\u064b-\u065f\u0670\u0640\p{Cf}]+/gu;
const DASHES = /\p{Pd}|\u2212/gu;
const OTHER_DIGITS = /[\u0660-\u0669\u06f0-\u06f9\u0966-\u096f\u0e50-\u0e59]/g;

/**
 * A text for comparing: compatibility forms decomposed (Unicode NFKD), without accents, in small letters, dashes as `-`, digits as 0 to
 * 9, runs of space as one space. Any script; the same on every machine. Fold before cutting: positions are not those of `text`.
 */
export function fold(text: string): string {
  if (/^[\x20-\x7e]*$/.test(text)) return text.toLowerCase().replace(/ {2,}/g, ' ').trim();
  return text
    .normalize('NFKD')
    .replace(ACCENTS, '')
    .normalize('NFC')
    .toLowerCase()
    .replace(/[ßæœøłđðþıςىة]/g, (letter) => LETTERS[letter] ?? letter)
    .replace(DASHES, '-')
    .replace(OTHER_DIGITS, (digit) => String(digitValue(digit.charCodeAt(0))))
    .replace(/\s+/g, ' ')
    .trim();
}

/** Each of those blocks begins at a code whose last digit is 0 or 6. */
const digitValue = (code: number): number => (code >= 0xe50 ? code - 0xe50 : code >= 0x966 ? code - 0x966 : (code & 0xf) % 16);

/** Scripts that set no spaces between words, so that a number beside a word touches it. */
const DENSE = '\\p{Script=Han}\\p{Script=Hiragana}\\p{Script=Katakana}\u30fc\\p{Script=Thai}\\p{Script=Lao}\\p{Script=Khmer}';
const TOKEN = new RegExp(`[${DENSE}]+|(?:(?![${DENSE}])[\\p{L}\\p{M}\\p{N}])+`, 'gu');

/** The runs of letters and digits of a folded text, in their order; text of scripts without spaces is a run of its own. */
export function tokensOf(folded: string): readonly Token[] {
  if (/^[\x20-\x7e]*$/.test(folded)) return plainTokensOf(folded);
  const tokens: Token[] = [];
  for (const match of folded.matchAll(TOKEN)) tokens.push({ text: match[0], start: match.index, end: match.index + match[0].length });
  return tokens;
}

/** The same for ASCII, where most labels end: several times as fast. */
function plainTokensOf(folded: string): readonly Token[] {
  const tokens: Token[] = [];
  let start = -1;
  for (let at = 0; at <= folded.length; at++) {
    const code = at < folded.length ? folded.charCodeAt(at) : 32;
    const inside = (code >= 97 && code <= 122) || (code >= 48 && code <= 57);
    if (inside && start < 0) start = at;
    else if (!inside && start >= 0) {
      tokens.push({ text: folded.slice(start, at), start, end: at });
      start = -1;
    }
  }
  return tokens;
}

/** A folded line with its words: what labels are compared by. */
export interface FoldedLine {
  readonly text: string;
  readonly tokens: readonly Token[];
}

export function foldedLine(line: string): FoldedLine {
  const text = fold(line);
  return { text, tokens: tokensOf(text) };
}

/** Whether a folded text is of scripts that write names without a space between their parts: Han, kana, Hangul, Thai, Lao, Khmer. */
export const isDense = (folded: string): boolean =>
  /^[\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}\u30fc\p{Script=Hangul}\p{Script=Thai}\p{Script=Lao}\p{Script=Khmer}]+$/u.test(
    folded,
  );
