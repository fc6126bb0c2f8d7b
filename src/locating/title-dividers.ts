import { bottom, union, type Box } from '../geometry/box.js';
import { mmToPt } from '../geometry/length.js';
import type { SourcePage } from '../reading/source.js';
import { phrasesOf, type Phrase } from '../reading/word-lines.js';
import { inkBlobs } from './ink-blobs.js';
import { withoutSpecks } from './specks.js';
import { said, usualSize } from './kind-of-words.js';
import { SHORT_SIDE } from './label-sizes.js';
import type { Kind } from './vocabulary.js';

/** A label may hold these itself. */
const OWN: readonly Kind[] = ['label', 'return-label', 'customs-form'];
/** Type of a title is this much larger than most of the page's: where it names what follows, and where the width of that does. */
const LARGER = { named: 1.25, wide: 1.15 };
/** White of this height from side to side of the page parts what is above a title from it, pt (5 mm; common practice, no source). */
const BAND = mmToPt(5);
/** … and this is enough where what is below goes on wider than labels are, pt (3 mm). */
const LINES = mmToPt(3);
/** A rule may stand above a title, no thicker and no farther off than this, pt. */
const RULE = { thick: 3, off: mmToPt(8) };

/** What stands beside a title keeps to its line, to this much, pt: else it is of something that goes on beside it. */
const LINE = 4;

/**
 * Where the title of a receipt, a slip, a table or a paragraph stands below white from side to side of the page, another part of it begins: a line through the middle of the
 * white, pt.
 */
export function titleDividers(page: SourcePage): readonly Box[] {
  const phrases = phrasesOf(page.words());
  const usual = usualSize(phrases);
  const titles = phrases.flatMap((phrase) => {
    const larger = phrase.fontSize / usual;
    if (phrase.turn !== 0 || larger < LARGER.wide) return [];
    const isNamed = larger >= LARGER.named && said([phrase]).names.some(({ kind }) => !OWN.includes(kind));
    return isNamed || isOverWideLines(phrase, phrases) ? [{ box: phrase.box, isNamed }] : [];
  });
  if (titles.length === 0) return [];
  const ink = withoutSpecks(inkBlobs(page.ink()));
  return titles.flatMap(({ box, isNamed }): readonly Box[] => {
    const isOnLine = (blob: Box): boolean => blob.y >= box.y - LINE && bottom(blob) <= bottom(box) + LINE;
    if (ink.some((blob) => blob.y < bottom(box) && bottom(blob) > box.y && !isOnLine(blob))) return [];
    const isRule = (blob: Box): boolean =>
      blob.height <= RULE.thick && blob.width >= box.width && blob.y < box.y && box.y - blob.y <= RULE.off;
    const top = Math.min(box.y, ...ink.filter(isRule).map(({ y }) => y));
    const above = ink.filter((blob) => blob.y < top - 1);
    const end = Math.max(-Infinity, ...above.map(bottom));
    return above.length > 0 && top - end >= (isNamed ? BAND : LINES) ? [{ x: 0, y: (top + end) / 2, width: page.width, height: 0.5 }] : [];
  });
}

/** Whether right below a line two others or more go on farther than any label is across: rows of a table, a paragraph. */
function isOverWideLines({ box, turn }: Phrase, phrases: readonly Phrase[]): boolean {
  const below = phrases.filter((other) => other.turn === turn && other.box.y > bottom(box) && other.box.y - bottom(box) <= WIDE.off);
  const rows = [...new Set(below.map((other) => Math.round(bottom(other.box) / LINE)))];
  const wide = rows.filter((row) => {
    const line = union(below.filter((other) => Math.round(bottom(other.box) / LINE) === row).map((other) => other.box));
    return line !== undefined && line.x <= box.x + WIDE.inset && line.width > WIDE.than;
  });
  return wide.length >= WIDE.lines;
}
/** How far below a title its lines stand and how far in, how wide they are, pt, and how many of them there are at least. */
const WIDE = { off: mmToPt(20), inset: 12, than: SHORT_SIDE.most, lines: 2 };
