import { Worker } from 'node:worker_threads';
import type { DocumentResult } from '../recipe/outcome.js';
import type { PoolOrder, WorkerReport } from './messages.js';

export interface WorkerOptions {
  readonly script: URL;
  /** Seconds without a sign of life (a page begun) after which a document is ended. */
  readonly stallSeconds: number;
  /** Most memory for JavaScript values in one worker, in MB. */
  readonly memoryMb: number;
  /** What libraries print in a worker. Nobody waits for it: it goes to the run's log. */
  readonly onTalk: (text: string) => void;
}

/** How a worker died over a document; `page` is the last page that it began (0: none). */
export type Death = { readonly page: number } & (
  | { readonly how: 'crashed'; readonly cause: string }
  | { readonly how: 'exited'; readonly exitCode: number }
  | { readonly how: 'out-of-memory'; readonly memoryMb: number }
  | { readonly how: 'stalled'; readonly seconds: number }
);

export type Ending =
  { readonly kind: 'done'; readonly result: DocumentResult; readonly spoiled: boolean } | { readonly kind: 'died'; readonly death: Death };

interface Current {
  page: number;
  settle: (ending: Ending) => void;
  onPage: (page: number) => void;
  watchdog: NodeJS.Timeout;
}

/** What was thrown, in one line that fits into a message. */
function causeOf(error: unknown): string {
  const text = error instanceof Error ? `${error.name}: ${error.message}` : String(error);
  return (text.split('\n')[0] ?? '').slice(0, 200);
}

/** One long-lived worker thread, with one document at a time. It never rejects: a death is an ending like another. */
export class WorkerHandle {
  readonly #worker: Worker;
  readonly #options: WorkerOptions;
  #current: Current | undefined;
  #deathCause: { how: 'crashed'; cause: string } | { how: 'out-of-memory'; memoryMb: number } | undefined;
  #alive = true;
  #documents = 0;

  constructor(options: WorkerOptions) {
    this.#options = options;
    this.#worker = new Worker(options.script, {
      resourceLimits: { maxOldGenerationSizeMb: options.memoryMb },
      stdout: true,
      stderr: true,
    });
    this.#worker.stdout.setEncoding('utf8').on('data', options.onTalk);
    this.#worker.stderr.setEncoding('utf8').on('data', options.onTalk);
    this.#worker.on('message', (report: WorkerReport) => this.#receive(report));
    this.#worker.on('messageerror', (error) => {
      this.#deathCause = { how: 'crashed', cause: causeOf(error) };
      this.end();
    });
    this.#worker.on('error', (error: Error & { code?: string }) => {
      this.#deathCause =
        error.code === 'ERR_WORKER_OUT_OF_MEMORY'
          ? { how: 'out-of-memory', memoryMb: options.memoryMb }
          : { how: 'crashed', cause: causeOf(error) };
    });
    this.#worker.on('exit', (exitCode) => {
      this.#alive = false;
      const page = this.#current?.page ?? 0;
      this.#settle({ kind: 'died', death: { ...(this.#deathCause ?? { how: 'exited', exitCode }), page } });
    });
  }

  get alive(): boolean {
    return this.#alive;
  }

  /** Whether it has not had a document yet: a death is then the document's own. */
  get fresh(): boolean {
    return this.#documents === 0;
  }

  /** Throws when it is dead or has a document already (a bug of the caller). */
  run(order: PoolOrder, onPage: (page: number) => void): Promise<Ending> {
    if (!this.#alive || this.#current) throw new Error('worker-handle: the worker is dead or has a document already');
    this.#documents += 1;
    return new Promise((resolve) => {
      const watchdog = setTimeout(() => this.#stalled(), this.#options.stallSeconds * 1000);
      this.#current = { page: 0, settle: resolve, onPage, watchdog };
      this.#worker.postMessage(order);
    });
  }

  /** Ends the thread, whatever it does. Does not wait: a thread stuck in native code may take its time. */
  end(): void {
    void this.#worker.terminate();
  }

  #receive(report: WorkerReport): void {
    const current = this.#current;
    if (!current) return;
    switch (report.type) {
      case 'page':
        current.page = report.page;
        current.watchdog.refresh();
        current.onPage(report.page);
        return;
      case 'done':
        this.#settle({ kind: 'done', result: report.result, spoiled: report.spoiled });
    }
  }

  #stalled(): void {
    this.#alive = false;
    const page = this.#current?.page ?? 0;
    this.end();
    this.#settle({ kind: 'died', death: { how: 'stalled', seconds: this.#options.stallSeconds, page } });
  }

  #settle(ending: Ending): void {
    const current = this.#current;
    this.#current = undefined;
    if (!current) return;
    clearTimeout(current.watchdog);
    current.settle(ending);
  }
}
