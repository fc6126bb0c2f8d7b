import type { StageTimes } from '../recipe/outcome.js';

/** Adds up the ms of wall clock that each stage takes on this thread: with more workers than free cores, waiting for a core is in them. */
export class StageClock {
  readonly #times = new Map<string, number>();

  async time<T>(stage: string, work: () => Promise<T>): Promise<T> {
    const start = performance.now();
    try {
      return await work();
    } finally {
      this.#times.set(stage, (this.#times.get(stage) ?? 0) + performance.now() - start);
    }
  }

  times(): StageTimes {
    return Object.fromEntries(this.#times);
  }
}
