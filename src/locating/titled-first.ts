import { contains } from '../geometry/box.js';
import { placeOnLine } from '../reading/place-on-line.js';
import type { Phrase } from '../reading/word-lines.js';
import { said } from './kind-of-words.js';
import type { SaidCandidate } from './page-facts.js';

/** Lines whose feet are within this share of the larger type stand on one line. */
const ONE_LINE = 0.5;

/**
 * A candidate whose first line is a name of something else, and nothing but that: it is headed by it, however small the type. Any other is handed back as it is.
 * @param phrases of the whole page
 */
export function withTitleFirst(candidate: SaidCandidate, phrases: readonly Phrase[]): SaidCandidate {
  const { names } = candidate.said;
  if (names.length === 0 && candidate.said.labelWords === 0) return candidate;
  const inside = phrases.filter((phrase) => contains(candidate.box, phrase.box, 2));
  const turn = inside[0]?.turn;
  if (turn === undefined || inside.some((phrase) => phrase.turn !== turn)) return candidate;
  const [first, ...others] = inside
    .map((phrase) => ({ phrase, ...placeOnLine(phrase.box, turn) }))
    .sort((a, b) => a.foot - b.foot || a.from - b.from);
  if (!first) return candidate;
  const isAbreast = others.some(({ phrase, foot }) => foot - first.foot < ONE_LINE * Math.max(phrase.fontSize, first.phrase.fontSize));
  const [title] = isAbreast ? [] : said([first.phrase]).names;
  if (!title || title.kind === 'return-label') return candidate;
  const more = names.filter(({ kind }) => kind !== title.kind);
  return { ...candidate, said: { ...candidate.said, names: [{ ...title, heading: true }, ...more] } };
}
