import type { Box } from '../geometry/box.js';
import { mmToPt } from '../geometry/length.js';
import { SIZE_TOLERANCE } from '../geometry/media.js';
import { inkBlobs } from '../locating/ink-blobs.js';
import { restOf } from '../locating/rest.js';
import { phrasesOf } from '../reading/word-lines.js';
import { insideOf, isOneQuestion, type Sample, type SamplePage, type Seen } from './sample.js';
import { wordsAsWritten } from './as-written.js';

/** Boxes with every edge this near are the same, pt (2 mm). */
const SAME = mmToPt(2);

/** Whether every edge of two boxes lies within `slack` pt. */
export const sameBox = (a: Box, b: Box, slack: number): boolean =>
  Math.abs(a.x - b.x) <= slack &&
  Math.abs(a.y - b.y) <= slack &&
  Math.abs(a.x + a.width - b.x - b.width) <= slack &&
  Math.abs(a.y + a.height - b.y - b.height) <= slack;

export const sameSize = (a: SamplePage, b: SamplePage): boolean =>
  Math.abs(a.width - b.width) <= SIZE_TOLERANCE && Math.abs(a.height - b.height) <= SIZE_TOLERANCE;

/**
 * A page with several answers for one label is settled by the other pages: where all sure pages of its size have their one label in the
 * same place, and one of the answers lies there, that is the label.
 */
export function settleDoubts(samples: readonly Sample[]): readonly Sample[] {
  const pages = samples.flatMap((sample) => sample.pages);
  return samples.map((sample) => ({ ...sample, pages: sample.pages.map((page) => ({ ...page, seen: settled(page, pages, sample) })) }));
}

function settled(page: SamplePage, pages: readonly SamplePage[], { document }: Sample): Seen {
  const { seen } = page;
  if (seen.kind !== 'unsettled' || seen.candidates.length < 2) return seen;
  const sure = pages.flatMap((each) => (each.seen.kind === 'labels' && sameSize(each, page) ? [each.seen.labels] : []));
  const [model] = sure[0] ?? [];
  if (!model || !sure.every(([only, second]) => only && !second && sameBox(only.box, model.box, SAME))) return seen;
  const chosen = seen.candidates.find(({ box }) => sameBox(box, model.box, SAME));
  if (!chosen || !isOneQuestion(chosen, seen.candidates)) return seen;
  const source = document.page(page.number);
  const rest = restOf(source, [chosen.box], inkBlobs(source.ink()), phrasesOf(source.words()));
  const returns = rest.returns === undefined ? undefined : wordsAsWritten(source, rest.returns);
  const words = rest.name && wordsAsWritten(source, rest.name.words);
  return {
    kind: 'labels',
    labels: [{ box: chosen.box, edge: chosen.edge, inside: insideOf(source, chosen.box), returns }],
    beside: { kind: rest.name?.kind, words, box: rest.box },
    settledByOthers: true,
  };
}
