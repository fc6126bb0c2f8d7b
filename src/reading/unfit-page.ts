import type { Reason } from '../sheet/sheet.js';

/** A page larger than this on a side (pt, 69 in; A0 is 47 in long) is no document with a label, and its rasters would not fit. */
const LONGEST_SIDE = 5_000;

/** Why a page of this size (pt) can't be used; undefined when it can. */
export function unfitSize(width: number, height: number): Reason | undefined {
  return width > 0 && height > 0 && Math.max(width, height) <= LONGEST_SIDE ? undefined : UNFIT_SIZE;
}

const UNFIT_SIZE: Reason = {
  code: 'reading/huge-page',
  message: 'the page is longer than 69 in on a side or has no size',
  remedy: 'Download it again; if it is the same, print the label alone from a viewer to a new PDF and use that file.',
};

export const DAMAGED_PAGE: Reason = {
  code: 'reading/damaged',
  message: 'the PDF lacks a part of the page: its content, a font or a picture is missing or broken',
  remedy: 'Download it again from the sales channel; if it opens in a viewer, print it to a new PDF there.',
};
