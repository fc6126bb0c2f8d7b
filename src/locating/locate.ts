import { contains, grow, intersection, union, type Box } from '../geometry/box.js';
import { mmToPt } from '../geometry/length.js';
import type { Media } from '../geometry/media.js';
import { codeLikeAreas } from '../reading/code-like.js';
import { framesOf, linesOf } from '../reading/frames.js';
import type { SourcePage } from '../reading/source.js';
import { phrasesOf } from '../reading/word-lines.js';
import { alikePlaces, haveFrames } from './alike-places.js';
import type { Candidate, Edge, Judged } from './candidate.js';
import { choose, LEAST, type Choice } from './choose.js';
import { alikeCells, inkOfCells } from './cells.js';
import { clearOfDividers } from './clear-of-dividers.js';
import { closedUnits } from './closed-units.js';
import { cutApart } from './cut-apart.js';
import { doubtsOf, type Doubt } from './doubts.js';
import { edgeShows } from './edge-shows.js';
import { filledOut } from './filled-out.js';
import { isCellOfLabel, withBothAddresses } from './both-addresses.js';
import { codesIn, gatherCandidates, HAIR, IN_REGION } from './gather.js';
import { inkBlobs } from './ink-blobs.js';
import { withoutSpecks } from './specks.js';
import { judge } from './judge.js';
import { saidIn, type Said } from './kind-of-words.js';
import { isLabelSized, isSmallPaper } from './label-sizes.js';
import { pageDividers } from './page-dividers.js';
import { parted } from './parted.js';
import { speaks, withoutHints, withoutSpeech } from './page-speech.js';
import { withPaleEdges } from './pale-edges.js';
import { ruledStacks } from './ruled-stacks.js';
import { holdsSeveral } from './several-frames.js';
import { withShownEdges } from './settle-edges.js';
import { withSideBars } from './side-bars.js';
import { isSmallLabel } from './small-labels.js';
import { addressesOn } from './address-block.js';
import { hasMainBars } from './strength.js';
import { withoutParts, type IsOther } from './whole-answers.js';
import { isWrittenAcross } from './writing-axis.js';
import { withoutStub } from './without-stub.js';
import { withoutWholePictures } from './whole-picture.js';

const isOwning = (edge: Edge): boolean => edge === 'frame' || edge === 'picture';

/** What is found by the edges that a recipe allows. */
export interface Located extends Choice {
  /** Labels whose ink may go on beyond what was found, or is crossed by other ink. */
  readonly doubts: readonly Doubt[];
}

/** Finds the labels on a region of a page by the edges that the recipe allows: gather, judge, choose. */
export function locate(page: SourcePage, region: Box, edges: readonly Edge[], media: Media): Located {
  const blobs = withoutSpeech(page, withoutSpecks(inkBlobs(page.ink())));
  const phrases = phrasesOf(page.words());
  const saidOf = (box: Box): Said => saidIn(phrases, box);
  const found = withoutBarless(page, choose(judgedOn(page, region, edges, media, blobs, saidOf)));
  const likely = { labels: found.labels, rivals: [], unsure: [], unlike: undefined, twice: [], ticked: [], several: [] };
  return { ...found, doubts: doubtsOf(likely, { page, blobs, said: saidOf }) };
}

/**
 * Every answer that may be a label at all; where the page itself is one, only the page.
 * @param said what the words in a part of the page say that it is; where it is told, ink that is only a part of a label is filled out
 */
