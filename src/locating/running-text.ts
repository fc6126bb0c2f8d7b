import { bottom, contains, right, type Box } from '../geometry/box.js';
import { plainText, textOf } from '../reading/code-text.js';
import { LINEAR } from '../reading/codes.js';
import { linesOf } from '../reading/frames.js';
import type { Code, SourcePage } from '../reading/source.js';
import type { Phrase } from '../reading/word-lines.js';
import type { Judged } from './candidate.js';
import { usualSize } from './kind-of-words.js';
import { isKnownSize, isLabelSized } from './label-sizes.js';

/** Type is of one size up to this many times the usual … */
const ONE_SIZE = 1.05;
/** … but for two lines, a title among them, no larger than this. */
const TITLE = { lines: 2, most: 2.2 };
/** So many characters or more of a line are what a code says, and no word by chance. */
const CODE_TEXT = 6;
/** A rule inside a frame goes over this share of its short side and keeps this far (pt) from its sides. */
const INNER = { long: 0.4, off: 4 };

/**
 * Whether a part of a larger page is written as a letter, a booking or a list of fields is: one code, and all type but a title of one size. Labels show what sorts and what is
 * read from afar in larger type, or carry a second code. Of 178 labels with one code on larger pages of `test/samples/foreign` none is written so outside a frame of a label's size or with rules in it
 * (common practice, no source).
 */
export function isRunningText({ box, edge, codes }: Judged, read: readonly Code[], page: SourcePage, phrases: readonly Phrase[]): boolean {
  if ((edge !== 'ink' && edge !== 'frame') || isLabelSized(page)) return false;
  if (codes.length > 1 || new Set(read.map(({ bytes }) => bytes)).size > 1) return false;
  if (edge === 'frame' && (isKnownSize(box) || hasInnerRules(box, page))) return false;
  // What a code to show says is written below it, in type as large as there is room.
  const said = read.filter(({ symbology }) => !LINEAR.includes(symbology)).map((code) => plainText(textOf(code)));
  const isOfCode = ({ text }: Phrase): boolean => text.length >= CODE_TEXT && said.some((all) => all.includes(plainText(text)));
  const inside = phrases.filter((phrase) => contains(box, phrase.box, 2) && !isOfCode(phrase));
  const usual = usualSize(inside);
  const sizes = inside.map(({ fontSize }) => fontSize / usual).sort((a, b) => b - a);
  return sizes.length > TITLE.lines && (sizes[0] as number) <= TITLE.most && (sizes[TITLE.lines] as number) <= ONE_SIZE;
}

function hasInnerRules(box: Box, page: SourcePage): boolean {
  const least = INNER.long * Math.min(box.width, box.height);
  return linesOf(page).some(({ box: line, level, dashed }) => {
    if (dashed || !contains(box, line, INNER.off) || Math.max(line.width, line.height) < least) return false;
    return level
      ? line.y > box.y + INNER.off && bottom(line) < bottom(box) - INNER.off
      : line.x > box.x + INNER.off && right(line) < right(box) - INNER.off;
  });
}
