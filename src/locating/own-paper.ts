import { contains, type Box } from '../geometry/box.js';
import { mmToPt } from '../geometry/length.js';
import type { Judged } from './candidate.js';
import { isKnownSize } from './label-sizes.js';

/** Ink may stand over a found box by so much, pt: what drawing it softly adds. */
const OVER = 2;
/** Longer paper (pt) may have a stub or a receipt below its label. */
const NO_STUB = mmToPt(157);
/** Lone grains of a scan are smaller than this (pt), a word's ink is as high and longer. */
const WORD = { high: 4, long: 12 };

/**
 * On paper of a label's size, too short for a stub, what is written beside the only label's frame is of it, too: a sender set upright, a line of small print. Then the page
 * is the label.
 * @param parted whether a line to fold or to cut along divides the page
 */
export function ontoOwnPaper<T extends Judged>(label: T, page: Pick<Box, 'width' | 'height'>, blobs: readonly Box[], parted: boolean): T {
  if (label.edge === 'page' || parted || !isKnownSize(page) || Math.max(page.width, page.height) > NO_STUB) return label;
  if (!blobs.some((blob) => !contains(label.box, blob, OVER) && isWord(blob))) return label;
  const box: Box = { x: 0, y: 0, width: page.width, height: page.height };
  return { ...label, edge: 'page', box, evidence: [...label.evidence, "more is written beside it, and its page has a label's size"] };
}

const isWord = ({ width, height }: Box): boolean => Math.min(width, height) >= WORD.high && Math.max(width, height) >= WORD.long;
