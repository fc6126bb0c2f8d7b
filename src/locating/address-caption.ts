import { CJK, digitsIn, isAddressLine, isStreet, isTown } from './address-lines.js';
import { PARTIES, PARTIES_ALONE, PARTIES_SHORT } from './party-words.js';
import { folded } from './vocabulary.js';

/** Lines of an address that a caption names: a name and a place … */
const LEAST = 2;
/** … and one more below a word that may stand for anything, where no line has a number of a house or a town. */
const LEAST_ALONE = 3;
/** Lines beside an address that are none of it and don't end it: a telephone, a mail address. */
const ASIDE = /@|^\s*(?:tel|tél|phone|mob|telefon|teléfono|tlf|☎|電話|电话|전화|тел|τηλ|هاتف|טל)|^[+\d\s()/.-]+$/iu;

/** A street's name and a number are more than a word and a number: "Worth 25". */
const TWO_WORDS = /\p{L}{2}.*\s\p{L}{2}/u;

const NAMED: ReadonlySet<string> = new Set(PARTIES);
const ALONE: ReadonlySet<string> = new Set([...PARTIES_ALONE, ...PARTIES_SHORT]);

export interface Caption {
  /** It says sender or addressee by a word of its own, and not only from or to. */
  readonly sure: boolean;
  /** What stands behind its colon. */
  readonly rest: string;
}

/** A line that says whose address follows, in one language or in several; perhaps with the first line of it behind a colon. */
export function captionIn(text: string): Caption | undefined {
  const [, head = text, behind = ''] = /^([^:：]{1,40})[:：]\s*(.*)$/u.exec(text) ?? [];
  const words = partsOf(head);
  if (words.length === 0 || !words.every((word) => NAMED.has(word) || ALONE.has(word))) return undefined;
  return { sure: words.some((word) => NAMED.has(word)), rest: behind };
}

/** `Recipient / Destinataire` as two. */
const partsOf = (head: string): readonly string[] =>
  folded(head)
    .split(/[/|·(（]/u)
    .map((part) =>
      part
        .replaceAll(/[^\p{L}' -]+/gu, ' ')
        .replaceAll(/\s+/g, ' ')
        .trim(),
    )
    .filter((part) => part !== '');

/**
 * Whether a caption stands in some lines with an address below it that has neither a house's number nor a postcode, as in villages and in much of the world: names, in
 * lines that could be nothing else.
 */
export function isCaptioned(lines: readonly string[]): boolean {
  return lines.some((line, at) => {
    const caption = captionIn(line);
    return caption !== undefined && follows(caption, lines.slice(at + 1));
  });
}

function follows({ sure, rest }: Caption, below: readonly string[]): boolean {
  const own = [...(rest === '' ? [] : [rest]), ...below].filter((line) => !ASIDE.test(line));
  const end = own.findIndex((line) => captionIn(line) !== undefined || !isAddressLine(line));
  const lines = end < 0 ? own : own.slice(0, end);
  const hasNumber = lines.slice(1).some((line) => digitsIn(line) > 0 && (isTown(line) || (isStreet(line) && TWO_WORDS.test(line))));
  return lines.length >= (sure || hasNumber ? LEAST : LEAST_ALONE) && lines.some((line) => /\S{2}\s+\S{2}/u.test(line) || CJK.test(line));
}
