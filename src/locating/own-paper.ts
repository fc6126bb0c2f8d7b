import { contains, type Box } from '../geometry/box.js';
import { mmToPt } from '../geometry/length.js';
import type { Judged } from './candidate.js';
import { isKnownSize, isLabelSized } from './label-sizes.js';

/** Ink may stand over a found box by so much, pt: what drawing it softly adds. */
const OVER = 2;
/** Longer paper (pt) may have a stub or a receipt below its label. */
const NO_STUB = mmToPt(157);
/** Lone grains of a scan are smaller than this (pt), a word's ink is as high and longer. */
const WORD = { high: 4, long: 12 };

/**
 * On paper of a label's size, too short for a stub, the page is the label: where no frame or picture gives it an edge, and where more is written beside the only label's
 * frame, a sender set upright or a line of small print.
 * @param parted whether a line to fold or to cut along divides the page
 */
export function ontoOwnPaper<T extends Judged>(label: T, page: Pick<Box, 'width' | 'height'>, blobs: readonly Box[], parted: boolean): T {
  if (label.edge === 'page' || parted || !isLabelSized(page) || Math.max(page.width, page.height) > NO_STUB) return label;
  const beside = blobs.filter((blob) => !contains(label.box, blob, OVER));
  if (beside.length === 0 ? label.edge !== 'ink' : !isKnownSize(page) || !beside.some(isWord)) return label;
  const box: Box = { x: 0, y: 0, width: page.width, height: page.height };
  const why = beside.length === 0 ? 'nothing else stands on its page, which is' : 'more is written beside it on its page, which is';
  return { ...label, edge: 'page', box, evidence: [...label.evidence, `${why} as small as labels are`] };
}

const isWord = ({ width, height }: Box): boolean => Math.min(width, height) >= WORD.high && Math.max(width, height) >= WORD.long;
