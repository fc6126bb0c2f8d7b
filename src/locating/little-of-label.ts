import type { Code } from '../reading/source.js';
import { sizeOf } from './candidate.js';
import { hasItems, listsItems } from './item-rows.js';
import { WRITING, type SaidName } from './kind-of-words.js';
import { isWholeLabel } from './label-sizes.js';
import type { PageFacts, SaidCandidate } from './page-facts.js';
import { hasMainBars, isHollow, isTrackingLike } from './strength.js';

/**
 * Why something that has a label's place on its page is not believed to be one: which codes it has, and what is missing or speaks against it.
 * @param codes what was read in it; undefined where nothing was
 * @param own what the page around it calls itself
 */
export function littleOfLabel(
  label: SaidCandidate,
  codes: readonly Code[] | undefined,
  { phrases, blobs }: Pick<PageFacts, 'phrases' | 'blobs'>,
  own: SaidName | undefined,
): string {
  const { box } = label;
  const parts = [
    ofCodes(label, codes ?? []),
    ...ofWords(label),
    ...(isWholeLabel(label) || label.fillsPaper ? [] : ["not the size of a label's paper"]),
    ...(hasItems(box, phrases) || listsItems(box, phrases) ? ['rows of goods on it'] : []),
    ...(isHollow(box, blobs) ? ['much of it blank'] : []),
  ];
  const page = own ? `; and the page calls itself "${own.words}"` : '';
  return `the ${sizeOf(label)} has little of a label: ${parts.join(', ')}${page}`;
}

function ofCodes(label: SaidCandidate, read: readonly Code[]): string {
  const bars = label.codes.filter(({ kind }) => kind === 'linear').length;
  if (label.codes.length === 0 && read.length === 0) return 'nothing that looks like a code';
  // Areas of matrix codes are told by their texture, one perhaps as two.
  if (bars === 0 && read.length === 0) return "a matrix code that can't be read and no bars";
  if (bars === 0) return `${read.length === 1 ? 'one matrix code' : `${read.length} matrix codes`} and no bars`;
  const rows = bars === 1 ? 'one row of bars' : `${bars} rows of bars`;
  if (read.length === 0) return `${rows} that can't be read`;
  if (!read.some(isTrackingLike)) return `${rows}, but no number as long as a parcel's`;
  return hasMainBars(label) ? rows : `${rows}, smaller than most labels'`;
}

function ofWords({ said: { characters, labelWords } }: SaidCandidate): readonly string[] {
  if (characters < WRITING) return ['no words that can be read'];
  if (labelWords === 0) return ['no words of a label that Slipyard knows'];
  return labelWords === 1 ? ['one word of a label that Slipyard knows'] : [];
}
