import { intersection, type Box } from '../geometry/box.js';
import type { Media } from '../geometry/media.js';
import { codeLikeAreas } from '../reading/code-like.js';
import type { SourcePage } from '../reading/source.js';
import { phrasesOf } from '../reading/word-lines.js';
import { EDGES, sizeOf, type Judged } from './candidate.js';
import { isPartOfBill } from './bill-part.js';
import { choose, type Chosen } from './choose.js';
import { withoutCoupons } from './coupons.js';
import { isExplainedBy, isSeveral, mayBeSeveral, sharesCode, unlikeBest, withoutCopies, type Likeliest } from './compared.js';
import { withDeclarationInside } from './declaration-inside.js';
import { doubtsOf, leftOver, sureBeside, type Doubt } from './doubts.js';
import { isAddressedFrame, isApartFrom, isParcels } from './from-to.js';
import { inkBlobs } from './ink-blobs.js';
import { withoutSpecks } from './specks.js';
import { judgedOn } from './locate.js';
import { said, saidIn, WRITING, type Said, type SaidName } from './kind-of-words.js';
import { leftBehind } from './left-behind.js';
import { isWholeLabel } from './label-sizes.js';
import { littleOfLabel } from './little-of-label.js';
import { outdoneLabel } from './larger-copy.js';
import { namedPage, type All } from './named-page.js';
import { ontoOwnPaper } from './own-paper.js';
import { hasOwn, isLikeLabel, isMatrixAlone } from './own-evidence.js';
import { hasItems } from './item-rows.js';
import type { PageFacts, ReadCodes, ReadPictures, SaidCandidate } from './page-facts.js';
import { pageDividers } from './page-dividers.js';
import { withoutSpeech } from './page-speech.js';
import { readingWords } from './reading-words.js';
import { withRestRead } from './read-rest.js';
import { WITHOUT_LABEL } from './receipt-words.js';
import { restOf, type Rest } from './rest.js';
import { addressesOn, FROM_TO } from './address-block.js';
import { speaksAgainst } from './speaks-against.js';
import { ALL_OF_A_LABEL, isLongNumber, LABEL, LABEL_AMONG_OTHERS, strengthOf } from './strength.js';
import { withTitleFirst } from './titled-first.js';
import { tickBoxes } from './tick-boxes.js';
import { titledReturn } from './titled-return.js';

/** A label that was found on a page that nobody described. */
export interface FoundLabel extends Judged {
  /** Set when the label calls itself a return label: its words. */
  readonly returns: string | undefined;
}

/** What a page is. */
export type Survey =
  | { readonly kind: 'blank' }
  /** `doubts`: further parts of the page that may each be a label, by none of which the labels could be others. */
  | { readonly kind: 'labels'; readonly labels: readonly FoundLabel[]; readonly rest: Rest; readonly doubts: readonly Doubt[] }
  /** It may hold a label, but which, or whether, is not sure. `candidates`: best first. */
  | { readonly kind: 'doubtful'; readonly why: string; readonly candidates: readonly Judged[] }
  /** No label, and it says what it is. */
  | { readonly kind: 'named'; readonly name: SaidName }
  /** No label, and it doesn't say what it is. `codes`: whether anything on it looks like a code. */
  | { readonly kind: 'unnamed'; readonly codes: boolean };

const surveys = new WeakMap<SourcePage, Promise<Survey>>();

/** Says what a page is and where its labels are, from nothing but its own facts; each page is looked at once. */
export function survey(page: SourcePage, media: Media, readCodes: ReadCodes): Promise<Survey> {
  let known = surveys.get(page);
  if (!known) surveys.set(page, (known = surveyPage(page, media, readCodes)));
  return known;
}

async function surveyPage(page: SourcePage, media: Media, readCodes: ReadCodes): Promise<Survey> {
  const pictures: ReadPictures = { boxes: [], words: [] };
  return withRestRead(page, await readingWords(page, readCodes, pictures, (read) => surveyWith(page, media, readCodes, read)));
}

async function surveyWith(page: SourcePage, media: Media, readCodes: ReadCodes, read: ReadPictures): Promise<Survey> {
  const blobs = withoutSpecks(inkBlobs(page.ink()));
  if (blobs.length === 0) return { kind: 'blank' };
  const phrases = phrasesOf(read.words.length > 0 ? [...page.words(), ...read.words] : page.words());
  const whole: Box = { x: 0, y: 0, width: page.width, height: page.height };
  const saidOf = (box: Box): Said => saidIn(phrases, box);
  const candidates = judgedOn(page, whole, EDGES, media, withoutSpeech(page, blobs), saidOf).map((each) =>
    withDeclarationInside(withTitleFirst({ ...each, said: saidOf(each.box) }, phrases), phrases),
  );
  const chosen = choose(candidates.filter((each) => !isNamedOtherwise(each)));
  const named = candidates.filter(isNamedOtherwise);
  const others = candidates.filter((each) => !named.includes(each));
  return settle(chosen.labels, chosen.rivals, { named, others }, { page, blobs, phrases, readCodes, pictures: read.boxes });
}

