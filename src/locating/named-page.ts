import { bottom, contains, grow, type Box } from '../geometry/box.js';
import { mmToPt } from '../geometry/length.js';
import { codeLikeAreas } from '../reading/code-like.js';
import { LINEAR } from '../reading/codes.js';
import { sizeOf, type Judged } from './candidate.js';
import { WRITING, type SaidName } from './kind-of-words.js';
import { isWholeLabel } from './label-sizes.js';
import { repeatedNumber } from './larger-copy.js';
import { hasItems } from './item-rows.js';
import type { PageFacts, ReadCodes, SaidCandidate } from './page-facts.js';
import { addressesOn } from './address-block.js';
import { folded } from './vocabulary.js';
import { ALL_OF_A_LABEL, hasMainBars, isLongNumber, isTrackingLike, LABEL, LABEL_AMONG_OTHERS, strengthOf } from './strength.js';

/** Every candidate of a page: those that call themselves something else than a label, and the others, good or bad. */
export interface All {
  readonly named: readonly SaidCandidate[];
  readonly others: readonly SaidCandidate[];
}

/** What a page is that calls itself something else than a label. */
export type NamedPage =
  | { readonly kind: 'named'; readonly name: SaidName }
  | { readonly kind: 'unnamed'; readonly codes: boolean }
  | { readonly kind: 'doubtful'; readonly why: string; readonly candidates: readonly Judged[] };

const doubtful = (why: string, candidates: readonly Judged[]): NamedPage => ({ kind: 'doubtful', why, candidates });

/** A page that calls itself something to be skipped, but has all of a label, is looked at: a large word of a label may be such a name. */
export async function namedPage(name: SaidName, { named, others }: All, facts: PageFacts): Promise<NamedPage> {
  const { page, readCodes } = facts;
  const isPrinted = name.kind === 'packing-slip' || name.kind === 'customs-form';
  const has = (least: number) => (each: SaidCandidate) => strengthOf(each, each.said, undefined) >= least;
  const strong =
    (isPrinted ? undefined : named.find(has(LABEL_AMONG_OTHERS))) ??
    (name.kind === 'customs-form' ? undefined : await addressedLabel(named.filter(has(LABEL)), facts)) ??
    (name.kind === 'customs-form' ? undefined : await declaredLabel(named, readCodes)) ??
    others.find(has(ALL_OF_A_LABEL)) ??
    (name.kind === 'customs-form' ? undefined : await passedOver(others.filter(has(LABEL)), readCodes));
  if (strong) return doubtful(`the page calls itself "${name.words}", but the ${sizeOf(strong)} is like a label`, [strong]);
  if (name.kind === 'customs-form' && (await hasNumberAbove(name, facts))) return { kind: 'unnamed', codes: true };
  const bars = isPrinted ? undefined : await repeatedNumber(page, readCodes);
  if (!bars) return name.kind === 'instructions' && (await hasParcel(facts)) ? { kind: 'unnamed', codes: true } : { kind: 'named', name };
  const around = [...others, ...named].find(({ box }) => contains(box, bars, 2));
  if (!around) return { kind: 'unnamed', codes: true };
  return doubtful(`the page calls itself "${name.words}", but a number stands on it twice, as on a label and its receipt`, [around]);
}

/** Whether bars above the title of a form say a parcel's number: a form has its title first, and what stands above may be a label smaller than most. */
async function hasNumberAbove({ words }: SaidName, { page, phrases, readCodes }: PageFacts): Promise<boolean> {
  const titles = phrases.filter(({ text, turn }) => turn === 0 && folded(text).includes(words));
  const top = Math.min(...titles.map(({ box }) => box.y));
  if (!Number.isFinite(top)) return false;
  const bars = codeLikeAreas(page).filter(({ kind, box }) => kind === 'linear' && bottom(box) <= top);
  const read = await Promise.all(bars.map(({ box }) => readCodes(grow(box, AROUND))));
  return read.flat().some(isLongNumber);
}
/** Bars are known to 2 mm and need white around to be read, pt. */
const AROUND = mmToPt(5);

/** An address and bars that say a parcel's number: instructions that begin with them may have a label smaller than most, for somebody to look at. */
async function hasParcel({ page, phrases, readCodes }: PageFacts): Promise<boolean> {
  const whole: Box = { x: 0, y: 0, width: page.width, height: page.height };
  if (addressesOn(whole, phrases) === 0) return false;
  return (await readCodes(whole)).some((code) => LINEAR.includes(code.symbology) && isLongNumber(code));
}

/** A label may have a large word that is a name of something else: with edges of its own, an address, a number longer than those of orders, and no items. */
async function addressedLabel(candidates: readonly SaidCandidate[], { phrases, readCodes }: PageFacts): Promise<SaidCandidate | undefined> {
  for (const each of candidates) {
    if ((each.edge === 'ink' && !each.ruled) || hasItems(each.box, phrases)) continue;
    if (addressesOn(each.box, phrases) === 0) continue;
    const codes = await readCodes(each.box);
    if (codes.some(isLongNumber) && strengthOf(each, each.said, codes) >= LABEL_AMONG_OTHERS) return each;
  }
  return undefined;
}

/** A label that holds its own customs declaration is called by it: in a frame of its own, with large bars that say a parcel's number. */
async function declaredLabel(candidates: readonly SaidCandidate[], readCodes: ReadCodes): Promise<SaidCandidate | undefined> {
  for (const each of candidates) {
    if ((each.edge === 'ink' && !each.ruled) || each.edge === 'page' || each.said.names[0]?.kind !== 'customs-form' || !hasMainBars(each))
      continue;
    if ((await readCodes(each.box)).some(isTrackingLike)) return each;
  }
  return undefined;
}

/** A label with edges of its own that was passed over, as what stands close to it counts against its place: everything that a label has, once its codes are read. */
async function passedOver(candidates: readonly SaidCandidate[], readCodes: ReadCodes): Promise<SaidCandidate | undefined> {
  for (const each of candidates) {
    if (each.edge === 'ink' || each.edge === 'page' || !isWholeLabel(each)) continue;
    const codes = await readCodes(each.box);
    const isWordless = each.said.characters < WRITING && hasMainBars(each);
    if (codes.some(isLongNumber) && (isWordless || strengthOf(each, each.said, codes) >= ALL_OF_A_LABEL)) return each;
  }
  return undefined;
}
