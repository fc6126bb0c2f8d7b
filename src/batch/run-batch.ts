import { join } from 'node:path';
import { performance } from 'node:perf_hooks';
import type { Pipeline } from '../config/pipeline.js';
import type { DiagnosticCode } from '../diagnostics/codes.js';
import type { Diagnostic } from '../diagnostics/diagnostic.js';
import type { FileFailure, FileResult } from '../files/failure.js';
import { ensureFolder } from '../files/folder.js';
import { acquireLock, type Lock } from '../files/lock.js';
import { Scratch } from '../files/scratch.js';
import { temporaryName } from '../files/temporary-name.js';
import { writeAtomically } from '../files/write-atomically.js';
import { diskWriter, dryWriter } from '../files/writer.js';
import { findOrderFiles } from '../intake/find-orders.js';
import { findWork } from '../intake/find-work.js';
import type { Reason } from '../sheet/sheet.js';
import { buildRecord } from './build-record.js';
import { buildStack, loadPress } from './build-stacks.js';
import { cautionsOf } from './cautions.js';
import { collate } from './collate.js';
import { dayOf } from './day.js';
import { withoutDuplicates } from './duplicates.js';
import type { RunEvent } from './events.js';
import { listFiles } from './list-files.js';
import { ordersRecord } from './orders-record.js';
import { outputNamed, outputsOf, placeOf, stackTarget } from './outputs.js';
import { packedParcels } from './packed-parcels.js';
import { withPairPictures } from './pair-pictures.js';
import { defaultJobs, Pool, POOL_DEFAULTS, workerScript } from './pool.js';
import { clearLeftovers, type Left, publish } from './publish.js';
import { doesNotAddUp, Reckoning } from './reckoning.js';
import { readRunOrders } from './run-orders.js';
import type { RunRecord, StackRecord } from './run-record.js';
import { Stopwatch } from './times.js';
import { pressedOf, workThrough } from './work-through.js';

export interface RunRequest {
  readonly pipeline: Pipeline;
  /** Takes the same path with a writer that drops everything; touches nothing, not even a lock. */
  readonly dryRun: boolean;
  /** The day of the run, ISO 8601: labels are too old by it, and lists name it. */
  readonly today: string;
  readonly stop: AbortSignal;
  readonly emit: (event: RunEvent) => void;
  /** The text of log.jsonl, asked for when the run has ended in whatever way. */
  readonly log: () => string;
  /** For tests: another worker script, a shorter patience, less memory. */
  readonly worker?: { readonly script?: URL; readonly stallSeconds?: number; readonly memoryMb?: number };
  /** Pressed pages and pictures that are kept in memory, bytes; what is more goes to a scratch file. */
  readonly memoryForPages?: number;
}

/** How a run ended. Unless it `finished`, the outputs of the run before are still there, or run.json is missing. */
export type RunEnd =
  | { readonly kind: 'finished'; readonly record: RunRecord }
  | { readonly kind: 'stopped'; readonly done: number; readonly of: number }
  /** `left`: undefined where another run may be at work there, or nothing can be there. */
  | { readonly kind: 'cannot-go-on'; readonly reason: Reason; readonly left?: Left };

const MEMORY_FOR_PAGES = 96 * 1024 * 1024;

/** The whole story: from the channels' files to the stacks, the held pages and the account. Never throws for bad input. */
export async function runBatch(request: RunRequest): Promise<RunEnd> {
  const { out } = request.pipeline;
  if (request.dryRun) return runInFolder(request, new Scratch(undefined, 0));
  const opened = await openFolder(out);
  if ('reason' in opened) return { kind: 'cannot-go-on', reason: opened.reason };
  const scratch = new Scratch(join(out, temporaryName()), request.memoryForPages ?? MEMORY_FOR_PAGES);
  try {
    const end = await runInFolder(request, scratch);
    return end.kind === 'cannot-go-on' ? { left: 'as-it-was', ...end } : end;
  } finally {
    tell(request.emit, await scratch.remove());
    tell(request.emit, await writeAtomically(join(out, 'log.jsonl'), request.log()));
    tell(request.emit, await opened.lock.release());
  }
}