type Likely = Chosen<SaidCandidate>;

/**
 * Whether a region calls itself something that is no label: in a heading, or in a line of its own where no word of a label stands. Ink that ends anywhere may be a
 * label and the form beside it.
 */
const isNamedOtherwise = ({ said: { names, labelWords }, edge, ruled }: SaidCandidate): boolean =>
  names.some(
    ({ kind, heading }) =>
      (heading || labelWords === 0 || (kind === 'customs-form' && edge === 'ink' && !ruled)) && kind !== 'return-label',
  );

async function settle(likely: readonly Likely[], rivals: readonly Judged[], all: All, facts: PageFacts): Promise<Survey> {
  const { page, blobs, phrases, readCodes } = facts;
  const isOwn = ({ kind, heading }: SaidName): boolean => heading && kind !== 'return-label';
  const own =
    said(withoutCoupons(likely, facts)).names.find(isOwn) ??
    (likely.length === 0 ? all.named.find(({ said: { names } }) => names.some(isOwn))?.said.names.find(isOwn) : undefined);
  const weighed = await Promise.all(
    likely.map((each) =>
      weigh(each, own !== undefined || likely.length > 1 || each.declares === true || mayBeSeveral(each, phrases), readCodes),
    ),
  );
  const isAlone = own !== undefined && WITHOUT_LABEL.includes(own.words);
  const isMore = ({ strength, label, codes }: Likeliest): boolean =>
    (strength === LABEL && (isParcels(label, codes, phrases) || (own !== undefined && isApartFrom(label, codes, phrases)))) ||
    (strength === (own ? LABEL : LABEL - 1) && isAddressedFrame(label, codes, phrases, own !== undefined));
  const needed = ({ fillsPaper, said: { characters }, edge }: Likely): number => {
    if (isAlone) return ALL_OF_A_LABEL;
    return own || fillsPaper || (characters < WRITING && edge === 'ink') ? LABEL_AMONG_OTHERS : LABEL;
  };
  const isEnough = ({ strength, label, codes }: Likeliest): boolean =>
    isLikeLabel(label, codes, facts) &&
    !(own && label.edge === 'ink' && label.declares !== true && hasItems(label.box, phrases)) &&
    strength + (isMore({ strength, label, codes }) ? 1 : 0) >= needed(label);
  const enough = weighed.filter(isEnough);
  const sure = withoutCopies(enough);
  // A receipt is smaller, without sender and receiver: what is a whole label is one with a number that was used before.
  const twice = weighed
    .filter((each) => each.strength >= LABEL && sure.every((other) => other !== each) && sure.some((other) => sharesCode(each, other)))
    .map(({ label }) => label)
    .filter((label) => isWholeLabel(label) && addressesOn(label.box, phrases) >= FROM_TO);
  const weak = weighed.filter(
    (each) =>
      !isEnough(each) && !sure.some((label) => isExplainedBy(each, label)) && !(own && isPartOfBill(each.label, each.codes, own, facts)),
  );
  if (sure.length === 0) {
    const [first] = weak;
    if (first && (!own || first.strength >= LABEL || isAddressedParcel(first, facts)))
      return doubtful(speaksAgainst(first.label, facts, first.codes) ?? littleOfLabel(first.label, first.codes, facts, own), [first.label]);
    if (own) return await namedPage(own, all, facts);
    // Coarse matrix codes have no texture: the page is read before anyone calls it a page without codes.
    const whole = { x: 0, y: 0, width: page.width, height: page.height };
    return { kind: 'unnamed', codes: codeLikeAreas(page).length > 0 || (await readCodes(whole)).length > 0 };
  }
  const labels = sure.map(({ label }) => label);
  const outdone = await outdoneLabel(labels, page, readCodes);
  if (outdone) return doubtful(`the number of the ${sizeOf(outdone)} stands in larger bars beside it: it may be the receipt`, labels);
  // A list of items with a number of its own is a bill; one with a parcel's number is seen again among what is left behind.
  const unsure = weak.filter(
    ({ strength, label }) =>
      (strength >= LABEL || (label.said.labelWords >= 2 && strength >= 1)) && !(label.edge === 'ink' && hasItems(label.box, phrases)),
  );
  const ticked = labels.filter(({ said: { characters }, box }) => characters < WRITING && tickBoxes(page.ink(), blobs, box).length > 0);
  const several = sure.filter((each) => isSeveral(each, phrases)).map(({ label }) => label);
  const likelyLabels = {
    labels,
    rivals,
    unsure: unsure.map(({ label }) => label),
    unlike: unlikeBest(sure, phrases),
    twice,
    ticked,
    several,
  };
  const inSight = doubtsOf(likelyLabels, { page, blobs: withoutSpeech(page, blobs), said: (box) => saidIn(phrases, box) });
  const behind = await leftBehind(
    [...labels, ...inSight.flatMap(({ answers }) => answers)].map(({ box }) => box),
    facts,
  );
  const inDoubt = [...inSight, ...behind];
  const [first] = inDoubt;
  const read = behind.length > 0 ? await Promise.all(weighed.map(({ label }) => weigh(label, true, readCodes))) : weighed;
  const sureStill = first
    ? sureBeside(
        read.filter(({ label }) => labels.includes(label)),
        read,
        inDoubt,
      )
    : sure;
  if (first && sureStill.length === 0) return doubtful(first.why, allAnswers(labels, inDoubt));
  const isOnly = sureStill.length === 1 && inDoubt.length === 0;
  const kept = sureStill.map(({ label }) => {
    const placed = isOnly ? ontoOwnPaper(label, page, blobs, pageDividers(page).length > 0) : label;
    return placed === label ? label : { ...placed, said: saidIn(phrases, placed.box) };
  });
  const doubts = [...inDoubt, ...leftOver(labels, kept, inDoubt)];
  const taken = [...kept, ...doubts.flatMap(({ answers }) => answers)].map(({ box }) => box);
  const rest = restOf(page, taken, blobs, phrases);
  // A label without a word of one, and such words beside it: perhaps only half of it was found.
  if (kept.every(({ said: { characters, labelWords } }) => characters >= WRITING && labelWords === 0) && rest.labelWords >= 2)
    return doubtful(`the words of a label stand outside the ${sizeOf(kept[0] as Judged)}`, allAnswers(kept, doubts));
  const returnsOf = ({ box }: Likely): string | undefined =>
    taken.length === 1
      ? rest.returns
      : titledReturn(
          box,
          taken.filter((other) => other !== box),
          phrases,
        );
  return { kind: 'labels', labels: kept.map((label) => found(label, returnsOf(label))), rest, doubts };
}

