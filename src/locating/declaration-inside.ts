import { contains, type Box } from '../geometry/box.js';
import { placeOnLine, type PlaceOnLine } from '../reading/place-on-line.js';
import type { Phrase } from '../reading/word-lines.js';
import { addressBlocks } from './address-block.js';
import { itemRows } from './item-rows.js';
import { said } from './kind-of-words.js';
import { fillsMostOf } from './label-sizes.js';
import type { SaidCandidate } from './page-facts.js';
import { hasMainBars } from './strength.js';
import { folded, PHRASES } from './vocabulary.js';

/** Bars are known to 2 mm: so much (pt) of them may reach past the title. */
const SLACK = 6;
/** Letters of one column begin within this of each other, pt: words are known by their ink. */
const INSET = 3;

/**
 * A candidate that calls itself a customs form, but is a label that holds its declaration: what stands before the declaration's title, above it or beside
 * it, is a whole label, with its leading bars and somebody's address. The name is taken off such a candidate. A form of its own has its title first: there it is a
 * heading, however small. Any other is handed back as it is.
 * @param phrases of the whole page
 */
export function withDeclarationInside(candidate: SaidCandidate, phrases: readonly Phrase[]): SaidCandidate {
  const { box, edge, ruled, said: says } = candidate;
  if (!says.names.some(({ kind }) => kind === 'customs-form')) return candidate;
  const inside = phrases.filter((phrase) => contains(box, phrase.box, 2));
  const titles = inside.filter(({ text }) => isTitle(text));
  const turn = titles[0]?.turn;
  if (turn === undefined || titles.some((title) => title.turn !== turn)) return candidate;
  const place = (each: Box): PlaceOnLine => placeOnLine(each, turn);
  const top = Math.min(...titles.map(({ box: at }) => place(at).top));
  const start = Math.min(...titles.map(({ box: at }) => place(at).from)) - INSET;
  const isAbove = (each: Box, slack: number): boolean => place(each).foot <= top + slack;
  const isBefore = (each: Box, slack: number): boolean => place(each).to <= start + slack;
  const isTitled = inside.every(({ box: at, turn: way }) => way === turn && !isAbove(at, SLACK) && !isBefore(at, 0));
  if (isTitled)
    return {
      ...candidate,
      said: { ...says, names: says.names.map((each) => (each.kind === 'customs-form' ? { ...each, heading: true } : each)) },
    };
  if (
    says.names[0]?.kind !== 'customs-form' ||
    !hasMainBars(candidate) ||
    (edge === 'ink' && !ruled && !fillsMostOf(box.width, box.height))
  )
    return candidate;
  const crosses = ({ box: at }: Phrase): boolean => place(at).from < start && place(at).to > start;
  const isLabel = (isThere: (each: Box, slack: number) => boolean): boolean => {
    const part = inside.filter((phrase) => isThere(phrase.box, 0));
    return (
      hasMainBars({ codes: candidate.codes.filter((code) => isThere(code.box, SLACK)) }) &&
      addressBlocks(part).length > 0 &&
      said(part).names.every(({ kind }) => kind === 'return-label') &&
      itemRows(part) === undefined
    );
  };
  if (!isLabel(isAbove) && (inside.some(crosses) || !isLabel(isBefore))) return candidate;
  return { ...candidate, declares: true, said: { ...says, names: says.names.filter(({ kind }) => kind !== 'customs-form') } };
}

const isTitle = (text: string): boolean => {
  const line = folded(text);
  return PHRASES['customs-form'].some((words) => line.includes(words));
};
