import { contains, type Box } from '../geometry/box.js';
import type { Phrase } from '../reading/word-lines.js';
import { hasSteps, STEPS } from './list-of-steps.js';
import { PARTIES_OF_LABELS_ALONE, PARTIES_SHORT } from './party-words.js';
import { isReturnTitle } from './return-title.js';
import { folded, KINDS, PHRASES, type Kind } from './vocabulary.js';

/** A name that a region gives itself in its own words. */
export interface SaidName {
  readonly kind: Exclude<Kind, 'label'>;
  /** The words of the vocabulary that stand there. */
  readonly words: string;
  /** In larger type than most of the region's writing; otherwise only in a line of its own. */
  readonly heading: boolean;
}

/** What the words of a region say that it is. */
export interface Said {
  /** What it calls itself, the most prominent first. */
  readonly names: readonly SaidName[];
  /** How many different words of a label stand in it: around addresses, numbers, services. */
  readonly labelWords: number;
  /** Characters of writing; few or none where the region is a picture. */
  readonly characters: number;
}

/** Fewer characters than this are no writing: the region is a picture. */
export const WRITING = 12;
/** A heading is set this much larger than most of the region's writing. */
const LARGER = 1.25;
/** Type of this share of its line says what the line is about. */
const MOST_OF_LINE = 0.45;

/** Reads off the phrases inside `box` what the region says that it is. */
export const saidIn = (phrases: readonly Phrase[], box: Box): Said => said(phrases.filter((phrase) => contains(box, phrase.box, 2)));

export function said(phrases: readonly Phrase[]): Said {
  const usual = usualSize(phrases);
  const names = new Map<Kind, SaidName & { readonly weight: number }>();
  const labelWords = new Set<string>();
  for (const phrase of phrases) {
    const { text, fontSize } = phrase;
    const { plain, line, entries } = inVocabulary(phrase);
    const heading = fontSize >= LARGER * usual;
    const short = SHORT.exec(plain)?.[1];
    if (short !== undefined) labelWords.add(short);
    if (WEIGHT.test(plain)) labelWords.add('kg');
    for (const { kind, words } of entries) {
      const share = words.length / Math.max(1, line.length - 2);
      if (kind === 'label') {
        if (PARTIES_OF_LABELS_ALONE.includes(words)) {
          if (line.trim() === words) labelWords.add(words);
        } else if (share >= MOST_OF_LINE || line.startsWith(` ${words} `) || words.includes(' ')) labelWords.add(words);
        continue;
      }
      if (share < MOST_OF_LINE && !heading && !leads(words, plain)) continue;
      if (kind === 'packing-slip' && !heading && isField(words, plain)) continue;
      if (kind === 'return-label' && !isReturnTitle(words, text, heading)) continue;
      const weight = fontSize * (0.5 + share);
      if (weight > (names.get(kind)?.weight ?? 0)) names.set(kind, { kind, words: words.trim(), heading, weight });
    }
  }
  if (!names.has('instructions') && hasSteps(phrases))
    names.set('instructions', { kind: 'instructions', words: STEPS, heading: false, weight: 0 });
  return {
    names: [...names.values()].sort((a, b) => b.weight - a.weight).map(({ kind, words, heading }) => ({ kind, words, heading })),
    labelWords: labelWords.size,
    characters: phrases.reduce((sum, { text }) => sum + text.length, 0),
  };
}

/** A sender or receiver cut short. */
const SHORT = new RegExp(`^(${PARTIES_SHORT.join('|')})[.:]`);
/** A parcel's weight, by itself or with how many of how many it is (common practice, no source). */
const WEIGHT = /^\d{1,2}[.,]\d{1,3} ?(?:kgs?|lbs?)(?=$|\W+\d)|(?:^|\d\W+)\d{1,2}[.,]\d{1,3} ?(?:kgs?|lbs?)$/;

interface Entry {
  readonly kind: Kind;
  readonly words: string;
  /** Its place in the vocabulary: where two say the same of a line, the first counts. */
  readonly place: number;
}

const ALL: readonly Entry[] = KINDS.flatMap((kind) => PHRASES[kind].map((words) => ({ kind, words }))).map((each, place) => ({
  ...each,
  place,
}));
/** By their first words; those that begin with a sign may stand in the middle of one. */
const BY_WORD = new Map<string, Entry[]>();
for (const entry of ALL) {
  const word = entry.words.startsWith('%') ? '%' : (entry.words.split(' ')[0] ?? '');
  const known = BY_WORD.get(word);
  if (known) known.push(entry);
  else BY_WORD.set(word, [entry]);
}
const byPlace = (a: Entry, b: Entry): number => a.place - b.place;

/** What a phrase says in the vocabulary's letters, and which entries stand in it. */
interface InVocabulary {
  readonly plain: string;
  /** Words only, with a blank at each end. */
  readonly line: string;
  readonly entries: readonly Entry[];
}
const lookedUp = new WeakMap<Phrase, InVocabulary>();

/** Each phrase is looked up once: it may lie in several candidates. */
function inVocabulary(phrase: Phrase): InVocabulary {
  const before = lookedUp.get(phrase);
  if (before) return before;
  const plain = folded(phrase.text);
  const line = ` ${plain.replaceAll(/[^\p{L}\p{N}%' -]+/gu, ' ').replaceAll(/\s+/g, ' ')} `;
  const found = { plain, line, entries: mayStandIn(line).filter(({ words }) => stands(words, line) && !isDenied(words, line)) };
  lookedUp.set(phrase, found);
  return found;
}

/** The entries of the vocabulary whose first word is in a line. */
function mayStandIn(line: string): readonly Entry[] {
  const found = line.includes('%') ? [...(BY_WORD.get('%') ?? [])] : [];
  for (const word of new Set(line.trim().split(' '))) found.push(...(BY_WORD.get(word) ?? []));
  return found.sort(byPlace);
}

/** Whether a line begins with its name and then goes on about it: "Sender copy - keep until delivered". */
const leads = (words: string, line: string): boolean => line.startsWith(words) && /^\s*[:\-\u2013\u2014|(]/.test(line.slice(words.length));

/** Whether a line says something of its own after a colon, in words: "Delivery note: leave with neighbour". A number there is the paper's own. */
const isField = (words: string, line: string): boolean => line.startsWith(words) && /^\s*:\s*\p{L}\D*$/u.test(line.slice(words.length));

/** Whether a line says that there is no such thing: "Manifest not required". From memory but for English, German and French. */
const isDenied = (words: string, line: string): boolean => DENIED.test(line.slice(line.indexOf(words) + words.length));
const DENIED =
  /^ ?(?:is |est |ist |es |e )?(?:not|nicht|non|no|niet|ikke|inte|nie) (?:required|needed|necessary|erforderlich|notig|requis|requerid|necessari|richiest|nodig|vereist|pakrevd|pakraev|kraves|wymagan)/;

/** Whole words only: "to" is not in "together". Words that end or begin with a sign or a blank may stand in others. */
const stands = (words: string, line: string): boolean =>
  words.startsWith('%') ? line.includes(words) : line.includes(words.endsWith(' ') ? ` ${words}` : ` ${words} `);

/** The size that half of the writing has or stays under, pt. */
export function usualSize(phrases: readonly Phrase[]): number {
  const bySize = [...phrases].sort((a, b) => a.fontSize - b.fontSize);
  const all = phrases.reduce((sum, { text }) => sum + text.length, 0);
  let seen = 0;
  return bySize.find(({ text }) => (seen += text.length) >= all / 2)?.fontSize ?? 0;
}
