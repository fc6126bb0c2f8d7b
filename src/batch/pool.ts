import { availableParallelism, totalmem } from 'node:os';
import PQueue from 'p-queue';
import type { DocumentResult } from '../recipe/outcome.js';
import type { Reason } from '../sheet/sheet.js';
import { failedDocument } from './failed-document.js';
import type { PoolOrder } from './messages.js';
import { type Death, type Ending, WorkerHandle, type WorkerOptions } from './worker-handle.js';

/** Memory that one worker with warm engines may take, MB: no more workers than half of the machine's memory allows. */
const WORKER_MB = 350;
const MB = 1024 * 1024;

/** As many workers as there are cores, fewer where memory is short. */
export function defaultJobs(): number {
  return Math.max(1, Math.min(availableParallelism(), Math.floor(totalmem() / MB / 2 / WORKER_MB)));
}

/** The built worker script; a checkout run from its sources finds it in dist. */
export function workerScript(): URL {
  return new URL(import.meta.url.endsWith('.ts') ? '../../dist/batch/worker.js' : './worker.js', import.meta.url);
}

export const POOL_DEFAULTS = { stallSeconds: 60, memoryMb: 768 } as const;

const onPage = (page: number): string => (page === 0 ? '' : ` on page ${page}`);

/** Why a document failed whose worker died, for people. */
export function reasonOf(death: Death): Reason {
  switch (death.how) {
    case 'crashed':
      return {
        code: 'batch/crashed',
        message: `the worker crashed${onPage(death.page)} (${death.cause})`,
        remedy: 'Open the file and see whether it is whole; save it anew from there and run again.',
      };
    case 'exited':
      return {
        code: 'batch/crashed',
        message: `the worker ended itself${onPage(death.page)} (exit code ${death.exitCode})`,
        remedy: 'Open the file and see whether it is whole; save it anew from there and run again.',
      };
    case 'out-of-memory':
      return {
        code: 'batch/out-of-memory',
        message: `the document needs more memory${onPage(death.page)} than a worker gets (${death.memoryMb} MB)`,
        remedy: 'Split it into smaller files, or download its labels one by one.',
      };
    case 'stalled':
      return {
        code: 'batch/no-progress',
        message: `no progress for ${death.seconds} s${onPage(death.page)}, so the work on it was ended`,
        remedy: 'Open the file and see whether it is whole; save it anew from there and run again.',
      };
  }
}

/**
 * Long-lived workers that are fed one document at a time. Whatever a document does to its worker, it ends as a result of
 * that document, the worker is replaced, and the others go on.
 */
export class Pool {
  readonly #queue: PQueue;
  readonly #options: WorkerOptions;
  readonly #idle: WorkerHandle[] = [];
  readonly #all = new Set<WorkerHandle>();
  readonly #allAtWork: () => void;

  /** @param jobs workers; all but the first start when the first one shows life: loading engines side by side delays every one. */
  constructor(jobs: number, options: WorkerOptions) {
    this.#queue = new PQueue({ concurrency: 1 });
    this.#options = options;
    this.#allAtWork = () => {
      if (this.#queue.concurrency !== jobs) this.#queue.concurrency = jobs;
    };
  }

  /** Starts a worker ahead of the first document, so that its engines are warm by then. */
  warm(): void {
    this.#idle.push(this.#start());
  }

  /** Orders start in the order given. The result is undefined when `stop` came before it started. Never rejects. */
  process(order: PoolOrder, stop: AbortSignal, pageBegun: (page: number) => void = () => undefined): Promise<DocumentResult | undefined> {
    return this.#queue.add(async () => (stop.aborted ? undefined : this.#once(order, pageBegun)));
  }

  /** Ends all workers; documents still in work end as failed. */
  close(): void {
    this.#idle.length = 0;
    for (const worker of this.#all) this.#drop(worker);
  }

  #start(): WorkerHandle {
    const worker = new WorkerHandle(this.#options);
    this.#all.add(worker);
    return worker;
  }

  #drop(worker: WorkerHandle): void {
    this.#all.delete(worker);
    worker.end();
  }

  async #once(order: PoolOrder, pageBegun: (page: number) => void): Promise<DocumentResult> {
    const worker = this.#take();
    const wasFresh = worker.fresh;
    const ending = await this.#run(worker, order, pageBegun);
    if (wasFresh || !isFault(ending)) return resultOf(ending);
    // An earlier document may have left the worker in a bad way: what counts is what this one does alone.
    return resultOf(await this.#run(this.#start(), order, pageBegun));
  }

  async #run(worker: WorkerHandle, order: PoolOrder, pageBegun: (page: number) => void): Promise<Ending> {
    const ending = await worker.run(order, (page) => {
      this.#allAtWork();
      pageBegun(page);
    });
    this.#allAtWork();
    if (ending.kind === 'done' && !ending.spoiled && worker.alive) this.#idle.push(worker);
    else this.#drop(worker);
    return ending;
  }

  #take(): WorkerHandle {
    for (let worker = this.#idle.pop(); worker; worker = this.#idle.pop()) if (worker.alive) return worker;
    return this.#start();
  }
}

const isFault = (ending: Ending): boolean => (ending.kind === 'died' ? ending.death.how !== 'stalled' : ending.spoiled);
const resultOf = (ending: Ending): DocumentResult => (ending.kind === 'done' ? ending.result : failedDocument(reasonOf(ending.death)));
