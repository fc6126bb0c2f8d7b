import { contains, intersection, union, type Box } from '../geometry/box.js';
import type { Turn } from '../geometry/placement.js';
import { placeOnLine } from '../reading/place-on-line.js';
import type { SourcePage } from '../reading/source.js';
import { phrasesOf, type Phrase } from '../reading/word-lines.js';
import { addressesOn } from './address-block.js';
import type { Judged } from './candidate.js';
import { HAIR } from './gather.js';
import { isWholeLabel } from './label-sizes.js';
import { PARTED, WIDER } from './white.js';

/** Ink side by side, from one edge of its writing to the foot of it (pt, as `placeOnLine` gives it). */
interface Row {
  readonly blobs: readonly Box[];
  readonly top: number;
  readonly foot: number;
}

/**
 * What is left of a label without an edge when its head is taken away, where that is clearly farther from the rest than any parts of the rest are from each other, without a code and without an
 * address: it may be the page's title or the shop's mark. Pt; undefined where there is no such head, no writing that says which end is up, or a known size with it.
 * @param blobs ink that isn't the page's own
 */
export function withoutLoneHead(label: Judged, page: SourcePage, blobs: readonly Box[]): Box | undefined {
  if (label.edge !== 'ink' || isWholeLabel(label)) return undefined;
  const phrases = phrasesOf(page.words()).filter(({ box }) => contains(label.box, box, 2));
  const turn = mostTurn(phrases);
  if (turn === undefined) return undefined;
  const rows = rowsOf(
    blobs.filter((blob) => contains(label.box, blob, 2)),
    turn,
  );
  const [white = 0, ...others] = rows.slice(1).map(({ top }, at) => top - (rows[at]?.foot ?? top));
  if (white < Math.max(PARTED, ...others.map((other) => WIDER * other))) return undefined;
  const head = union(rows.slice(0, 1).flatMap((row) => row.blobs));
  const isLabels = !head || label.codes.some(({ box }) => intersection(box, head)) || addressesOn(head, phrases) > 0;
  return isLabels ? undefined : union(rows.slice(1).flatMap((row) => row.blobs));
}

/** Ink in rows, from the top of writing with this turn. */
function rowsOf(blobs: readonly Box[], turn: Turn): readonly Row[] {
  const placed = blobs.map((blob): Row => {
    const { foot } = placeOnLine(blob, turn);
    return { blobs: [blob], top: foot - (turn % 180 === 0 ? blob.height : blob.width), foot };
  });
  return placed
    .sort((a, b) => a.top - b.top)
    .reduce<Row[]>((rows, next) => {
      const row = rows.at(-1);
      if (!row || next.top > row.foot + HAIR) return [...rows, next];
      return [...rows.slice(0, -1), { blobs: [...row.blobs, ...next.blobs], top: row.top, foot: Math.max(row.foot, next.foot) }];
    }, []);
}

/** Which way most characters stand. */
function mostTurn(phrases: readonly Phrase[]): Turn | undefined {
  const count = new Map<Turn, number>();
  for (const { text, turn } of phrases) count.set(turn, (count.get(turn) ?? 0) + text.length);
  return [...count].sort(([, a], [, b]) => b - a)[0]?.[0];
}