/** An address and a parcel's own number, and neither a name of something else nor items: such ink is not passed over because of what stands beside it. */
const isAddressedParcel = ({ label, codes }: Likeliest, { phrases }: PageFacts): boolean =>
  label.said.names.length === 0 && (codes ?? []).some(isLongNumber) && addressesOn(label.box, phrases) > 0 && !hasItems(label.box, phrases);

/** What a page may have as labels: those in doubt by their answers, the others as they were found. */
function allAnswers(labels: readonly Judged[], doubts: readonly Doubt[]): readonly Judged[] {
  const answers = doubts.flatMap((doubt) => doubt.answers);
  const others = labels.filter(({ box }) => !answers.some((answer) => intersection(answer.box, box) !== undefined));
  return [...new Set([...others, ...answers])];
}

/** Codes are read only where they decide: more than one answer, a page that says it is something else, nothing written. */
async function weigh(label: Likely, inDoubt: boolean, readCodes: ReadCodes): Promise<Likeliest> {
  const cheap = strengthOf(label, label.said, undefined);
  if (
    !inDoubt &&
    hasOwn(label, undefined) &&
    label.codes.length > 0 &&
    !(label.edge === 'ink' && isMatrixAlone(label)) &&
    cheap >= LABEL &&
    label.said.characters >= WRITING
  )
    return { label, strength: cheap, codes: undefined };
  const codes = await readCodes(label.box);
  return { label, strength: strengthOf(label, label.said, codes), codes };
}

const doubtful = (why: string, candidates: readonly Judged[]): Survey => ({ kind: 'doubtful', why, candidates });

function found({ said: says, ...label }: Likely, pageReturns: string | undefined): FoundLabel {
  const name = says.names.find(({ kind }) => kind === 'return-label');
  const { next } = label;
  return {
    ...label,
    returns: name?.words ?? pageReturns,
    evidence: [
      ...label.evidence,
      ...(says.labelWords > 0 ? [`${says.labelWords} of its words are a label's`] : []),
      next ? `${(label.score - next.score).toFixed(2)} ahead of the next answer (${sizeOf(next)})` : 'no other answer',
    ],
  };
}
