import { contains, type Box } from '../geometry/box.js';
import { mmToPt } from '../geometry/length.js';
import type { Judged } from './candidate.js';
import { isKnownSize, isLabelSized, isSmallPaper, isWholeLabel } from './label-sizes.js';

/** Ink may stand over a found box by so much, pt: what drawing it softly adds. */
const OVER = 2;
/** Longer paper (pt) may have a stub or a receipt below its label, where its ink doesn't fill it. */
const NO_STUB = mmToPt(157);
/** Lone grains of a scan are smaller than this (pt), a word's ink is as high and longer. */
const WORD = { high: 4, long: 12 };

/**
 * On paper of a label's size, too short for a stub or filled up to a border, the page is the label: where no frame or picture gives it an edge, and where more is written beside the only label's
 * frame, a sender set upright or a line of small print.
 * @param parted whether a line to fold or to cut along divides the page
 */
export function ontoOwnPaper<T extends Judged>(label: T, page: Pick<Box, 'width' | 'height'>, blobs: readonly Box[], parted: boolean): T {
  if (label.edge === 'page' || parted || !(isLabelSized(page) || isSmallPaper(page))) return label;
  const beside = blobs.filter((blob) => !contains(label.box, blob, OVER));
  if (Math.max(page.width, page.height) > NO_STUB && (beside.length > 0 || !fillsUp(label, page))) return label;
  if (beside.length === 0 ? label.edge !== 'ink' : !isKnownSize(page) || !beside.some(isWord)) return label;
  const box: Box = { x: 0, y: 0, width: page.width, height: page.height };
  const why = beside.length === 0 ? 'nothing else stands on its page, which is' : 'more is written beside it on its page, which is';
  return { ...label, edge: 'page', box, evidence: [...label.evidence, `${why} as small as labels are`] };
}

/** Whether no more than a border is left around a label, and it is no whole one on paper that is larger than those. */
const fillsUp = (label: Judged, page: Pick<Box, 'width' | 'height'>): boolean => {
  const { x, y, width, height } = label.box;
  const isBorder = Math.max(x, y, page.width - x - width, page.height - y - height) <= BORDER;
  return isBorder && (isKnownSize(page) || !isWholeLabel(label));
};
/** Pt (15 mm; common practice, no source). */
const BORDER = mmToPt(15);

const isWord = ({ width, height }: Box): boolean => Math.min(width, height) >= WORD.high && Math.max(width, height) >= WORD.long;
