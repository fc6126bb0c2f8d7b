import { foldedLine } from './fold.js';
import type { Order } from './order.js';
import { holdsName, likenessKeys, personName, type NameLine, type PersonName } from './person-name.js';
import { writtenPostcodes } from './postcode-forms.js';
import { postcodeKey, postcodesIn, shapeOf } from './postcode.js';
import type { ReadLabel } from './read-label.js';

/** What of an order's address a label can be asked for. */
export interface Addressee {
  /** Empty where the order has none. */
  readonly postcode: string;
  readonly name: PersonName | undefined;
}

export const addresseeOf = (order: Order): Addressee => ({ postcode: postcodeKey(order.postcode), name: personName(order.buyer) });

export const holdsPostcode = (label: ReadLabel, { postcode }: Addressee): boolean => postcode !== '' && label.anyPostcode.has(postcode);
export const holdsBuyer = (label: ReadLabel, { name }: Addressee): boolean =>
  name !== undefined && label.names.some((line) => holdsName(line, name));

/** Few enough to be compared one by one. */
const FEW = 16;

interface Entry {
  readonly order: number;
  readonly name: PersonName;
}

/** Names of one postcode by keys; `parts` are those that part keys are made of. */
interface NameKeys {
  readonly parts: ReadonlySet<string>;
  readonly entries: ReadonlyMap<string, readonly Entry[]>;
}

interface Postcode {
  readonly entries: Entry[];
  byName: NameKeys | undefined;
}

/** Finds orders of one channel by postcode and name; orders are numbers (their indexes). Both must stand on the label. */
export class AddressIndex {
  readonly #postcodes = new Map<string, Postcode>();

  add(order: number, { postcode, name }: Addressee): void {
    if (postcode === '' || !name) return;
    const known = this.#postcodes.get(postcode);
    if (known) known.entries.push({ order, name });
    else this.#postcodes.set(postcode, { entries: [{ order, name }], byName: undefined });
  }

  /** The orders whose postcode and buyer a label shows, in the order that they were added. */
  onLabel(label: ReadLabel): readonly number[] {
    const found = new Set<number>();
    for (const key of label.anyPostcode) {
      const postcode = this.#postcodes.get(key);
      if (!postcode) continue;
      const { entries } = postcode;
      for (const line of label.names) {
        const candidates = entries.length <= FEW ? entries : candidatesIn((postcode.byName ??= keyed(entries)), line);
        for (const { order, name } of candidates) if (holdsName(line, name)) found.add(order);
      }
    }
    return [...found].sort((a, b) => a - b);
  }
}

/**
 * Keys that every line which holds the name shares one of: its letters; the first two of a name without spaces; of each two parts what
 * one is alike to, with the first letter of the other (see `holdsName`: only one part may have another first letter).
 */
function keysOf({ parts, joined, dense }: PersonName): readonly string[] {
  if (dense) return [`=${joined}`, `^${joined.slice(0, 2)}`];
  if (parts.length === 1) return likenessKeys(joined).map((key) => `|${key}`);
  const pairs = parts.flatMap((part, at) => {
    const initials = initialsBut(parts, at);
    return likenessKeys(part).flatMap((key) => initials.map((initial) => `${initial}|${key}`));
  });
  return [`=${joined}`, ...pairs];
}

/** First letters of all words but one. */
const initialsBut = (words: readonly string[], at: number): readonly string[] => [
  ...new Set(words.filter((_, other) => other !== at).map((word) => word.charAt(0))),
];

function keyed(entries: readonly Entry[]): NameKeys {
  const byKey = new Map<string, Entry[]>();
  const parts = new Set<string>();
  for (const entry of entries) {
    for (const key of new Set(keysOf(entry.name))) {
      const same = byKey.get(key);
      if (same) same.push(entry);
      else byKey.set(key, [entry]);
      const at = key.indexOf('|');
      if (at >= 0) parts.add(key.slice(at + 1));
    }
  }
  return { parts, entries: byKey };
}

/** Those that may stand on a line: they share a key with it. */
function candidatesIn({ parts, entries }: NameKeys, { words, joined }: NameLine): ReadonlySet<Entry> {
  const found = new Set<Entry>();
  const take = (key: string): void => entries.get(key)?.forEach((entry) => found.add(entry));
  take(`=${joined}`);
  if (/[^\x20-\x7e]/.test(joined)) for (let at = 0; at < joined.length; at++) take(`^${joined.slice(at, at + 2)}`);
  for (const [at, word] of words.entries()) {
    for (const key of likenessKeys(word)) {
      if (!parts.has(key)) continue;
      take(`|${key}`);
      for (const initial of initialsBut(words, at)) take(`${initial}|${key}`);
    }
  }
  return found;
}

const FROM =
  /\b(?:from|sender|return|returns|absender|retour|expediteur|remitente|mittente|afzender|avsandare|nadawca)\b|^(?:von|de|od|寄件人|発送元)\s*:?$/;
const TO =
  /\b(?:ship|deliver|send) to\b|^(?:to|an|a|para|till|do)\s*:?$|\b(?:recipient|empfanger|lieferadresse|destinataire|destinatario|mottagare|adresat)\b/;
const NO_ADDRESS = /\b(?:tel|phone|fon|order|ref|date|weight|datum|tracking)\b|:/;

/** A line that can be the name above an address: two words of letters or more, or letters without spaces, no digits. */
const isNameLike = ({ words, joined }: NameLine): boolean =>
  !/\d/.test(joined) && joined.length >= 3 && (words.length >= 2 || /[^\x20-\x7e]/.test(joined));

/**
 * What a label shows as postcodes of its addressee, with a name one to four lines above: of the same form as `like`, or surely of another one (see
 * `writtenPostcodes`). What stands below a word for the sender, or is among `own`, is none.
 */
export function foreignPostcodes(label: ReadLabel, like: string, own: ReadonlySet<string>): readonly string[] {
  const shape = shapeOf(like);
  const found = new Set<string>();
  let block: 'open' | 'from' = 'open';
  let nameAt = -Infinity;
  for (const [at, { text: line }] of label.lines.entries()) {
    if (TO.test(line)) block = 'open';
    else if (FROM.test(line)) block = 'from';
    const name = label.names[at];
    if (NO_ADDRESS.test(line)) continue;
    const here = [...(label.postcodes[at] ?? []).filter((key) => shapeOf(key) === shape), ...writtenPostcodes(line)];
    if (block === 'open' && nameAt < at && at - nameAt <= 4) for (const key of here) if (!own.has(key) && key !== like) found.add(key);
    // A block ends with its postcode: the next name begins another one.
    if (here.length > 0 && block === 'from') block = 'open';
    if (name && isNameLike(name)) nameAt = at;
  }
  return [...found];
}

/** What the lines of an address may say as postcodes. */
export const postcodesOf = (lines: readonly string[]): ReadonlySet<string> => new Set(lines.map(foldedLine).flatMap(postcodesIn));
