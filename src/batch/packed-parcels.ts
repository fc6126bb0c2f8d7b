import type { Pipeline } from '../config/pipeline.js';
import type { PackedParcel } from '../orders/packed-parcel.js';
import { knownNumberIn } from '../orders/tracking.js';
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
        tracking: knownNumberIn(parcel?.orders ?? [], codes) ?? codes.find(({ tracking }) => tracking !== undefined)?.tracking ?? '',
        labelPages: pages.filter((page) => page.number === number && isLabel(page.item)).length,
      };
    });
  });
}
