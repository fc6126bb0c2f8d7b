import { area, contains, grow, intersection, type Box } from '../geometry/box.js';
import { mmToPt } from '../geometry/length.js';
import { textOf } from '../reading/code-text.js';
import { linesOf } from '../reading/frames.js';
import type { Code, SourcePage } from '../reading/source.js';
import { addressBlocks } from './address-block.js';
import { sizeOf } from './candidate.js';
import { WRITING } from './kind-of-words.js';
import { SHORT_SIDE } from './label-sizes.js';
import type { PageFacts, SaidCandidate } from './page-facts.js';
import { paperMark } from './paper-marks.js';
import { isRunningText } from './running-text.js';
import { hasCarriersBars } from './unmistakable.js';
import { folded } from './vocabulary.js';

/** A picture over more than this share of a region is what stands there; the words are added to it. */
const PICTURED = 0.5;
const NOWHERE: Box = { x: 0, y: 0, width: 0, height: 0 };
/** The caption of a figure stands at most this far from it, pt (15 mm). */
export const CAPTION = mmToPt(15);
/** `Figure 1`, also within what was taken for the label. From memory but for English, German and French; folded. */
const FIGURE = /^(?:figure|fig|abbildung|abb|bild|figura|figur|afbeelding|afb|rysunek|rys|obrazek|obr|kuva|abra|рис|εικ)\.?\s*\d/;
/** `OBR 8` in capitals alone on a label is what a carrier sorts by, in any country. */
const SORT_CODE = /^[A-Z]{3} ?\d/;
/** `it looks like this example:` beside it. From memory as above. */
const EXAMPLE = /\b(?:example|exemple|beispiel|ejemplo|esempio|voorbeeld|exempel|eksempel|przyklad|esimerkki|exemplo|priklad|pelda)\s*:$/;
/** UPU S10, perhaps in groups. */
const S10 = /\b[A-Z]{2} ?\d{3} ?\d{3} ?\d{2} ?\d ?[A-Z]{2}\b/;

type Asked = Pick<PageFacts, 'page' | 'phrases' | 'pictures'>;

/**
 * What speaks against a candidate whose words can be read: nobody's address stands on it, or each in one line (of the 1,458 labels with words of `test/samples/foreign` and of four sets like it none has
 * only such; common practice, no source), or one and nothing else of a label (a second address, one of its words, a second
 * code, an international number); it is written as running text is; or a caption calls it a figure. Undefined when nothing does; a picture without words isn't asked.
 * @param read the codes that were read in it
 */
export function speaksAgainst(
  label: SaidCandidate,
  { page, phrases, pictures = [] }: Asked,
  read: readonly Code[] = [],
): string | undefined {
  const { box, codes, said } = label;
  const caption = phrases.find(({ text, box: at }) => {
    if (intersection(grow(box, CAPTION), at) === undefined) return false;
    return (
      (FIGURE.test(folded(text)) && !(contains(box, at, 2) && SORT_CODE.test(text))) ||
      (!contains(box, at, 2) && EXAMPLE.test(folded(text)))
    );
  });
  if (caption) return `the words beside the ${sizeOf(label)} call it a figure or an example`;
  const isRead = pictures.some((picture) => intersection(picture, box) !== undefined);
  if (said.characters < WRITING || (isPicture(box, page) && !isRead)) return undefined;
  const inside = phrases.filter((phrase) => contains(box, phrase.box, 2));
  const blocks = addressBlocks(inside);
  const addressed = blocks.flatMap(({ lines }) => lines);
  const mark = paperMark(label, inside, linesOf(page), addressed);
  if (mark !== undefined) return `on the ${sizeOf(label)} stands ${mark}, as on papers that are no labels`;
  const addresses = blocks.length;
  if (addresses === 0) return `no address stands on the ${sizeOf(label)}`;
  // On label paper, however long, lines of a picture may be too small to be read.
  const isRoll = Math.min(page.width, page.height) <= SHORT_SIDE.most;
  if (!(isRead && isRoll) && blocks.every(({ lines }) => lines.length === 1))
    return `each address on the ${sizeOf(label)} stands in one line, as in a list or a form`;
  if (!isRead && isRunningText(label, read, page, phrases))
    return `the ${sizeOf(label)} is written as a letter or a form is: all but its title in one size, and one code`;
  // A picture's second address may be too small to be read.
  const hasMore =
    (isRead && hasCarriersBars(label)) ||
    addresses > 1 ||
    said.labelWords > 0 ||
    codes.length > 1 ||
    numbersOf(read).length > 1 ||
    [...inside.map(({ text }) => text), ...numbersOf(read)].some((text) => S10.test(text));
  return hasMore ? undefined : `an address stands on the ${sizeOf(label)}, but nothing else of a label`;
}

/** What codes say, each once. */
const numbersOf = (codes: readonly Code[]): readonly string[] => [...new Set(codes.map(textOf))];

const isPicture = (box: Box, page: SourcePage): boolean =>
  page.images().some((image) => area(intersection(image.box, box) ?? NOWHERE) > PICTURED * area(box));
