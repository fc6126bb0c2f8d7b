import { bottom, right, union, type Box } from '../geometry/box.js';
import { TURNS, type Turn } from '../geometry/placement.js';
import { ON_LINE } from '../reading/place-on-line.js';
import type { SourcePage, Word } from '../reading/source.js';

/** A browser prints its lines into the margin that it leaves around a page: 0.4 in, pt (common practice, no source). */
const MARGIN = 28.8;
/** Words of such a line are small print (pt). */
const SMALL = 10;
/** So far (pt) the next words are from such a line at least; lines of one block stand closer. */
const APART = 8;
/** `https://www.shop.example/print`, or the same without its beginning; `about:blank` is none. */
const ADDRESS = /^[a-z]+:\/\/|^(?:[a-z\d-]+\.)+[a-z]{2,}\//i;
/** A dash hangs above its line. */
const SPOKEN = /[\p{L}\p{N}]/u;
const PAGE_OF = /^\d{1,3}\/\d{1,3}$/;

/**
 * The lines that a browser prints at the head and the foot of a page: each the only line in its margin, in small type, one at either end, with the
 * address of the page and which page of how many it is. They are of the page, never of what is on it. Pt.
 */
export function runningLines(page: SourcePage): readonly Box[] {
  const words = page.words();
  for (const turn of TURNS) {
    const ends = [true, false].flatMap((first) => lineInMargin(words, turn, first, page));
    const said = ends.flat().map(({ text }) => text);
    if (ends.length === 2 && said.some((text) => ADDRESS.test(text)) && said.some((text) => PAGE_OF.test(text)))
      return ends.flatMap((line) => union(line.map(({ box }) => box)) ?? []);
  }
  return [];
}

/** The words in the margin at the head of a page, or at its foot, where they are one line of small print; else none. */
function lineInMargin(words: readonly Word[], turn: Turn, first: boolean, { width, height }: SourcePage): readonly (readonly Word[])[] {
  const lying = turn % 180 === 0;
  const size = lying ? height : width;
  const from = ({ box }: Word): number => (lying ? box.y : box.x);
  const to = ({ box }: Word): number => (lying ? bottom(box) : right(box));
  const line = words.filter((word) => (first ? to(word) <= MARGIN : from(word) >= size - MARGIN));
  const edge = first ? Math.max(...line.map(to)) : Math.min(...line.map(from));
  const isOne =
    line.length > 0 &&
    line.every(
      (word) =>
        word.turn === turn &&
        word.fontSize <= SMALL &&
        (!SPOKEN.test(word.text) || Math.abs((first ? to(word) : from(word)) - edge) <= ON_LINE),
    );
  const isNear = (word: Word): boolean => !line.includes(word) && (first ? from(word) < edge + APART : to(word) > edge - APART);
  return isOne && !words.some(isNear) ? [line] : [];
}
