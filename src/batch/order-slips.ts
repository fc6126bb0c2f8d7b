import type { Pipeline } from '../config/pipeline.js';
import type { Diagnostic } from '../diagnostics/diagnostic.js';
import type { Kept, Scratch } from '../files/scratch.js';
import { gridOf } from '../geometry/grid.js';
import type { ItemResult, ItemState, WorkCounts } from '../recipe/outcome.js';
import { heldWith } from '../orders/conflicts.js';
import type { Reason } from '../sheet/sheet.js';
import { idOfItem } from './build-stacks.js';
import type { OrderedParcel } from './match-labels.js';
import { holdParcels } from './parcels.js';
import type { Pool } from './pool.js';
import { isGift, slipContentOf, slipLookOf } from './slip-content.js';
import { outputsOf } from './outputs.js';
import { printerOf } from './stack-plan.js';
import type { EndedDocument } from './work-through.js';

/** The slip of a parcel, made from its orders and put away. */
export interface MadeSlip {
  readonly pressed: Kept;
  /** One for each page. */
  readonly items: readonly ItemResult[];
}

export type SlipsMade =
  | {
      readonly kind: 'all';
      /** By the label's `idOfItem`, in the order of the labels. */
      readonly slips: ReadonlyMap<string, MadeSlip>;
      /** The items of each document; a label whose slip can't be printed is held now, and its parcel with it. */
      readonly items: readonly (readonly ItemResult[])[];
      readonly diagnostics: readonly Diagnostic[];
      readonly counts: readonly WorkCounts[];
    }
  | { readonly kind: 'stopped' }
  | { readonly kind: 'cannot-go-on'; readonly reason: Reason };

export interface SlipTools {
  readonly pool: Pool;
  readonly scratch: Scratch;
  readonly stop: AbortSignal;
}

/** Makes the slips of all parcels whose recipe wants them made from orders, on the workers; a label that is held gets none. */
export async function makeOrderSlips(
  pipeline: Pipeline,
  documents: readonly EndedDocument[],
  items: readonly (readonly ItemResult[])[],
  parcels: ReadonlyMap<string, OrderedParcel>,
  { pool, scratch, stop }: SlipTools,
): Promise<SlipsMade> {
  const looks = pipeline.channels.map((channel) => {
    const { own, plan } = outputsOf(pipeline, channel);
    const { media, grid } = own;
    const look = slipLookOf(channel, gridOf(grid));
    return look && { look, page: { media, grid, printer: printerOf(plan, own.printer) } };
  });
  const wanted = documents.flatMap(({ work }, index) => {
    const own = looks[work.channel];
    if (!own) return [];
    return (items[index] ?? []).flatMap((item) => {
      const parcel = item.state.kind === 'ready' ? parcels.get(idOfItem(index, item.id)) : undefined;
      return parcel ? [{ id: idOfItem(index, item.id), parcel, page: own.page, look: { ...own.look, gift: isGift(parcel) } }] : [];
    });
  });
  const made = await Promise.all(
    wanted.map(async ({ id, parcel, look, page }) => {
      const content = slipContentOf(parcel, pipeline.day.studio);
      return { id, parcel, result: await pool.process({ type: 'slip', content, look, ...page }, stop) };
    }),
  );
  const slips = new Map<string, MadeSlip>();
  const broken = new Map<string, ItemState>();
  const counts: WorkCounts[] = [];
  const diagnostics: Diagnostic[] = [];
  for (const { id, parcel, result } of made) {
    if (!result) return { kind: 'stopped' };
    counts.push(result.counts);
    diagnostics.push(...result.diagnostics);
    const bad = result.items.find(({ state }) => state.kind !== 'ready')?.state;
    if (bad && bad.kind !== 'ready') {
      broken.set(id, { ...bad, kind: 'held', message: `its slip can't be printed: ${bad.message}` });
      for (const label of parcel.returns) broken.set(label, { kind: 'held', ...heldWith(parcel.orders, shownOf(documents, items, id)) });
    } else if (result.pressed) {
      const put = await scratch.put(result.pressed);
      if (!put.ok) return { kind: 'cannot-go-on', reason: put.reason };
      slips.set(id, { pressed: put.kept, items: result.items });
    }
  }
  return {
    kind: 'all',
    slips,
    items: items.map((own, index) =>
      holdParcels(own.map((item) => ({ ...item, state: broken.get(idOfItem(index, item.id)) ?? item.state }))),
    ),
    diagnostics,
    counts,
  };
}

/** How messages call a label. */
function shownOf(documents: readonly EndedDocument[], items: readonly (readonly ItemResult[])[], label: string): string {
  const document = Number(label.slice(0, label.indexOf(' ')));
  const page = items[document]?.find(({ id }) => idOfItem(document, id) === label)?.page;
  return `${documents[document]?.work.shownName ?? ''}, page ${page ?? ''}`;
}
