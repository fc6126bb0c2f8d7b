import { peakMemoryMb } from './peak-memory.js';
import type { EndedDocument } from './work-through.js';

/** What a stopwatch reads: milliseconds since any moment. */
export interface Clock {
  now(): number;
}

/** Times of a run. They go to a file of their own, so that everything else is the same from run to run. */
export class Stopwatch {
  readonly #clock: Clock;
  readonly #start: number;
  #last: number;
  readonly #laps: Record<string, number> = {};
  readonly #marks: Record<string, number> = {};

  constructor(clock: Clock) {
    this.#clock = clock;
    this.#start = clock.now();
    this.#last = this.#start;
  }

  /** Ends a part of the run that began with the lap before. */
  lap(name: string): void {
    const now = this.#clock.now();
    this.#laps[name] = now - this.#last;
    this.#last = now;
  }

  /** Notes a moment, in ms since the start; the first of a name counts. */
  mark(name: string): void {
    this.#marks[name] ??= this.#clock.now() - this.#start;
  }

  /** times.json: ms of wall clock by part and since the start, wall clock of the documents by stage and added up over the workers, peak memory of the process. */
  toJson(jobs: number, documents: readonly EndedDocument[]): string {
    const stages: Record<string, number> = {};
    for (const { times } of documents) for (const [stage, ms] of Object.entries(times)) stages[stage] = (stages[stage] ?? 0) + ms;
    const { user, system } = process.cpuUsage();
    const times = {
      jobs,
      documents: documents.length,
      readyItems: documents.reduce((sum, { items }) => sum + items.filter((item) => item.state.kind === 'ready').length, 0),
      wallMs: rounded({ ...this.#laps, total: this.#clock.now() - this.#start }),
      sinceStartMs: rounded(this.#marks),
      stageMs: rounded(stages),
      processCpuMs: Math.round((user + system) / 1000),
      peakMemoryMb: peakMemoryMb(),
    };
    return `${JSON.stringify(times, undefined, 2)}\n`;
  }
}

const rounded = (times: Readonly<Record<string, number>>): Record<string, number> =>
  Object.fromEntries(Object.entries(times).map(([name, ms]) => [name, Math.round(ms)]));
