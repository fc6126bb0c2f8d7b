import type { Pipeline } from '../config/pipeline.js';
import { placeHeldLabels, type HeldLabel } from '../orders/held-labels.js';
import { looseEnds, type LooseEnd } from '../orders/loose-ends.js';
import type { LabelFacts, SlipFacts } from '../orders/label-facts.js';
import { heldWith } from '../orders/conflicts.js';
import { matchOrders } from '../orders/match.js';
import type { ChannelRules, LabelEnd, MatchedParcel, MatchOptions } from '../orders/matching.js';
import type { Order } from '../orders/order.js';
import { mismatches, orderPlaces, orderSums, type OrderSums, type PlacedOrder } from '../orders/order-places.js';
import type { ItemResult, ItemState } from '../recipe/outcome.js';
import { isLabel, type Reason } from '../sheet/sheet.js';
import { idOfItem } from './build-stacks.js';
import { holdParcels } from './parcels.js';
import type { EndedDocument } from './work-through.js';

/** A parcel with its orders; personal data. */
export interface OrderedParcel extends Omit<MatchedParcel, 'orders'> {
  readonly orders: readonly Order[];
}

export interface MatchedRun {
  /** The items of each document; labels that can't be matched are held now, and their parcels with them. */
  readonly items: readonly (readonly ItemResult[])[];
  /** By the label's `idOfItem`. */
  readonly parcels: ReadonlyMap<string, OrderedParcel>;
  /** Return labels, by `idOfItem`, with the label that they go with. */
  readonly goesWith: ReadonlyMap<string, string>;
  readonly places: readonly PlacedOrder[];
  readonly sums: OrderSums;
  readonly looseEnds: readonly LooseEnd[];
  /** What doesn't add up; none when all is right. */
  readonly mismatches: readonly string[];
}

/**
 * Says which ready label is which order's. Labels of channels without order files stay as they are.
 * @param items of each document, what is there twice taken out
 * @param today ISO 8601 calendar date
 */
export function matchLabels(
  { channels, day }: Pick<Pipeline, 'channels' | 'day'>,
  documents: readonly EndedDocument[],
  items: readonly (readonly ItemResult[])[],
  orders: readonly Order[],
  today: string,
): MatchedRun {
  const known = documents.flatMap((document, index) =>
    channels[document.work.channel]?.orders ? factsOf(document, index, items[index] ?? []) : [],
  );
  const labels = known.flatMap(({ facts, state }) => (state.kind === 'ready' ? [facts] : []));
  const waiting = known.flatMap(({ facts, state }): HeldLabel[] => (state.kind === 'held' ? [{ facts, reason: state }] : []));
  const options: MatchOptions = { channels: channels.map(rulesOf), today, ownAddress: [day.studio.name, ...day.studio.contact] };
  const matching = matchOrders(orders, labels, options);
  const matched = orderPlaces(orders, labels, matching);
  const { places, looseEnds: withHeld } = placeHeldLabels(orders, waiting, options, matched);
  const sums = orderSums(places, matching);
  const byId = new Map(orders.map((order) => [order.id, order]));
  const held = new Map(matching.labels.flatMap((end) => (end.kind === 'held' ? [[end.label, stateOf(end.reasons)] as const] : [])));
  for (const [label, reason] of waitingReturns(matching.labels, places, byId, waiting)) held.set(label, stateOf([reason]));
  return {
    items: items.map((own, index) =>
      holdParcels(own.map((item) => ({ ...item, state: held.get(idOfItem(index, item.id)) ?? item.state }))),
    ),
    parcels: new Map(
      matching.parcels.map((parcel) => [parcel.label, { ...parcel, orders: parcel.orders.flatMap((id) => byId.get(id) ?? []) }]),
    ),
    goesWith: new Map(matching.parcels.flatMap(({ label, returns }) => returns.map((each) => [each, label] as const))),
    places,
    sums,
    looseEnds: [...withHeldPages(looseEnds(orders, labels, matching, places), byId, documents, items), ...withHeld],
    mismatches: mismatches(orders, labels, matching, places),
  };
}

