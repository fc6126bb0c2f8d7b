import type { Pipeline } from '../config/pipeline.js';
import type { Diagnostic } from '../diagnostics/diagnostic.js';
import type { Box } from '../geometry/box.js';
import type { ItemResult, WorkCounts } from '../recipe/outcome.js';
import type { Account } from './account.js';
import { idOfItem } from './build-stacks.js';
import type { Collated } from './collate.js';
import type { DocumentRecord, ItemRecord, OrdersRecord, RunRecord, StackRecord } from './run-record.js';
import type { EndedDocument } from './work-through.js';

export interface RecordInput {
  readonly pipeline: Pipeline;
  readonly documents: readonly EndedDocument[];
  readonly collated: Collated;
  readonly account: Account;
  readonly stacks: readonly StackRecord[];
  /** About the run as a whole: a glob that matches nothing, say. */
  readonly diagnostics: readonly Diagnostic[];
  /** What became of the orders; undefined where no channel has any. */
  readonly orders: OrdersRecord | undefined;
  /** Of what was made beside the documents. */
  readonly counts: readonly WorkCounts[];
}

/** The record of a run, held items with the names of their files. */
export function buildRecord({ pipeline, documents, collated, account, stacks, diagnostics, orders, counts }: RecordInput): RunRecord {
  const printed = printedPlaces(collated);
  const names = new HeldNames(collated.items.flat().filter((item) => item.state.kind === 'held').length);
  const records = documents.map((document, index): DocumentRecord => {
    const channel = pipeline.channels[document.work.channel];
    const items = (collated.items[index] ?? []).map((item): ItemRecord => {
      const held = item.state.kind === 'held' ? names.next(document, item) : undefined;
      return itemRecord(item, printed.get(idOfItem(index, item.id)), held);
    });
    return {
      name: document.work.shownName,
      channel: channel?.name ?? '',
      recipe: channel?.recipe.name ?? '',
      sha256: document.work.sha256,
      size: document.work.size,
      state: document.state,
      pages: document.pageCount,
      diagnostics: document.diagnostics,
      items,
    };
  });
  const work = sumCounts([...documents.map((document) => document.counts), ...counts]);
  return {
    format: 1,
    media: pipeline.media,
    grid: pipeline.grid,
    account,
    work,
    stacks,
    diagnostics,
    ...(orders ? { orders } : {}),
    documents: records,
  };
}

interface Printed {
  readonly output: string;
  readonly printed: NonNullable<ItemRecord['printed']>;
}

/** Where each ready item is printed, by `idOfItem`. */
function printedPlaces({ stacks }: Collated): Map<string, Printed> {
  const places = new Map<string, Printed>();
  for (const { name, output, pages } of stacks) {
    for (const [index, { document, item, number }] of pages.entries()) {
      places.set(idOfItem(document, item.id), { output, printed: { stack: `print/${name}`, number, page: index + 1 } });
    }
  }
  return places;
}

function itemRecord(item: ItemResult, place: Printed | undefined, held: ItemRecord['held']): ItemRecord {
  const { state } = item;
  const output = place?.output ?? item.output;
  return {
    id: item.id,
    page: item.page,
    role: item.role,
    ...(output === undefined ? {} : { output }),
    state: state.kind,
    ...(state.kind === 'ready' ? {} : { reason: { code: state.code, message: state.message, remedy: state.remedy } }),
    ...(item.box ? { box: rounded(item.box) } : {}),
    turn: item.turn,
    scale: round(item.scale, 6),
    ...(item.parcel === undefined ? {} : { parcel: item.parcel }),
    evidence: item.evidence,
    codes: item.codes,
    ...(place ? { printed: place.printed } : {}),
    ...(held ? { held } : {}),
  };
}

const round = (value: number, digits: number): number => Number(value.toFixed(digits));
const rounded = ({ x, y, width, height }: Box): Box => ({
  x: round(x, 2),
  y: round(y, 2),
  width: round(width, 2),
  height: round(height, 2),
});

/** Names of the files in held/: a running number, so that they stand in order, the document's name and the item. */
class HeldNames {
  readonly #digits: number;
  #count = 0;

  constructor(of: number) {
    this.#digits = Math.max(3, String(of).length);
  }

  next(document: EndedDocument, item: ItemResult): NonNullable<ItemRecord['held']> {
    this.#count += 1;
    const safe = document.work.shownName.replaceAll(/[^\p{L}\p{M}\p{N}._-]+/gu, '-');
    const name = `held/${String(this.#count).padStart(this.#digits, '0')}-${Array.from(safe).slice(-60).join('')}-${item.id}`;
    return { ...(document.pictures.has(item.id) ? { picture: `${name}.png` } : {}), reason: `${name}.json` };
  }
}

function sumCounts(all: readonly WorkCounts[]): WorkCounts {
  const sum = { documentsOpened: 0, sourceRasters: 0, outputRasters: 0, decodes: 0 };
  for (const counts of all) {
    sum.documentsOpened += counts.documentsOpened;
    sum.sourceRasters += counts.sourceRasters;
    sum.outputRasters += counts.outputRasters;
    sum.decodes += counts.decodes;
  }
  return sum;
}
