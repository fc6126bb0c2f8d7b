import { bottom, type Box } from '../geometry/box.js';
import { mmToPt } from '../geometry/length.js';
import type { SourcePage } from '../reading/source.js';
import { phrasesOf } from '../reading/word-lines.js';
import { inkBlobs } from './ink-blobs.js';
import { withoutSpecks } from './ink-groups.js';
import { said, usualSize } from './kind-of-words.js';
import type { Kind } from './vocabulary.js';

/** A label may hold these itself. */
const OWN: readonly Kind[] = ['label', 'return-label', 'customs-form'];
/** Type of a title is this much larger than most of the page's. */
const LARGER = 1.25;
/** White of this height from side to side of the page parts what is above a title from it, pt (5 mm; common practice, no source). */
const BAND = mmToPt(5);
/** A rule may stand above a title, no thicker and no farther off than this, pt. */
const RULE = { thick: 3, off: mmToPt(8) };

/** What stands beside a title keeps to its line, to this much, pt: else it is of something that goes on beside it. */
const LINE = 4;

/**
 * Where the title of a receipt, a slip or other papers stands below white from side to side of the page, another part of it begins: a line through the middle of the
 * white, pt.
 */
export function titleDividers(page: SourcePage): readonly Box[] {
  const phrases = phrasesOf(page.words());
  const usual = usualSize(phrases);
  const titles = phrases.filter(
    (phrase) => phrase.turn === 0 && phrase.fontSize >= LARGER * usual && said([phrase]).names.some(({ kind }) => !OWN.includes(kind)),
  );
  if (titles.length === 0) return [];
  const ink = withoutSpecks(inkBlobs(page.ink()));
  return titles.flatMap(({ box }): readonly Box[] => {
    const isOnLine = (blob: Box): boolean => blob.y >= box.y - LINE && bottom(blob) <= bottom(box) + LINE;
    if (ink.some((blob) => blob.y < bottom(box) && bottom(blob) > box.y && !isOnLine(blob))) return [];
    const isRule = (blob: Box): boolean =>
      blob.height <= RULE.thick && blob.width >= box.width && blob.y < box.y && box.y - blob.y <= RULE.off;
    const top = Math.min(box.y, ...ink.filter(isRule).map(({ y }) => y));
    const above = ink.filter((blob) => blob.y < top - 1 && !(isRule(blob) && blob.y >= top));
    const end = Math.max(-Infinity, ...above.map(bottom));
    return above.length > 0 && top - end >= BAND ? [{ x: 0, y: (top + end) / 2, width: page.width, height: 0.5 }] : [];
  });
}
