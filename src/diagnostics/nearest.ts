/** The letters and digits alone, small: `packingSlip`, `Packing Slip` and `packing_slip` are all `packingslip`. */
const bare = (word: string): string => word.toLocaleLowerCase('en').replaceAll(/[^\p{L}\p{N}]/gu, '');

/**
 * Number of single-letter edits (insert, remove, change, swap of two neighbours) between two words: the optimal string
 * alignment distance.
 */
export function editDistance(a: string, b: string): number {
  let beforeLast: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const change = (last[j - 1] ?? 0) + (a[i - 1] === b[j - 1] ? 0 : 1);
      let best = Math.min((last[j] ?? 0) + 1, (row[j - 1] ?? 0) + 1, change);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) best = Math.min(best, (beforeLast[j - 2] ?? 0) + 1);
      row.push(best);
    }
    beforeLast = last;
    last = row;
  }
  return last[b.length] ?? 0;
}

/** Longer words than this are no slips of the pen, and comparing them would cost time. */
const LONGEST = 60;

/** A word that is merely cut short, or that says more than is needed, is as near as one slip of the pen. */
function distanceTo(candidate: string, wanted: string): number {
  const shorter = Math.min(candidate.length, wanted.length);
  const begins = shorter >= 4 && candidate !== wanted && (candidate.startsWith(wanted) || wanted.startsWith(candidate));
  return begins ? 1 : editDistance(wanted, candidate);
}

/**
 * The allowed word that somebody most likely meant by `word`, or undefined when none is near: at most one edit for each
 * three letters. The first of several equally near ones.
 */
export function nearest(word: string, allowed: Iterable<string>): string | undefined {
  const wanted = bare(word);
  if (wanted === '' || wanted.length > LONGEST) return undefined;
  let best: string | undefined;
  let bestDistance = Math.max(1, Math.floor(wanted.length / 3)) + 1;
  for (const candidate of allowed) {
    const distance = distanceTo(bare(candidate), wanted);
    if (distance < bestDistance && distance < wanted.length) {
      best = candidate;
      bestDistance = distance;
    }
  }
  return best;
}