export function judgedOn(
  page: SourcePage,
  region: Box,
  edges: readonly Edge[],
  media: Media,
  blobs: readonly Box[],
  said?: (part: Box) => Said,
): readonly Judged[] {
  const codes = codeLikeAreas(page);
  const units = closedUnits(page, blobs);
  const dividers = pageDividers(page);
  const isInRegion = (box: Box): boolean => contains(region, box, IN_REGION);
  const byInk = said !== undefined && edges.includes('ink');
  const filled = (candidate: Candidate): Candidate => {
    if (!said || candidate.edge !== 'ink' || candidate.codes.length === 0) return candidate;
    const clear = clearOfDividers(candidate.box, dividers, page.ink());
    const full = filledOut(clear, { page, blobs, units, said });
    const box = full && isInRegion(full) ? full : clear;
    return { ...candidate, box, codes: codesIn(codes, box) };
  };
  // On a label's own paper a declaration is the label's, too.
  const isOwnName = (kind: string): boolean => kind === 'return-label' || (kind === 'customs-form' && isLabelSized(page));
  const isOther: IsOther = (part, rules) =>
    said?.(part).names.some(({ kind }) => !isOwnName(kind)) === true || (rules !== undefined && isWrittenAcross(page, part, rules));
  const stacks = byInk ? ruledStacks(page, blobs, isOther).filter(({ box }) => isInRegion(box)) : [];
  const ruled = stacks.map((each): Candidate => ({
    ...each,
    box: clip(grow(each.box, HAIR), page),
    edge: 'ink',
    codes: codesIn(codes, each.box),
  }));
  /** Without the lines that divide the page. */
  const free = dividers.length === 0 ? blobs : blobs.filter((blob) => !dividers.some((line) => contains(line, blob, 1)));
  const phrases = phrasesOf(page.words());
  const frames = framesOf(page).map(({ box }) => box);
  const places = byInk ? alikePlaces(free, codes).filter(isInRegion) : [];
  const alike = haveFrames(places, { frames, blobs: free, codes, phrases }) ? [] : places;
  const sheet = alike.map((place): Candidate => ({
    box: clip(grow(place, HAIR), page),
    edge: 'ink',
    codes: codesIn(codes, place),
    alike: alike.length,
  }));
  const cells = inkOfCells(page, dividers, free);
  const parts = (byInk ? alikeCells(cells) : []).flatMap((cell): readonly Candidate[] => {
    const own = codesIn(codes, cell);
    return own.length > 0 && isInRegion(cell) && !isOther(cell) ? [{ box: clip(grow(cell, HAIR), page), edge: 'ink', codes: own }] : [];
  });
  const found = gatherCandidates(page, region, edges, media, blobs).map((each) => filled(withoutStub(each, page, dividers, blobs)));
  const filling = byInk ? cells.filter((cell) => isInRegion(cell) && !isOther(cell) && isCellOfLabel(cell, found, codes, phrases)) : [];
  const whole = filling.map((cell): Candidate => ({ box: clip(grow(cell, HAIR), page), edge: 'ink', codes: codesIn(codes, cell) }));
  const withBars = (each: Candidate): Candidate => {
    if (each.edge !== 'ink' || each.codes.length === 0) return each;
    const box = clip(withSideBars(each.box, free, phrases), page);
    return isInRegion(box) ? { ...each, box } : each;
  };
  const gathered = withSheet([...found, ...ruled, ...parts, ...whole].map(withBars), sheet);
  const owners = gathered.filter(({ edge, box, codes: own }) => isOwning(edge) && own.length > 0 && isLabelSized(box));
  const around = {
    blobs: withoutHints(page, free),
    codes,
    words: page.words(),
    owners: owners.map(({ box }) => box),
    inks: gathered.filter(({ edge, box, codes: own }) => edge === 'ink' && own.length > 0 && isLabelSized(box)).map(({ box }) => box),
    frames,
    speaks: speaks(page),
    paper: page,
  };
  const beside = { page, blobs: around.blobs, phrases, lines: linesOf(page), others: gathered };
  const single = gathered
    .filter(({ edge, box }) => edge !== 'ink' || !holdsSeveral(box, frames, codes))
    .flatMap((each) => cutApart(each, beside.lines, free, phrases))
    .flatMap((each) => parted(each, free, phrases))
    .map((each): Candidate => (isSmallLabel(each, beside) ? { ...each, small: true } : each));
  // A declaration in the midst of a label has a title, too.
  const isTitledOther: IsOther = (part) => said?.({ ...part, height: HEAD * part.height }).names.some(({ heading }) => heading) === true;
  const hasAddress = (part: Box): boolean => addressesOn(part, phrases) > 0;
  const likely = single.flatMap((candidate) => judge(candidate, around) ?? []);
  const paper = isSmallPaper(page) && dividers.length === 0 ? union(free) : undefined;
  const addressed = said
    ? withBothAddresses(likely, { phrases, blobs: free, wholes: [...cells, ...(paper ? [paper] : [])], isOther })
    : likely;
  const judged = withoutWholePictures(withoutAround(addressed, isTitledOther, hasAddress), page);
  const pages = judged.filter((each) => each.edge === 'page');
  if (pages.length > 0) return [...pages, ...judged.filter(({ alike }) => alike !== undefined)];
  const answers = withShownEdges(withoutParts(judged, isOther, cells), withoutHints(page, blobs), units, (box) => edgeShows(page, box));
  return answers.map((each) => (each.edge === 'ink' && said ? { ...each, box: withPaleEdges(each.box, page) } : each));
}

