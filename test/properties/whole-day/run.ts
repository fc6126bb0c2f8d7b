import { buildStack } from '../../../src/batch/build-stacks.js';
import { collate, type Collated } from '../../../src/batch/collate.js';
import { dayOf, type Day as EndedDay } from '../../../src/batch/day.js';
import { withoutDuplicates } from '../../../src/batch/duplicates.js';
import { ordersRecord } from '../../../src/batch/orders-record.js';
import { outputNamed, outputsOf, placeOf, stackTarget } from '../../../src/batch/outputs.js';
import { packedParcels } from '../../../src/batch/packed-parcels.js';
import type { Pool } from '../../../src/batch/pool.js';
import { Reckoning } from '../../../src/batch/reckoning.js';
import type { OrdersRecord } from '../../../src/batch/run-record.js';
import { pressedOf, type EndedDocument } from '../../../src/batch/work-through.js';
import type { Pipeline } from '../../../src/config/pipeline.js';
import { Scratch } from '../../../src/files/scratch.js';
import { PLAIN_PRINTER } from '../../../src/geometry/printer.js';
import { orderMap } from '../../../src/orders/order-map.js';
import type { Order } from '../../../src/orders/order.js';
import type { PackedParcel } from '../../../src/orders/packed-parcel.js';
import type { SortKey } from '../../../src/orders/sort-parcels.js';
import type { DocumentResult } from '../../../src/recipe/outcome.js';
import type { SlipContent } from '../../../src/sheet/slip-content.js';
import { item } from '../../batch/fakes.js';
import type { Day } from '../../orders/day/day.js';
import { DAY, OWN_ADDRESS } from '../../orders/day/maker.js';
import { OWN_SLIPS } from './documents.js';

/** An order with this in its notes gets a slip that can't be printed. */
export const BAD_SLIP = 'This slip breaks.';

export interface RanDay {
  readonly day: EndedDay;
  readonly collated: Collated;
  /** What doesn't add up. */
  readonly wrong: readonly string[];
  readonly record: OrdersRecord;
  readonly packed: readonly PackedParcel[];
  /** What the slips made from orders say, by their document behind the others. */
  readonly slips: readonly SlipContent[];
}

const VERIFY = { name: 'verify', options: { codes: 'required', allow: [], gain: { value: 0.5, unit: 'dots' } } };
const NUMBER = { name: 'number', options: { 'on-label-page': true, 'on-label': false, size: { value: 9, unit: 'pt' } } };
const FROM_ORDERS = {
  name: 'packing-slip',
  options: { from: 'from-orders', code: 'code128', prices: false, readable: { value: 6, unit: 'pt' }, margin: { value: 3, unit: 'mm' } },
};

export function pipelineOf({ options }: Day, stackOrder: readonly SortKey[]): Pipeline {
  return {
    file: undefined,
    folder: '/',
    ...{ media: '4x6in', grid: '203dpi', printer: PLAIN_PRINTER, outputs: [], out: '/out', jobs: 1 },
    day: { studio: { name: OWN_ADDRESS[0] ?? '', contact: OWN_ADDRESS.slice(1) }, stackOrder, lists: '4x6in' },
    channels: options.channels.map(({ hasOrders, withoutOrder, maxAge }, at) => ({
      name: `channel ${at}`,
      files: [],
      ...(hasOrders ? { orders: ['orders.csv'] } : {}),
      recipe: {
        name: 'plain',
        about: 'Plain.',
        steps: [...(at < OWN_SLIPS ? [FROM_ORDERS] : []), VERIFY, NUMBER],
        orders: orderMap({ order: ['Order'] }, { labelWithoutOrder: withoutOrder, maxAgeDays: maxAge }),
      },
    })),
  };
}

/** All that comes after the workers, as `runBatch` does it, but for files and the press. */
export async function runDay(pipeline: Pipeline, documents: readonly EndedDocument[], orders: readonly Order[]): Promise<RanDay> {
  const made = new SlipMaker();
  const scratch = new Scratch(undefined, 0);
  const tools = { pool: made as unknown as Pool, scratch, stop: new AbortController().signal };
  const { items: given } = withoutDuplicates(documents.map(({ work, items }) => ({ name: work.shownName, items })));
  const ordered = { orders, files: [], diagnostics: [] };
  const ended = await dayOf(pipeline, documents, given, ordered, DAY, tools);
  if (ended.kind !== 'done') throw new Error(`the day ended otherwise: ${ended.kind}`);
  const { day } = ended;
  const outputs = pipeline.channels.map((channel) => outputsOf(pipeline, channel));
  const collated = collate(
    documents.map(({ work }, at) => ({ ...placeOf(outputs, work.channel), items: day.items[at] ?? [] })),
    (name) => outputNamed(pipeline, name).media,
    day.collate,
  );
  const stacks = collated.stacks.map((stack) => buildStack(stack, stackTarget(pipeline, stack), pressedOf(documents, day), scratch));
  const { wrong } = new Reckoning({ taken: documents.length, documents, outputs, day, collated, stacks });
  return {
    ...{ day, collated, wrong },
    record: ordersRecord(pipeline, ordered, day, collated, []),
    packed: packedParcels(pipeline, documents, collated, day.matched.parcels),
    slips: day.slips.map(({ pressed }) => made.contents[pressed instanceof Uint8Array ? (pressed[0] ?? 0) : -1] as SlipContent),
  };
}

/** Stands where the workers do: a slip of one page, of two where it has many items. */
class SlipMaker {
  readonly contents: SlipContent[] = [];

  process({ content }: { readonly content: SlipContent }): Promise<DocumentResult> {
    const number = this.contents.push(content) - 1;
    const isBad = content.notes.includes(BAD_SLIP);
    const bad = { kind: 'held', code: 'packing-slip/order-code', message: 'its code says something else', remedy: 'Report it.' } as const;
    const pages = content.items.length > 2 ? [1, 2] : [1];
    return Promise.resolve({
      pageCount: pages.length,
      items: pages.map((page) => item(`p${page}`, { page, role: 'slip', ...(isBad ? { state: bad } : {}), pressedPage: page })),
      ...{ diagnostics: [], pictures: [], times: {} },
      pressed: isBad ? undefined : new Uint8Array([number]),
      counts: { documentsOpened: 0, sourceRasters: 0, outputRasters: 0, decodes: 0 },
    });
  }
}
