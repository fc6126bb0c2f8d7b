import { bottom, contains, grow, right, union, type Box } from '../geometry/box.js';
import { mmToPt } from '../geometry/length.js';
import type { Phrase } from '../reading/word-lines.js';
import { addressesOn } from './address-block.js';
import type { Candidate } from './candidate.js';
import { mayBeSeveral } from './compared.js';
import { HAIR } from './gather.js';
import { isLabelSized } from './label-sizes.js';

/** Two labels have so much white between them, pt (6 mm; common practice, no source). */
const BETWEEN = mmToPt(6);

/**
 * Ink with the addresses of two labels or more as those, where its widest white lies between two parts that are each as large as a label, with a row of bars and an address of their own; any other
 * candidate as it is.
 */
export function parted(candidate: Candidate, blobs: readonly Box[], phrases: readonly Phrase[]): readonly Candidate[] {
  if (candidate.alike !== undefined || !mayBeSeveral(candidate, phrases)) return [candidate];
  const inside = blobs.filter((blob) => contains(candidate.box, blob, 1));
  for (const alongY of [true, false]) {
    const parts = beside(inside, alongY);
    const labels = parts.flatMap((part): readonly Candidate[] => {
      const ink = union(part);
      const codes = candidate.codes.filter(({ box }) => ink !== undefined && contains(ink, box, 6));
      if (!ink || !isLabelSized(ink) || codes.every(({ kind }) => kind === 'matrix')) return [];
      return addressesOn(ink, phrases) === 0 ? [] : [{ box: grow(ink, HAIR), edge: 'ink', codes }];
    });
    if (labels.length === 2) return labels.flatMap((label) => parted(label, blobs, phrases));
  }
  return [candidate];
}

/** Some ink before and after its widest white, from the top or from the left; none where it is too narrow. */
function beside(ink: readonly Box[], alongY: boolean): readonly (readonly Box[])[] {
  const [start, end] = alongY ? [(box: Box) => box.y, bottom] : [(box: Box) => box.x, right];
  const sorted = [...ink].sort((a, b) => start(a) - start(b));
  let [widest, at, reached] = [BETWEEN, 0, -Infinity];
  for (const [index, blob] of sorted.entries()) {
    if (index > 0 && start(blob) - reached > widest) [widest, at] = [start(blob) - reached, index];
    reached = Math.max(reached, end(blob));
  }
  return at === 0 ? [] : [sorted.slice(0, at), sorted.slice(at)];
}