/** The labels of a sheet are whole: what overlaps one has no edge there, unless an edge goes around it; one around several is another answer. */
function withSheet(candidates: readonly Candidate[], sheet: readonly Candidate[]): readonly Candidate[] {
  const placesIn = (each: Candidate): number =>
    each.edge !== 'ink' ? sheet.filter((place) => contains(each.box, place.box, 3)).length : 0;
  const whole = sheet.filter((place) => !candidates.some((each) => placesIn(each) === 1 && contains(each.box, place.box, 3)));
  return [...candidates.filter((each) => placesIn(each) > 1 || !whole.some((place) => intersection(place.box, each.box))), ...whole];
}

const clip = (box: Box, { width, height }: SourcePage): Box => intersection(box, { x: 0, y: 0, width, height }) ?? box;

/** A page says what it is in its head, this share of its height. */
const HEAD = 0.25;
/** Parts of one label have no more white beside them than this, pt (6 mm; common practice, no source). */
const BESIDE_PART = mmToPt(6);

/**
 * Where there is a label of an ordinary size, what fills the paper around it is none; but ink inside a frame that fills the paper, with no more white beside it than parts of one label
 * have, or without the bars or the only address beside it, is a part of what fills it and says nothing else of itself.
 */
function withoutAround(judged: readonly Judged[], isOther: IsOther, hasAddress: (part: Box) => boolean): readonly Judged[] {
  const wholes = judged.filter(({ fillsPaper, box }) => fillsPaper && !isOther(box));
  const lacks = (part: Judged, whole: Judged): boolean =>
    (hasMainBars(whole) && !hasMainBars(part)) || (hasAddress(whole.box) && !hasAddress(part.box));
  const isPart = (part: Judged): boolean =>
    part.edge === 'ink' &&
    wholes.some((whole) => {
      if (!contains(whole.box, part.box, 2)) return false;
      return whole.edge === 'frame' ? !part.ruled : (part.clear ?? Infinity) <= BESIDE_PART || lacks(part, whole);
    });
  const ordinary = judged.filter((each) => !each.fillsPaper && !isPart(each) && each.score >= LEAST);
  const filling = judged.filter(({ fillsPaper, box }) => fillsPaper && !ordinary.some((each) => intersection(box, each.box) !== undefined));
  return judged.filter((each) =>
    each.fillsPaper ? filling.includes(each) : !(isPart(each) && filling.some(({ box }) => contains(box, each.box, 2))),
  );
}
/**
 * An advert or a coupon carries a matrix code at most: beside a label with bars it is none, and one that reads like a label is
 * a rival.
 */
function withoutBarless(page: SourcePage, { labels, rivals }: Choice): Choice {
  const hasBars = (each: Judged): boolean => each.codes.some((code) => code.kind === 'linear');
  const barless = labels.some(hasBars) ? labels.filter((each) => !hasBars(each)) : [];
  if (barless.length === 0) return { labels, rivals };
  const phrases = phrasesOf(page.words());
  const readsLikeLabel = ({ box }: Judged): boolean => {
    const { labelWords, characters } = saidIn(phrases, box);
    return labelWords >= 2 || characters === 0;
  };
  return { labels: labels.filter(hasBars), rivals: [...rivals, ...barless.filter(readsLikeLabel)] };
}
