import { bottom, contains, intersection, right, type Box } from '../geometry/box.js';
import { mmToPt } from '../geometry/length.js';
import { codeLikeAreas } from '../reading/code-like.js';
import type { SourcePage } from '../reading/source.js';
import { phrasesOf } from '../reading/word-lines.js';
import { addressBlocks } from './address-block.js';
import { inkBlobs } from './ink-blobs.js';
import { merge } from './ink-groups.js';
import { withoutSpecks } from './specks.js';
import { isSmallPaper } from './label-sizes.js';
import { hasSteps, LIST_LINE } from './list-of-steps.js';
import { pageDividers } from './page-dividers.js';
import { AROUND, HINT, pageTitles } from './page-titles.js';
import { speaksToReader } from './speaks-to-reader.js';
import { CLEAR, NEXT_LINE } from './white.js';

/** White (pt) that parts no steps of a list; where a label is as near, they stand closer. */
const LIST_LINES = [LIST_LINE, mmToPt(5), NEXT_LINE];

/** What a page says to its reader, pt. */
interface Speech {
  /** Each line of it. */
  readonly lines: readonly Box[];
  /** The blocks with such a line that stand apart. */
  readonly blocks: readonly Box[];
}
const spoken = new WeakMap<SourcePage, Speech>();
const NONE: Speech = { lines: [], blocks: [] };

function speechOf(page: SourcePage): Speech {
  let known = spoken.get(page);
  if (!known) spoken.set(page, (known = find(page)));
  return known;
}

function find(page: SourcePage): Speech {
  if (isSmallPaper(page)) return NONE;
  const phrases = phrasesOf(page.words());
  const lines = phrases.flatMap(({ text, box }) => (speaksToReader(text) ? [box] : []));
  const hasList = hasSteps(phrases);
  const codes = codeLikeAreas(page).map(({ box }) => box);
  const isSpeech = (block: Box): boolean => {
    if (codes.some((code) => intersection(code, block))) return false;
    return addressBlocks(phrases.filter(({ box }) => contains(block, box, AROUND))).length === 0;
  };
  const blobs = withoutSpecks(inkBlobs(page.ink()));
  const dividers = pageDividers(page);
  const all = merge(blobs, NEXT_LINE, dividers);
  const heard = all.filter((block) => lines.some((line) => contains(block, line, AROUND)) && isSpeech(block));
  const said = [...heard, ...all.filter((block) => !heard.includes(block) && isSpeech(block) && isTitleOfHint(block, heard, all))];
  const isList = (block: Box): boolean => hasSteps(phrases.filter(({ box }) => contains(block, box, AROUND)));
  const lists = hasList ? LIST_LINES.flatMap((gap) => merge(blobs, gap, dividers).filter((block) => isList(block) && isSpeech(block))) : [];
  return { lines, blocks: [...said, ...pageTitles(all, phrases, isSpeech, said), ...lists] };
}

/** Whether a line stands over what the page says, set with it, and far from everything above it, as far as parts of a label rarely are from each other. */
function isTitleOfHint(line: Box, hints: readonly Box[], all: readonly Box[]): boolean {
  if (line.height > TITLE) return false;
  const isOver = hints.some(({ x, y }) => Math.abs(x - line.x) <= SET && y >= bottom(line) && y - bottom(line) <= HINT);
  return (
    isOver && all.every((other) => other === line || other.y >= line.y || line.y - bottom(other) > CLEAR || !overlapsAcross(other, line))
  );
}
const overlapsAcross = (a: Box, b: Box): boolean => a.x < right(b) && right(a) > b.x;
/** One line of type is no higher, pt (10 mm). */
const TITLE = mmToPt(10);
/** Lines set from one edge begin within this, pt. */
const SET = 2;

/**
 * Ink without the blocks of type in which the page speaks to its reader, apart from everything else by a line's white, without a code and without an address: they are of the page,
 * never of a label on it. All ink on paper that a label fills by itself.
 */
export function withoutSpeech(page: SourcePage, blobs: readonly Box[]): readonly Box[] {
  const { blocks } = speechOf(page);
  return blocks.length === 0 ? blobs : blobs.filter((blob) => !blocks.some((block) => contains(block, blob, 0.5)));
}

/** Ink without the lines of such blocks, and without those nearer to other ink: a hint to cut says nothing about the white around what is to be cut out. */
export function withoutHints(page: SourcePage, blobs: readonly Box[]): readonly Box[] {
  const { lines } = speechOf(page);
  return lines.length === 0 ? blobs : blobs.filter((blob) => !lines.some((line) => contains(line, blob, AROUND)));
}

/** Whether a page has such blocks. */
export const speaks = (page: SourcePage): boolean => speechOf(page).blocks.length > 0;