/** Return labels, with why they are held, of orders whose own label is held for a reason of its own: all of a parcel comes together. */
function waitingReturns(
  ends: readonly LabelEnd[],
  places: readonly PlacedOrder[],
  orders: ReadonlyMap<string, Order>,
  held: readonly HeldLabel[],
): readonly (readonly [label: string, reason: Reason])[] {
  const shown = new Map(held.map(({ facts }) => [facts.id, facts.shown]));
  const causes = new Map(
    places.flatMap(({ order, labels }) => labels.flatMap((label) => (shown.has(label) ? [[order, shown.get(label) ?? ''] as const] : []))),
  );
  return ends.flatMap((end) => {
    if (end.kind !== 'return' || end.parcel !== undefined) return [];
    const cause = end.orders.flatMap((order) => causes.get(order) ?? []).sort()[0];
    return cause === undefined
      ? []
      : [
          [
            end.label,
            heldWith(
              end.orders.flatMap((id) => orders.get(id) ?? []),
              cause,
            ),
          ] as const,
        ];
  });
}

/** An order seems to have no label when its label is held or failed for a reason of its own: where a channel has such pages, that is said. */
function withHeldPages(
  ends: readonly LooseEnd[],
  orders: ReadonlyMap<string, Order>,
  documents: readonly EndedDocument[],
  items: readonly (readonly ItemResult[])[],
): readonly LooseEnd[] {
  const unread = new Map<number, number>();
  for (const [index, { work }] of documents.entries()) {
    const own = (items[index] ?? []).filter(({ state }) => state.kind === 'held' || state.kind === 'failed').length;
    unread.set(work.channel, (unread.get(work.channel) ?? 0) + own);
  }
  return ends.map((end) => {
    const count = end.code === 'orders/no-label' ? (unread.get(orders.get(end.orders[0] ?? '')?.channel ?? -1) ?? 0) : 0;
    const among =
      count === 1
        ? 'One page or file of its channel is held or failed: it may be its label.'
        : `${count} pages or files of its channel are held or failed: its label may be among them.`;
    return count === 0 ? end : { ...end, remedy: `${among} If not: ${end.remedy.charAt(0).toLowerCase()}${end.remedy.slice(1)}` };
  });
}

const rulesOf = ({ orders, recipe }: Pipeline['channels'][number]): ChannelRules => ({
  hasOrders: orders !== undefined,
  withoutOrder: recipe.orders?.labelWithoutOrder ?? 'hold',
  maxAge: recipe.orders?.maxAgeDays,
  fileName: recipe.orders?.fileName,
});

/** What is known of a document's labels, whether ready or held. */
function factsOf(
  { work, texts }: EndedDocument,
  index: number,
  items: readonly ItemResult[],
): { readonly facts: LabelFacts; readonly state: ItemState }[] {
  const fileName = (work.entry ?? work.shownName).split('/').at(-1) ?? '';
  return items.flatMap((item) => {
    const text = isLabel(item) ? texts.find(({ itemId }) => itemId === item.id) : undefined;
    if (!text) return [];
    const { codes, lines } = text;
    const shown = `${work.shownName}, page ${item.page}`;
    const isReturn = item.role === 'return-label';
    const slip = slipOf(item, items, texts);
    const before = isReturn ? outboundOf(item, items) : undefined;
    const facts: LabelFacts = {
      id: idOfItem(index, item.id),
      channel: work.channel,
      fileName,
      codes,
      lines,
      shown,
      isReturn,
      ...(slip.length > 0 ? { slip } : {}),
      ...(before ? { outbound: idOfItem(index, before.id) } : {}),
    };
    return [{ facts, state: item.state }];
  });
}

/** What the slip says that the document has for a label: one that is left out isn't printed, and says nothing. */
function slipOf({ role, parcel }: ItemResult, items: readonly ItemResult[], texts: EndedDocument['texts']): readonly SlipFacts[] {
  if (role !== 'label' || parcel === undefined) return [];
  return items.flatMap((other) => {
    const text = other.role === 'slip' && other.parcel === parcel ? texts.find(({ itemId }) => itemId === other.id) : undefined;
    return text ? [{ codes: text.codes, lines: text.lines, shown: `page ${other.page}` }] : [];
  });
}

/** The outbound label that a return label shares its parcel with. */
const outboundOf = ({ parcel }: ItemResult, items: readonly ItemResult[]): ItemResult | undefined =>
  parcel === undefined ? undefined : items.find((other) => other.role === 'label' && other.parcel === parcel);

/** All reasons in one: the first decides what is to be done. */
function stateOf(reasons: readonly Reason[]): ItemState {
  const [first] = reasons;
  if (!first) throw new Error('match-labels: a label is held without a reason');
  return { kind: 'held', ...first, message: reasons.map(({ message }) => message).join('; ') };
}
