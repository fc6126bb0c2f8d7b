import { grow, intersection, type Box } from '../geometry/box.js';
import { LINEAR } from '../reading/codes.js';
import type { SourcePage } from '../reading/source.js';
import { phrasesOf } from '../reading/word-lines.js';
import { sizeOf, type Judged } from './candidate.js';
import { saidIn, WRITING } from './kind-of-words.js';
import { isWholeLabel } from './label-sizes.js';
import { putRight } from './misread.js';
import type { ReadCodes, ReadPictures } from './page-facts.js';
import { isLegible, readPicture } from './read-picture.js';
import { CAPTION } from './speaks-against.js';
import type { Survey } from './survey.js';
import { hasMainBars, isLongNumber, isTrackingLike } from './strength.js';
import { isUnmistakable, looksLikeLabel } from './unmistakable.js';

/**
 * A page as it is seen once the words are known of each label on it that is a picture and has no more of a label than other papers have: a voucher, a
 * receipt or a form may look like one, and only its words tell. A picture that nobody can read is held.
 */
export async function readingWords(
  page: SourcePage,
  readCodes: ReadCodes,
  read: ReadPictures,
  survey: (read: ReadPictures) => Promise<Survey>,
): Promise<Survey> {
  const seen = await survey(read);
  const phrases = phrasesOf([...page.words(), ...read.words]);
  if (seen.kind === 'doubtful') return await rereadDoubtful(page, readCodes, read, seen, survey);
  if (seen.kind !== 'labels') return seen;
  const whole: Box = { x: 0, y: 0, width: page.width, height: page.height };
  const boxes = [...read.boxes];
  const words = [...read.words];
  /** Those that look like labels, or at least have the bars of one: a label that holds its own customs declaration is called by it. */
  const alike: { readonly label: Judged; readonly isLike: boolean }[] = [];
  for (const label of seen.labels) {
    if (saidIn(phrases, label.box).characters >= WRITING || read.boxes.some((box) => intersection(box, label.box))) continue;
    const codes = await readCodes(label.box);
    if (isUnmistakable(label, codes, page)) continue;
    // A figure is smaller than a label; its caption stands beside it, and is read in whole when more is read than where it begins.
    const around = isWholeLabel(label) ? label.box : (intersection(grow(label.box, 2 * CAPTION), whole) ?? label.box);
    const own = await readPicture(page, around, codes);
    boxes.push(label.box);
    const isLike = looksLikeLabel(label, codes, page);
    if (isLike || (hasMainBars(label) && codes.some(isTrackingLike))) alike.push({ label, isLike });
    if (isLegible(own)) words.push(...putRight(own.words).filter((word) => isBeside(word.box, label.box, seen.labels)));
    else if (!isLike) {
      const why = `no words could be read on the ${sizeOf(label)}, and its codes alone don't say that it is a label`;
      return { kind: 'doubtful', why, candidates: [label] };
    }
  }
  if (words.length === read.words.length) return seen;
  const reread = await readingWords(page, readCodes, { boxes, words }, survey);
  if (reread.kind !== 'named') return reread;
  const { kind, words: name } = reread.name;
  const like = alike.find(({ isLike }) => isLike || kind === 'customs-form')?.label;
  if (!like) return reread;
  const why = `the page calls itself "${name}", but the ${sizeOf(like)} looks like a label`;
  return { kind: 'doubtful', why, candidates: [like] };
}

/**
 * A picture in a frame or with an edge of its own, as large as a label and with a parcel's number in a code, may be held only because its words were not known: they are read, and the
 * page is looked at once more. Where it isn't a label or a doubt then, it is held as before.
 */
async function rereadDoubtful(
  page: SourcePage,
  readCodes: ReadCodes,
  read: ReadPictures,
  seen: Survey & { readonly kind: 'doubtful' },
  survey: (read: ReadPictures) => Promise<Survey>,
): Promise<Survey> {
  const [label, other] = seen.candidates;
  const isScan = page.words().length === 0;
  if (!label || other || label.edge === 'page' || (label.edge === 'ink' && !isScan)) return seen;
  const phrases = phrasesOf([...page.words(), ...read.words]);
  if (saidIn(phrases, label.box).characters >= WRITING || read.boxes.some((box) => intersection(box, label.box))) return seen;
  const codes = await readCodes(label.box);
  if (!codes.some((code) => isLongNumber(code) || (isScan && LINEAR.includes(code.symbology) && isTrackingLike(code)))) return seen;
  const own = await readPicture(page, label.box, codes);
  if (!isLegible(own)) return seen;
  const words = [...read.words, ...putRight(own.words)];
  const reread = await readingWords(page, readCodes, { boxes: [...read.boxes, label.box], words }, survey);
  return reread.kind === 'labels' || reread.kind === 'doubtful' ? reread : seen;
}

/** Whether something is not in another label than its own. */
const isBeside = (box: Box, own: Box, labels: readonly { readonly box: Box }[]): boolean =>
  labels.every((other) => other.box === own || intersection(other.box, box) === undefined);
