import type { CodeSummary, ItemResult } from '../recipe/outcome.js';

/** A label of a run. */
export interface RunLabel {
  /** Index of its document in the fixed order, from 0. */
  readonly document: number;
  readonly item: ItemResult;
}

/**
 * Puts labels together that are one label as far as their codes tell: those that share a tracking number, or the printed dots where
 * they have none. Groups stand in the order of their first labels, labels in the order given.
 *
 * A number that is only likely to be the tracking number may be an order's or a route's: there, two labels of which each has a
 * number of its own that the other lacks are two parcels.
 */
export function sameLabels(labels: readonly RunLabel[]): readonly (readonly RunLabel[])[] {
  const union = new Union(labels.length);
  const sure = new Map<string, number>();
  const likely = new Map<string, number[]>();
  for (const [index, { item }] of labels.entries()) {
    const tracking = item.codes.flatMap((code) => code.tracking ?? []);
    for (const { digest, trust } of tracking) {
      if (trust === 'likely') likely.set(digest, [...(likely.get(digest) ?? []), index]);
      else union.join(index, firstOf(sure, `number ${digest}`, index));
    }
    if (tracking.length === 0 && item.picture !== undefined) union.join(index, firstOf(sure, `picture ${item.picture}`, index));
  }
  for (const indexes of likely.values()) joinLikely(indexes, labels, union);
  const groups = new Map<number, RunLabel[]>();
  for (const [index, label] of labels.entries()) {
    const root = union.rootOf(index);
    const group = groups.get(root);
    if (group) group.push(label);
    else groups.set(root, [label]);
  }
  return [...groups.values()];
}

function firstOf(known: Map<string, number>, key: string, index: number): number {
  const first = known.get(key) ?? index;
  known.set(key, first);
  return first;
}

/** Labels with equal numbers are joined at once, so that only different sets are compared with each other. */
function joinLikely(indexes: readonly number[], labels: readonly RunLabel[], union: Union): void {
  const sets = new Map<string, { readonly numbers: ReadonlySet<string>; readonly index: number }>();
  for (const index of indexes) {
    const numbers = new Set(ownNumbers(labels[index]?.item.codes ?? []));
    const key = [...numbers].sort().join(' ');
    const known = sets.get(key);
    if (known) union.join(index, known.index);
    else sets.set(key, { numbers, index });
  }
  const different = [...sets.values()];
  for (const [at, a] of different.entries()) {
    for (const b of different.slice(at + 1)) {
      if (isWithin(a.numbers, b.numbers) || isWithin(b.numbers, a.numbers)) union.join(a.index, b.index);
    }
  }
}

/** The numbers that may be the parcel's own. A matrix code that repeats one is none beside it. */
const ownNumbers = (codes: readonly CodeSummary[]): readonly string[] =>
  codes.flatMap(({ role, tracking, digest }) => (tracking ? [tracking.digest] : role === 'unknown' ? [digest] : []));

const isWithin = (small: ReadonlySet<string>, large: ReadonlySet<string>): boolean => [...small].every((each) => large.has(each));

/** Indexes joined into groups; the root of a group is its least index. */
class Union {
  readonly #parent: number[];

  constructor(size: number) {
    this.#parent = Array.from({ length: size }, (_, index) => index);
  }

  rootOf(index: number): number {
    let root = index;
    for (let up = this.#parent[root]; up !== undefined && up !== root; up = this.#parent[root]) root = up;
    this.#parent[index] = root;
    return root;
  }

  join(a: number, b: number): void {
    const [x, y] = [this.rootOf(a), this.rootOf(b)];
    this.#parent[Math.max(x, y)] = Math.min(x, y);
  }
}
