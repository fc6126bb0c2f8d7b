import { contains, union, type Box } from '../geometry/box.js';
import { mmToPt } from '../geometry/length.js';
import type { Turn } from '../geometry/placement.js';
import type { SourcePage, Word } from '../reading/source.js';
import { phrasesOf } from '../reading/word-lines.js';
import { inkBlobs } from './ink-blobs.js';
import { said } from './kind-of-words.js';
import { putRight } from './misread.js';
import { isLegible, readTurned } from './read-picture.js';
import { isSlip, restOf } from './rest.js';
import type { Survey } from './survey.js';

/** A slip or a form takes this much of a page at least, pt (60 × 30 mm; common practice, no source). */
const PAPER = { long: mmToPt(60), short: mmToPt(30) };
/** So many characters read surely are of a page that stands this way up. */
const SURE = 40;
/** The likelier ways first: most pages are scanned upright, or lie. */
const WAYS: readonly Turn[] = [0, 90, 270, 180];

/**
 * A page that is one picture, as a scan is, says in no text layer what stands beside its labels, or what it is where it has no label and no code: that is read off its pixels,
 * and nothing else of what was found is changed by it. Words that can't be read say nothing.
 */
export async function withRestRead(page: SourcePage, seen: Survey): Promise<Survey> {
  if (page.words().length > 0) return seen;
  if (seen.kind === 'unnamed' && !seen.codes) {
    const words = await readUpright(page, { x: 0, y: 0, width: page.width, height: page.height });
    const name = said(phrasesOf(words)).names.find(({ kind, heading }) => heading && kind !== 'return-label');
    return name ? { kind: 'named', name } : seen;
  }
  if (seen.kind !== 'labels' || seen.rest.name || seen.doubts.length > 0 || isSlip(seen.rest)) return seen;
  const taken = seen.labels.map(({ box }) => box);
  const blobs = inkBlobs(page.ink());
  const beside = seen.rest.box ?? union(blobs.filter((blob) => taken.every((label) => !contains(label, blob, 2))));
  if (!beside || Math.max(beside.width, beside.height) < PAPER.long || Math.min(beside.width, beside.height) < PAPER.short) return seen;
  const words = await readUpright(page, beside);
  if (words.length === 0) return seen;
  const rest = restOf(page, taken, blobs, phrasesOf(words));
  return rest.name?.kind === 'packing-slip' || rest.name?.kind === 'customs-form' || isSlip(rest) ? { ...seen, rest } : seen;
}

/** The words of a part of a page, the way up that gives enough of them; none where no way does. */
async function readUpright(page: SourcePage, box: Box): Promise<readonly Word[]> {
  for (const turn of WAYS) {
    const reading = await readTurned(page, box, [], turn);
    if (isLegible(reading) && reading.sure >= SURE) return putRight(reading.words);
  }
  return [];
}
