import { area, intersection, near, union, type Box } from '../geometry/box.js';
import type { Word } from '../reading/source.js';

/** What words say, and where. */
export interface HazardWords {
  readonly what: HazardWording;
  readonly box: Box;
}

/** Names of what marks say; never the words of a page. */
export type HazardWording =
  'UN number' | 'limited quantity' | 'excepted quantity' | 'lithium' | 'cargo aircraft only' | 'dry ice' | 'ORM-D';

/**
 * Words that stand on or beside hazard marks, lower-case and without accents, in the languages of labels that the project knows:
 * English, German, French, Spanish, Italian, Portuguese, Dutch, Polish, Czech, Swedish, Danish. "Dangerous goods" is none of them:
 * customs forms and terms of carriage say it of parcels without any.
 */
const WORDINGS: readonly (readonly [pattern: RegExp, what: HazardWording])[] = [
  [
    /\b(?:(?:limited|ltd\.?) (?:quantity|quantities|qty\.?)|begrenzte mengen?|quantites? limitees?|cantidad(?:es)? limitadas?|quantita limitat[ae]|quantidades? limitadas?|(?:gelimiteerde|beperkte) hoeveelhe(?:id|den)|ilosc(?:i)? ograniczon[ae]|omezene mnozstvi|begransad(?:e)? mangd(?:er)?|begrænsede? mængder?)(?![a-z])/g,
    'limited quantity',
  ],
  [/\b(?:excepted quantit(?:y|ies)|freigestellte mengen?|quantites? exceptees?|cantidad(?:es)? exceptuadas?)\b/g, 'excepted quantity'],
  [/\b(?:lithium|litio|litow[aey]|lithiov[aeyi]+)(?:[- ]|\b)/g, 'lithium'],
  [
    /\b(?:cargo aircraft only|nur (?:mit )?frachtflugzeug(?:en)?|avions? cargos? (?:seulement|uniquement)|solo avion(?:es)? de carga|solo aerei cargo)\b/g,
    'cargo aircraft only',
  ],
  [/\b(?:dry ice|trockeneis|glace carbonique|carbon dioxide,? solid|hielo seco|ghiaccio secco)\b/g, 'dry ice'],
  [/\borm-d(?:-air)?\b/g, 'ORM-D'],
];
/** Of UN numbers the letters are large ones: they are looked for in the words as they are. */
const UN_NUMBER = /(?<![\p{L}\d-])UN ?(?:N[oº°]\.? ?)?(?:0\d{3}|[1-3]\d{3})(?![\p{L}\d-])/gu;

/** Words of one wording are no farther apart than this many times their size. */
const APART = 1.6;

/** Hazard words inside a box (pt), in the order of the text layer. */
export function hazardWords(words: readonly Word[], box: Box): readonly HazardWords[] {
  const inside = words.filter((word) => isInside(word.box, box));
  const text = new RunningText(inside);
  const found: HazardWords[] = [];
  const add = (what: HazardWording, { index, length }: { index: number; length: number }): void => {
    const place = text.placeOf(index, length);
    if (place && !found.some((other) => other.what === what && near(other.box, place, 0))) found.push({ what, box: place });
  };
  for (const match of text.asIs.matchAll(UN_NUMBER)) add('UN number', { index: match.index, length: match[0].length });
  for (const [pattern, what] of WORDINGS) {
    for (const match of text.plain.matchAll(pattern)) add(what, { index: match.index, length: match[0].trimEnd().length });
  }
  return found;
}

function isInside(word: Box, box: Box): boolean {
  const shared = intersection(word, box);
  return shared !== undefined && area(shared) >= 0.5 * area(word);
}

/** Words one behind the other, with their places. */
class RunningText {
  readonly #words: readonly Word[];
  readonly #starts: readonly number[];
  readonly asIs: string;
  /** Lower-case, without accents, of the same length. */
  readonly plain: string;

  constructor(words: readonly Word[]) {
    this.#words = words;
    let at = 0;
    this.#starts = words.map(({ text }) => (at += text.length + 1) - text.length - 1);
    this.asIs = words.map(({ text }) => text).join(' ');
    this.plain = Array.from(this.asIs, plainOf).join('');
  }

  /** The box around a stretch; undefined where its words stand apart: they only follow each other in the file. */
  placeOf(index: number, length: number): Box | undefined {
    const parts = this.#words.filter((word, at) => {
      const start = this.#starts[at] as number;
      return start < index + length && start + word.text.length > index;
    });
    const together = parts.every((word, at) => {
      const before = parts[at - 1];
      return !before || (before.turn === word.turn && near(before.box, word.box, APART * word.fontSize));
    });
    return together ? union(parts.map((word) => word.box)) : undefined;
  }
}

/** A character as it is compared; always as long as it was. */
function plainOf(character: string): string {
  const plain = character.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase();
  return plain.length === character.length
    ? plain
    : character.toLowerCase().length === character.length
      ? character.toLowerCase()
      : character;
}
