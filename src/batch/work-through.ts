import type { Pipeline } from '../config/pipeline.js';
import type { Diagnostic } from '../diagnostics/diagnostic.js';
import type { Kept, Scratch } from '../files/scratch.js';
import type { Output } from '../geometry/printer.js';
import { compareWork } from '../intake/order.js';
import type { Intake, RefusedItem, WorkItem } from '../intake/work.js';
import {
  type DocumentResult,
  ITEM_STATES,
  type ItemResult,
  type ItemStateKind,
  type LabelText,
  type StageTimes,
  type WorkCounts,
} from '../recipe/outcome.js';
import type { Reason } from '../sheet/sheet.js';
import type { DocumentState } from './account.js';
import type { RunEvent } from './events.js';
import { refusedDocument } from './failed-document.js';
import { outputsOf } from './outputs.js';
import type { Pool } from './pool.js';

/** A document that has ended. Its bytes are put away. */
export interface EndedDocument {
  readonly work: WorkItem;
  readonly state: DocumentState;
  readonly pageCount: number;
  readonly items: readonly ItemResult[];
  readonly diagnostics: readonly Diagnostic[];
  readonly pressed: Kept | undefined;
  /** Pages for other printers than its channel's own, by their names. */
  readonly pressedElsewhere: ReadonlyMap<string, Kept>;
  /** By item id. */
  readonly pictures: ReadonlyMap<string, Kept>;
  /** What its ready labels say; only in a run with orders. Never written. */
  readonly texts: readonly LabelText[];
  readonly times: StageTimes;
  readonly counts: WorkCounts;
}

/** Where a document's pages for a printer are put away; without a name those for its channel's own. */
export const pressedFor = (
  document: Pick<EndedDocument, 'pressed' | 'pressedElsewhere'> | undefined,
  output: string | undefined,
): Kept | undefined => (output === undefined ? document?.pressed : document?.pressedElsewhere.get(output));

/** The same for a run's documents and, behind them, the slips made from orders. */
export const pressedOf =
  (documents: readonly EndedDocument[], { slips }: { readonly slips: readonly { readonly pressed: Kept }[] }) =>
  (document: number, output: string | undefined): Kept | undefined =>
    document < documents.length ? pressedFor(documents[document], output) : slips[document - documents.length]?.pressed;

export type WorkedThrough =
  | { readonly kind: 'all'; readonly documents: readonly EndedDocument[] }
  | { readonly kind: 'stopped'; readonly done: number; readonly of: number }
  | { readonly kind: 'cannot-go-on'; readonly reason: Reason };

export interface WorkTools {
  readonly pool: Pool;
  readonly scratch: Scratch;
  readonly stop: AbortSignal;
  readonly emit: (event: RunEvent) => void;
  /** Called when the first worker has ended a document. */
  readonly onFirstEnd: () => void;
}

/**
 * Sends every document that is work through a worker, and gives all that ended in the fixed order: those too that intake refused, which no
 * worker sees.
 */
export async function workThrough(
  pipeline: Pipeline,
  intake: Intake,
  { pool, scratch, stop, emit, onFirstEnd }: WorkTools,
): Promise<WorkedThrough> {
  const inOrder = inFixedOrder(intake);
  // The hand-over list names the parcels of all channels, those without orders too.
  const wantsTexts = pipeline.channels.some((each) => each.orders !== undefined);
  const outputs = pipeline.channels.map((each) => outputsOf(pipeline, each));
  const failures: Reason[] = [];
  const giveUp = new AbortController();
  const halt = AbortSignal.any([stop, giveUp.signal]);
  let done = 0;

  const one = async (task: WorkItem | RefusedItem): Promise<EndedDocument | undefined> => {
    const work = 'item' in task ? task.item : task;
    const channel = pipeline.channels[work.channel];
    const { own, large } = outputs[work.channel] ?? {};
    if (!channel || !own) throw new Error(`work-through: no channel ${work.channel}`);
    const result =
      'item' in task
        ? refusedDocument(task.state, task.reason)
        : await pool.process(
            {
              type: 'document',
              item: work,
              recipe: channel.recipe,
              ...pageOf(own),
              large,
              texts: wantsTexts,
            },
            halt,
          );
    if (!result) return undefined;
    if (!('item' in task)) onFirstEnd();
    const state = 'item' in task ? task.state : result.pageCount > 0 ? 'read' : 'failed';
    const put = await putAway(result, scratch);
    if ('reason' in put) {
      failures.push(put.reason);
      giveUp.abort();
      return undefined;
    }
    done += 1;
    const { pageCount, items, diagnostics, texts = [], times, counts } = result;
    emit({
      type: 'document',
      name: work.shownName,
      channel: channel.name,
      state,
      pages: pageCount,
      items: countStates(items),
      done,
      of: inOrder.length,
    });
    return { work, state, pageCount, items, diagnostics, texts, times, counts, ...put };
  };

  const documents = (await Promise.all(inOrder.map(one))).filter((each) => each !== undefined);
  if (failures[0]) return { kind: 'cannot-go-on', reason: failures[0] };
  if (documents.length < inOrder.length) return { kind: 'stopped', done: documents.length, of: inOrder.length };
  return { kind: 'all', documents };
}

/** What is worked on and what was refused, in one list in the fixed order. */
function inFixedOrder({ work, refused }: Intake): (WorkItem | RefusedItem)[] {
  const itemOf = (task: WorkItem | RefusedItem): WorkItem => ('item' in task ? task.item : task);
  return [...work, ...refused].sort((a, b) => compareWork(itemOf(a), itemOf(b)));
}

export function countStates(items: readonly ItemResult[]): Record<ItemStateKind, number> {
  const counts: Record<ItemStateKind, number> = { ready: 0, held: 0, skipped: 0, failed: 0 };
  for (const state of ITEM_STATES) counts[state] = items.filter((item) => item.state.kind === state).length;
  return counts;
}

const pageOf = ({ media, grid, printer }: Output): Omit<Output, 'name'> => ({ media, grid, printer });

type PutAway = Pick<EndedDocument, 'pressed' | 'pressedElsewhere' | 'pictures'> | { readonly reason: Reason };

async function putAway(result: DocumentResult, scratch: Scratch): Promise<PutAway> {
  const pictures = new Map<string, Kept>();
  for (const { itemId, png } of result.pictures) {
    const put = await scratch.put(png);
    if (!put.ok) return { reason: put.reason };
    pictures.set(itemId, put.kept);
  }
  const pressedElsewhere = new Map<string, Kept>();
  for (const [name, bytes] of result.pressedElsewhere ?? []) {
    const put = await scratch.put(bytes);
    if (!put.ok) return { reason: put.reason };
    pressedElsewhere.set(name, put.kept);
  }
  if (!result.pressed) return { pressed: undefined, pressedElsewhere, pictures };
  const put = await scratch.put(result.pressed);
  return put.ok ? { pressed: put.kept, pressedElsewhere, pictures } : { reason: put.reason };
}
