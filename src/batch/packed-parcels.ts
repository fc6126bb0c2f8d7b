import type { Pipeline } from '../config/pipeline.js';
import type { LabelCode } from '../orders/label-facts.js';
import type { Order } from '../orders/order.js';
import type { PackedParcel } from '../orders/packed-parcel.js';
import { TrackingIndex } from '../orders/tracking.js';
import { isLabel } from '../sheet/sheet.js';
import { idOfItem } from './build-stacks.js';
import type { Collated } from './collate.js';
import type { OrderedParcel } from './match-labels.js';
import type { EndedDocument } from './work-through.js';

/** The parcels of the stacks, by their numbers, as lists want them: what goes out, so no return label by itself. Personal data. */
export function packedParcels(
  { channels }: Pick<Pipeline, 'channels'>,
  documents: readonly EndedDocument[],
  { stacks }: Collated,
  parcels: ReadonlyMap<string, OrderedParcel>,
): readonly PackedParcel[] {
  return stacks.flatMap(({ name, pages }) => {
    const first = pages.filter(({ number, item }, index) => number !== pages[index - 1]?.number && item.role === 'label');
    return first.map(({ document, item, number }): PackedParcel => {
      const parcel = parcels.get(idOfItem(document, item.id));
      const { work, texts = [] } = documents[document] ?? {};
      const codes = texts.find(({ itemId }) => itemId === item.id)?.codes ?? [];
      return {
        number,
        stack: name,
        orders: parcel?.orders ?? [],
        carrier: (work && channels[work.channel]?.carrier) ?? '',
        tracking: codes.find(({ tracking }) => tracking !== undefined)?.tracking ?? knownTo(parcel?.orders ?? [], codes) ?? '',
        labelPages: pages.filter((page) => page.number === number && isLabel(page.item)).length,
      };
    });
  });
}

/** A tracking number that orders know and a label's codes hold, as the orders write it: of a number of no published scheme nothing else tells which part it is. */
function knownTo(orders: readonly Order[], codes: readonly LabelCode[]): string | undefined {
  const known = new TrackingIndex<string>();
  for (const number of orders.flatMap(({ tracking }) => tracking)) known.add(number, number);
  return known.within(codes).flatMap((key) => known.get(key))[0];
}
