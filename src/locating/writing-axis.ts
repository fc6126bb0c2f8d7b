import { contains, grow, intersection, type Box } from '../geometry/box.js';
import { mmToPt } from '../geometry/length.js';
import { codeLikeAreas } from '../reading/code-like.js';
import type { SourcePage } from '../reading/source.js';
import { inkBlobs } from './ink-blobs.js';

/** Type is this high at least and at most, pt: from small print to a routing code in half-inch letters. */
const TYPE = { least: 2.5, most: mmToPt(16) };
/** A word or a line of type is this many times as long as it is high; a single letter or a figure is not. */
const LONG = 1.8;
/** A rule is longer than this many times its thickness; no line of type on a label is. */
const RULE = 40;
/** Writing the one way must be this many times that the other way, of at least this length together, pt. */
const AHEAD = 2.5;
const LEAST_LENGTH = 60;
/** Writing of so many words, and of this share of all, keeps to its own direction: it is no line that stands sideways on a label. */
const ACROSS = { least: 8, share: 0.8 };

/** Which way the lines of type run in a box of a page, by nothing but the shapes of its ink; undefined when they don't tell. Not from which end they are read. */
export function writingAxis(page: SourcePage, box: Box): 'level' | 'upright' | undefined {
  const codes = codeLikeAreas(page).map((area) => grow(area.box, 3));
  let [level, upright] = [0, 0];
  for (const blob of inkBlobs(page.ink())) {
    if (!contains(box, blob, 1) || codes.some((code) => intersection(code, blob) !== undefined)) continue;
    const [short, long] = [Math.min(blob.width, blob.height), Math.max(blob.width, blob.height)];
    if (short < TYPE.least || short > TYPE.most || long < LONG * short || long > RULE * short) continue;
    if (blob.width > blob.height) level += long;
    else upright += long;
  }
  const [most, least] = [Math.max(level, upright), Math.min(level, upright)];
  if (most < LEAST_LENGTH || most < AHEAD * least) return undefined;
  return level > upright ? 'level' : 'upright';
}

/** Whether nearly all words in a part of a page without bars, pt, run across the rules of a label. A line or two may stand sideways on a label, too. */
export function isWrittenAcross(page: SourcePage, part: Box, rules: 'level' | 'upright'): boolean {
  if (codeLikeAreas(page).some(({ kind, box }) => kind === 'linear' && contains(part, box, 2))) return false;
  const words = page.words().filter(({ box }) => contains(part, box, 2));
  const across = words.filter(({ turn }) => turn !== undefined && (turn % 180 === 0) === (rules === 'upright'));
  return across.length >= ACROSS.least && across.length >= ACROSS.share * words.length;
}