async function runInFolder({ pipeline, dryRun, today, stop, emit, worker }: RunRequest, scratch: Scratch): Promise<RunEnd> {
  const watch = new Stopwatch(performance);
  const jobs = pipeline.jobs ?? defaultJobs();
  const outputs = pipeline.channels.map((channel) => outputsOf(pipeline, channel));
  const onTalk = (text: string): void => emit({ type: 'talk', text });
  const pool = new Pool(jobs, { script: workerScript(), ...POOL_DEFAULTS, ...worker, onTalk });
  try {
    pool.warm();
    const orderFiles = await findOrderFiles(pipeline);
    const [found, ordered] = await Promise.all([
      findWork(pipeline, { except: new Set(orderFiles.files.map(({ path }) => path)) }),
      readRunOrders(pipeline, orderFiles.files),
    ]);
    const { intake } = found;
    const diagnostics = [...found.diagnostics, ...orderFiles.diagnostics, ...ordered.diagnostics];
    const told: Diagnostic[] = [];
    const tellAll = (all: readonly Diagnostic[]): void => {
      told.push(...all);
      for (const diagnostic of all) emit({ type: 'diagnostic', diagnostic });
    };
    const taken = intake.work.length + intake.refused.length;
    emit({ type: 'started', config: pipeline.file, out: pipeline.out, documents: taken, jobs, dryRun });
    tellAll(diagnostics);
    watch.lap('intake');
    // A slip of the pen must not take the place of the last good run's stacks.
    const mistake = taken === 0 ? diagnostics.find((each) => each.severity === 'error') : undefined;
    if (mistake) return { kind: 'cannot-go-on', reason: nothingFound(mistake.code) };

    const onFirstEnd = (): void => {
      watch.mark('first document');
      void loadPress();
    };
    const worked = await workThrough(pipeline, intake, { pool, scratch, stop, emit, onFirstEnd });
    if (worked.kind !== 'all') return worked;
    watch.lap('documents');

    const unique = withoutDuplicates(worked.documents.map(({ work, items }) => ({ name: work.shownName, items })));
    const ended = await dayOf(pipeline, worked.documents, unique.items, ordered, today, { pool, scratch, stop });
    if (ended.kind === 'stopped') return { kind: 'stopped', done: taken, of: taken };
    if (ended.kind === 'cannot-go-on') return ended;
    const { day } = ended;
    pool.close();
    watch.lap('orders');
    tellAll(day.diagnostics);
    const pictured = await withPairPictures(worked.documents, { items: day.items, pairs: unique.pairs }, scratch);
    if ('reason' in pictured) return { kind: 'cannot-go-on', reason: pictured.reason };
    const { documents } = pictured;
    const collated = collate(
      documents.map(({ work, items }) => ({ ...placeOf(outputs, work.channel), items })),
      (name) => outputNamed(pipeline, name).media,
      day.collate,
    );
    const packed = packedParcels(pipeline, documents, collated, day.matched.parcels);
    const lists = ordered.files.length > 0 ? await listFiles(packed, pipeline.day.lists, today) : { files: [], diagnostics: [] };
    tellAll(lists.diagnostics);
    tellAll(cautionsOf(collated));
    const stacks = collated.stacks.map((stack) => buildStack(stack, stackTarget(pipeline, stack), pressedOf(documents, day), scratch));
    const reckoning = new Reckoning({ taken, documents, outputs, day, collated, stacks });
    if (reckoning.wrong.length > 0) return { kind: 'cannot-go-on', reason: doesNotAddUp(reckoning.wrong) };

    emit({ type: 'stacking', pages: reckoning.planned.output.stackPages });
    const writer = dryRun ? dryWriter : diskWriter;
    // The fourth sum again, by what the press has put into the stacks: nothing has its name yet.
    const record = (built: readonly StackRecord[]): RunRecord | { readonly refused: Reason } => {
      const { account, wrong } = reckoning.printed(built);
      if (wrong.length > 0) return { refused: doesNotAddUp(wrong) };
      const paths = lists.files.map(({ name }) => `lists/${name}`);
      const orders = pipeline.channels.some((channel) => channel.orders)
        ? ordersRecord(pipeline, ordered, day, collated, paths)
        : undefined;
      return buildRecord({ pipeline, documents, collated, account, stacks: built, diagnostics: told, orders, counts: day.counts });
    };
    const published = await publish({ out: pipeline.out, documents, stacks, lists: lists.files, record }, scratch, writer);
    if (!published.ok) return { kind: 'cannot-go-on', reason: published.reason, ...(dryRun ? {} : { left: published.left }) };
    watch.lap('stacks');
    tell(emit, await writer.write(join(pipeline.out, 'times.json'), watch.toJson(jobs, documents)));
    return { kind: 'finished', record: published.record };
  } finally {
    pool.close();
  }
}

/** Makes the output folder, takes its lock and clears away what a killed run left. */
async function openFolder(out: string): Promise<{ readonly lock: Lock } | { readonly reason: FileFailure }> {
  const made = await ensureFolder(out);
  if (!made.ok) return made;
  const locked = await acquireLock(out);
  if (!locked.ok) return locked;
  const cleared = await clearLeftovers(out);
  if (cleared.ok) return locked;
  await locked.lock.release();
  return cleared;
}

/** What fails beside the results spoils none of them, but is told. */
function tell(emit: RunRequest['emit'], result: FileResult): void {
  if (!result.ok) emit({ type: 'diagnostic', diagnostic: { ...result.reason, severity: 'warning', place: { kind: 'run' } } });
}

/** @param code of the mistake that was told already, with what to do about it */
const nothingFound = (code: DiagnosticCode): Reason => ({
  code,
  message: 'no document was found, so nothing is made',
  remedy: 'Put right what is said above, then run again.',
});
