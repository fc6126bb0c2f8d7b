import { stat } from 'node:fs/promises';
import type { Pipeline } from '../config/pipeline.js';
import type { Diagnostic } from '../diagnostics/diagnostic.js';
import type { Kept } from '../files/scratch.js';
import { sortParcels } from '../orders/sort-parcels.js';
import { knownNumberIn, lastOf } from '../orders/tracking.js';
import type { ItemResult, WorkCounts } from '../recipe/outcome.js';
import type { Reason } from '../sheet/sheet.js';
import type { CollateOrders, DocumentItem } from './collate.js';
import { matchLabels, type MatchedRun } from './match-labels.js';
import { makeOrderSlips, type SlipTools } from './order-slips.js';
import type { RunOrders } from './run-orders.js';
import type { EndedDocument } from './work-through.js';

/** What orders make of a run's labels. */
export interface Day {
  readonly matched: MatchedRun;
  /** The items of each document, after matching and after the slips were made. */
  readonly items: readonly (readonly ItemResult[])[];
  readonly collate: CollateOrders;
  /** Slips made from orders, each a document of its own behind all others: where its pages are put away, and for which label. */
  readonly slips: readonly { readonly label: string; readonly pressed: Kept; readonly items: readonly ItemResult[] }[];
  readonly diagnostics: readonly Diagnostic[];
  readonly counts: readonly WorkCounts[];
}

export type DayEnd =
  { readonly kind: 'done'; readonly day: Day } | { readonly kind: 'stopped' } | { readonly kind: 'cannot-go-on'; readonly reason: Reason };

/**
 * Matches the run's labels with its orders, has slips made where recipes want that, and says in which order parcels are packed.
 * @param items of each document, what is there twice taken out
 * @param today ISO 8601 calendar date
 */
export async function dayOf(
  pipeline: Pipeline,
  documents: readonly EndedDocument[],
  items: readonly (readonly ItemResult[])[],
  { orders }: RunOrders,
  today: string,
  tools: SlipTools,
): Promise<DayEnd> {
  const matched = matchLabels(pipeline, documents, items, orders, today);
  const made = await makeOrderSlips(pipeline, documents, matched.items, matched.parcels, tools);
  if (made.kind !== 'all') return made;
  const slips = [...made.slips].map(([label, slip]) => ({ label, ...slip }));
  const pages = new Map(
    slips.map(({ label, items: own }, index) => [label, own.map((item): DocumentItem => ({ document: documents.length + index, item }))]),
  );
  const sort = await sorting(pipeline, documents, matched);
  return {
    kind: 'done',
    day: {
      matched,
      items: made.items,
      collate: {
        slips: pages,
        goesWith: matched.goesWith,
        orderOf: orderOf(matched),
        tailOf: tailOf(documents, matched),
        ...(sort ? { sort } : {}),
      },
      slips,
      diagnostics: made.diagnostics,
      counts: made.counts,
    },
  };
}

/** The number of a parcel's order, and how many more are in it. */
const orderOf =
  ({ parcels }: MatchedRun) =>
  (label: string): string | undefined => {
    const [first, ...more] = parcels.get(label)?.orders ?? [];
    return first && `${first.number}${more.length === 0 ? '' : ` +${more.length}`}`;
  };

/** The last four characters of the tracking number that a parcel's orders know; no fewer than that are left of it. */
const tailOf =
  (documents: readonly EndedDocument[], { parcels }: MatchedRun) =>
  (label: string): string | undefined => {
    const at = label.indexOf(' ');
    const codes = documents[Number(label.slice(0, at))]?.texts.find(({ itemId }) => itemId === label.slice(at + 1))?.codes ?? [];
    const number = knownNumberIn(parcels.get(label)?.orders ?? [], codes);
    return number === undefined ? undefined : lastOf(number);
  };

/** The order in which parcels are packed, from their labels' ids; undefined where the pipeline wants none. */
async function sorting(
  { channels, day: { stackOrder } }: Pick<Pipeline, 'channels' | 'day'>,
  documents: readonly EndedDocument[],
  { parcels }: MatchedRun,
): Promise<CollateOrders['sort']> {
  if (stackOrder.length === 0) return undefined;
  const times = stackOrder.includes('as-downloaded') ? await modified(documents) : [];
  return (labels) => {
    const known = labels.map((id) => {
      const document = Number(id.slice(0, id.indexOf(' ')));
      const channel = documents[document]?.work.channel ?? 0;
      return { id, orders: parcels.get(id)?.orders ?? [], channel, carrier: channels[channel]?.carrier ?? '', downloaded: times[document] };
    });
    return sortParcels(known, stackOrder).map(({ id }) => id);
  };
}

/** When the file of each document was last changed, ms since 1970; undefined where that can't be told. */
const modified = (documents: readonly EndedDocument[]): Promise<readonly (number | undefined)[]> =>
  Promise.all(
    documents.map(async ({ work }) =>
      stat(work.path).then(
        ({ mtimeMs }) => mtimeMs,
        () => undefined,
      ),
    ),
  );
